// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/food_text.h"

#include "core/food/energy.h"
#include "ui/shared/format.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <cmath>

namespace tarebowl::ui {
namespace {

struct Foods {
  Q_DECLARE_TR_FUNCTIONS(Foods)
};

constexpr QChar kNoBreakSpace(0x00A0);
constexpr double kDryMatterShown = 10.0;  // stored per 100 g DM, shown per kg

QString join(const QStringList& parts) {
  QStringList said = parts;
  said.removeAll(QString());
  return said.join(QStringLiteral(" · "));
}

QString signOf(food::Qualifier qualifier) {
  switch (qualifier) {
    case food::Qualifier::AtLeast:
      return QStringLiteral("≥ ");
    case food::Qualifier::AtMost:
      return QStringLiteral("≤ ");
    case food::Qualifier::BelowQuantification:
    case food::Qualifier::Below:
      return QStringLiteral("< ");
    case food::Qualifier::Above:
      return QStringLiteral("> ");
    default:
      return {};
  }
}

}  // namespace

QString textOf(CompositionBasis basis, EnergyUnit energy) {
  switch (basis) {
    case CompositionBasis::AsFed100g:
      return Foods::tr("per 100 g as fed");
    case CompositionBasis::DryMatterKg:
      return Foods::tr("per kg DM");
    case CompositionBasis::Energy1000Kcal:
      return Foods::tr("per 1000 %1 ME").arg(unitText(unitOf(energy)));
  }
  return {};
}

food::BasisFacts factsOf(const food::Composition& composition) {
  food::BasisFacts facts{.dryMatter = composition.dryMatter(), .energyPer100g = {}};
  if (const auto stated = composition.amountPer100g(food::nutrients::energy()))
    facts.energyPer100g = quantity::Kilocalories(*stated);
  else
    facts.energyPer100g = food::estimateEnergy(food::EnergyMethod::ModifiedAtwater, composition).per100g;
  if (facts.energyPer100g && facts.energyPer100g->value() <= 0.0) facts.energyPer100g.reset();
  return facts;
}

std::optional<double> amountOn(CompositionBasis basis, quantity::AsFedContent content,
                               const food::BasisFacts& facts) {
  switch (basis) {
    case CompositionBasis::AsFed100g:
      return content.value();
    case CompositionBasis::DryMatterKg:
      if (const auto amount = food::amountOn(quantity::Basis::DryMatter, content, facts))
        return *amount * kDryMatterShown;
      return std::nullopt;
    case CompositionBasis::Energy1000Kcal:
      return food::amountOn(quantity::Basis::Energy, content, facts);
  }
  return std::nullopt;
}

QString shownUnit(food::NutrientId nutrient, EnergyUnit energy) {
  const quantity::Unit unit = food::describe(nutrient).unit;
  return unitText(unit == quantity::Unit::Kilocalorie ? unitOf(energy) : unit);
}

std::optional<double> shownAmount(food::NutrientId nutrient, CompositionBasis basis,
                                  quantity::AsFedContent content, const food::BasisFacts& facts,
                                  EnergyUnit energy) {
  auto amount = amountOn(basis, content, facts);
  if (!amount) return amount;
  if (food::describe(nutrient).unit == quantity::Unit::Kilocalorie) *amount *= perKilocalorie(energy);
  if (basis == CompositionBasis::Energy1000Kcal) *amount /= perKilocalorie(energy);
  return amount;
}

QString valueText(food::NutrientId nutrient, std::optional<double> amount, food::Qualifier qualifier,
                  EnergyUnit energy) {
  const QString unit = kNoBreakSpace + shownUnit(nutrient, energy);
  if (qualifier == food::Qualifier::Trace) return Foods::tr("trace");
  if (qualifier == food::Qualifier::NotDetected) return Foods::tr("not detected");
  if (!amount) return QStringLiteral("?");
  return signOf(qualifier) + measured(*amount) + unit;
}

QString scatterText(std::optional<double> sd, std::optional<int> count) {
  QStringList parts;
  if (sd) parts << QStringLiteral("±") + kNoBreakSpace + measured(*sd);
  if (count) parts << Foods::tr("(n %1)").arg(*count);
  return parts.join(QLatin1Char(' '));
}

QString textOf(food::SampleOrigin origin) {
  switch (origin) {
    case food::SampleOrigin::OwnLab:
      return Foods::tr("own laboratory");
    case food::SampleOrigin::Publication:
      return Foods::tr("publication");
    case food::SampleOrigin::Label:
      return Foods::tr("label");
    case food::SampleOrigin::Estimate:
      return Foods::tr("estimate");
  }
  return {};
}

QString originText(const food::DerivedValue& value, std::span<const store::StoredSample> samples) {
  if (value.by == food::DerivedBy::Override)
    return Foods::tr("set by hand: %1").arg(QString::fromStdString(value.reason));
  const auto aside = std::count_if(value.leftOut.begin(), value.leftOut.end(), [](const food::LeftOut& left) {
    return left.because == food::LeftOutBecause::Excluded;
  });
  const QString asideText = aside > 0 ? Foods::tr("%1 set aside").arg(aside) : QString();
  if (value.by == food::DerivedBy::SumOfParts)
    return value.value.qualifier == food::Qualifier::Equal
               ? QString::fromStdString(value.value.source)
               : Foods::tr("a bound, %1").arg(QString::fromStdString(value.value.source));
  if (value.by == food::DerivedBy::Cooking)
    return join({Foods::tr("worked out from the raw food"), asideText});
  if (value.by == food::DerivedBy::Recipe) return join({Foods::tr("worked out from the recipe"), asideText});
  if (value.used.empty()) return asideText.isEmpty() ? Foods::tr("never measured") : asideText;
  const food::Sample& first = samples[value.used.front()].sample;
  if (value.origin != food::SampleOrigin::OwnLab)
    return join({value.by == food::DerivedBy::BoundOnly ? Foods::tr("a bound, not a mean") : QString(),
                 QString::fromStdString(first.source), asideText});
  const auto used = static_cast<int>(value.used.size());
  QString text =
      used == 1 ? Foods::tr("own laboratory, 1 sample") : Foods::tr("own laboratory, %1 samples").arg(used);
  std::optional<quantity::Date> newest;
  for (const std::size_t index : value.used)
    if (const auto& date = samples[index].sample.date; date && (!newest || *date > *newest)) newest = date;
  if (newest) text = Foods::tr("%1, newest %2").arg(text, dateText(*newest));
  return join({text, asideText});
}

QString sampleText(const food::Sample& sample) {
  const QString source = QString::fromStdString(sample.source);
  return join(
      {source.isEmpty() ? textOf(sample.origin) : source, sample.date ? dateText(*sample.date) : QString(),
       QString::fromStdString(sample.lab), QString::fromStdString(sample.method),
       sample.batch.empty() ? QString() : Foods::tr("batch %1").arg(QString::fromStdString(sample.batch))});
}

QString leftOutText(food::LeftOutBecause because, const food::Sample& sample) {
  switch (because) {
    case food::LeftOutBecause::Excluded:
      return Foods::tr("set aside: %1").arg(QString::fromStdString(sample.excluded.value_or(std::string())));
    case food::LeftOutBecause::LessTrusted:
      return Foods::tr("passed over: a more trusted origin goes first");
    case food::LeftOutBecause::Older:
      return Foods::tr("passed over: a newer one goes first");
    case food::LeftOutBecause::Undated:
      return Foods::tr("passed over: others have a date");
    case food::LeftOutBecause::BasisUnknown:
      return Foods::tr("not used: the water or energy it rests on is unknown");
    case food::LeftOutBecause::Guarantee:
      return Foods::tr("not used: a guarantee is no mean");
    case food::LeftOutBecause::NotMeasured:
      return Foods::tr("not used: outside the range of the method");
  }
  return {};
}

QString remarkOf(const std::string& words, bool invented) {
  const QString form = QString::fromStdString(words);
  if (!invented) return form;
  return form.isEmpty() ? Foods::tr("(invented)") : Foods::tr("%1 (invented)").arg(form);
}

QString nameOf(const food::Food& food) {
  return QString::fromStdString(food.name);
}

}  // namespace tarebowl::ui
