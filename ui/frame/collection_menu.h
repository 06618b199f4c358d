// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/frame/rail_menu.h"
#include "ui/shared/theme.h"

#include <filesystem>
#include <functional>
#include <utility>
#include <vector>

class QMenu;

namespace tarebowl::ui {

/// The button at the foot of the rail: which collection is open, and what holds for the whole window.
class CollectionMenu : public RailMenu {
  Q_OBJECT
 public:
  explicit CollectionMenu(QWidget* parent = nullptr);

  /// The open collection's file, whose backups are offered; empty where none is open.
  void setCollection(const std::filesystem::path& file) { file_ = file; }
  /// Those that were open, the last one first; asked for each time the menu opens.
  using Recent = std::function<std::vector<std::filesystem::path>()>;
  void setRecent(Recent recent) { recent_ = std::move(recent); }
  /// The language that was chosen; empty where none was.
  void setLanguage(const QString& code);

 signals:
  void newWanted();
  void openWanted();
  void serverWanted();
  void recentWanted(const QString& file);
  void sampleWanted();
  void restoreWanted(const QString& backup);
  void themeWanted(tarebowl::ui::ThemeChoice choice);
  /// From the next start on; empty: as the system.
  void languageWanted(const QString& code);

 private:
  void fillRecent();
  void fillBackups();

  QMenu* openAgain_;
  QMenu* backups_;
  QMenu* languages_;
  Recent recent_;
  std::filesystem::path file_;
};

}  // namespace tarebowl::ui
