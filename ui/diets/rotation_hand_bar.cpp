// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/rotation_hand_bar.h"

#include "ui/diets/rotation_calendar.h"

#include <QHBoxLayout>
#include <QPushButton>

namespace tarebowl::ui {

RotationHandBar::RotationHandBar(RotationCalendar& calendar, QWidget* parent) : QWidget(parent) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(6);
  const auto add = [&](const QString& text, const QString& tip) {
    auto* made = new QPushButton(text);
    made->setToolTip(tip);
    made->setFocusPolicy(Qt::TabFocus);
    row->addWidget(made);
    return made;
  };
  QPushButton* earlier = add(tr("A day earlier"), tr("Alt+←, or drag the food to another day"));
  QPushButton* later = add(tr("A day later"), tr("Alt+→, or drag the food to another day"));
  QPushButton* lock = add(tr("Lock or free"), tr("L: a locked cell stays as it is when the rest is planned"));
  QPushButton* out = add(tr("Not on this day"), tr("Delete"));
  row->addStretch(1);
  connect(earlier, &QPushButton::clicked, &calendar, [&calendar] { calendar.moveFood(-1); });
  connect(later, &QPushButton::clicked, &calendar, [&calendar] { calendar.moveFood(1); });
  connect(lock, &QPushButton::clicked, &calendar, &RotationCalendar::turnLock);
  connect(out, &QPushButton::clicked, &calendar, &RotationCalendar::leaveOut);
}

}  // namespace tarebowl::ui
