// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/help.h"

#include "ui/frame/explanation.h"
#include "ui/frame/guide_panel.h"
#include "ui/frame/help_menu.h"

#include <QApplication>
#include <QMessageBox>
#include <QShortcut>
#include <QWidget>

namespace tarebowl::ui {

Help::Help(QWidget& window)
    : QObject(&window), window_(window), menu_(new HelpMenu), guide_(new GuidePanel(&window)) {
  connect(new QShortcut(QKeySequence(Qt::Key_F1), &window), &QShortcut::activated, this, &Help::explainFocus);
  connect(qApp, &QApplication::focusChanged, this,
          [this](QWidget* /*before*/, QWidget* now) { noteFocus(now); });
  connect(menu_, &HelpMenu::guideWanted, this, &Help::showGuide);
  connect(menu_, &HelpMenu::explanationWanted, this, &Help::explainFocus);
  connect(menu_, &HelpMenu::aboutWanted, this,
          [this] { QMessageBox::about(&window_, tr("About Tarebowl"), aboutText()); });
  connect(guide_, &GuidePanel::roomWanted, this, &Help::roomWanted);
  connect(guide_, &GuidePanel::sampleWanted, this, &Help::sampleWanted);
  connect(guide_, &GuidePanel::shown, this, &Help::find);
}

void Help::noteFocus(QWidget* now) {
  if (now != nullptr && now != menu_ && now->window() == &window_) focus_ = now;
}

void Help::explainFocus() {
  if (focus_ && focus_->isVisible()) explain(*focus_);
}

void Help::find(const QStringList& controls) {
  for (const QString& name : controls)
    if (QWidget* control = controlInSight(window_, name)) {
      window_.activateWindow();
      return control->setFocus(Qt::ShortcutFocusReason);
    }
}

/// Where it hides least: at the upper right of the window.
void Help::showGuide() {
  if (!guide_->isVisible()) {
    const QPoint corner = window_.mapToGlobal(QPoint(window_.width(), 0));
    guide_->move(corner - QPoint(guide_->width() + 16, -48));
  }
  guide_->begin();
}

}  // namespace tarebowl::ui
