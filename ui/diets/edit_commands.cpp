// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/edit_commands.h"

#include "ui/shared/format.h"

#include <QCoreApplication>

#include <algorithm>
#include <utility>

namespace tarebowl::ui {
namespace {

struct Edit {
  Q_DECLARE_TR_FUNCTIONS(Edit)
};

QString nameOf(const DietDraft& draft, std::size_t food) {
  return QString::fromStdString(draft.problem.foods.at(food).name);
}

QString cell(const char* what, std::size_t index) {
  return QString::fromLatin1("%1:%2").arg(what).arg(index);
}

}  // namespace

std::optional<DraftChange> changeGrams(const DietDraft& draft, std::size_t food, quantity::Grams mass,
                                       bool lock) {
  const quantity::Grams before = draft.grams.at(food);
  const bool lockedBefore = draft.locked.at(food);
  const bool lockedAfter = lockedBefore || lock;
  if (before == mass && lockedBefore == lockedAfter) return std::nullopt;
  const auto set = [food](DietDraft& to, quantity::Grams value, bool locked) {
    to.grams.at(food) = value;
    to.locked.at(food) = locked;
  };
  return DraftChange{
      Edit::tr("%1 to %2 g").arg(nameOf(draft, food), grams(mass, draft.problem.foods[food].scaleStep)),
      cell("grams", food), [=](DietDraft& to) { set(to, mass, lockedAfter); },
      [=](DietDraft& to) { set(to, before, lockedBefore); }};
}

std::optional<DraftChange> changeAllGrams(const DietDraft& draft, const diet::Diet& grams) {
  if (draft.grams == grams) return std::nullopt;
  return DraftChange{Edit::tr("another bowl"), cell("bowl", 0), [=](DietDraft& to) { to.grams = grams; },
                     [before = draft.grams](DietDraft& to) { to.grams = before; }};
}

std::optional<DraftChange> changeLock(const DietDraft& draft, std::size_t food, bool locked) {
  if (draft.locked.at(food) == locked) return std::nullopt;
  const QString text = locked ? Edit::tr("lock %1") : Edit::tr("unlock %1");
  return DraftChange{text.arg(nameOf(draft, food)), cell("lock", food),
                     [=](DietDraft& to) { to.locked.at(food) = locked; },
                     [=](DietDraft& to) { to.locked.at(food) = !locked; }};
}

std::optional<DraftChange> changeLimits(const DietDraft& draft, std::size_t food, quantity::Grams min,
                                        std::optional<quantity::Grams> max) {
  const diet::DietFood& before = draft.problem.foods.at(food);
  if (before.min == min && before.max == max) return std::nullopt;
  const auto set = [food](DietDraft& to, quantity::Grams least, std::optional<quantity::Grams> most) {
    to.problem.foods.at(food).min = least;
    to.problem.foods.at(food).max = most;
  };
  return DraftChange{Edit::tr("limits of %1").arg(nameOf(draft, food)), cell("limits", food),
                     [=](DietDraft& to) { set(to, min, max); },
                     [set, least = before.min, most = before.max](DietDraft& to) { set(to, least, most); }};
}

std::optional<DraftChange> changeObjective(const DietDraft& draft, const diet::Objective& objective) {
  const diet::Objective before = draft.problem.objective;
  if (before == objective) return std::nullopt;
  return DraftChange{Edit::tr("what is sought"), cell("objective", 0),
                     [=](DietDraft& to) { to.problem.objective = objective; },
                     [=](DietDraft& to) { to.problem.objective = before; }};
}

std::optional<DraftChange> changeConfidence(const DietDraft& draft, std::optional<double> confidence) {
  const std::optional<double> before = draft.problem.confidence;
  if (before == confidence) return std::nullopt;
  return DraftChange{Edit::tr("how sure"), cell("confidence", 0),
                     [=](DietDraft& to) { to.problem.confidence = confidence; },
                     [=](DietDraft& to) { to.problem.confidence = before; }};
}

DraftChange wholeChange(const DietDraft& draft, const QString& text, const QString& touched,
                        std::function<void(DietDraft&)> apply) {
  return {text, touched, std::move(apply), [before = draft](DietDraft& to) { to = before; }};
}

std::optional<DraftChange> changeBounds(const DietDraft& draft, RungRef rung, const Bounds& bounds,
                                        const QString& rungName, const QString& reason) {
  if (boundsOf(draft.problem, rung) == bounds && reason.isEmpty()) return std::nullopt;
  const diet::ChangedBound changed{idOf(draft.problem, rung), bounds.min, bounds.max, reason.toStdString()};
  const auto put = [changed](diet::DietVersion& version) {
    const auto stated = std::ranges::find(version.changedBounds, changed.rule, &diet::ChangedBound::rule);
    diet::ChangedBound own = changed;
    if (stated != version.changedBounds.end()) {
      if (own.reason.empty()) own.reason = stated->reason;
      version.changedBounds.erase(stated);
    }
    version.changedBounds.push_back(std::move(own));
  };
  return wholeChange(draft, Edit::tr("target of %1").arg(rungName),
                     cell("bounds", 3 * rung.index + static_cast<std::size_t>(rung.kind)),
                     [=](DietDraft& to) {
                       if (to.frame)
                         rewrite(to, put);
                       else
                         setBounds(to.problem, rung, bounds);
                     });
}

void putFood(DietDraft& draft, const diet::DietFood& food, quantity::Grams amount) {
  draft.problem.foods.push_back(food);
  draft.grams.push_back(amount);
  draft.locked.push_back(false);
  draft.places.push_back({.food = food.id});
  if (draft.problem.reference) draft.problem.reference->emplace_back(0.0);
}

void takeFood(DietDraft& draft, std::size_t food) {
  const auto place = static_cast<std::ptrdiff_t>(food);
  draft.problem.foods.erase(draft.problem.foods.begin() + place);
  draft.grams.erase(draft.grams.begin() + place);
  draft.locked.erase(draft.locked.begin() + place);
  draft.places.erase(draft.places.begin() + place);
  if (draft.problem.reference) draft.problem.reference->erase(draft.problem.reference->begin() + place);
}

bool hasFood(const DietDraft& draft, const std::string& food) {
  return std::ranges::any_of(draft.places, [&](const diet::PlaceInVersion& place) {
    return place.food == food && !place.allowance;
  });
}

std::optional<DraftChange> addFood(const DietDraft& draft, const diet::DietFood& food) {
  if (hasFood(draft, food.id)) return std::nullopt;
  const auto put = [food](DietDraft& to) { putFood(to, food, quantity::Grams(0)); };
  return wholeChange(draft, Edit::tr("add %1").arg(QString::fromStdString(food.name)), cell("food", 0),
                     [=](DietDraft& to) { restructure(to, put, food); });
}

std::optional<DraftChange> removeFood(const DietDraft& draft, std::size_t food) {
  const auto take = [food](DietDraft& from) { takeFood(from, food); };
  return wholeChange(draft, Edit::tr("remove %1").arg(nameOf(draft, food)), cell("food", 0),
                     [=](DietDraft& from) { restructure(from, take); });
}

std::optional<DraftChange> changePreparation(const DietDraft& draft, std::size_t food,
                                             const QString& preparation) {
  const std::string before = draft.problem.foods.at(food).preparation;
  const std::string after = preparation.trimmed().toStdString();
  if (before == after) return std::nullopt;
  const auto set = [food](DietDraft& to, const std::string& text) {
    to.problem.foods.at(food).preparation = text;
  };
  return DraftChange{Edit::tr("preparation of %1").arg(nameOf(draft, food)), cell("preparation", food),
                     [=](DietDraft& to) { set(to, after); }, [=](DietDraft& to) { set(to, before); }};
}

std::optional<DraftChange> changePurpose(const DietDraft& draft, std::size_t food, diet::Purpose purpose) {
  const diet::PlaceInVersion& place = draft.places.at(food);
  if (!draft.frame || place.allowance || place.purpose == purpose) return std::nullopt;
  return DraftChange{Edit::tr("purpose of %1").arg(nameOf(draft, food)), cell("purpose", food),
                     [=](DietDraft& to) { to.places.at(food).purpose = purpose; },
                     [=, before = place.purpose](DietDraft& to) { to.places.at(food).purpose = before; }};
}

std::optional<DraftChange> addAllowance(const DietDraft& draft, const diet::DietFood& food,
                                        const diet::Allowance& allowance) {
  if (!draft.frame) return std::nullopt;
  const auto put = [allowance](diet::DietVersion& version) {
    const auto stated = std::ranges::find_if(version.allowances, [&](const diet::Allowance& other) {
      return other.food == allowance.food && other.purpose == allowance.purpose;
    });
    if (stated == version.allowances.end())
      version.allowances.push_back(allowance);
    else
      *stated = allowance;
  };
  return wholeChange(draft, Edit::tr("allow %1").arg(QString::fromStdString(food.name)), cell("food", 0),
                     [=](DietDraft& to) { rewrite(to, put, food); });
}

std::optional<DraftChange> changeChoices(const DietDraft& draft, const std::vector<animal::ChoiceRule>& own) {
  if (ownChoices(draft) == own) return std::nullopt;
  return wholeChange(draft, Edit::tr("structure rules"), cell("choices", 0), [=](DietDraft& to) {
    if (to.frame)
      rewrite(to, [&](diet::DietVersion& version) { version.choices = own; });
    else
      to.problem.choices = own;
  });
}

std::optional<DraftChange> changeShares(const DietDraft& draft, const std::vector<animal::ShareRule>& own) {
  if (ownShares(draft) == own) return std::nullopt;
  return wholeChange(draft, Edit::tr("group shares"), cell("shares", 0), [=](DietDraft& to) {
    if (to.frame)
      rewrite(to, [&](diet::DietVersion& version) { version.shares = own; });
    else
      to.problem.shares = own;
  });
}

DraftCommand::DraftCommand(DraftHost& host, DraftChange change, int gesture)
    : QUndoCommand(change.text),
      host_(host),
      change_(std::move(change)),
      gesture_(gesture),
      gramsBefore_(host.editableDraft().grams),
      lockedBefore_(host.editableDraft().locked) {}

void DraftCommand::redo() {
  change_.apply(host_.editableDraft());
  host_.draftEdited();
}

void DraftCommand::undo() {
  DietDraft& draft = host_.editableDraft();
  change_.revert(draft);
  draft.grams = gramsBefore_;
  draft.locked = lockedBefore_;
  host_.draftEdited();
}

bool DraftCommand::mergeWith(const QUndoCommand* other) {
  const auto* later = dynamic_cast<const DraftCommand*>(other);
  if (later == nullptr || later->gesture_ != gesture_ || later->change_.cell != change_.cell) return false;
  change_.apply = later->change_.apply;
  change_.text = later->change_.text;
  setText(change_.text);
  return true;
}

}  // namespace tarebowl::ui
