// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/intake/yesterday_page.h"

#include "ui/intake/intake_text.h"
#include "ui/kitchen/bowl_list.h"
#include "ui/kitchen/bowl_pane.h"
#include "ui/kitchen/leftover_pane.h"
#include "ui/shared/reason_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include <chrono>
#include <utility>

namespace tarebowl::ui {

YesterdayPage::YesterdayPage(OpenCollection& collection, KitchenDesk::Clock today, QWidget* parent)
    : QWidget(parent),
      desk_(new KitchenDesk(collection, std::move(today), this)),
      reason_(new ReasonBar),
      list_(new BowlList(*desk_)),
      pane_(new LeftoverPane(*desk_, *reason_)),
      left_(new QLabel) {
  constexpr int kListWidth = 276;
  list_->setFixedWidth(kListWidth);
  left_->setProperty("soft", true);
  auto* entry = new QVBoxLayout;
  entry->setContentsMargins(0, 10, 0, 0);
  entry->addWidget(left_);
  entry->addWidget(new BowlPane(*desk_), 1);
  entry->addWidget(reason_);
  entry->addWidget(pane_);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(list_);
  layout->addLayout(entry, 1);
  setFocusProxy(&pane_->field());
  connect(desk_, &KitchenDesk::opened, this, &YesterdayPage::startWithYesterday);
  connect(desk_, &KitchenDesk::placeChanged, reason_, &ReasonBar::dismiss);
  connect(desk_, &KitchenDesk::sheetChanged, this, &YesterdayPage::sayHowMany);
  startWithYesterday();
}

void YesterdayPage::startWithYesterday() {
  desk_->setTask(KitchenDesk::Task::Leftovers);
  desk_->showDay(std::chrono::sys_days(desk_->today()) - std::chrono::days(1));
}

void YesterdayPage::showSection(const QString& section) {
  desk_->showSection(section);
}

void YesterdayPage::sayHowMany() {
  left_->clear();
  if (!desk_->sheet()) return;
  std::size_t open = 0;
  std::size_t bowls = 0;
  for (const intake::PrepBowl& bowl : desk_->sheet()->sheet.bowls) {
    if (!bowl.opened) continue;
    ++bowls;
    for (const intake::BowlItem& item : bowl.bowl.items)
      if (!item.swappedOut && item.leftovers.empty() && bowl.bowl.remainders.empty()) {
        ++open;
        break;
      }
  }
  left_->setText(bowls == 0  ? tr("No bowl was put on this sheet.")
                 : open == 0 ? tr("Filled in: all %1").arg(bowlsText(bowls))
                             : tr("Still to be filled in: %1 of %2").arg(open).arg(bowlsText(bowls)));
}

void YesterdayPage::showEvent(QShowEvent* event) {
  desk_->setInSight(true);
  QWidget::showEvent(event);
}

void YesterdayPage::hideEvent(QHideEvent* event) {
  desk_->setInSight(false);
  QWidget::hideEvent(event);
}

}  // namespace tarebowl::ui
