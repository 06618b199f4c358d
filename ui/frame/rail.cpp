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
#include <QStyle>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace tarebowl::ui {
namespace {

constexpr int kLeastWidth = 76;
constexpr QMargins kMargins{0, 10, 0, 12};
constexpr int kIconSide = 24;
constexpr int kWidePadding = 21;  // above, between and below a button's icon and text
constexpr int kTightPadding = 8;

void inkIcon(QAbstractButton& button) {
  const Theme& theme = currentTheme();
  button.setIcon(icon(button.property("iconName").toString(), theme.onRail, theme.ink));
}

}  // namespace

Rail::Rail(QWidget* parent)
    : QWidget(parent), layout_(new QVBoxLayout(this)), mark_(new QLabel), rooms_(new QButtonGroup(this)) {
  setObjectName(QStringLiteral("rail"));
  setAttribute(Qt::WA_StyledBackground);
  setAccessibleName(tr("Rooms"));
  setFixedWidth(kLeastWidth);
  layout_->setContentsMargins(kMargins);
  layout_->setSpacing(0);
  layout_->addStretch(1);
  mark_->setPixmap(programIcon().pixmap(32, 32));
  mark_->setAlignment(Qt::AlignCenter);
  mark_->setToolTip(tr("Tarebowl"));
  layout_->addWidget(mark_);
  connect(rooms_, &QButtonGroup::idClicked, this, &Rail::chosen);
}

void Rail::addRoom(int number, const QString& name, const QString& iconName) {
  auto* button = new QToolButton;
  button->setText(name);
  button->setProperty("iconName", iconName);
  inkIcon(*button);
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
  makeRoomFor(*button);
}

void Rail::addFoot(QWidget* foot) {
  layout_->insertWidget(layout_->count() - 1, foot);
  if (const auto* button = qobject_cast<const QToolButton*>(foot)) makeRoomFor(*button);
}

/// Some languages have long names for the rooms, and the room that is shown has its name in bold.
void Rail::makeRoomFor(const QToolButton& button) {
  constexpr int kBesideText = 8;  // the mark of the focus, and air
  QFont bold = button.font();
  bold.setBold(true);
  setFixedWidth(std::max(minimumWidth(), QFontMetrics(bold).horizontalAdvance(button.text()) + kBesideText));
}

void Rail::setCurrent(int number) {
  if (auto* button = rooms_->button(number)) button->setChecked(true);
}

void Rail::inkIcons() {
  for (QAbstractButton* button : rooms_->buttons()) inkIcon(*button);
}

QSize Rail::minimumSizeHint() const {
  const int button = kIconSide + fontMetrics().height() + kTightPadding;
  return {minimumWidth(),
          static_cast<int>(findChildren<QToolButton*>(Qt::FindDirectChildrenOnly).size()) * button};
}

/// Comfortable where all fits so, tight and without the mark where it does not.
void Rail::fit() {
  int needed = kMargins.top() + kMargins.bottom() + mark_->sizeHint().height();
  const auto buttons = findChildren<QToolButton*>(Qt::FindDirectChildrenOnly);
  for (const QToolButton* button : buttons)
    needed += button->iconSize().height() + button->fontMetrics().height() + kWidePadding;
  const bool isTight = height() < needed;
  if (isTight == isTight_) return;
  isTight_ = isTight;
  mark_->setVisible(!isTight);
  layout_->setContentsMargins(kMargins.left(), isTight ? 0 : kMargins.top(), 0,
                              isTight ? 0 : kMargins.bottom());
  setProperty("tight", isTight);
  for (QToolButton* button : buttons) {
    button->style()->unpolish(button);
    button->style()->polish(button);
    button->updateGeometry();
  }
}

void Rail::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fit();
}

void Rail::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) inkIcons();
}

}  // namespace tarebowl::ui
