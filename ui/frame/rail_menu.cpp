// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/rail_menu.h"

#include "ui/shared/icons.h"
#include "ui/shared/theme.h"

#include <QEvent>
#include <QMenu>

namespace tarebowl::ui {
namespace {

constexpr int kIconSide = 22;

}  // namespace

RailMenu::RailMenu(const QString& name, const QString& iconName, QWidget* parent)
    : QToolButton(parent), iconName_(iconName) {
  setText(name);
  setAccessibleName(name);
  setToolButtonStyle(Qt::ToolButtonTextUnderIcon);
  setIconSize({kIconSide, kIconSide});
  setPopupMode(QToolButton::InstantPopup);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setFocusPolicy(Qt::StrongFocus);
  setMenu(new QMenu(this));
  inkIcon();
}

void RailMenu::inkIcon() {
  setIcon(ui::icon(iconName_, currentTheme().onRail));
}

void RailMenu::changeEvent(QEvent* event) {
  QToolButton::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) inkIcon();
}

}  // namespace tarebowl::ui
