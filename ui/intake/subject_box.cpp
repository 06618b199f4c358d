// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/intake/subject_box.h"

#include "ui/diets/target_names.h"

#include <QSignalBlocker>

#include <algorithm>
#include <set>

namespace tarebowl::ui {
std::vector<food::NutrientId> nutrientsTold(const diet::BalanceProblem& problem) {
  std::set<food::NutrientId> known{food::nutrients::energy()};
  for (const diet::DietFood& food : problem.foods)
    for (const food::NutrientId nutrient : food.composition.knownNutrients()) known.insert(nutrient);
  std::vector<food::NutrientId> sorted(known.begin(), known.end());
  std::ranges::stable_sort(sorted, [](food::NutrientId a, food::NutrientId b) {
    return nutrientName(a).localeAwareCompare(nutrientName(b)) < 0;
  });
  return sorted;
}

SubjectBox::SubjectBox(IntakeDesk& desk, QWidget* parent) : QComboBox(parent), desk_(desk) {
  setAccessibleName(tr("What is followed over time"));
  setMinimumContentsLength(18);
  setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  connect(&desk_, &IntakeDesk::trendChanged, this, &SubjectBox::fill);
  connect(this, &QComboBox::activated, this, [this](int row) {
    const auto place = static_cast<std::size_t>(row);
    if (place < subjects_.size()) desk_.follow(subjects_[place]);
  });
}

void SubjectBox::fill() {
  if (!desk_.trend()) return;
  const QSignalBlocker quiet(this);
  clear();
  subjects_.clear();
  const diet::BalanceProblem& problem = desk_.trend()->problem;
  const auto add = [this](const QString& text, transfer::TrendSubject subject) {
    addItem(text);
    subjects_.push_back(std::move(subject));
  };
  for (std::size_t i = 0; i < problem.targets.size(); ++i) {
    const RungRef rung{diet::TargetKind::Nutrient, i};
    add(tr("%1: %2").arg(rungName(problem, rung), boundsText(problem, rung)), problem.targets[i].id);
  }
  for (std::size_t i = 0; i < problem.ratios.size(); ++i) {
    const RungRef rung{diet::TargetKind::Ratio, i};
    add(tr("%1: %2").arg(rungName(problem, rung), boundsText(problem, rung)), problem.ratios[i].id);
  }
  for (const food::NutrientId nutrient : nutrientsTold(problem))
    add(tr("%1, a day and animal").arg(nutrientName(nutrient)), nutrient);
  // What is followed where the group is not fed by the rule that was chosen.
  const std::vector<animal::Target>& followed = desk_.trend()->followed.targets;
  auto now = std::ranges::find(subjects_, desk_.subject());
  if (now == subjects_.end() && !followed.empty())
    now = std::ranges::find(subjects_, transfer::TrendSubject(followed.front().id));
  if (now == subjects_.end() && !followed.empty())
    now = std::ranges::find(subjects_, transfer::TrendSubject(followed.front().nutrient));
  setCurrentIndex(now == subjects_.end() ? -1 : static_cast<int>(now - subjects_.begin()));
}

}  // namespace tarebowl::ui
