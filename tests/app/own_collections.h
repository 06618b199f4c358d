// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"
#include "core/transfer/sample_import.h"

#include <string>

namespace tarebowl::app {

inline const store::Author kSampleKeeper{"Keeper A", "2026-11-25T07:30:00Z"};

/// An empty collection in this test's own folder, in the place of one that was there; or, where the tests are
/// on a server, in a database of its own.
[[nodiscard]] store::Collection freshCollection(const std::string& name);
/// The whole invented sample as a collection in this test's own folder, fresh.
[[nodiscard]] std::string sampleCollection(const std::string& name,
                                           transfer::FeedingDays days = transfer::FeedingDays::TakenIn);

}  // namespace tarebowl::app
