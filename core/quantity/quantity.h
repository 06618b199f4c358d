// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>

namespace tarebowl::quantity {

/// A number that carries its kind. One inner unit per tag, named by the alias, so that grams and kilocalories
/// cannot be added and a bare double cannot slip in. Errors: none; ranges are checked where values enter.
template <class Tag>
class Quantity {
 public:
  constexpr Quantity() = default;
  explicit constexpr Quantity(double value) : value_(value) {}

  [[nodiscard]] constexpr double value() const { return value_; }

  // clang-tidy 14 takes the comparison's 0 for a pointer.
  // NOLINTNEXTLINE(modernize-use-nullptr)
  constexpr auto operator<=>(const Quantity&) const = default;

  constexpr Quantity& operator+=(Quantity other) {
    value_ += other.value_;
    return *this;
  }
  constexpr Quantity& operator-=(Quantity other) {
    value_ -= other.value_;
    return *this;
  }
  friend constexpr Quantity operator+(Quantity a, Quantity b) { return Quantity(a.value_ + b.value_); }
  friend constexpr Quantity operator-(Quantity a, Quantity b) { return Quantity(a.value_ - b.value_); }
  friend constexpr Quantity operator*(Quantity a, double factor) { return Quantity(a.value_ * factor); }
  friend constexpr Quantity operator*(double factor, Quantity a) { return Quantity(a.value_ * factor); }
  friend constexpr Quantity operator/(Quantity a, double divisor) { return Quantity(a.value_ / divisor); }
  friend constexpr double operator/(Quantity a, Quantity b) { return a.value_ / b.value_; }

 private:
  double value_ = 0.0;
};

using Grams = Quantity<struct GramsTag>;
using Kilograms = Quantity<struct KilogramsTag>;
using Kilocalories = Quantity<struct KilocaloriesTag>;
using Kilojoules = Quantity<struct KilojoulesTag>;

constexpr Kilograms toKilograms(Grams mass) {
  return Kilograms(mass.value() / 1000.0);
}
constexpr Grams toGrams(Kilograms mass) {
  return Grams(mass.value() * 1000.0);
}

/// Thermochemical calorie, exact by definition (ISO 31-4); SR28's kJ and kcal columns agree with it.
inline constexpr double kKilojoulesPerKilocalorie = 4.184;
constexpr Kilojoules toKilojoules(Kilocalories e) {
  return Kilojoules(e.value() * kKilojoulesPerKilocalorie);
}
constexpr Kilocalories toKilocalories(Kilojoules e) {
  return Kilocalories(e.value() / kKilojoulesPerKilocalorie);
}

}  // namespace tarebowl::quantity
