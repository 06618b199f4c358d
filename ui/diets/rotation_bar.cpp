// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/rotation_bar.h"

#include "ui/diets/rotation_text.h"
#include "ui/shared/segmented_switch.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace tarebowl::ui {

RotationBar::RotationBar(QWidget* parent)
    : QWidget(parent),
      periods_(new QComboBox),
      new_(new QPushButton(tr("Plan days…"))),
      again_(new QPushButton(tr("Plan again from today"))),
      counted_(new SegmentedSwitch(tr("Days that are over count"), {tr("as offered"), tr("as eaten")})),
      working_(new QLabel),
      stop_(new QPushButton(tr("Stop"))) {
  periods_->setAccessibleName(tr("Which days"));
  new_->setToolTip(tr("Plan the days after those that are planned"));
  again_->setToolTip(tr("What was fed stays, and the other days balance what it brought"));
  stop_->setToolTip(tr("Take the best plan that is found so far"));
  counted_->setToolTips({tr("All that was offered counts"),
                         tr("What was weighed back does not count, where somebody weighed it")});
  working_->setProperty("soft", true);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(8);
  row->addWidget(periods_);
  row->addWidget(new_);
  row->addWidget(again_);
  row->addWidget(counted_);
  row->addWidget(working_);
  row->addWidget(stop_);
  row->addStretch(1);
  connect(periods_, &QComboBox::activated, this, &RotationBar::periodChosen);
  connect(new_, &QPushButton::clicked, this, &RotationBar::planWanted);
  connect(again_, &QPushButton::clicked, this, [this] { emit planAgainWanted(counted_->current() == 1); });
  connect(stop_, &QPushButton::clicked, this, &RotationBar::stopWanted);
}

void RotationBar::showList(const RotationPlanner& planner) {
  periods_->clear();
  const RotationView* view = planner.view();
  for (const RotationPlanner::Listed& each : planner.list()) {
    periods_->addItem(periodText(each.from, each.until));
    if (view != nullptr && view->on.kept.id == each.id) periods_->setCurrentIndex(periods_->count() - 1);
  }
  periods_->setVisible(periods_->count() > 0);
}

void RotationBar::showView(const RotationView* view) {
  again_->setVisible(view != nullptr);
  counted_->setVisible(view != nullptr);
  if (view != nullptr) counted_->setCurrent(view->kept().asEaten ? 1 : 0);
}

void RotationBar::showPlanning(bool isPlanning) {
  working_->setText(isPlanning ? tr("planning…") : QString());
  working_->setVisible(isPlanning);
  stop_->setVisible(isPlanning);
  again_->setEnabled(!isPlanning);
  new_->setEnabled(!isPlanning);
}

}  // namespace tarebowl::ui
