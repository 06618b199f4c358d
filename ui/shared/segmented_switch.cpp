// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/segmented_switch.h"

#include <QButtonGroup>
#include <QFontMetrics>
#include <QHBoxLayout>
#include <QPushButton>

namespace tarebowl::ui {

SegmentedSwitch::SegmentedSwitch(const QString& accessibleName, const QStringList& words, QWidget* parent)
    : QFrame(parent), group_(new QButtonGroup(this)) {
  setObjectName(QStringLiteral("segmented"));
  setAccessibleName(accessibleName);
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(1, 1, 1, 1);
  layout->setSpacing(0);
  QFont bold = font();
  bold.setBold(true);
  for (int i = 0; i < words.size(); ++i) {
    auto* button = new QPushButton(words[i]);
    button->setCheckable(true);
    button->setAccessibleName(accessibleName + QStringLiteral(": ") + words[i]);
    // The chosen word is bold; the switch must not change its width with it.
    button->setMinimumWidth(QFontMetrics(bold).horizontalAdvance(words[i]) + 18);
    if (i == 0) button->setProperty("place", "first");
    if (i == words.size() - 1) button->setProperty("place", "last");
    group_->addButton(button, i);
    layout->addWidget(button);
  }
  group_->setExclusive(true);
  setCurrent(0);
  connect(group_, &QButtonGroup::idClicked, this, &SegmentedSwitch::chosen);
}

int SegmentedSwitch::current() const {
  return group_->checkedId();
}

void SegmentedSwitch::setCurrent(int index) {
  if (auto* button = group_->button(index)) return button->setChecked(true);
  auto* chosen = group_->checkedButton();
  if (chosen == nullptr) return;
  group_->setExclusive(false);
  chosen->setChecked(false);
  group_->setExclusive(true);
}

void SegmentedSwitch::setWord(int index, const QString& word) {
  auto* button = group_->button(index);
  if (button == nullptr) return;
  button->setText(word);
  button->setAccessibleName(accessibleName() + QStringLiteral(": ") + word);
}

void SegmentedSwitch::setToolTips(const QStringList& tips) {
  for (int i = 0; i < tips.size(); ++i)
    if (auto* button = group_->button(i)) button->setToolTip(tips[i]);
}

}  // namespace tarebowl::ui
