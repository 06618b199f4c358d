// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/animal_reading.h"
#include "core/store/diet_reading.h"
#include "core/store/food_reading.h"
#include "core/store/profile_reading.h"
#include "core/store/profile_verbs.h"
#include "core/transfer/sample_import.h"
#include "tests/core/store/own_folder.h"
#include "tests/source_dir.h"

namespace tarebowl::transfer {

/// The day on which the tests look at the sample.
inline constexpr quantity::Date kSampleDay{std::chrono::year(2026), std::chrono::month(11),
                                           std::chrono::day(25)};

/// The invented collection, in a folder of its own; its feeding days only where a test asks for them.
struct OwnSample {
  explicit OwnSample(FeedingDays days = FeedingDays::LeftOut) {
    importSample(collection, std::filesystem::path(TAREBOWL_SOURCE_DIR) / "sample-data", store::kKeeper,
                 days);
  }
  store::OwnFolder folder;
  store::Collection collection = store::Collection::create(folder / "brackenmere.tarebowl", store::kKeeper);
};

}  // namespace tarebowl::transfer
