// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"
#include "core/diet/solve.h"

#include <cstddef>
#include <filesystem>
#include <iosfwd>
#include <stdexcept>
#include <string>
#include <string_view>

namespace tarebowl::exchange {

/// A file that cannot be read as what it should be. what() is one line: file, key path, what was expected.
class FormatError : public std::runtime_error {
 public:
  FormatError(std::string file, std::string keyPath, std::string expected);
  [[nodiscard]] const std::string& file() const { return file_; }
  [[nodiscard]] const std::string& keyPath() const {
    return keyPath_;
  }  ///< "foods[3].per_100_g.CA"; empty for the whole file
  [[nodiscard]] const std::string& expected() const { return expected_; }

 private:
  std::string file_;
  std::string keyPath_;
  std::string expected_;
};

/// More foods, targets, ratios, shares or choices than this are no diet for one animal.
inline constexpr std::size_t kMostEntries = 2000;

/// Reads "tarebowl-problem/1". fileName is only used in messages. Throws FormatError.
[[nodiscard]] diet::BalanceProblem parseProblem(std::string_view json, const std::string& fileName);
[[nodiscard]] diet::BalanceProblem readProblem(const std::filesystem::path& file);
/// The same from a stream; name is what messages call it.
[[nodiscard]] diet::BalanceProblem readProblem(std::istream& stream, const std::string& name);

/// Writes the problem so that reading it back gives the same problem.
[[nodiscard]] std::string writeProblem(const diet::BalanceProblem& problem);

/// "tarebowl-result/1", indented.
[[nodiscard]] std::string writeResult(const diet::BalanceProblem& problem,
                                      const diet::DietSolution& solution);

}  // namespace tarebowl::exchange
