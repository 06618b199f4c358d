// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/check_sentences.h"

#include "ui/foods/food_text.h"
#include "ui/shared/format.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace tarebowl::ui {
namespace {

struct Checks {
  Q_DECLARE_TR_FUNCTIONS(Checks)
};

/// Scatter from which a mean is worth more samples: house practice, no source.
constexpr double kWideScatter = 0.20;

QString amountText(food::NutrientId nutrient, double amount) {
  return valueText(nutrient, amount, food::Qualifier::Equal);
}

QString partsText(const std::vector<food::NutrientId>& nutrients) {
  QStringList names;
  for (std::size_t i = 1; i < nutrients.size(); ++i) names << nutrientWithin(nutrients[i]);
  return names.join(QStringLiteral(" + "));
}

void addClosure(std::vector<CheckSentence>& sentences, const food::Composition& composition) {
  const auto sum = food::proximateSum(composition);
  const food::CheckLimits limits;
  if (sum && std::abs(*sum - 100.0) <= limits.closureWarning)
    sentences.push_back(
        {Mark::Met, Checks::tr("Proximates close: %1 g of 100 g.").arg(measured(*sum)), QString()});
  if (!sum)
    sentences.push_back({Mark::Unknown, Checks::tr("Whether the proximates close is not known."),
                         Checks::tr("Water, protein, fat, ash and carbohydrate are needed for it.")});
}

void addScatter(std::vector<CheckSentence>& sentences, const food::Composition& composition) {
  for (const food::NutrientId nutrient : {food::nutrients::calcium(), food::nutrients::phosphorus()}) {
    const auto amount = composition.amountPer100g(nutrient);
    const auto sd = composition.sdPer100g(nutrient);
    if (!amount || !sd || *amount <= 0.0 || *sd <= kWideScatter * *amount) continue;
    sentences.push_back({Mark::AtLimit,
                         Checks::tr("%1 scatters by %2.").arg(nutrientName(nutrient), percent(*sd / *amount)),
                         Checks::tr("More samples, or two foods where there are two.")});
  }
}

void addRatio(std::vector<CheckSentence>& sentences, const food::Composition& composition) {
  const auto calcium = composition.amountPer100g(food::nutrients::calcium());
  const auto phosphorus = composition.amountPer100g(food::nutrients::phosphorus());
  if (!calcium || !phosphorus || *phosphorus <= 0.0 || *calcium >= *phosphorus) return;
  sentences.push_back(
      {Mark::AtLimit,
       Checks::tr("Ca:P %1 is below 1.").arg(QLocale().toString(*calcium / *phosphorus, 'f', 2)),
       Checks::tr("Calcium must come from elsewhere; insects can be dusted or gut-loaded.")});
}

void addGuarantees(std::vector<CheckSentence>& sentences, const food::Derivation& derivation) {
  QStringList names;
  for (const food::DerivedValue& value : derivation.values)
    if (value.by == food::DerivedBy::BoundOnly && (value.value.qualifier == food::Qualifier::AtLeast ||
                                                   value.value.qualifier == food::Qualifier::AtMost))
      names << nutrientWithin(value.nutrient);
  if (names.isEmpty()) return;
  sentences.push_back({Mark::AtLimit,
                       Checks::tr("A label guarantees a bound and no mean: %1. Diets count these as unknown.")
                           .arg(names.join(QStringLiteral(", "))),
                       Checks::tr("A laboratory's value would settle it.")});
}

/// What only other foods or the calendar can show.
CheckSentence comparedSentence(const food::Finding& finding, Mark mark, const QString& name) {
  const QString found = measured(finding.found);
  const QString against = measured(finding.against);
  switch (finding.code) {
    case food::CheckCode::MineralsOverAsh:
      return {mark,
              Checks::tr("The minerals add up to more than the ash: %1 g over %2 g.").arg(found, against),
              Checks::tr("Check the unit of the largest, then the ash.")};
    case food::CheckCode::GuaranteeAsMean:
      return {mark, Checks::tr("A guaranteed bound stands for a mean: %1.").arg(name),
              Checks::tr("A laboratory's value would settle it.")};
    case food::CheckCode::UnitSlip:
      return {
          mark,
          Checks::tr("%1 is about a thousand times off its group: %2 beside %3.").arg(name, found, against),
          Checks::tr("Look for a slip of the unit.")};
    case food::CheckCode::FarFromGroup:
      return {mark, Checks::tr("%1 is far from its group: %2 beside %3.").arg(name, found, against),
              Checks::tr("Check the value, and whether the food is in the right group.")};
    case food::CheckCode::RatioFarFromGroup:
      return {mark, Checks::tr("Ca:P is far from its group: %1 beside %2.").arg(found, against),
              Checks::tr("Check both values.")};
    case food::CheckCode::SameName:
      return {mark, Checks::tr("Another food has the same name and form."), Checks::tr("Keep one of them.")};
    case food::CheckCode::SameComposition:
      return {mark, Checks::tr("Another food has the same composition."),
              Checks::tr("One of them was probably copied.")};
    case food::CheckCode::Stale:
      return {mark, Checks::tr("The newest sample is %1 years old.").arg(found),
              Checks::tr("Sample it again.")};
    default:
      return {};
  }
}

}  // namespace

