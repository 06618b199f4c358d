// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

/// Whether a sign goes together with having eaten something: counts, and what chance alone would do.
namespace tarebowl::health {

/// Days counted by whether the food was eaten in the window before and whether the sign was seen.
struct TwoByTwo {
  std::size_t eatenSign = 0;
  std::size_t eatenWell = 0;
  std::size_t withoutSign = 0;  ///< not eaten, sign
  std::size_t withoutWell = 0;
  [[nodiscard]] std::size_t eaten() const { return eatenSign + eatenWell; }
  [[nodiscard]] std::size_t without() const { return withoutSign + withoutWell; }
  [[nodiscard]] std::size_t signs() const { return eatenSign + withoutSign; }
  [[nodiscard]] std::size_t well() const { return eatenWell + withoutWell; }
  /// Whether there is anything to compare: days of all four kinds of margin.
  [[nodiscard]] bool comparable() const { return eaten() > 0 && without() > 0 && signs() > 0 && well() > 0; }
  bool operator==(const TwoByTwo&) const = default;
};

/// Fisher's exact test: the chance, with these margins and no association, of a table …
struct FisherTest {
  double oneSided = 1.0;  ///< … with as many signs among days with the food, or more
  double twoSided = 1.0;  ///< … no more probable than this one (as R's fisher.test counts it)
};
/// 1 where there is nothing to compare.
[[nodiscard]] FisherTest fisherTest(const TwoByTwo& table);

/// How many times likelier the sign was on days with the food, with Katz's log interval (Katz et al. 1978,
/// Biometrics 34:469-474, from memory): exp(log RR ± z · sqrt(1/a - 1/(a+b) + 1/c - 1/(c+d))).
struct RiskRatio {
  double ratio = 1.0;
  double low = 0.0;
  double high = 0.0;
  double standardError = 0.0;  ///< of its logarithm
  bool halfAdded = false;      ///< a count was 0: 0.5 was added to each, and the ratio is no more than a hint
};
/// Nothing where there is nothing to compare. confidence: 0 … 1, both ends.
[[nodiscard]] std::optional<RiskRatio> riskRatio(const TwoByTwo& table, double confidence = 0.95);

/// p values corrected for how many there are (Benjamini and Hochberg 1995, Journal of the Royal Statistical
/// Society B 57:289-300, from memory): among those at or below q, a share of q at most is expected to be
/// chance. In the order given.
[[nodiscard]] std::vector<double> benjaminiHochberg(std::span<const double> p);

}  // namespace tarebowl::health
