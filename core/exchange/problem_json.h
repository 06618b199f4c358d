// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/explanation.h"
#include "core/diet/problem.h"
#include "core/diet/remedies.h"
#include "core/diet/solve.h"

#include <cstddef>
#include <filesystem>
#include <functional>
#include <iosfwd>
#include <optional>
#include <span>
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

/// The food with a code in a collection; nothing where it has none. Empty where there is no collection.
using FoodSource = std::function<std::optional<diet::DietFood>(const std::string& code)>;

/// Reads "tarebowl-problem/1". fileName is only used in messages. A food without per_100_g is taken from the
/// collection, by its "from" or else its id; what the problem states of it goes before. Throws FormatError.
[[nodiscard]] diet::BalanceProblem parseProblem(std::string_view json, const std::string& fileName,
                                                const FoodSource& collection = {});
[[nodiscard]] diet::BalanceProblem readProblem(const std::filesystem::path& file,
                                               const FoodSource& collection = {});
/// The same from a stream; name is what messages call it.
[[nodiscard]] diet::BalanceProblem readProblem(std::istream& stream, const std::string& name,
                                               const FoodSource& collection = {});

/// Writes the problem so that reading it back gives the same problem.
[[nodiscard]] std::string writeProblem(const diet::BalanceProblem& problem);

/// What a result says beyond the answer, where it was asked for.
struct Reasons {
  const diet::Explanation* explanation = nullptr;
  std::span<const diet::Remedy> remedies{};
  std::span<const diet::DietFood> larder{};  ///< that the remedies speak of
};

/// "tarebowl-result/1", indented. A target's "multiplier" is what its bound adds to what is sought if it is
/// raised by all of itself, at the present rate; "per_unit" of "explain" is the same per unit.
[[nodiscard]] std::string writeResult(const diet::BalanceProblem& problem, const diet::DietSolution& solution,
                                      const Reasons& reasons = {});

}  // namespace tarebowl::exchange
