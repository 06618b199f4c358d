// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/brackenmere.h"

#include "tests/app/program.h"

namespace tarebowl::app {

std::string brackenmere(transfer::FeedingDays days) {
  const auto file = fileWith("brackenmere.tarebowl", "");
  std::filesystem::remove(file);
  const store::Author author{"Keeper A", "2026-11-25T07:30:00Z"};
  store::Collection collection = store::Collection::create(file, author);
  transfer::importSample(collection, std::filesystem::path(TAREBOWL_SOURCE_DIR) / "sample-data", author,
                         days);
  return file.string();
}

}  // namespace tarebowl::app
