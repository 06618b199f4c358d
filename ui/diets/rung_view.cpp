// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/rung_view.h"

#include "core/diet/supply.h"
#include "ui/diets/target_names.h"
#include "ui/shared/format.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace tarebowl::ui {
namespace {

using quantity::Basis;

constexpr double kGramsPerKilogram = 1000.0;

struct RungWords {
  Q_DECLARE_TR_FUNCTIONS(RungWords)
};

std::optional<double> sumOf(const diet::Supply& supply, const Eigen::VectorXd& grams) {
  for (Eigen::Index j = 0; j < grams.size(); ++j)
    if (grams[j] > 0.0 && !supply.known[j]) return std::nullopt;
  const double sum = supply.perGram.dot(grams);
  return sum > 0.0 ? std::optional(sum) : std::nullopt;
}

/// Nothing where it is no unit of energy.
std::optional<EnergyUnit> energyUnitOf(quantity::Unit unit) {
  if (unit == quantity::Unit::Kilocalorie) return EnergyUnit::Kilocalorie;
  if (unit == quantity::Unit::Kilojoule) return EnergyUnit::Kilojoule;
  return std::nullopt;
}

/// How much of the basis there is a day.
std::optional<double> amountOn(Basis basis, const BowlAmounts& bowl, const diet::Eater& eater) {
  switch (basis) {
    case Basis::AsFed:
      return bowl.kilogramsAsFed;
    case Basis::DryMatter:
      return bowl.kilogramsDryMatter;
    case Basis::Energy:
      return bowl.thousandKilocalories;
    case Basis::Day:
      return 1.0;
    case Basis::BodyMass:
    case Basis::MetabolicMass:
      break;
  }
  if (!eater.bodyMass) return std::nullopt;
  const double mass = eater.bodyMass->value();
  return basis == Basis::BodyMass ? mass : std::pow(mass, 0.75);
}

}  // namespace

diet::BalanceProblem asOffered(diet::BalanceProblem problem) {
  for (diet::DietFood& food : problem.foods) food.eatenFraction = 1.0;
  return problem;
}

bool isLeftInPart(const diet::BalanceProblem& problem) {
  return std::ranges::any_of(problem.foods, [](const auto& food) { return food.eatenFraction < 1.0; });
}

BowlAmounts amountsOf(const diet::BalanceProblem& problem, const diet::Diet& grams) {
  const Eigen::VectorXd x = diet::gramsOf(problem, grams);
  const auto inThousands = [&](const diet::Supply& supply) {
    const auto sum = sumOf(supply, x);
    return sum ? std::optional(*sum / kGramsPerKilogram) : std::nullopt;
  };
  return {inThousands(diet::massSupply(problem)), inThousands(diet::dryMatterSupply(problem)),
          inThousands(diet::nutrientSupply(problem, food::nutrients::energy()))};
}

RungScale scaleOf(const diet::BalanceProblem& problem, RungRef rung, const BowlAmounts& bowl,
                  const LadderView& view) {
  RungScale scale{1.0, rungUnit(problem, rung)};
  if (rung.kind != diet::TargetKind::Nutrient) return scale;
  const animal::Target& target = problem.targets.at(rung.index);
  Basis basis = target.basis;
  if (view.basis && *view.basis != basis) {
    const auto own = amountOn(basis, bowl, problem.eater);
    const auto other = amountOn(*view.basis, bowl, problem.eater);
    if (own && other) {
      scale.factor = *own / *other;
      basis = *view.basis;
    }
  }
  quantity::Unit unit = target.unit;
  if (const auto stated = energyUnitOf(unit)) {
    scale.factor *= perKilocalorie(view.energy) / perKilocalorie(*stated);
    unit = unitOf(view.energy);
  }
  scale.unit = unitPerBasis(unit, basis);
  if (view.energy == EnergyUnit::Kilojoule && basis == Basis::Energy) {
    // 1000 kcal are 4.184 MJ.
    scale.factor /= perKilocalorie(view.energy);
    scale.unit = RungWords::tr("%1/MJ").arg(unitText(unit));
  }
  return scale;
}

}  // namespace tarebowl::ui
