// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/history_card.h"

#include "ui/animals/change_story.h"
#include "ui/shared/card.h"
#include "ui/shared/date_text.h"

#include <QDateTime>
#include <QListWidget>
#include <QLocale>
#include <QVBoxLayout>

namespace tarebowl::ui {
namespace {

QString whenText(const std::string& at) {
  const QDateTime when = QDateTime::fromString(QString::fromStdString(at), Qt::ISODate).toLocalTime();
  return QLocale().toString(when, momentFormat());
}

}  // namespace

HistoryCard::HistoryCard(AnimalDesk& desk, QWidget* parent)
    : QFrame(parent), desk_(desk), list_(new QListWidget) {
  QVBoxLayout* layout = layOutCard(*this, tr("What changed when"));
  list_->setAccessibleName(tr("Changes, the newest first"));
  list_->setWordWrap(true);
  list_->setSpacing(3);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  layout->addWidget(list_);
  connect(&desk_, &AnimalDesk::historyRead, this, &HistoryCard::showHistory);
  connect(&desk_, &AnimalDesk::pageChanged, this, &HistoryCard::showHistory);
}

void HistoryCard::showHistory() {
  list_->clear();
  for (const store::Change& change : desk_.history())
    list_->addItem(
        tr("%1, %2: %3")
            .arg(whenText(change.author.at), QString::fromStdString(change.author.who), storyOf(change)));
  if (list_->count() == 0) list_->addItem(tr("Nothing was changed yet, or it is still being read."));
}

}  // namespace tarebowl::ui
