// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/difference_text.h"

#include "core/exchange/wording.h"

#include <fmt/format.h>

namespace tarebowl::app {

namespace {

using diet::DifferenceKind;
using diet::VersionDifference;

std::string numberText(const std::optional<double>& number, std::string_view missing) {
  return number ? exchange::shortNumber(*number) : std::string(missing);
}

std::string change(const VersionDifference& difference, std::string_view unit = "",
                   std::string_view missing = "none") {
  return fmt::format("{} → {}{}", numberText(difference.before, missing),
                     numberText(difference.after, missing), unit);
}

std::string words(const VersionDifference& difference) {
  const auto orNothing = [](const std::string& text) { return text.empty() ? "nothing" : text; };
  return fmt::format("{} → {}", orNothing(difference.textBefore), orNothing(difference.textAfter));
}

std::string yesOrNo(const VersionDifference& difference, std::string_view what) {
  return fmt::format("{} {}", difference.after == 1.0 ? "now" : "no longer", what);
}

std::string what(const VersionDifference& difference) {
  switch (difference.kind) {
    case DifferenceKind::LineAdded:
      return fmt::format("new, {} g", numberText(difference.after, "?"));
    case DifferenceKind::LineRemoved:
      return fmt::format("left out, it was {} g", numberText(difference.before, "?"));
    case DifferenceKind::Amount:
      return change(difference, " g");
    case DifferenceKind::Min:
      return "least " + change(difference, " g");
    case DifferenceKind::Max:
      return "most " + change(difference, " g", "no limit");
    case DifferenceKind::Locked:
      return yesOrNo(difference, "locked");
    case DifferenceKind::PurposeOf:
      return "given as " + words(difference);
    case DifferenceKind::Preparation:
      return "prepared: " + words(difference);
    case DifferenceKind::AllowanceAdded:
      return fmt::format("new allowance, up to {} g", numberText(difference.after, "?"));
    case DifferenceKind::AllowanceRemoved:
      return fmt::format("no allowance any more, it was up to {} g", numberText(difference.before, "?"));
    case DifferenceKind::AllowanceLow:
      return "allowance from " + change(difference, " g");
    case DifferenceKind::AllowanceHigh:
      return "allowance up to " + change(difference, " g");
    case DifferenceKind::BoundMin:
      return "minimum " + change(difference, "", "as the targets have it");
    case DifferenceKind::BoundMax:
      return "maximum " + change(difference, "", "as the targets have it");
    case DifferenceKind::ProfileOf:
      return "judged by " + words(difference);
    case DifferenceKind::ObjectiveOf:
      return "sought: " + words(difference);
    case DifferenceKind::Confidence:
      return "confidence " + change(difference);
    case DifferenceKind::EnergyMethodOf:
      return "energy by another method";
    case DifferenceKind::WholeSteps:
      return yesOrNo(difference, "in whole steps of the scale");
    case DifferenceKind::Shares:
      return "other shares of food groups";
    case DifferenceKind::Choices:
      return "other structure rules";
    case DifferenceKind::Lifted:
      return "set aside: " + difference.textAfter;
    case DifferenceKind::BackInForce:
      return "holds again; it was set aside: " + difference.textBefore;
    case DifferenceKind::LiftedReason:
      return "set aside for another reason: " + words(difference);
    case DifferenceKind::FedFrom:
      return "first day " + words(difference);
    case DifferenceKind::PhaseInDays:
      return "phased in over " + change(difference, " days");
  }
  return "differs";
}

}  // namespace

std::string sentenceOf(const VersionDifference& difference) {
  std::string subject = difference.subject;
  if (!difference.meal.empty()) subject += ", " + difference.meal;
  if (!difference.food.empty()) subject += " for " + difference.food;
  return subject.empty() ? what(difference) : subject + ": " + what(difference);
}

}  // namespace tarebowl::app
