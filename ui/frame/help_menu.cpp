// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/help_menu.h"

#include <QMenu>

namespace tarebowl::ui {

HelpMenu::HelpMenu(QWidget* parent) : RailMenu(tr("Help"), QStringLiteral("help"), parent) {
  setToolTip(tr("A guide through the invented sample; F1 says what a control is"));
  entries().addAction(tr("Guide"), this, &HelpMenu::guideWanted);
  entries().addAction(tr("What is this?  (F1)"), this, &HelpMenu::explanationWanted);
  entries().addSeparator();
  entries().addAction(tr("About Tarebowl"), this, &HelpMenu::aboutWanted);
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
