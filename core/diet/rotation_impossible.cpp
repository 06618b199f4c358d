// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_impossible.h"

#include <fmt/format.h>

#include <algorithm>

namespace tarebowl::diet {
namespace {

using Eigen::Index;

class Counting {
 public:
  Counting(const RotationModel& model, const std::vector<DietFood>& foods) : model_(model), foods_(foods) {}

  [[nodiscard]] std::string first() const {
    for (Index food = 0; food < model_.foods; ++food)
      if (std::string why = impossibleFor(food); !why.empty()) return why;
    for (Index day = 0; day < model_.days; ++day)
      if (std::string why = impossibleOn(day); !why.empty()) return why;
    return {};
  }

 private:
  [[nodiscard]] bool isOver(Index day) const { return model_.isOver[static_cast<std::size_t>(day)] != 0; }
  /// Fed before, or locked: it cannot be chosen otherwise.
  [[nodiscard]] double settled(Index day, Index food) const {
    const RotationCell& cell = model_.cell(day, food);
    return cell.isFixed ? cell.least : 0.0;
  }

  /// What was fed before may have broken a rule, and no plan can help it: only what is locked counts as
  /// breaking it.
  [[nodiscard]] std::string impossibleFor(Index food) const {
    double grams = 0.0;
    int days = 0;
    int run = 0;
    bool isAnyLocked = false;
    bool isRunLocked = false;
    const std::string& id = foods_[static_cast<std::size_t>(food)].id;
    for (Index day = 0; day < model_.days; ++day) {
      const double fed = settled(day, food);
      if (fed <= 0.0) {
        run = 0;
        isRunLocked = false;
        continue;
      }
      grams += fed;
      ++days;
      ++run;
      isAnyLocked = isAnyLocked || !isOver(day);
      isRunLocked = isRunLocked || !isOver(day);
      if (isRunLocked && run > model_.longestRun[static_cast<std::size_t>(food)])
        return fmt::format("run: {} day {}: locked", id, day + 1);
    }
    if (const int most = mostDays(food); most < model_.leastDays[static_cast<std::size_t>(food)])
      return fmt::format("often: {}: {} days at most, at least {}", id, most,
                         model_.leastDays[static_cast<std::size_t>(food)]);
    if (!isAnyLocked) return {};
    if (grams > model_.mostGrams[food] + kGramsRounding)
      return fmt::format("stock: {}: {} g locked", id, grams);
    if (days > model_.mostDays[static_cast<std::size_t>(food)])
      return fmt::format("often: {}: {} days locked", id, days);
    return {};
  }

  /// Days on which it was fed or may be.
  [[nodiscard]] int mostDays(Index food) const {
    int days = 0;
    for (Index day = 0; day < model_.days; ++day) days += model_.cell(day, food).mayBeFed() ? 1 : 0;
    return days;
  }

  [[nodiscard]] std::string impossibleOn(Index day) const {
    if (isOver(day)) return {};
    for (const DayCount& count : model_.dayCounts[static_cast<std::size_t>(day)]) {
      const auto locked =
          std::ranges::count_if(count.members, [&](Index food) { return settled(day, food) > 0.0; });
      if (locked > count.atMost)
        return fmt::format("structure: {} day {}: {} locked, at most {}", count.id, day + 1, locked,
                           count.atMost);
    }
    return {};
  }

  const RotationModel& model_;
  const std::vector<DietFood>& foods_;
};

}  // namespace

std::string impossibleByCounting(const RotationModel& model, const std::vector<DietFood>& foods) {
  return Counting(model, foods).first();
}

}  // namespace tarebowl::diet
