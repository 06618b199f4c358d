// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/file_watch.h"

#include "ui/shared/paths.h"

#include <QFileInfo>
#include <QStorageInfo>

#include <algorithm>
#include <array>

namespace tarebowl::ui {
namespace {

constexpr int kRestMs = 200;
constexpr int kLookMs = 1500;

/// File systems of other machines tell this one of its own writes alone.
bool isElsewhere(const QString& folder) {
  constexpr std::array kRemote{"nfs", "nfs4", "cifs", "smb3", "smbfs", "9p", "afs", "ceph", "glusterfs"};
  const QByteArray type = QStorageInfo(folder).fileSystemType();
  return type.startsWith("fuse") ||
         std::any_of(kRemote.begin(), kRemote.end(), [&](const char* remote) { return type == remote; });
}

}  // namespace

FileWatch::FileWatch(QObject* parent) : QObject(parent) {
  rest_.setSingleShot(true);
  rest_.setInterval(kRestMs);
  look_.setInterval(kLookMs);
  connect(&rest_, &QTimer::timeout, this, &FileWatch::stirred);
  connect(&look_, &QTimer::timeout, this, [this] {
    if (addWhatIsThere()) look_.stop();
    emit stirred();
  });
  const auto changed = [this] {
    if (file_.isEmpty()) return;
    if (!addWhatIsThere()) look_.start();
    tellAgain();
  };
  connect(&watcher_, &QFileSystemWatcher::fileChanged, this, changed);
  connect(&watcher_, &QFileSystemWatcher::directoryChanged, this, changed);
}

void FileWatch::watch(const std::filesystem::path& file) {
  stop();
  file_ = QFileInfo(toText(file)).absoluteFilePath();
  if (!addWhatIsThere()) look_.start();
}

void FileWatch::stop() {
  const QStringList watched = watcher_.files() + watcher_.directories();
  if (!watched.isEmpty()) watcher_.removePaths(watched);
  rest_.stop();
  look_.stop();
  file_.clear();
}

void FileWatch::tellAgain() {
  if (!rest_.isActive()) rest_.start();
}

/// The folder, in which files come and go, the file, and the log beside it, in which SQLite writes first.
/// False where the system will not tell of all that is there.
bool FileWatch::addWhatIsThere() {
  const QString folder = QFileInfo(file_).absolutePath();
  if (file_.isEmpty() || !QFileInfo::exists(folder) || isElsewhere(folder)) return false;
  const QStringList watched = watcher_.files() + watcher_.directories();
  bool isWatched = true;
  for (const QString& place : {folder, file_, file_ + QStringLiteral("-wal")})
    if (!watched.contains(place) && QFileInfo::exists(place))
      isWatched = watcher_.addPath(place) && isWatched;
  return isWatched;
}

}  // namespace tarebowl::ui
