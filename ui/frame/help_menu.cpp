// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/help_menu.h"

#include "ui/shared/icons.h"
#include "ui/shared/theme.h"

#include <QCoreApplication>
#include <QEvent>
#include <QMenu>

namespace tarebowl::ui {
namespace {

constexpr int kIconSide = 22;

}  // namespace

HelpMenu::HelpMenu(QWidget* parent) : QToolButton(parent) {
  setText(tr("Help"));
  setAccessibleName(tr("Help"));
  setToolTip(tr("A guide through the invented sample; F1 says what a control is"));
  setToolButtonStyle(Qt::ToolButtonTextUnderIcon);
  setIconSize({kIconSide, kIconSide});
  setPopupMode(QToolButton::InstantPopup);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setFocusPolicy(Qt::StrongFocus);
  auto* menu = new QMenu(this);
  menu->addAction(tr("Guide"), this, &HelpMenu::guideWanted);
  menu->addAction(tr("What is this?  (F1)"), this, &HelpMenu::explanationWanted);
  menu->addSeparator();
  menu->addAction(tr("About Tarebowl"), this, &HelpMenu::aboutWanted);
  setMenu(menu);
  inkIcon();
}

void HelpMenu::inkIcon() {
  setIcon(ui::icon(QStringLiteral("help"), currentTheme().onRail, kIconSide));
}

void HelpMenu::changeEvent(QEvent* event) {
  QToolButton::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) inkIcon();
}

QString aboutText() {
  return HelpMenu::tr(
             "Tarebowl %1 – diets weighed to the gram for animals in human care.\n\n"
             "It advises people who decide: a nutritionist approves a diet, and a vet decides about a "
             "patient. What nobody measured stays unknown and is never counted as nothing; every number "
             "names where it comes from (F1).\n\n"
             "Free software under the GNU General Public License, version 3 or later, without any "
             "warranty.")
      .arg(QStringLiteral(TAREBOWL_VERSION));
}

}  // namespace tarebowl::ui
