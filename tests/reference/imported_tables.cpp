// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/reference/imported_tables.h"

#include "tests/reference/ifct_table.h"
#include "tests/reference/reference_data.h"
#include "tests/reference/sr28.h"
#include "tests/source_dir.h"

#include <fstream>
#include <iterator>

namespace tarebowl::reference {

using namespace exchange;

namespace {

TableMapping mappingNamed(const std::string& name) {
  const std::string file = std::string(TAREBOWL_SOURCE_DIR "/tests/reference/data/") + name;
  std::ifstream stream(file, std::ios::binary);
  return parseMapping(std::string(std::istreambuf_iterator<char>(stream), {}), file);
}

}  // namespace

std::optional<PublishedTable> sr28Table() {
  const auto amounts = referenceFile(kSr28Amounts);
  if (!amounts) return std::nullopt;
  PublishedTable table{tableText(unpacked(*amounts), amounts->string()), mappingNamed("sr28.mapping.json")};
  table.input.folder = amounts->parent_path();
  return table;
}

std::optional<PublishedTable> ifctTableWithMapping() {
  const auto file = ifctFile();
  if (!file) return std::nullopt;
  return PublishedTable{tableFile(*file), mappingNamed("ifct-2017.mapping.json")};
}

std::vector<food::CheckedFood> checkedFoods(const MemorySink& sink) {
  std::vector<food::CheckedFood> foods;
  for (const auto& [key, imported] : sink.foods) {
    food::CheckedFood food{.name = imported.name, .form = imported.form, .group = imported.group};
    for (const auto& [nutrient, stated] : sink.values.at(key)) {
      const auto value = food::toAsFed(nutrient, stated, {});
      if (const auto* known = std::get_if<food::NutrientValue>(&value))
        food.composition.set(nutrient, *known);
    }
    foods.push_back(std::move(food));
  }
  return foods;
}

}  // namespace tarebowl::reference