CheckSentence sentenceOf(const food::Finding& finding) {
  const food::NutrientId first = finding.nutrients.empty() ? food::nutrients::water() : finding.nutrients[0];
  const QString found = amountText(first, finding.found);
  const QString against = amountText(first, finding.against);
  const Mark mark = finding.severity == food::Severity::Refused ? Mark::Lacking : Mark::AtLimit;
  switch (finding.code) {
    case food::CheckCode::ValueOverFood:
      return {mark, Checks::tr("%1 is more than the food: %2 in 100 g.").arg(nutrientName(first), found),
              Checks::tr("Look for a slip of the unit or of the basis.")};
    case food::CheckCode::ProximatesOverWhole:
      return {mark, Checks::tr("The known proximates add up to %1 g.").arg(measured(finding.found)),
              Checks::tr("Some are probably on dry matter; check the basis of each.")};
    case food::CheckCode::ProximatesDoNotClose:
      return {mark, Checks::tr("Proximates do not close: %1 g of 100 g.").arg(measured(finding.found)),
              Checks::tr("Check the water value first, then the sources: they may be of different foods.")};
    case food::CheckCode::PartsOverWhole:
      return {mark,
              Checks::tr("%1 (%2) are more than their whole, %3 (%4).")
                  .arg(partsText(finding.nutrients), found, nutrientWithin(first), against),
              Checks::tr("Parts and whole come from different samples, or a unit slipped.")};
    case food::CheckCode::NegativeCarbohydrate:
      return {
          mark, Checks::tr("Carbohydrate is below zero: %1.").arg(found),
          Checks::tr("Usual for insects, where chitin is counted twice; otherwise check the proximates.")};
    case food::CheckCode::EnergyDisagrees:
      return {mark, Checks::tr("Energy is stated as %1; the proximates give %2.").arg(found, against),
              Checks::tr("Check whether kJ were read as kcal, and gross energy as metabolizable.")};
    case food::CheckCode::ScatterWiderThanValue:
      return {mark, Checks::tr("%1 scatters more than it is: ± %2.").arg(nutrientName(first), found),
              Checks::tr("One of its samples is probably wrong; open the row and look at each.")};
    default:
      return comparedSentence(finding, mark, nutrientName(first));
  }
}

std::vector<CheckSentence> checkSentences(const store::KnownFood& food) {
  std::vector<CheckSentence> sentences;
  const food::Composition& composition = food.composition;
  if (food.derivation.values.empty() && composition.knownNutrients().empty()) return sentences;
  for (const food::Finding& finding : food::checkComposition(composition))
    sentences.push_back(sentenceOf(finding));
  addGuarantees(sentences, food.derivation);
  addScatter(sentences, composition);
  addRatio(sentences, composition);
  addClosure(sentences, composition);
  const auto weight = [](const CheckSentence& sentence) {
    return sentence.mark == Mark::Lacking ? 0 : sentence.mark == Mark::AtLimit ? 1 : 2;
  };
  std::stable_sort(sentences.begin(), sentences.end(),
                   [&](const auto& a, const auto& b) { return weight(a) < weight(b); });
  return sentences;
}

}  // namespace tarebowl::ui
