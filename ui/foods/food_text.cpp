// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/food_text.h"

#include "core/food/energy.h"
#include "ui/shared/format.h"

#include <QCoreApplication>
#include <QDate>
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

QString textOf(CompositionBasis basis) {
  switch (basis) {
    case CompositionBasis::AsFed100g:
      return Foods::tr("per 100 g as fed");
    case CompositionBasis::DryMatterKg:
      return Foods::tr("per kg DM");
    case CompositionBasis::Energy1000Kcal:
      return Foods::tr("per 1000 kcal ME");
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

QString valueText(food::NutrientId nutrient, std::optional<double> amount, food::Qualifier qualifier) {
  const QString unit = kNoBreakSpace + unitText(food::describe(nutrient).unit);
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

QString dateText(quantity::Date date) {
  const QDate day(static_cast<int>(date.year()), static_cast<int>(static_cast<unsigned>(date.month())),
                  static_cast<int>(static_cast<unsigned>(date.day())));
  return QLocale().toString(day, QStringLiteral("d MMM yyyy"));
}

QString originText(const DerivedValue& value, const FoodPage& page) {
  if (value.setByHand) return Foods::tr("set by hand: %1").arg(QString::fromStdString(*value.setByHand));
  std::vector<const food::Sample*> counted;
  int aside = 0;
  for (const Statement& statement : value.statements)
    for (const KeptSample& kept : page.samples) {
      if (kept.key != statement.sample) continue;
      if (statement.standing == Standing::Counted) counted.push_back(&kept.sample);
      if (statement.standing == Standing::SetAside) ++aside;
    }
  const QString asideText = aside > 0 ? Foods::tr("%n set aside", nullptr, aside) : QString();
  if (counted.empty()) return asideText.isEmpty() ? Foods::tr("never measured") : asideText;
  if (value.origin != food::SampleOrigin::OwnLab)
    return join({QString::fromStdString(counted.front()->source), asideText});
  QString text = counted.size() == 1
                     ? Foods::tr("own laboratory, 1 sample")
                     : Foods::tr("own laboratory, %1 samples").arg(static_cast<int>(counted.size()));
  const auto newest = std::max_element(counted.begin(), counted.end(),
                                       [](const auto* a, const auto* b) { return a->date < b->date; });
  if ((*newest)->date) text = Foods::tr("%1, newest %2").arg(text, dateText(*(*newest)->date));
  return join({text, asideText});
}

QString sampleText(const food::Sample& sample) {
  const QString source = QString::fromStdString(sample.source);
  return join(
      {source.isEmpty() ? textOf(sample.origin) : source, sample.date ? dateText(*sample.date) : QString(),
       QString::fromStdString(sample.lab), QString::fromStdString(sample.method),
       sample.batch.empty() ? QString() : Foods::tr("batch %1").arg(QString::fromStdString(sample.batch))});
}

QString standingText(Standing standing, const food::Sample& sample) {
  switch (standing) {
    case Standing::Counted:
      return Foods::tr("counted");
    case Standing::SetAside:
      return Foods::tr("set aside: %1").arg(QString::fromStdString(sample.excluded.value_or(std::string())));
    case Standing::PassedOver:
      return Foods::tr("passed over: another goes first");
    case Standing::Unreadable:
      return Foods::tr("not used: this food's water or energy is unknown");
  }
  return {};
}

QString remarkOf(const food::Food& food) {
  const QString form = QString::fromStdString(food.form);
  if (!food.invented) return form;
  return form.isEmpty() ? Foods::tr("(invented)") : Foods::tr("%1 (invented)").arg(form);
}

QString nameOf(const food::Food& food) {
  return QString::fromStdString(food.name);
}

}  // namespace tarebowl::ui
