// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/sample_collection.h"

#include "core/transfer/sample_import.h"
#include "ui/shared/paths.h"

#include <QStandardPaths>

namespace tarebowl::ui {

store::Collection openOrMakeSample(const std::filesystem::path& file, const std::filesystem::path& folder,
                                   const std::string& at) {
  if (std::filesystem::exists(file))
    return store::Collection::open(file, at, {.access = store::OpenOptions::Access::AsAllowed});
  std::filesystem::create_directories(file.parent_path());
  // Made beside its place and moved there: a sample that was made by half is never opened.
  std::filesystem::path half = file;
  half += ".new";
  for (const char* part : {"", "-wal", "-shm"}) std::filesystem::remove(half.string() + part);
  const store::Author author{.who = "Tarebowl", .at = at};
  {
    store::Collection collection = store::Collection::create(half, author);
    transfer::importSample(collection, folder, author);
  }
  std::filesystem::rename(half, file);
  return store::Collection::open(file, at);
}

std::filesystem::path sampleCollection() {
  const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation);
  return toPath(folder) / "brackenmere.tarebowl";
}

}  // namespace tarebowl::ui
