// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFileSystemWatcher>
#include <QObject>
#include <QString>
#include <QTimer>

#include <filesystem>

namespace tarebowl::ui {

/// Tells that a collection's file was written to, moved or replaced, by whomever. The system tells it of
/// that, so that a window that nobody touches sleeps; where the file lies on another machine, or no more
/// files can be watched, it says so every other second instead.
class FileWatch : public QObject {
  Q_OBJECT
 public:
  explicit FileWatch(QObject* parent = nullptr);
  void watch(const std::filesystem::path& file);
  void stop();
  /// Tells once more in a while: nobody could look at the file just now.
  void tellAgain();
  /// The system tells of changes; otherwise somebody has to look.
  [[nodiscard]] bool isTold() const { return !look_.isActive(); }

 signals:
  void stirred();

 private:
  bool addWhatIsThere();

  QString file_;
  QFileSystemWatcher watcher_;
  QTimer rest_;  // what changes several times at once is told of once
  QTimer look_;
};

}  // namespace tarebowl::ui
