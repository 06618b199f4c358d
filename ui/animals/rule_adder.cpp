// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/rule_adder.h"

#include "core/food/vitamin_units.h"
#include "ui/animals/provenance_text.h"
#include "ui/shared/format.h"
#include "ui/shared/number_reading.h"
#include "ui/shared/wrapping_row.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QCompleter>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace tarebowl::ui {
namespace {

constexpr quantity::Unit kUnits[] = {quantity::Unit::Gram, quantity::Unit::Milligram,
                                     quantity::Unit::Microgram, quantity::Unit::InternationalUnit,
                                     quantity::Unit::Kilocalorie};
constexpr quantity::Basis kBases[] = {quantity::Basis::DryMatter, quantity::Basis::Energy,
                                      quantity::Basis::AsFed,     quantity::Basis::Day,
                                      quantity::Basis::BodyMass,  quantity::Basis::MetabolicMass};

QLineEdit* makeField(const QString& name, const QString& hint, int characters) {
  auto* field = new QLineEdit;
  field->setAccessibleName(name);
  field->setPlaceholderText(hint);
  if (characters > 0) field->setFixedWidth(field->fontMetrics().averageCharWidth() * characters + 18);
  return field;
}

std::string codeOf(const QString& words) {
  return words.trimmed().toLower().replace(QLatin1Char(' '), QLatin1Char('-')).toStdString();
}

}  // namespace

RuleAdder::RuleAdder(QWidget* parent)
    : QWidget(parent),
      nutrient_(new QComboBox),
      min_(makeField(tr("Minimum of the new target"), tr("min"), 7)),
      max_(makeField(tr("Maximum of the new target"), tr("max"), 7)),
      unit_(new QComboBox),
      basis_(new QComboBox),
      group_(makeField(tr("Food group that is not given"), tr("food group"), 14)),
      reason_(makeField(tr("Why it is not given"), tr("why"), 0)) {
  nutrient_->setAccessibleName(tr("Nutrient of the new target"));
  nutrient_->setEditable(true);
  nutrient_->setInsertPolicy(QComboBox::NoInsert);
  nutrient_->completer()->setCompletionMode(QCompleter::PopupCompletion);
  nutrient_->completer()->setFilterMode(Qt::MatchContains);
  nutrient_->completer()->popup()->setObjectName(QStringLiteral("matches"));
  nutrient_->setMinimumContentsLength(14);
  nutrient_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  for (const food::Nutrient& nutrient : food::allNutrients())
    nutrient_->addItem(QString::fromStdString(nutrient.name));
  unit_->setAccessibleName(tr("Unit of the new target"));
  basis_->setAccessibleName(tr("Basis of the new target"));
  for (const quantity::Basis basis : kBases) basis_->addItem(tr("per %1").arg(basisText(basis)));
  auto* add = new QPushButton(tr("Add target"));
  auto* leave = new QPushButton(tr("Leave out"));
  auto* layout = new WrappingRow(this);
  for (QWidget* widget :
       std::initializer_list<QWidget*>{nutrient_, min_, max_, unit_, basis_, add, group_, reason_, leave})
    layout->addWidget(widget);
  connect(nutrient_, &QComboBox::currentIndexChanged, this, &RuleAdder::fillUnits);
  connect(add, &QPushButton::clicked, this, &RuleAdder::addTarget);
  connect(leave, &QPushButton::clicked, this, &RuleAdder::addExclusion);
  fillUnits();
}

void RuleAdder::fillUnits() {
  unit_->clear();
  const int place = nutrient_->currentIndex();
  if (place < 0) return;
  for (const quantity::Unit unit : kUnits)
    if (food::toOwnUnitFactor(food::NutrientId(static_cast<std::size_t>(place)), unit))
      unit_->addItem(unitText(unit), static_cast<int>(unit));
  const auto own = food::describe(food::NutrientId(static_cast<std::size_t>(place))).unit;
  unit_->setCurrentIndex(unit_->findData(static_cast<int>(own)));
}

void RuleAdder::addTarget() {
  const int place = nutrient_->findText(nutrient_->currentText(), Qt::MatchFixedString);
  if (place < 0) return emit refused(tr("No nutrient is called “%1”.").arg(nutrient_->currentText()));
  const auto min = readNumber(min_->text());
  const auto max = readNumber(max_->text());
  const bool wrong = (!min_->text().isEmpty() && !min) || (!max_->text().isEmpty() && !max);
  if (wrong || (!min && !max) || (min && max && *min > *max))
    return emit refused(
        tr("A target needs a minimum or a maximum, and the minimum is not above the maximum."));
  const food::NutrientId nutrient(static_cast<std::size_t>(place));
  animal::ProfileTarget rule{
      .target = {.id = "house-" + codeOf(QString::fromStdString(food::describe(nutrient).tagname)),
                 .nutrient = nutrient,
                 .min = min,
                 .max = max,
                 .unit = static_cast<quantity::Unit>(unit_->currentData().toInt()),
                 .basis = kBases[basis_->currentIndex()],
                 .origin = houseOrigin()}};
  min_->clear();
  max_->clear();
  emit targetTyped(rule);
}

void RuleAdder::addExclusion() {
  const QString group = group_->text().trimmed();
  const QString reason = reason_->text().trimmed();
  if (group.isEmpty() || reason.isEmpty())
    return emit refused(tr("Name the food group that is not given, and say why."));
  emit exclusionTyped({.id = "no-" + codeOf(group),
                       .group = group.toStdString(),
                       .reason = reason.toStdString(),
                       .origin = houseOrigin()});
  group_->clear();
  reason_->clear();
}

}  // namespace tarebowl::ui
