// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/food_rules.h"

#include "core/store/made_food_rows.h"
#include "core/store/write.h"

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
  const auto partsOf = [&](const std::string& made) { return madeFrom(inner, made); };
  if (const auto cycle = food::madeFromCycle(code, partsOf))
    refuse(inner, "a food cannot be made from itself: " + chained(*cycle));
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
