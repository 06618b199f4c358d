// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pan_table.h"

#include "core/exchange/wording.h"
#include "core/intake/pan_doubt.h"
#include "core/store/food_reading.h"

#include <fmt/format.h>

#include <algorithm>

namespace tarebowl::app {

namespace {

using intake::ControlPan;
using intake::PanDoubt;
using store::StoredControlPan;

std::string_view textOf(PanDoubt doubt) {
  switch (doubt) {
    case PanDoubt::NothingAtStart:
      return "was put out empty: it says nothing";
    case PanDoubt::NothingLeft:
      return "came back empty: it says nothing of water";
    case PanDoubt::GainedMuch:
      return "came back more than a tenth heavier: rain, or the weights the wrong way round?";
    case PanDoubt::LostMuch:
      return "lost more than half: did an animal reach it?";
    case PanDoubt::TwicePut:
      break;
  }
  return "is there already: both would count";
}

std::string whatOf(const ControlPan& pan) {
  return fmt::format("{} at {} on {}", pan.food.empty() ? pan.foodClass : pan.food, pan.place,
                     quantity::isoDate(pan.day));
}

bool isOfSame(const ControlPan& a, const ControlPan& b) {
  return a.place == b.place && a.day == b.day && a.food == b.food && a.foodClass == b.foodClass;
}

/// Reads a table against what the collection holds, row by row.
class PanJudge {
 public:
  explicit PanJudge(const store::Collection& collection)
      : collection_(collection), standing_(store::controlPansThatStand(collection)) {}

  JudgedPans judge(const std::vector<ControlPan>& pans) {
    for (const ControlPan& pan : pans) judge(pan);
    return std::move(judged_);
  }

 private:
  void judge(const ControlPan& pan) {
    if (!pan.food.empty() && !store::findFood(collection_, pan.food))
      judged_.wrong += fmt::format("{}: there is no food {}\n", whatOf(pan), pan.food);
    const auto closes = closedBy(pan);
    std::vector<ControlPan> others = othersOn(pan.day, closes);
    others.insert(others.end(), added_.begin(), added_.end());
    if (const auto doubt = intake::doubtAbout(pan, others))
      (doubt == PanDoubt::NothingAtStart ? judged_.wrong : judged_.asked) +=
          fmt::format("{} {}\n", whatOf(pan), textOf(*doubt));
    if (closes) closed_.push_back(closes->id);
    added_.push_back(pan);
    judged_.entries.push_back({pan, closes});
  }

  std::optional<StoredControlPan> closedBy(const ControlPan& pan) {
    if (!pan.end) return std::nullopt;
    for (const StoredControlPan& standing : standing_) {
      if (!isOfSame(standing.record, pan) || isClosed(standing)) continue;
      if (standing.record.start == pan.start) return standing;
      judged_.asked += fmt::format("{} was put out with {} g, and the table says {} g: is it another pan?\n",
                                   whatOf(pan), exchange::shortNumber(standing.record.start.value()),
                                   exchange::shortNumber(pan.start.value()));
    }
    return std::nullopt;
  }

  [[nodiscard]] bool isClosed(const StoredControlPan& pan) const {
    return std::ranges::find(closed_, pan.id) != closed_.end();
  }

  [[nodiscard]] std::vector<ControlPan> othersOn(quantity::Date day,
                                                 const std::optional<StoredControlPan>& closes) const {
    std::vector<ControlPan> others;
    for (const StoredControlPan& pan : store::controlPansBetween(collection_, day, day))
      if (!isClosed(pan) && (!closes || pan.id != closes->id)) others.push_back(pan.record);
    return others;
  }

  const store::Collection& collection_;
  std::vector<StoredControlPan> standing_;
  std::vector<store::ControlPanId> closed_;
  std::vector<ControlPan> added_;
  JudgedPans judged_;
};

}  // namespace

JudgedPans judgePans(const store::Collection& collection, const std::vector<ControlPan>& pans) {
  return PanJudge(collection).judge(pans);
}

}  // namespace tarebowl::app
