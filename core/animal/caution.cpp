// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/caution.h"

#include "core/animal/animal_words.h"
#include "core/food/folding.h"
#include "core/food/food.h"
#include "resources/embedded.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <stdexcept>

namespace tarebowl::animal {

namespace {

using Json = nlohmann::json;
using Texts = std::vector<std::string>;

FoodCaution parse(const Json& entry) {
  const auto severity = parseWord<CautionSeverity>(entry.at("severity").get<std::string>());
  const auto provenance = parseWord<Provenance>(entry.value("provenance", std::string()));
  if (!severity || !provenance) throw std::logic_error("cautions: unknown word");
  return {.id = entry.at("id").get<std::string>(),
          .words = entry.at("words").get<Texts>(),
          .groups = entry.value("groups", Texts{}),
          .forms = entry.value("forms", Texts{}),
          .taxa = entry.value("taxa", Texts{}),
          .severity = *severity,
          .reason = entry.at("reason").get<std::string>(),
          .advice = entry.at("advice").get<std::string>(),
          .origin = {entry.at("source").get<std::string>(), *provenance, {}}};
}

std::vector<FoodCaution> parseAll() {
  std::vector<FoodCaution> list;
  const Json document = Json::parse(resources::cautionsJson());
  for (const Json& entry : document.at("cautions")) list.push_back(parse(entry));
  return list;
}

/// Folded text with a space on either side, so that whole words can be looked for.
std::string spaced(std::string_view text) {
  return ' ' + food::folded(text) + ' ';
}

bool hasWord(std::string_view spacedText, std::string_view word) {
  for (std::size_t at = spacedText.find(word); at != std::string_view::npos;
       at = spacedText.find(word, at + 1))
    if (spacedText[at - 1] == ' ' && spacedText[at + word.size()] == ' ') return true;
  return false;
}

/// Every word of a phrase, in any order: "potato, green" is a green potato.
bool hasAllWords(std::string_view spacedText, std::string_view phrase) {
  while (!phrase.empty()) {
    const std::size_t end = std::min(phrase.find(' '), phrase.size());
    if (end > 0 && !hasWord(spacedText, phrase.substr(0, end))) return false;
    phrase.remove_prefix(std::min(end + 1, phrase.size()));
  }
  return true;
}

/// The food as the cautions look at it, folded once.
class LookedAt {
 public:
  explicit LookedAt(const CautionedFood& food)
      : food_(food),
        called_(spaced(std::string(food.name) + ' ' + std::string(food.code))),
        form_(spaced(food.form)),
        group_(food::folded(food.group)) {}

  [[nodiscard]] bool isConcernedBy(const FoodCaution& caution) const {
    if (std::ranges::find(food_.cautions, caution.id) != food_.cautions.end()) return true;
    const bool isMeant = std::ranges::any_of(caution.words,
                                             [&](const std::string& phrase) {
                                               return !phrase.empty() && hasAllWords(called_, phrase);
                                             }) ||
                         std::ranges::find(caution.groups, group_) != caution.groups.end();
    return isMeant && isInForm(caution.forms);
  }

 private:
  /// Where the form is not known it may be the dangerous one.
  [[nodiscard]] bool isInForm(const Texts& forms) const {
    if (forms.empty()) return true;
    const auto isNamed = [&](const std::string& form) {
      return hasAllWords(form_, form) || hasAllWords(called_, form);
    };
    if (std::ranges::any_of(forms, isNamed)) return true;
    const bool isUnknown = form_.find_first_not_of(' ') == std::string::npos;
    return isUnknown && std::ranges::none_of(food::commonForms(), [&](std::string_view form) {
             return hasAllWords(called_, food::folded(form));
           });
  }

  const CautionedFood& food_;
  std::string called_;
  std::string form_;
  std::string group_;
};

/// "Lemurs" are lemurs.
std::string singular(std::string_view taxon) {
  std::string text = food::folded(taxon);
  if (text.ends_with('s')) text.pop_back();
  return text;
}

bool concerns(const FoodCaution& caution, std::span<const std::string> taxa) {
  if (caution.taxa.empty() || taxa.empty()) return true;
  return std::ranges::any_of(caution.taxa, [&](const std::string& concerned) {
    return std::ranges::any_of(taxa,
                               [&](const std::string& own) { return singular(own) == singular(concerned); });
  });
}

}  // namespace

std::span<const FoodCaution> knownCautions() {
  static const std::vector<FoodCaution> kList = parseAll();
  return kList;
}

std::vector<const FoodCaution*> cautionsFor(const CautionedFood& food, std::span<const std::string> taxa,
                                            std::span<const FoodCaution> known) {
  const LookedAt lookedAt(food);
  std::vector<const FoodCaution*> found;
  for (const FoodCaution& caution : known)
    if (lookedAt.isConcernedBy(caution) && concerns(caution, taxa)) found.push_back(&caution);
  std::ranges::stable_sort(found, {}, [](const FoodCaution* caution) { return caution->severity; });
  return found;
}

}  // namespace tarebowl::animal
