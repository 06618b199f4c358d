// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/nutrient_list.h"

#include "app/command_line.h"
#include "core/transfer/intake_study.h"

#include <fmt/format.h>

#include <algorithm>

namespace tarebowl::app {

std::vector<food::NutrientId> nutrientsNamed(const std::string& text) {
  if (text.empty()) return transfer::nutrientsOfReport();
  std::vector<food::NutrientId> nutrients;
  std::size_t begin = 0;
  while (begin <= text.size()) {
    const std::size_t end = std::min(text.find(',', begin), text.size());
    const std::string tagname = text.substr(begin, end - begin);
    const auto nutrient = food::findByTagname(tagname);
    if (!nutrient)
      throw UsageError(fmt::format("--nutrient: there is no {}; did you mean {}? (see tarebowl nutrients)",
                                   tagname.empty() ? "nutrient without a name" : tagname,
                                   food::nearestTagname(tagname)));
    nutrients.push_back(*nutrient);
    begin = end + 1;
  }
  return nutrients;
}

}  // namespace tarebowl::app
