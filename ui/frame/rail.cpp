// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/rail.h"

#include "ui/shared/icons.h"
#include "ui/shared/theme.h"

#include <QButtonGroup>
#include <QEvent>
#include <QKeySequence>
#include <QLabel>
#include <QShortcut>
#include <QToolButton>
#include <QVBoxLayout>

namespace tarebowl::ui {
namespace {

constexpr int kWidth = 76;
constexpr int kIconSide = 24;

}  // namespace

Rail::Rail(QWidget* parent)
    : QWidget(parent), layout_(new QVBoxLayout(this)), rooms_(new QButtonGroup(this)) {
  setObjectName(QStringLiteral("rail"));
  setAttribute(Qt::WA_StyledBackground);
  setAccessibleName(tr("Rooms"));
  setFixedWidth(kWidth);
  layout_->setContentsMargins(0, 10, 0, 12);
  layout_->setSpacing(0);
  layout_->addStretch(1);
  auto* mark = new QLabel;
  mark->setPixmap(programIcon().pixmap(32, 32));
  mark->setAlignment(Qt::AlignCenter);
  mark->setToolTip(tr("Tarebowl"));
  layout_->addWidget(mark);
  connect(rooms_, &QButtonGroup::idClicked, this, &Rail::chosen);
}

void Rail::addRoom(int number, const QString& name, const QString& iconName) {
  auto* button = new QToolButton;
  button->setText(name);
  button->setProperty("iconName", iconName);
  button->setCheckable(true);
  button->setIconSize({kIconSide, kIconSide});
  button->setToolButtonStyle(Qt::ToolButtonTextUnderIcon);
  button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  button->setFocusPolicy(Qt::StrongFocus);
  const QKeySequence keys(QStringLiteral("Ctrl+%1").arg(number));
  button->setToolTip(tr("%1 (%2)").arg(name, keys.toString(QKeySequence::NativeText)));
  button->setAccessibleName(name);
  connect(new QShortcut(keys, this), &QShortcut::activated, this, [this, number] {
    setCurrent(number);
    emit chosen(number);
  });
  rooms_->addButton(button, number);
  layout_->insertWidget(places_++, button);
  inkIcons();
}

void Rail::addFoot(QWidget* foot) {
  layout_->insertWidget(layout_->count() - 1, foot);
}

void Rail::setCurrent(int number) {
  if (auto* button = rooms_->button(number)) button->setChecked(true);
}

void Rail::inkIcons() {
  const Theme& theme = currentTheme();
  for (QAbstractButton* button : rooms_->buttons())
    button->setIcon(icon(button->property("iconName").toString(), theme.onRail, theme.ink, kIconSide));
}

void Rail::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) inkIcons();
}

}  // namespace tarebowl::ui
