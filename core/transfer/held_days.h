// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/feeding_reading.h"

#include <functional>
#include <string>
#include <vector>

namespace tarebowl::transfer {

/// Bowls of a group and the pans of its place over some days, in memory.
class HeldDays {
 public:
  /// pans: of these days and those around them that may be borrowed. Bowls and pans in the order of their
  /// days.
  HeldDays(quantity::Date from, quantity::Date to, std::vector<intake::CountedBowl> bowls,
           std::vector<intake::ControlPan> pans);

  [[nodiscard]] bool hold(quantity::Date from, quantity::Date to) const { return from_ <= from && to <= to_; }
  /// Both days are in it.
  void read(quantity::Date from, quantity::Date to,
            const std::function<void(const intake::CountedBowl&)>& take) const;
  /// As CountedBowlReader::fed(), without what was swapped for another.
  [[nodiscard]] store::CountedBowlReader::Fed fed(quantity::Date from, quantity::Date to) const;
  [[nodiscard]] std::vector<intake::ControlPan> pans(quantity::Date from, quantity::Date to) const;
  /// Of all bowls, by their codes, each once.
  [[nodiscard]] const std::vector<std::string>& foods() const { return foods_; }

 private:
  quantity::Date from_;
  quantity::Date to_;
  std::vector<intake::CountedBowl> bowls_;
  std::vector<intake::ControlPan> pans_;
  std::vector<std::string> foods_;
};

}  // namespace tarebowl::transfer
