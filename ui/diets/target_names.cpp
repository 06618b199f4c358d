// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/target_names.h"

#include "ui/shared/format.h"

#include <QCoreApplication>
#include <QStringList>

namespace tarebowl::ui {
namespace {

struct Target {
  Q_DECLARE_TR_FUNCTIONS(Target)
};

QString text(const std::string& from) {
  return QString::fromStdString(from);
}

QString capitalised(QString word) {
  if (!word.isEmpty()) word[0] = word[0].toUpper();
  return word;
}

QString shareUnit(quantity::Basis basis) {
  switch (basis) {
    case quantity::Basis::AsFed:
      return Target::tr("% as fed");
    case quantity::Basis::Energy:
      return Target::tr("% of energy");
    default:
      return Target::tr("% of DM");
  }
}

QString withUnit(const QString& number, const QString& unit) {
  return unit.isEmpty() ? number : number + QLatin1Char(' ') + unit;
}

QString provenanceText(animal::Provenance provenance) {
  switch (provenance) {
    case animal::Provenance::FromMemory:
      return Target::tr("from memory: verify before use");
    case animal::Provenance::HouseRule:
      return Target::tr("house rule");
    case animal::Provenance::Invented:
      return Target::tr("invented");
    case animal::Provenance::Derived:
      return Target::tr("computed from a published value");
    case animal::Provenance::Seen:
    case animal::Provenance::Unstated:
      break;
  }
  return {};
}

}  // namespace

RungRef refOf(const diet::TargetBalance& target) {
  return {target.kind, target.index};
}

QString shortNutrientName(food::NutrientId nutrient) {
  const food::Nutrient& described = food::describe(nutrient);
  const bool element =
      described.group == food::NutrientGroup::Mineral || described.group == food::NutrientGroup::TraceElement;
  if (!element || described.tagname.size() > 2) return nutrientName(nutrient);
  return capitalised(text(described.tagname).toLower());
}

QString rungName(const diet::BalanceProblem& problem, RungRef rung) {
  switch (rung.kind) {
    case diet::TargetKind::Nutrient:
      return nutrientName(problem.targets.at(rung.index).nutrient);
    case diet::TargetKind::Ratio: {
      const animal::RatioTarget& ratio = problem.ratios.at(rung.index);
      return Target::tr("%1 : %2").arg(shortNutrientName(ratio.of), shortNutrientName(ratio.to));
    }
    case diet::TargetKind::Share:
      break;
  }
  return capitalised(text(problem.shares.at(rung.index).group));
}

QString rungUnit(const diet::BalanceProblem& problem, RungRef rung) {
  switch (rung.kind) {
    case diet::TargetKind::Nutrient: {
      const animal::Target& target = problem.targets.at(rung.index);
      return unitPerBasis(target.unit, target.basis);
    }
    case diet::TargetKind::Ratio:
      return {};
    case diet::TargetKind::Share:
      break;
  }
  return shareUnit(problem.shares.at(rung.index).basis);
}

double shownValue(RungRef rung, double value) {
  return rung.kind == diet::TargetKind::Share ? 100.0 * value : value;
}

QString boundsText(const diet::BalanceProblem& problem, RungRef rung) {
  const Bounds bounds = boundsOf(problem, rung);
  const auto number = [&](double bound) { return stated(shownValue(rung, bound)); };
  const QString unit = rungUnit(problem, rung);
  if (bounds.min && bounds.max) {
    if (*bounds.min == *bounds.max) return withUnit(Target::tr("exactly %1").arg(number(*bounds.min)), unit);
    return withUnit(Target::tr("%1–%2").arg(number(*bounds.min), number(*bounds.max)), unit);
  }
  if (bounds.min) return withUnit(Target::tr("at least %1").arg(number(*bounds.min)), unit);
  return withUnit(Target::tr("at most %1").arg(number(bounds.max.value_or(0.0))), unit);
}

bool isHard(const diet::BalanceProblem& problem, RungRef rung) {
  switch (rung.kind) {
    case diet::TargetKind::Nutrient:
      return problem.targets.at(rung.index).hard;
    case diet::TargetKind::Ratio:
      return problem.ratios.at(rung.index).hard;
    case diet::TargetKind::Share:
      break;
  }
  return problem.shares.at(rung.index).hard;
}

const animal::TargetOrigin& originOf(const diet::BalanceProblem& problem, RungRef rung) {
  switch (rung.kind) {
    case diet::TargetKind::Nutrient:
      break;
    case diet::TargetKind::Ratio:
      return problem.ratios.at(rung.index).origin;
    case diet::TargetKind::Share:
      return problem.shares.at(rung.index).origin;
  }
  return problem.targets.at(rung.index).origin;
}

QString originText(const diet::BalanceProblem& problem, RungRef rung) {
  const animal::TargetOrigin& origin = originOf(problem, rung);
  QStringList parts;
  if (!origin.source.empty()) parts << text(origin.source);
  if (!origin.modelSpecies.empty()) parts << Target::tr("model species: %1").arg(text(origin.modelSpecies));
  const QString provenance = provenanceText(origin.provenance);
  if (!provenance.isEmpty()) parts << provenance;
  return parts.join(QStringLiteral(" · "));
}

QString conflictName(const diet::BalanceProblem& problem, const std::string& id) {
  const auto named = [&](RungRef rung) {
    return Target::tr("%1 (%2)").arg(rungName(problem, rung), boundsText(problem, rung));
  };
  for (std::size_t i = 0; i < problem.targets.size(); ++i)
    if (problem.targets[i].id == id) return named({diet::TargetKind::Nutrient, i});
  for (std::size_t i = 0; i < problem.ratios.size(); ++i)
    if (problem.ratios[i].id == id) return named({diet::TargetKind::Ratio, i});
  for (std::size_t i = 0; i < problem.shares.size(); ++i)
    if (problem.shares[i].id == id) return named({diet::TargetKind::Share, i});
  constexpr std::string_view kChoice = "choice:";
  if (id.starts_with(kChoice)) return Target::tr("the choice among %1").arg(text(id.substr(kChoice.size())));
  return text(id);
}

}  // namespace tarebowl::ui
