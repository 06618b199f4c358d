// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QPointer>

class QWidget;

namespace tarebowl::ui {

class GuidePanel;
class HelpMenu;

/// What helps in the window: F1 on a control, and the guide.
class Help : public QObject {
  Q_OBJECT
 public:
  explicit Help(QWidget& window);

  [[nodiscard]] HelpMenu& menu() const { return *menu_; }
  [[nodiscard]] GuidePanel& guide() const { return *guide_; }

 signals:
  void roomWanted(int number);
  void sampleWanted();

 private:
  void noteFocus(QWidget* now);
  void explainFocus();
  void find(const QStringList& controls);
  void showGuide();

  QWidget& window_;
  HelpMenu* menu_;
  GuidePanel* guide_;
  QPointer<QWidget> focus_;  // in the rooms, before a menu took it
};

}  // namespace tarebowl::ui
