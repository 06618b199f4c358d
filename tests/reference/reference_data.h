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

/// All of a plain or gzip file. Throws std::runtime_error when it cannot.
[[nodiscard]] std::string unpacked(const std::filesystem::path& file);

}  // namespace tarebowl::reference
