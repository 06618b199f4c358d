// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/why_sentences.h"

#include "core/diet/verification.h"
#include "ui/diets/diet_facts.h"
#include "ui/diets/food_label.h"
#include "ui/diets/ladder_model.h"
#include "ui/diets/target_names.h"
#include "ui/shared/format.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <cmath>

namespace tarebowl::ui {
namespace {

struct Why {
  Q_DECLARE_TR_FUNCTIONS(Why)
};

/// A number and its unit stay on one line.
QString withUnit(const QString& number, QString unit) {
  if (unit.isEmpty()) return number;
  constexpr QChar kNoBreakSpace(0x00A0);
  const QString joinedSlash = QLatin1Char('/') + QString(QChar(0x2060));
  unit.replace(QLatin1Char(' '), kNoBreakSpace).replace(QLatin1Char('/'), joinedSlash);
  return number + kNoBreakSpace + unit;
}

/// "a, b and c"; "a, raw; b and c" where a name has a comma of its own.
QString listed(const QStringList& words) {
  if (words.size() < 2) return words.join(QString());
  const bool hasCommas = !words.filter(QLatin1String(",")).isEmpty();
  const QString between = hasCommas ? QStringLiteral("; ") : QStringLiteral(", ");
  return Why::tr("%1 and %2").arg(words.mid(0, words.size() - 1).join(between), words.back());
}

QString foodNames(const DietDraft& draft, const std::vector<std::size_t>& foods) {
  constexpr std::size_t kNamed = 3;
  QStringList names;
  for (std::size_t i = 0; i < std::min(kNamed, foods.size()); ++i)
    names << distinctName(draft.problem, foods[i]);
  if (foods.size() > kNamed) names << Why::tr("%1 more").arg(foods.size() - kNamed);
  return listed(names);
}

/// A recalled bound may not be mistaken for a published one.
QString memoryRemark(const DietDraft& draft, RungRef ref) {
  const bool recalled = originOf(draft.problem, ref).provenance == animal::Provenance::FromMemory;
  return recalled ? Why::tr(" (from memory: verify)") : QString();
}

WhySentence missSentence(const DietDraft& draft, const diet::TargetBalance& target) {
  const RungRef ref = refOf(target);
  const QString name = rungName(draft.problem, ref);
  const QString unit = rungUnit(draft.problem, ref);
  const bool isShort = target.state == diet::TargetState::Short;
  const double bound = (isShort ? target.min : target.max).value_or(0.0);
  const double value = target.value.value_or(0.0);
  const QString shownBound = withUnit(stated(shownValue(ref, bound)), unit) + memoryRemark(draft, ref);
  WhySentence sentence{markOf(target.state), {}, {}, ref};
  const double miss = isShort ? bound - value : value - bound;
  if (miss <= 1e-9 * std::max(1.0, bound)) {
    // The mean holds; the chance does not.
    sentence.lead = Why::tr("%1 is not sure enough.").arg(name);
    sentence.rest =
        Why::tr(
            "Its mean, %1, lies in the zone, but with the scatter of the foods the target holds with a "
            "chance of only %2.")
            .arg(withUnit(measured(shownValue(ref, value)), unit), percent(target.chance.value_or(0.0)));
    return sentence;
  }
  if (bound > 0.0)
    sentence.lead = (isShort ? Why::tr("%1 is short by %2:") : Why::tr("%1 is over by %2:"))
                        .arg(name, percent(miss / bound));
  else
    sentence.lead = Why::tr("%1 is over: none is allowed.").arg(name);
  sentence.rest = (isShort ? Why::tr("%1 instead of at least %2.") : Why::tr("%1 instead of at most %2."))
                      .arg(measured(shownValue(ref, value)), shownBound);
  if (isHard(draft.problem, ref)) sentence.rest += Why::tr(" A hard rule.");
  return sentence;
}

void addMisses(std::vector<WhySentence>& sentences, const DietDraft& draft, const diet::Balance& balance) {
  for (const std::size_t i : ladderOrder(draft.problem, balance)) {
    const diet::TargetBalance& target = balance.targets[i];
    if (target.state == diet::TargetState::Short || target.state == diet::TargetState::Over)
      sentences.push_back(missSentence(draft, target));
  }
}

bool anyLocked(const DietDraft& draft) {
  return std::find(draft.locked.begin(), draft.locked.end(), true) != draft.locked.end();
}

void addConflict(std::vector<WhySentence>& sentences, const DietDraft& draft,
                 const diet::DietSolution& solution) {
  const bool impossible = solution.status == diet::DietStatus::Impossible;
  QStringList names;
  for (const std::string& id : solution.conflict) names << conflictName(draft.problem, id);
  const QString given = anyLocked(draft) ? Why::tr("With these foods, limits and locks")
                                         : Why::tr("With these foods and limits");
  if (names.size() > 1)
    sentences.push_back({Mark::Lacking,
                         Why::tr("%1, no bowl holds all of these together:").arg(given),
                         listed(names) + QLatin1Char('.'),
                         {}});
  else if (names.size() == 1)
    sentences.push_back({Mark::Lacking, Why::tr("%1, no bowl holds %2.").arg(given, names.front()), {}, {}});
  if (impossible && names.isEmpty())
    sentences.push_back(
        {Mark::Lacking, Why::tr("%1, the hard rules contradict each other.").arg(given), {}, {}});
  if (impossible)
    sentences.push_back(
        {Mark::Unknown, Why::tr("The grams shown are the last ones and do not keep the rules."), {}, {}});
}

void addStatus(std::vector<WhySentence>& sentences, const DietDraft& draft,
               const diet::DietSolution& solution) {
  switch (solution.status) {
    case diet::DietStatus::Balanced:
      break;
    case diet::DietStatus::Compromise:
    case diet::DietStatus::Impossible:
      addConflict(sentences, draft, solution);
      break;
    case diet::DietStatus::Unbounded:
      sentences.push_back({Mark::Unknown,
                           Why::tr("Nothing limits what is sought."),
                           Why::tr("Give a maximum to a food or a target, or seek the diet closest to now."),
                           {}});
      break;
    case diet::DietStatus::Stopped:
      sentences.push_back({Mark::Unknown,
                           Why::tr("No answer in time."),
                           Why::tr("The grams shown are the last ones. Fewer foods or locks make it easier."),
                           {}});
      break;
    case diet::DietStatus::Failed:
      if (const auto unpriced = diet::foodsWithoutPrice(draft.problem); !unpriced.empty()) {
        sentences.push_back(
            {Mark::Unknown,
             Why::tr("The cheapest bowl cannot be sought: no price for %1.").arg(foodNames(draft, unpriced)),
             Why::tr(
                 "Unknown is not free of charge. Prices stand with the foods in the Foods room; the grams "
                 "shown are the last ones."),
             {}});
        break;
      }
      sentences.push_back({Mark::Unknown,
                           Why::tr("The answer did not pass its own check and is not shown."),
                           QString::fromStdString(solution.reason),
                           {}});
      break;
  }
}

/// Whether values that nobody has measured could turn the verdict on this target.
bool couldTurn(const diet::TargetBalance& target) {
  const bool couldRise = target.atLeast && target.kind == diet::TargetKind::Nutrient && target.value;
  return couldRise && (target.state == diet::TargetState::Short ||
                       (target.max && target.state != diet::TargetState::Over));
}

/// Rungs whose sums lack the same foods, together in one sentence.
struct Gap {
  Unmeasured missing;
  QStringList rungs;
  RungRef first;
};

std::vector<Gap> gapsOf(const DietDraft& draft, const diet::Balance& balance) {
  std::vector<Gap> gaps;
  for (const diet::TargetBalance& target : balance.targets) {
    if (target.state == diet::TargetState::Unknown || !couldTurn(target)) continue;
    const RungRef ref = refOf(target);
    Unmeasured missing = unmeasured(draft.problem, draft.grams, draft.problem.targets[ref.index].nutrient);
    if (missing.foods.empty()) continue;
    std::sort(missing.foods.begin(), missing.foods.end());
    const auto same = std::find_if(gaps.begin(), gaps.end(),
                                   [&](const Gap& gap) { return gap.missing.foods == missing.foods; });
    const QString name = rungName(draft.problem, ref);
    if (same == gaps.end())
      gaps.push_back({std::move(missing), {name}, ref});
    else if (!same->rungs.contains(name))
      same->rungs << name;
  }
  return gaps;
}

/// Unknown values: sums that could be higher, and targets nobody can judge.
void addUnknowns(std::vector<WhySentence>& sentences, const DietDraft& draft, const diet::Balance& balance) {
  for (const Gap& gap : gapsOf(draft, balance))
    sentences.push_back({Mark::Unknown, Why::tr("At least what is shown: %1.").arg(listed(gap.rungs)),
                         Why::tr("No value for %1, %2 of the dry matter.")
                             .arg(foodNames(draft, gap.missing.foods), percent(gap.missing.shareOfDryMatter)),
                         gap.first});
  QStringList blind;
  for (const diet::TargetBalance& target : balance.targets)
    if (target.state == diet::TargetState::Unknown) blind << rungName(draft.problem, refOf(target));
  blind.removeDuplicates();
  if (!blind.isEmpty())
    sentences.push_back({Mark::Unknown,
                         Why::tr("Nobody can judge %1.").arg(listed(blind)),
                         Why::tr("No food in the bowl has a value for it. Unknown is not zero."),
                         {}});
}

void addLocksBeyondLimits(std::vector<WhySentence>& sentences, const DietDraft& draft) {
  for (std::size_t j = 0; j < draft.problem.foods.size(); ++j) {
    const diet::DietFood& food = draft.problem.foods[j];
    const quantity::Grams held = draft.grams[j];
    const bool above = food.max && held > *food.max;
    if (!draft.locked[j] || (!above && held >= food.min)) continue;
    const quantity::Grams limit = above ? *food.max : food.min;
    sentences.push_back(
        {Mark::AtLimit,
         Why::tr("%1 is held at %2 g.").arg(QString::fromStdString(food.name), grams(held, food.scaleStep)),
         (above ? Why::tr("That is above its maximum of %1 g.")
                : Why::tr("That is below its minimum of %1 g."))
             .arg(grams(limit, food.scaleStep)),
         {}});
  }
}

void addLimits(std::vector<WhySentence>& sentences, const DietDraft& draft, const diet::Balance& balance) {
  QStringList names;
  for (const diet::TargetBalance& target : balance.targets) {
    const QString name = rungName(draft.problem, refOf(target));
    if (target.state == diet::TargetState::AtMin) names << Why::tr("%1 at its minimum").arg(name);
    // What is banned and absent is not short of room.
    if (target.state == diet::TargetState::AtMax && target.max != 0.0)
      names << Why::tr("%1 at its maximum").arg(name);
  }
  if (!names.isEmpty())
    sentences.push_back({Mark::AtLimit, Why::tr("No room left:"), listed(names) + QLatin1Char('.'), {}});
}

/// "Closest to now: 3 of 8 foods changed" and its like, once all is well.
QString soughtText(const DietDraft& draft, const diet::DietSolution& solution) {
  const diet::Objective& objective = draft.problem.objective;
  using Kind = diet::Objective::Kind;
  if (objective.kind == Kind::LowestCost)
    return Why::tr("No cheaper bowl meets the targets: %1 per animal a day.")
        .arg(measured(solution.objective));
  if (objective.kind == Kind::FewestFoods)
    return Why::tr("No bowl of fewer than %1 foods meets the targets; of such bowls it is the closest.")
        .arg(std::lround(solution.objective));
  if (objective.kind != Kind::Closest && objective.nutrient) {
    const QString amount =
        withUnit(measured(solution.objective), unitText(food::describe(*objective.nutrient).unit));
    return (objective.kind == Kind::Lowest
                ? Why::tr("No bowl that meets the targets holds less %1: %2 per animal a day.")
                : Why::tr("No bowl that meets the targets holds more %1: %2 per animal a day."))
        .arg(nutrientWithin(*objective.nutrient), amount);
  }
  return draft.problem.reference
             ? Why::tr("No bowl that meets the targets lies closer to the diet as it is now.")
             : Why::tr("No bowl that meets the targets lies closer to equal grams of every food.");
}

void addAllWell(std::vector<WhySentence>& sentences, const DietDraft& draft, const diet::Balance& balance,
                const std::optional<diet::DietSolution>& solution) {
  const bool trouble = std::any_of(balance.targets.begin(), balance.targets.end(), [](const auto& target) {
    return target.state == diet::TargetState::Short || target.state == diet::TargetState::Over;
  });
  if (trouble || balance.targets.empty()) return;
  const bool blind = std::any_of(balance.targets.begin(), balance.targets.end(), [](const auto& target) {
    return target.state == diet::TargetState::Unknown;
  });
  const bool proven =
      solution && solution->status == diet::DietStatus::Balanced && solution->provenGap <= 0.0;
  sentences.push_back(
      {Mark::Met,
       blind ? Why::tr("Every target that can be judged holds.") : Why::tr("Every target holds."),
       proven ? soughtText(draft, *solution) : QString(),
       {}});
}

}  // namespace

std::vector<WhySentence> whySentences(const DietDraft& draft, const diet::Balance& balance,
                                      const std::optional<diet::DietSolution>& solution) {
  std::vector<WhySentence> sentences;
  addAllWell(sentences, draft, balance, solution);
  // Where no bowl keeps the rules, the misses are those of the last grams: the contradiction comes first.
  const bool impossible = solution && solution->status == diet::DietStatus::Impossible;
  if (impossible) addStatus(sentences, draft, *solution);
  addMisses(sentences, draft, balance);
  if (solution && !impossible) addStatus(sentences, draft, *solution);
  addLocksBeyondLimits(sentences, draft);
  addUnknowns(sentences, draft, balance);
  addLimits(sentences, draft, balance);
  return sentences;
}

}  // namespace tarebowl::ui
