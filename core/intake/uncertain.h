// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <compare>
#include <cstdint>
#include <vector>

namespace tarebowl::intake {

/// What makes a number uncertain: the scale's step, water lost or gained overnight, parts of a remainder
/// that were estimated by eye, the scatter of a food's composition.
enum class Origin : std::uint8_t { Weighing, Water, Parts, Composition };
inline constexpr std::size_t kOrigins = 4;

/// One error that lies in several numbers at once: that of a day's pan in all foods it corrects, that of a
/// food's calcium in every day on which it was eaten.
struct Source {
  Origin origin = Origin::Weighing;
  std::uint32_t id = 0;
  auto operator<=>(const Source&) const = default;
};

/// A number and its errors to first order (delta method; JCGM 100:2008, law of propagation, from memory):
///   value + sum of loading_s · z_s, the z_s independent with mean 0 and standard deviation 1.
/// Errors with a source stay correlated where numbers are added or divided; an own error is in this number
/// alone.
class Uncertain {
 public:
  struct Loading {
    Source source{};
    double amount = 0.0;
    bool operator==(const Loading&) const = default;
  };

  Uncertain() = default;
  explicit Uncertain(double value) : value_(value) {}

  [[nodiscard]] double value() const { return value_; }
  [[nodiscard]] double sd() const;
  [[nodiscard]] double sd(Origin origin) const;
  /// Ordered by source.
  [[nodiscard]] const std::vector<Loading>& loadings() const { return loadings_; }

  Uncertain& addOwn(Origin origin, double sd);
  Uncertain& addShared(Source source, double loading);
  /// Takes errors of an origin for its own from now on: where no later number shares them.
  Uncertain& settle(Origin origin);

  /// Adds factor times the other.
  Uncertain& addScaled(const Uncertain& other, double factor);
  Uncertain& operator+=(const Uncertain& other) { return addScaled(other, 1.0); }
  Uncertain& operator-=(const Uncertain& other) { return addScaled(other, -1.0); }
  Uncertain& operator*=(double factor);
  friend Uncertain operator+(Uncertain a, const Uncertain& b) { return a += b; }
  friend Uncertain operator-(Uncertain a, const Uncertain& b) { return a -= b; }
  friend Uncertain operator*(Uncertain a, double factor) { return a *= factor; }
  bool operator==(const Uncertain&) const = default;

 private:
  double value_ = 0.0;
  std::array<double, kOrigins> own_{};  ///< variances
  std::vector<Loading> loadings_;
};

/// a / b to first order: an error that lies in both counts as it moves the quotient. b is not 0. Own errors
/// of a and b are taken for independent.
[[nodiscard]] Uncertain quotient(const Uncertain& a, const Uncertain& b);

}  // namespace tarebowl::intake
