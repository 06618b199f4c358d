// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/scale_reading.h"
#include "core/quantity/date.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

/// What intake is worked out from: a bowl with what went in and what came back, free of who wrote it down.
namespace tarebowl::intake {

struct AllEaten {
  bool operator==(const AllEaten&) const = default;
};
struct NotWeighed {
  bool operator==(const NotWeighed&) const = default;
};
/// In the bowl's mixed remainder, so much of it (0 … 1) by eye; nothing where nobody made an estimate.
struct InRemainder {
  std::optional<double> part{};
  bool operator==(const InRemainder&) const = default;
};

/// What is known of a food's leftover; a ScaleReading is what was found of it in the bowl, as weighed.
using Remains = std::variant<NotWeighed, AllEaten, ScaleReading, InRemainder>;

/// Left the bowl uneaten by those it was for.
enum class LossKind { Spilled, Stolen };
struct Loss {
  LossKind kind = LossKind::Spilled;
  std::optional<quantity::Grams> grams{};  ///< as offered; nothing where nobody can say
  bool operator==(const Loss&) const = default;
};

struct FedItem {
  std::string food{};
  std::string foodClass{};  ///< food group: what pans and shrinkage go by
  ScaleReading offered{};
  Remains remains{};
  std::optional<Loss> loss{};
  bool swappedIn = false;  ///< given in place of another
  bool operator==(const FedItem&) const = default;
};

struct FedBowl {
  std::string group{};
  quantity::Date day{};
  std::string label{};  ///< which bowl of the day: its foods were offered together
  std::string place{};  ///< where its pans stand
  int animals = 1;      ///< who share it
  std::vector<FedItem> items{};
  std::optional<ScaleReading> remainder{};  ///< of all items that are InRemainder
  bool operator==(const FedBowl&) const = default;
};

}  // namespace tarebowl::intake
