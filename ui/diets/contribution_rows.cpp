// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/contribution_rows.h"

#include "core/food/energy.h"
#include "ui/diets/diet_facts.h"
#include "ui/diets/food_label.h"
#include "ui/diets/solving_text.h"
#include "ui/diets/target_names.h"
#include "ui/shared/format.h"

#include <QCoreApplication>

#include <algorithm>

namespace tarebowl::ui {
namespace {

struct Rows {
  Q_DECLARE_TR_FUNCTIONS(Rows)
};

constexpr std::size_t kMostRows = 7;

QString foodName(const DietDraft& draft, std::size_t food) {
  return distinctName(draft.problem, food);
}

QString amountText(food::NutrientId nutrient, const std::optional<double>& amount) {
  if (!amount) return Rows::tr("? no value");
  return measured(*amount) + QLatin1Char(' ') + unitText(food::describe(nutrient).unit);
}

/// The foods beyond the first few in one line, so that the picture stays readable and the sum whole.
void sumUpTheRest(ContributionChartState& state,
                  const std::function<QString(const std::vector<std::optional<double>>&)>& label) {
  if (state.rows.size() <= kMostRows) return;
  ContributionRow rest;
  rest.amounts.assign(static_cast<std::size_t>(state.series.size()), std::nullopt);
  const auto count = static_cast<int>(state.rows.size() - (kMostRows - 1));
  for (std::size_t i = kMostRows - 1; i < state.rows.size(); ++i)
    for (std::size_t s = 0; s < rest.amounts.size(); ++s)
      if (state.rows[i].amounts[s])
        rest.amounts[s] = rest.amounts[s].value_or(0.0) + *state.rows[i].amounts[s];
  rest.food = Rows::tr("the other %1").arg(count);
  rest.label = label(rest.amounts);
  state.rows.resize(kMostRows - 1);
  state.rows.push_back(std::move(rest));
}

ContributionChartState nutrientRows(const DietDraft& draft, food::NutrientId nutrient) {
  ContributionChartState state;
  state.title = Rows::tr("%1, by food, per animal a day").arg(nutrientName(nutrient));
  state.series << nutrientName(nutrient);
  double total = 0.0;
  const auto parts = diet::contributions(draft.problem, draft.grams, nutrient);
  for (const auto& part : parts) total += part.amount.value_or(0.0);
  const auto label = [&](const std::optional<double>& amount) {
    const QString text = amountText(nutrient, amount);
    return amount && total > 0.0 ? text + QStringLiteral(" · ") + percent(*amount / total) : text;
  };
  const auto source = [&](const diet::Contribution& part) {
    const bool workedOut =
        nutrient == food::nutrients::energy() && part.source == food::symbolOf(draft.problem.energyMethod);
    return workedOut ? energyMethodText(draft.problem.energyMethod) : QString::fromStdString(part.source);
  };
  for (const auto& part : parts)
    state.rows.push_back({foodName(draft, part.food), {part.amount}, label(part.amount), source(part)});
  sumUpTheRest(state, [&](const auto& amounts) { return label(amounts[0]); });
  return state;
}

ContributionChartState ratioRows(const DietDraft& draft, const animal::RatioTarget& ratio) {
  ContributionChartState state;
  state.title =
      Rows::tr("%1 and %2, by food, per animal a day").arg(nutrientName(ratio.of), nutrientWithin(ratio.to));
  state.series << nutrientName(ratio.of) << nutrientName(ratio.to);
  const auto label = [&](const std::vector<std::optional<double>>& amounts) {
    if (!amounts[0] && !amounts[1]) return Rows::tr("? no value");
    return Rows::tr("%1 : %2").arg(amountText(ratio.of, amounts[0]), amountText(ratio.to, amounts[1]));
  };
  const auto of = diet::contributions(draft.problem, draft.grams, ratio.of);
  const auto to = diet::contributions(draft.problem, draft.grams, ratio.to);
  const auto amountIn = [](const auto& parts, std::size_t food) -> std::optional<double> {
    const auto found =
        std::find_if(parts.begin(), parts.end(), [&](const auto& part) { return part.food == food; });
    return found == parts.end() ? std::nullopt : found->amount;
  };
  for (const auto& part : of) {
    const std::vector<std::optional<double>> amounts{part.amount, amountIn(to, part.food)};
    state.rows.push_back({foodName(draft, part.food), amounts, label(amounts), QString()});
  }
  std::stable_sort(state.rows.begin(), state.rows.end(), [](const auto& a, const auto& b) {
    const auto most = [](const auto& row) {
      return std::max(row.amounts[0].value_or(-1.0), row.amounts[1].value_or(-1.0));
    };
    return most(a) > most(b);
  });
  sumUpTheRest(state, label);
  return state;
}

/// Amount of the share's basis that a food in the bowl brings: g as fed, g DM or kcal; nothing where unknown.
std::optional<double> basisAmount(const DietDraft& draft, std::size_t food, quantity::Basis basis) {
  const diet::DietFood& row = draft.problem.foods[food];
  const double eaten = row.eatenFraction * draft.grams[food].value();
  if (basis == quantity::Basis::AsFed) return eaten;
  if (basis == quantity::Basis::Energy) {
    const auto energy = food::estimateEnergy(draft.problem.energyMethod, row.composition).per100g;
    return energy ? std::optional(eaten * energy->value() / 100.0) : std::nullopt;
  }
  const auto dryMatter = row.composition.dryMatter();
  return dryMatter ? std::optional(eaten * dryMatter->value()) : std::nullopt;
}

ContributionChartState shareRows(const DietDraft& draft, RungRef rung) {
  const diet::ShareRule& rule = draft.problem.shares.at(rung.index);
  ContributionChartState state;
  state.title = Rows::tr("%1, by food, %2").arg(rungName(draft.problem, rung), rungUnit(draft.problem, rung));
  state.series << rungName(draft.problem, rung);
  double total = 0.0;
  for (std::size_t j = 0; j < draft.problem.foods.size(); ++j)
    total += basisAmount(draft, j, rule.basis).value_or(0.0);
  const auto label = [](const std::optional<double>& share) {
    return share ? percent(*share) : Rows::tr("? no value");
  };
  for (std::size_t j = 0; j < draft.problem.foods.size(); ++j) {
    if (draft.problem.foods[j].group != rule.group || draft.grams[j].value() <= 0.0) continue;
    auto share = basisAmount(draft, j, rule.basis);
    if (share && total > 0.0) *share /= total;
    state.rows.push_back({foodName(draft, j), {share}, label(share), QString()});
  }
  std::stable_sort(state.rows.begin(), state.rows.end(), [](const auto& a, const auto& b) {
    return a.amounts[0].value_or(-1.0) > b.amounts[0].value_or(-1.0);
  });
  sumUpTheRest(state, [&](const auto& amounts) { return label(amounts[0]); });
  return state;
}

}  // namespace

ContributionChartState contributionRows(const DietDraft& draft, RungRef rung) {
  switch (rung.kind) {
    case diet::TargetKind::Nutrient:
      return nutrientRows(draft, draft.problem.targets.at(rung.index).nutrient);
    case diet::TargetKind::Ratio:
      return ratioRows(draft, draft.problem.ratios.at(rung.index));
    case diet::TargetKind::Share:
      break;
  }
  return shareRows(draft, rung);
}

}  // namespace tarebowl::ui
