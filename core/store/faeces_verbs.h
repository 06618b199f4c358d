// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/faeces.h"
#include "core/store/animal_records.h"
#include "core/store/collection.h"
#include "core/store/written.h"

#include <cstdint>
#include <string>
#include <vector>

/// Faeces that were collected: what writes and reads them; as all verbs (verbs.h).
namespace tarebowl::store {

enum class FaecesId : std::int64_t {};
using StoredFaeces = Stored<FaecesId, intake::FaecesCollected>;

/// Refused where there is no such group, for what intake::problemWith finds, and where a collection of the
/// group has one of the days already: it would count twice.
Written addFaeces(Collection& collection, const intake::FaecesCollected& faeces, const Author& author);
Written editFaeces(Collection& collection, FaecesId id, int seenRevision,
                   const intake::FaecesCollected& changed, const Author& author);
Written removeFaeces(Collection& collection, FaecesId id, int seenRevision, const Author& author);

/// In order of days.
[[nodiscard]] std::vector<StoredFaeces> faecesOfGroup(const Collection& collection, const std::string& group);

}  // namespace tarebowl::store
