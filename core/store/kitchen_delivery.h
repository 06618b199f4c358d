// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/feeding_verbs.h"
#include "core/store/kitchen_entry.h"

#include <optional>
#include <string>

/// How an entry of the kitchen comes to stand in a collection: by the ordinary verbs (feeding_verbs.h), in
/// one transaction. Every call throws StoreError.
namespace tarebowl::store {

/// Writes it as it was just now read off the scale, with the bowls of its sheet that were not opened yet. A
/// line of the sheet is known by its bowl (intake::sameBowls) and its food, so that a sheet that was opened
/// elsewhere meanwhile serves as well. Refused where the collection's rules do not allow it.
Kept writeDown(Collection& collection, const KitchenEntry& entry);

/// What a person wants of an entry that the server has something else for.
enum class Choice {
  Mine,   ///< what the entry says counts
  Theirs  ///< what the server has counts; the entry is kept beside it where it has a line there
};

/// What became of an entry that was written down before, elsewhere.
struct Delivered {
  enum class Outcome {
    Written,
    ThereBefore,  ///< it was sent before, and nobody heard the answer
    SetAside,     ///< by choice; nothing on the server is like it
    Conflict      ///< nothing was written
  };
  Outcome outcome = Outcome::Written;
  std::string why{};                    ///< of a conflict
  std::optional<SignedValue> theirs{};  ///< what counts there instead, if anything
};

/// Writes it once, whoever sends it how often, if its line is as it was when the entry was made; with a
/// choice, whatever the line is like. station: where it comes from, for those who run the server. why:
/// the reason of the correction that it becomes where another entry counts.
Delivered deliver(Collection& server, const KitchenEntry& entry, const std::string& station,
                  std::optional<Choice> choice = std::nullopt, const std::string& why = {});

}  // namespace tarebowl::store
