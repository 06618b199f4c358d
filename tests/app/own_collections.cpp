// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/own_collections.h"

#include "tests/app/program.h"
#include "tests/core/store/own_database.h"
#include "tests/source_dir.h"

#include <filesystem>
#include <memory>
#include <vector>

namespace tarebowl::app {

store::Collection freshCollection(const std::string& name) {
  if (store::testsAreOnServer()) {
    static std::vector<std::unique_ptr<store::OwnDatabase>> databases;  // until the test's process ends
    databases.push_back(std::make_unique<store::OwnDatabase>(fileWith(name, "").string()));
    return store::Collection::create(databases.back()->address(), kSampleKeeper);
  }
  const auto file = fileWith(name, "");
  std::filesystem::remove(file);
  return store::Collection::create(file, kSampleKeeper);
}

std::string sampleCollection(const std::string& name, transfer::FeedingDays days) {
  store::Collection collection = freshCollection(name);
  transfer::importSample(collection, std::filesystem::path(TAREBOWL_SOURCE_DIR) / "sample-data",
                         kSampleKeeper, days);
  return collection.file().string();
}

}  // namespace tarebowl::app
