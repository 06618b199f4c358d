// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/check_sentences.h"

#include "core/food/check_words.h"
#include "ui/foods/food_text.h"
#include "ui/shared/decimal_text.h"
#include "ui/shared/format.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <string_view>

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

/// A fact of the finding as the window writes it: see check_words.h.
QString factOf(std::string_view fact, const food::Finding& finding) {
  if (fact == "number") return measured(finding.found);
  if (fact == "limit") return measured(finding.against);
  if (fact == "other") return Checks::tr("Another food");
  if (fact == "parts") {
    QStringList names;
    for (std::size_t i = 1; i < finding.nutrients.size(); ++i) names << nutrientWithin(finding.nutrients[i]);
    return names.join(QStringLiteral(" + "));
  }
  const food::NutrientId nutrient = finding.nutrients.at(0);
  if (fact == "Nutrient") return nutrientName(nutrient);
  if (fact == "nutrient") return nutrientWithin(nutrient);
  return amountText(nutrient, fact == "found" ? finding.found : finding.against);
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
  sentences.push_back({Mark::AtLimit,
                       Checks::tr("Ca:P %1 is below 1.").arg(decimal(*calcium / *phosphorus, 2)),
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

}  // namespace

CheckSentence sentenceOf(const food::Finding& finding) {
  const food::CheckWords words = food::wordsOf(finding.code);
  const auto fact = [&](std::string_view named) { return factOf(named, finding).toStdString(); };
  const auto said = [&](const char* text) {
    return QString::fromStdString(food::withFacts(Checks::tr(text).toStdString(), fact));
  };
  return {finding.severity == food::Severity::Refused ? Mark::Lacking : Mark::AtLimit, said(words.what),
          said(words.advice)};
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
