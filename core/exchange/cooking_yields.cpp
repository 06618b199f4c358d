// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/cooking_yields.h"

#include "core/exchange/fixed_table.h"

#include <array>

namespace tarebowl::exchange {

namespace {

enum Field { Food, Raw, MassYield, Source, FieldCount };

constexpr std::array<std::string_view, FieldCount> kTitles{"food", "raw", "mass_yield", "source"};

CookedFood cookedOf(const FixedRecord& record) {
  CookedFood cooked{
      .food = record.text(Food),
      .cooking = {
          .rawCode = record.text(Raw), .massYield = record.number(MassYield), .source = record.text(Source)}};
  if (food::problemWith(cooked.cooking)) record.refuse(MassYield, "grams cooked per gram raw, above 0");
  return cooked;
}

}  // namespace

std::vector<CookedFood> readCookingYields(const std::filesystem::path& file) {
  return readFixedTable(file, kTitles, cookedOf);
}

}  // namespace tarebowl::exchange
