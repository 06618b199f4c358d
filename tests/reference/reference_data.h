// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Published tables that lie beside the repository, in ../shared/reference or where TAREBOWL_REFERENCE_DIR
/// points.
namespace tarebowl::reference {

/// Nothing where the file is not there: the test then skips with missingNote().
[[nodiscard]] std::optional<std::filesystem::path> referenceFile(std::string_view name);
/// One line that says which file was looked for and how to provide it.
[[nodiscard]] std::string missingNote(std::string_view name);

/// One record of a table with a header line. An empty field is no value.
class CsvRow {
 public:
  CsvRow(const std::map<std::string, std::size_t, std::less<>>& columns,
         const std::vector<std::string>& fields)
      : columns_(columns), fields_(fields) {}
  /// Throws std::out_of_range for a column the table does not have; empty where the record is short.
  [[nodiscard]] const std::string& at(std::string_view column) const;
  [[nodiscard]] std::optional<double> number(std::string_view column) const;

 private:
  const std::map<std::string, std::size_t, std::less<>>& columns_;
  const std::vector<std::string>& fields_;
};

/// Calls back for each record, in order. Reads plain and gzip files. Throws std::runtime_error when it
/// cannot.
void forEachRow(const std::filesystem::path& csv, const std::function<void(const CsvRow&)>& callback);

/// A food of the USDA National Nutrient Database for Standard Reference, Release 28 (2015), per 100 g edible
/// portion.
struct Sr28Food {
  std::string description;
  std::optional<double> proteinFactor;  ///< kcal per g, food-specific Atwater
  std::optional<double> fatFactor;
  std::optional<double> carbohydrateFactor;
  std::map<int, double> amounts;  ///< by SR28 nutrient number; what has no record is missing, not zero

  [[nodiscard]] std::optional<double> amount(int nutrient) const;
  [[nodiscard]] bool hasAll(std::initializer_list<int> nutrients) const;
};

/// SR28 nutrient numbers that the tests use.
namespace sr28 {
inline constexpr int kProtein = 203;
inline constexpr int kFat = 204;
inline constexpr int kCarbohydrate = 205;
inline constexpr int kAsh = 207;
inline constexpr int kEnergyKcal = 208;
inline constexpr int kStarch = 209;
inline constexpr int kAlcohol = 221;
inline constexpr int kWater = 255;
inline constexpr int kEnergyKj = 268;
inline constexpr int kSugars = 269;
inline constexpr int kFibre = 291;
inline constexpr int kVitaminAUnits = 318;
inline constexpr int kRetinol = 319;
inline constexpr int kVitaminARae = 320;
inline constexpr int kBetaCarotene = 321;
inline constexpr int kAlphaCarotene = 322;
inline constexpr int kVitaminDUnits = 324;
inline constexpr int kVitaminD = 328;
inline constexpr int kBetaCryptoxanthin = 334;
}  // namespace sr28

inline constexpr std::string_view kSr28Amounts = "sr28/nut_data.csv.gz";

/// All foods by NDB number; nothing where the tables are not there.
[[nodiscard]] std::optional<std::map<int, Sr28Food>> loadSr28();

}  // namespace tarebowl::reference
