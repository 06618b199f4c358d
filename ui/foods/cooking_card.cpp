// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/cooking_card.h"

#include "ui/foods/nutrient_numbers_model.h"
#include "ui/foods/nutrient_numbers_table.h"
#include "ui/foods/stated_text.h"
#include "ui/shared/card.h"
#include "ui/shared/format.h"

#include <QComboBox>
#include <QCompleter>
#include <QFormLayout>
#include <QLineEdit>
#include <QTableView>
#include <QVBoxLayout>

namespace tarebowl::ui {
namespace {

constexpr double kMostKept = 2.0;  // as food::Retention says

QString choiceText(const food::FoodLine& line) {
  const QString form = QString::fromStdString(line.form);
  return form.isEmpty() ? nameOf(line) : QStringLiteral("%1, %2").arg(nameOf(line), form);
}

}  // namespace

CookingCard::CookingCard(FoodDesk& desk, QWidget* parent)
    : QFrame(parent),
      desk_(desk),
      raw_(new QComboBox),
      yield_(new QLineEdit),
      source_(new QLineEdit),
      retentions_(new NutrientNumbersModel({.title = tr("share kept"),
                                            .hint = tr("a share from 0 to 2 (1 keeps all of it)"),
                                            .least = 0.0,
                                            .most = kMostKept,
                                            .first = 1.0},
                                           this)) {
  build();
  connect(&desk_, &FoodDesk::pageChanged, this, &CookingCard::showCooking);
  connect(&desk_, &FoodDesk::listChanged, this, &CookingCard::showCooking);
  connect(raw_, &QComboBox::activated, this, &CookingCard::keep);
  for (QLineEdit* field : {yield_, source_})
    connect(field, &QLineEdit::editingFinished, this, &CookingCard::keep);
  connect(retentions_, &NutrientNumbersModel::edited, this, &CookingCard::keep);
  showCooking();
}

void CookingCard::build() {
  raw_->setAccessibleName(tr("Raw food"));
  raw_->setMinimumContentsLength(14);
  raw_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  yield_->setAccessibleName(tr("Grams cooked from 1 g raw"));
  source_->setAccessibleName(tr("Source of yield and shares"));
  source_->setPlaceholderText(tr("who says so"));
  auto* fields = new QFormLayout;
  fields->addRow(tr("Raw food"), raw_);
  fields->addRow(tr("1 g raw gives, g"), yield_);
  fields->addRow(tr("Source"), source_);
  QVBoxLayout* layout = layOutCard(*this, tr("Cooked from"));
  layout->addLayout(fields);
  layout->addWidget(makeNutrientNumbersTable(*retentions_, tr("Share of each nutrient that stays")), 1);
}

void CookingCard::fillRaw(const std::string& code) {
  raw_->clear();
  const bool isMixed = desk_.page() && desk_.page()->food.record.recipe;
  raw_->addItem(isMixed ? tr("none: it is mixed from other foods") : tr("none: it is not worked out"),
                QString());
  for (const food::FoodLine& line : desk_.foods())
    if (!desk_.page() || FoodId{line.id} != desk_.page()->food.id)
      raw_->addItem(choiceText(line), QString::fromStdString(line.code));
  raw_->setCurrentIndex(std::max(0, raw_->findData(QString::fromStdString(code))));
}

void CookingCard::showCooking() {
  if (!desk_.page()) return;
  showing_ = true;
  const auto& cooking = desk_.page()->food.record.cooking;
  fillRaw(cooking ? cooking->rawCode : std::string());
  if (cooking || yield_->text().isEmpty()) yield_->setText(stated(cooking ? cooking->massYield : 1.0));
  source_->setText(cooking ? QString::fromStdString(cooking->source) : QString());
  NutrientNumbersModel::Numbers kept;
  if (cooking)
    for (const food::Retention& retention : cooking->retentions)
      kept.emplace_back(retention.nutrient, retention.factor);
  if (retentions_->numbers() != kept) retentions_->show(kept);
  showing_ = false;
}

std::optional<food::Cooking> CookingCard::read() {
  const auto yield = readNumber(yield_->text());
  if (!yield || *yield <= 0.0) {
    emit complained(
        tr("“%1” is no yield: the grams cooked that 1 g raw gives, above 0.").arg(yield_->text()));
    return std::nullopt;
  }
  const auto kept = retentions_->numbers();
  if (!kept) {
    emit complained(retentions_->complaint());
    return std::nullopt;
  }
  food::Cooking cooking{.rawCode = raw_->currentData().toString().toStdString(),
                        .massYield = *yield,
                        .source = source_->text().trimmed().toStdString()};
  for (const auto& [nutrient, factor] : *kept) cooking.retentions.push_back({nutrient, factor});
  return cooking;
}

void CookingCard::keep() {
  if (showing_ || !desk_.page()) return;
  emit complained(QString());
  if (raw_->currentData().toString().isEmpty()) return desk_.changeCooking(std::nullopt);
  if (const auto cooking = read()) desk_.changeCooking(cooking);
}

}  // namespace tarebowl::ui
