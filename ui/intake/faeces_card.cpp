// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/intake/faeces_card.h"

#include "ui/intake/study_text.h"
#include "ui/shared/banner.h"
#include "ui/shared/card.h"
#include "ui/shared/date_field.h"
#include "ui/shared/days.h"
#include "ui/shared/number_reading.h"
#include "ui/shared/wrapping_row.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

namespace tarebowl::ui {
namespace {

QDateEdit* dayField(const QString& name) {
  auto* field = new DateField;
  field->setAccessibleName(name);
  field->findChild<QLineEdit*>()->setAccessibleName(name);
  return field;
}

QLineEdit* field(const QString& name, const QString& hint, int width = 0) {
  auto* made = new QLineEdit;
  made->setAccessibleName(name);
  made->setToolTip(name);
  made->setPlaceholderText(hint);
  if (width > 0) made->setFixedWidth(width);
  return made;
}

}  // namespace

FaecesCard::FaecesCard(StudyDesk& desk, QWidget* parent)
    : QFrame(parent),
      desk_(desk),
      list_(new QListWidget),
      none_(new QLabel(tr("None of this group are written down yet."))),
      from_(dayField(tr("First day of the collection"))),
      until_(dayField(tr("Last day of the collection"))),
      fresh_(field(tr("Grams fresh, of all animals and days together"), tr("g fresh"), 90)),
      dryMatter_(field(tr("Grams of dry matter in 100 g fresh"), tr("g DM in 100 g"), 120)),
      values_(field(tr("Nutrients per 100 g of dry matter, each in its own unit"),
                    tr("per 100 g DM: Ca 1850 ± 90; P 1200"))),
      source_(field(tr("The report that it comes from"), tr("report"), 150)),
      keep_(new QPushButton(tr("Keep"))),
      takeOut_(new QPushButton(tr("Take out"))),
      message_(makeBanner()) {
  build();
  connect(&desk_, &StudyDesk::faecesChanged, this, &FaecesCard::showFaeces);
  connect(&desk_, &StudyDesk::kept, this, &FaecesCard::empty);
  connect(keep_, &QPushButton::clicked, this, &FaecesCard::keep);
  connect(takeOut_, &QPushButton::clicked, this, &FaecesCard::takeOut);
  connect(list_, &QListWidget::currentRowChanged, this,
          [this](int row) { takeOut_->setEnabled(row >= 0 && keep_->isEnabled()); });
  for (QLineEdit* one : {fresh_, dryMatter_, values_, source_}) {
    connect(one, &QLineEdit::returnPressed, this, &FaecesCard::keep);
    connect(one, &QLineEdit::textEdited, message_, &QWidget::hide);
  }
  list_->installEventFilter(this);
  setDays({desk_.tomorrow().addDays(-5), desk_.tomorrow().addDays(-1)});
  showFaeces();
}

void FaecesCard::build() {
  constexpr int kListHeight = 76;
  list_->setAccessibleName(tr("Faeces that were collected"));
  list_->setWordWrap(true);
  list_->setMinimumHeight(kListHeight);
  message_->setWordWrap(true);
  auto* first = new WrappingRow;
  for (QWidget* part : std::initializer_list<QWidget*>{from_, new QLabel(QStringLiteral("–")), until_, fresh_,
                                                       dryMatter_, source_})
    first->addWidget(part);
  auto* second = new QHBoxLayout;
  second->addWidget(values_, 1);
  second->addWidget(keep_);
  second->addWidget(takeOut_);
  QVBoxLayout* layout = layOutCard(
      *this,
      tr("Faeces collected and analysed: the report of their days tells what was apparently digested"));
  none_->setProperty("soft", true);
  none_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  layout->addWidget(none_, 1);
  layout->addWidget(list_, 1);
  layout->addLayout(first);
  layout->addLayout(second);
  layout->addWidget(message_);
}

void FaecesCard::setDays(const DaySpan& days) {
  from_->setDate(days.from);
  until_->setDate(days.until);
}

void FaecesCard::showFaeces() {
  list_->clear();
  for (const store::StoredFaeces& faeces : desk_.faeces()) list_->addItem(faecesText(faeces.record));
  list_->setVisible(list_->count() > 0);
  none_->setVisible(list_->count() == 0);
  keep_->setEnabled(desk_.intake().group() != nullptr && !desk_.collection().isReadOnly());
  takeOut_->setEnabled(false);
}

void FaecesCard::empty() {
  for (QLineEdit* one : {fresh_, dryMatter_, values_, source_}) one->clear();
  message_->hide();
}

void FaecesCard::say(const QString& text) {
  message_->setText(text);
  message_->show();
}

void FaecesCard::keep() {
  if (!keep_->isEnabled()) return;
  const auto fresh = readNumber(fresh_->text());
  const auto dryMatter = readNumber(dryMatter_->text());
  const ReadValues values = readFaecesValues(values_->text());
  if (!fresh) return say(tr("How much was it? Type the grams as found, such as 412."));
  if (!dryMatter)
    return say(tr("Digestibility is worked out on dry matter: type how many g of 100 g fresh it is."));
  if (!values.complaint.isEmpty()) return say(values.complaint);
  const intake::FaecesCollected faeces{.from = toDate(from_->date()),
                                       .until = toDate(until_->date()),
                                       .fresh = quantity::Grams(*fresh),
                                       .dryMatter = *dryMatter,
                                       .values = values.values,
                                       .source = source_->text().trimmed().toStdString()};
  if (const auto problem = intake::problemWith(faeces)) return say(faecesProblemText(*problem));
  desk_.keep(faeces);
}

void FaecesCard::takeOut() {
  const int row = list_->currentRow();
  if (row >= 0 && takeOut_->isEnabled()) desk_.takeOut(desk_.faeces().at(static_cast<std::size_t>(row)));
}

bool FaecesCard::eventFilter(QObject* watched, QEvent* event) {
  if (watched == list_ && event->type() == QEvent::KeyPress &&
      static_cast<QKeyEvent*>(event)->key() == Qt::Key_Delete) {
    takeOut();
    return true;
  }
  return QFrame::eventFilter(watched, event);
}

}  // namespace tarebowl::ui
