// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/food_rules.h"

#include "core/store/write.h"

#include <optional>
#include <vector>

namespace tarebowl::store {

namespace {

std::string chained(const std::vector<std::string>& chain) {
  std::string text;
  for (const std::string& code : chain) text += (text.empty() ? "" : " → ") + code;
  return text;
}

}  // namespace

void refuseTakenCode(Collection::Inner& inner, const std::string& code, long long self) {
  const auto other = foodWithCode(inner, code);
  if (other && *other != self) refuse(inner, "there is another food with the code " + code);
}

void refuseCycle(Collection::Inner& inner, const std::string& code) {
  const auto rawOf = [&](const std::string& cooked) -> std::optional<std::string> {
    std::string raw;
    inner.sql() << "SELECT raw.code FROM food JOIN food_cooking ON food_cooking.food_id = food.id "
                   "JOIN food AS raw ON raw.id = food_cooking.raw_food_id WHERE food.code = :code",
        soci::use(cooked), soci::into(raw);
    return inner.sql().got_data() ? std::optional(raw) : std::nullopt;
  };
  if (const auto cycle = food::cookingCycle(code, rawOf))
    refuse(inner, "a food cannot be cooked from itself: " + chained(*cycle));
}

void refuseTakenSource(Collection::Inner& inner, const SampleRows& rows) {
  if (rows.sample.sourceCode.empty()) return;
  long long id = 0;
  inner.sql() << "SELECT id FROM sample WHERE source = :source AND source_code = :code",
      soci::use(rows.sample.source), soci::use(rows.sample.sourceCode), soci::into(id);
  if (inner.sql().got_data() && id != rows.id)
    refuse(inner, rows.sample.sourceCode + " of " + rows.sample.source + " is there already");
}

}  // namespace tarebowl::store
