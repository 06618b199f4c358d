// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/balance.h"
#include "core/diet/problem.h"
#include "core/diet/version_problem.h"

#include <functional>
#include <memory>
#include <optional>
#include <vector>

namespace tarebowl::ui {

/// The version of a diet of the collection that a draft is of, and what it was made from. Never changes; an
/// edit that needs other foods makes another.
struct VersionFrame {
  diet::DietVersion version{};
  diet::VersionContext context{};
  diet::ProblemOfVersion opened{};
};

/// What lies on the design desk: the problem, the grams as they stand, and which foods keep theirs.
struct DietDraft {
  diet::BalanceProblem problem;
  diet::Diet grams;                                ///< one per food
  std::vector<bool> locked;                        ///< one per food: the solver must not move it
  std::vector<diet::PlaceInVersion> places;        ///< one per food
  std::shared_ptr<const VersionFrame> frame = {};  ///< nothing where the problem comes from a file
};

/// A target, ratio or share of the problem.
struct RungRef {
  diet::TargetKind kind = diet::TargetKind::Nutrient;
  std::size_t index = 0;
  bool operator==(const RungRef&) const = default;
};

struct Bounds {
  std::optional<double> min;
  std::optional<double> max;
  bool operator==(const Bounds&) const = default;
};

/// A draft of the problem with its reference diet and nothing locked.
[[nodiscard]] DietDraft draftOf(diet::BalanceProblem problem);

/// A version as it stands: its own grams and locks.
[[nodiscard]] DietDraft draftOf(const diet::DietVersion& version, diet::VersionContext context);
[[nodiscard]] DietDraft draftOf(VersionFrame frame);
/// The version that the draft has become. Only of a draft that has a frame.
[[nodiscard]] diet::DietVersion versionOf(const DietDraft& draft);

/// Makes a draft of the collection anew after an edit of its foods: rules of the profile that nothing could
/// be judged by before may now hold, and the other way about. A draft of a file stays as the edit left it.
/// known: a food that the edit brought in.
void restructure(DietDraft& draft, const std::function<void(DietDraft&)>& edit,
                 const std::optional<diet::DietFood>& known = std::nullopt);
/// The same after an edit of the version. Only of a draft that has a frame.
void rewrite(DietDraft& draft, const std::function<void(diet::DietVersion&)>& edit,
             const std::optional<diet::DietFood>& known = std::nullopt);

/// The structure rules that are the diet's own, not its profile's; all of them where it comes from a file.
[[nodiscard]] std::vector<animal::ChoiceRule> ownChoices(const DietDraft& draft);
[[nodiscard]] std::vector<animal::ShareRule> ownShares(const DietDraft& draft);

/// The problem the solver gets: a locked food keeps its grams (min = max = grams, whatever its own limits and
/// step).
[[nodiscard]] diet::BalanceProblem problemToSolve(const DietDraft& draft);

/// The problem as it is saved: the grams shown are from then on the diet as it is now.
[[nodiscard]] diet::BalanceProblem problemToSave(const DietDraft& draft);

/// The mass nearest to this one that the food's scale can show; unchanged where whole steps are not asked
/// for.
[[nodiscard]] quantity::Grams onScale(const diet::BalanceProblem& problem, std::size_t food,
                                      quantity::Grams mass);

[[nodiscard]] Bounds boundsOf(const diet::BalanceProblem& problem, RungRef rung);
[[nodiscard]] std::string idOf(const diet::BalanceProblem& problem, RungRef rung);
/// The rule has these bounds from here on, and no longer the source that it had.
void setBounds(diet::BalanceProblem& problem, RungRef rung, const Bounds& bounds);

}  // namespace tarebowl::ui
