// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/page_header.h"

#include "ui/animals/animal_text.h"
#include "ui/shared/elided_label.h"
#include "ui/shared/room_actions.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>

namespace tarebowl::ui {

PageHeader::PageHeader(AnimalDesk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      title_(new ElidedLabel),
      subtitle_(new ElidedLabel),
      row_(new QHBoxLayout(this)) {
  QFont large = title_->font();
  large.setPointSizeF(large.pointSizeF() * 1.4);
  large.setBold(true);
  title_->setFont(large);
  title_->setAccessibleDescription(tr("What is shown"));
  title_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  subtitle_->setProperty("soft", true);
  subtitle_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  auto* words = new QVBoxLayout;
  words->setSpacing(1);
  words->addWidget(title_);
  words->addWidget(subtitle_);
  row_->setContentsMargins(0, 0, 0, 0);
  row_->setSpacing(6);
  row_->addLayout(words, 1);
  connect(&desk_, &AnimalDesk::pageChanged, this, &PageHeader::showPage);
  showPage();
}

void PageHeader::addAction(QAction* action) {
  row_->addWidget(iconButtonFor(action));
}

void PageHeader::addWidget(QWidget* widget) {
  row_->addWidget(widget);
}

void PageHeader::showPage() {
  const auto& page = desk_.page();
  title_->setText(page ? titleOf(*page) : QString());
  title_->setToolTip(title_->text());
  subtitle_->setText(page ? subtitleOf(*page, desk_.today()) : QString());
}

}  // namespace tarebowl::ui
