// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/allowance_bar.h"

#include "ui/collection/food_names.h"
#include "ui/collection/food_picker.h"
#include "ui/diets/version_text.h"
#include "ui/shared/number_reading.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>

namespace tarebowl::ui {
namespace {

/// What is given from the bowl is weighed.
constexpr diet::Purpose kUnweighed[] = {diet::Purpose::Treat, diet::Purpose::TrainingReward,
                                        diet::Purpose::Enrichment, diet::Purpose::Browse};

QLineEdit* gramField(const QString& name, const QString& hint) {
  auto* field = new QLineEdit;
  field->setAccessibleName(name);
  field->setPlaceholderText(hint);
  field->setFixedWidth(field->fontMetrics().averageCharWidth() * 8 + 16);
  return field;
}

}  // namespace

std::optional<GramRange> rangeIn(const QLineEdit& low, const QLineEdit& high) {
  const auto from = low.text().trimmed().isEmpty() ? std::optional(0.0) : readNumber(low.text());
  const auto to = readNumber(high.text());
  if (!from || !to || *to < *from || *to <= 0.0) return std::nullopt;
  return GramRange{quantity::Grams(*from), quantity::Grams(*to)};
}

AllowanceBar::AllowanceBar(const FoodNames& names, QWidget* parent)
    : QWidget(parent),
      picker_(new FoodPicker(names)),
      low_(gramField(tr("At least so many grams a day, unweighed"), tr("from g"))),
      high_(gramField(tr("At most so many grams a day, unweighed"), tr("to g"))),
      purpose_(new QComboBox) {
  picker_->setPlaceholderText(tr("…then the food that is given unweighed"));
  picker_->setAccessibleName(tr("A food that is given unweighed, by part of its name"));
  for (const diet::Purpose purpose : kUnweighed) purpose_->addItem(purposeText(purpose));
  purpose_->setAccessibleName(tr("What is given unweighed for"));
  auto* word = new QLabel(tr("Allow"));
  word->setProperty("soft", true);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(6);
  row->addWidget(word);
  for (QWidget* widget : std::initializer_list<QWidget*>{low_, high_, purpose_}) row->addWidget(widget);
  row->addWidget(picker_, 1);
  connect(picker_, &FoodPicker::picked, this, &AllowanceBar::take);
  connect(picker_, &FoodPicker::notFound, this, [this](const QString& text) {
    emit refused(
        tr("No food of this collection is called “%1”. Foods are added in the Foods room.").arg(text));
  });
}

void AllowanceBar::take(const QString& code) {
  const auto range = rangeIn(*low_, *high_);
  if (!range)
    return emit refused(thousandsAdviceOr(
        readNumber(low_->text()) ? high_->text() : low_->text(),
        tr("What is given unweighed needs a range: so many grams a day at least and at most.")));
  diet::Allowance allowance;
  allowance.food = code.toStdString();
  allowance.low = range->low;
  allowance.high = range->high;
  allowance.purpose = kUnweighed[purpose_->currentIndex()];
  low_->clear();
  high_->clear();
  emit wanted(allowance);
}

}  // namespace tarebowl::ui
