// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/sought_button.h"

#include "ui/diets/target_names.h"
#include "ui/shared/format.h"

#include <QAction>
#include <QMenu>

#include <algorithm>
#include <set>

namespace tarebowl::ui {
namespace {

using Kind = diet::Objective::Kind;

void makeMenuButton(QToolButton& button) {
  button.setProperty("plain", true);
  button.setPopupMode(QToolButton::InstantPopup);
  button.setToolButtonStyle(Qt::ToolButtonTextOnly);
  button.setFocusPolicy(Qt::StrongFocus);
  button.setMenu(new QMenu(&button));
}

QString withArrow(const QString& text) {
  return text + QStringLiteral("  ▾");
}

struct NutrientLists {
  std::vector<food::NutrientId> targeted;  ///< that the problem speaks of
  std::vector<food::NutrientId> others;    ///< that at least one food has a value for
};

/// Each by name. Energy is worked out for all foods.
NutrientLists nutrientsOf(const diet::BalanceProblem& problem) {
  std::set<food::NutrientId> targeted{food::nutrients::energy()};
  for (const animal::Target& target : problem.targets) targeted.insert(target.nutrient);
  std::set<food::NutrientId> others;
  for (const diet::DietFood& food : problem.foods)
    for (const food::NutrientId nutrient : food.composition.knownNutrients())
      if (!targeted.contains(nutrient)) others.insert(nutrient);
  NutrientLists lists{{targeted.begin(), targeted.end()}, {others.begin(), others.end()}};
  for (auto* list : {&lists.targeted, &lists.others})
    std::sort(list->begin(), list->end(), [](auto a, auto b) {
      return QString::localeAwareCompare(nutrientName(a), nutrientName(b)) < 0;
    });
  return lists;
}

}  // namespace

QString objectiveText(const diet::Objective& objective) {
  const QString nutrient = objective.nutrient ? nutrientWithin(*objective.nutrient) : QString();
  switch (objective.kind) {
    case Kind::Closest:
      return SoughtButton::tr("Closest to now");
    case Kind::LowestCost:
      return SoughtButton::tr("Lowest cost");
    case Kind::FewestFoods:
      return SoughtButton::tr("Fewest foods");
    case Kind::Lowest:
      return SoughtButton::tr("Least %1").arg(nutrient);
    case Kind::Highest:
      return SoughtButton::tr("Most %1").arg(nutrient);
  }
  return {};
}

SoughtButton::SoughtButton(QWidget* parent) : QToolButton(parent) {
  makeMenuButton(*this);
  setToolTip(tr("What is sought among the bowls that come nearest to the targets"));
}

void SoughtButton::show(const diet::BalanceProblem& problem) {
  const diet::Objective& current = problem.objective;
  setText(withArrow(objectiveText(current)));
  setAccessibleName(tr("What is sought: %1").arg(objectiveText(current)));
  menu()->clear();
  addChoice(*menu(), tr("Closest to now"), {Kind::Closest, {}}, current);
  const bool hasCosts = std::any_of(problem.foods.begin(), problem.foods.end(),
                                    [](const auto& food) { return food.costPerKg.has_value(); });
  // A price that lacks is told below once the lowest cost is sought.
  if (hasCosts) addChoice(*menu(), tr("Lowest cost"), {Kind::LowestCost, {}}, current);
  addChoice(*menu(), tr("Fewest foods"), {Kind::FewestFoods, {}}, current);
  menu()->addSeparator();
  addNutrients(tr("Least of"), Kind::Lowest, problem);
  addNutrients(tr("Most of"), Kind::Highest, problem);
}

void SoughtButton::addNutrients(const QString& title, Kind kind, const diet::BalanceProblem& problem) {
  const NutrientLists lists = nutrientsOf(problem);
  QMenu* nutrients = menu()->addMenu(title);
  for (const food::NutrientId nutrient : lists.targeted)
    addChoice(*nutrients, nutrientName(nutrient), {kind, nutrient}, problem.objective);
  if (lists.others.empty()) return;
  nutrients->addSeparator();
  QMenu* others = nutrients->addMenu(tr("Without a target"));
  for (const food::NutrientId nutrient : lists.others)
    addChoice(*others, nutrientName(nutrient), {kind, nutrient}, problem.objective);
}

void SoughtButton::addChoice(QMenu& menu, const QString& text, const diet::Objective& objective,
                             const diet::Objective& current) {
  QAction* action = menu.addAction(text);
  action->setCheckable(true);
  action->setChecked(objective == current);
  connect(action, &QAction::triggered, this, [this, objective] { emit chosen(objective); });
}

SureButton::SureButton(QWidget* parent) : QToolButton(parent) {
  makeMenuButton(*this);
  setToolTip(tr("How sure each target has to hold, in view of the scatter of the foods' values"));
}

void SureButton::show(std::optional<double> confidence) {
  const auto text = [](std::optional<double> value) {
    return value ? tr("%1 sure").arg(percent(*value)) : tr("As measured");
  };
  setText(withArrow(text(confidence)));
  setAccessibleName(tr("How sure: %1").arg(text(confidence)));
  menu()->clear();
  std::vector<std::optional<double>> offers{std::nullopt, 0.90, 0.95};
  // A file may ask for another chance than those offered.
  if (std::find(offers.begin(), offers.end(), confidence) == offers.end()) offers.push_back(confidence);
  for (const auto& offer : offers) {
    QAction* action = menu()->addAction(text(offer));
    action->setCheckable(true);
    action->setChecked(offer == confidence);
    connect(action, &QAction::triggered, this, [this, offer] { emit chosen(offer); });
  }
}

}  // namespace tarebowl::ui
