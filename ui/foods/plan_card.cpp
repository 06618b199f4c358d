// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/plan_card.h"

#include "core/food/sampling_plan.h"
#include "ui/foods/food_text.h"
#include "ui/foods/nutrient_numbers_model.h"
#include "ui/foods/nutrient_numbers_table.h"
#include "ui/shared/card.h"
#include "ui/shared/days.h"
#include "ui/shared/nutrient_text.h"

#include <QLabel>
#include <QTableView>
#include <QVBoxLayout>

namespace tarebowl::ui {
namespace {

constexpr double kMostMonths = 120.0;

QString dueLine(const food::DueAnalysis& due) {
  const QString nutrient = nutrientWithin(due.nutrient);
  if (!due.last) return PlanCard::tr("%1 (no own sample has it)").arg(nutrient);
  return PlanCard::tr("%1 (last %2)").arg(nutrient, dateText(*due.last));
}

}  // namespace

PlanCard::PlanCard(FoodDesk& desk, QWidget* parent)
    : QFrame(parent),
      desk_(desk),
      model_(new NutrientNumbersModel({.title = tr("every … months"),
                                       .hint = tr("a whole number of months from 1 to 120"),
                                       .least = 1.0,
                                       .most = kMostMonths,
                                       .whole = true,
                                       .first = 12.0},
                                      this)),
      due_(new QLabel) {
  QVBoxLayout* layout = layOutCard(*this, tr("Sampling plan"));
  layout->addWidget(makeNutrientNumbersTable(*model_, tr("Nutrients to analyse, and how often")), 1);
  due_->setWordWrap(true);
  due_->setProperty("soft", true);
  layout->addWidget(due_);
  connect(&desk_, &FoodDesk::pageChanged, this, &PlanCard::showPlan);
  connect(model_, &NutrientNumbersModel::edited, this, &PlanCard::keep);
  showPlan();
}

QString PlanCard::dueText() const {
  if (!desk_.page()) return {};
  const auto& plan = desk_.page()->food.record.plan;
  if (plan.empty()) return tr("Nothing is planned. Plan what this food can go wrong in.");
  std::vector<food::Sample> samples;
  for (const store::StoredSample& stored : desk_.page()->samples) samples.push_back(stored.sample);
  QStringList due;
  for (const food::DueAnalysis& analysis : food::dueOn(today(), plan, samples)) due << dueLine(analysis);
  return due.isEmpty() ? tr("Nothing is due.") : tr("Due: %1.").arg(due.join(QStringLiteral(", ")));
}

void PlanCard::showPlan() {
  due_->setText(dueText());
  if (!desk_.page()) return;
  NutrientNumbersModel::Numbers numbers;
  for (const food::PlannedAnalysis& planned : desk_.page()->food.record.plan)
    numbers.emplace_back(planned.nutrient, planned.everyMonths);
  if (model_->numbers() != numbers) model_->show(numbers);
}

void PlanCard::keep() {
  emit complained(model_->complaint());
  const auto numbers = model_->numbers();
  if (!numbers) return;
  std::vector<food::PlannedAnalysis> plan;
  for (const auto& [nutrient, months] : *numbers) plan.push_back({nutrient, static_cast<int>(months)});
  desk_.changePlan(plan);
}

}  // namespace tarebowl::ui
