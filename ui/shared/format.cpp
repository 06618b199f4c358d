// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/format.h"

#include "ui/shared/decimal_text.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace tarebowl::ui {
namespace {

struct Format {
  Q_DECLARE_TR_FUNCTIONS(Format)
};

constexpr QChar kNoBreakSpace(0x00A0);  // a number keeps its unit beside it

bool isOnGrid(double value, double step) {
  return std::abs(value / step - std::round(value / step)) < 1e-6;
}

}  // namespace

QString measured(double value, const QLocale& locale) {
  if (!std::isfinite(value)) return QStringLiteral("?");
  const double size = std::abs(value);
  if (size == 0.0) return decimal(0.0, 0, locale);
  const int before = static_cast<int>(std::floor(std::log10(size))) + 1;
  return decimal(value, std::clamp(3 - before, 0, 6), locale);
}

QString stated(double value, const QLocale& locale) {
  for (int decimals = 0; decimals < 6; ++decimals) {
    const double scale = std::pow(10.0, decimals);
    if (std::abs(std::round(value * scale) / scale - value) <= std::abs(value) * 1e-6)
      return decimal(value, decimals, locale);
  }
  return decimal(value, 6, locale);
}

QString percent(double share, const QLocale& locale) {
  const double value = 100.0 * share;
  const bool small = std::abs(value) > 0.0 && std::abs(value) < 9.95 && !isOnGrid(value, 1.0);
  return decimal(value, small ? 1 : 0, locale) + kNoBreakSpace + locale.percent();
}

int scaleDecimals(quantity::Grams step) {
  for (int decimals = 0; decimals < 4; ++decimals)
    if (isOnGrid(step.value() * std::pow(10.0, decimals), 1.0)) return decimals;
  return 4;
}

QString grams(quantity::Grams mass, quantity::Grams step, const QLocale& locale) {
  if (mass.value() == 0.0) return decimal(0.0, 0, locale);
  const int decimals = step.value() > 0.0 ? scaleDecimals(step) : 2;
  const bool shows = isOnGrid(mass.value() * std::pow(10.0, decimals), 1.0);
  return decimal(mass.value(), shows ? decimals : decimals + 2, locale);
}

QString kilograms(quantity::Kilograms mass, const QLocale& locale) {
  return stated(mass.value(), locale) + kNoBreakSpace + Format::tr("kg");
}

QString duration(std::int64_t microseconds, const QLocale& locale) {
  const double ms = static_cast<double>(microseconds) / 1000.0;
  if (ms >= 1000.0) return decimal(ms / 1000.0, 1, locale) + kNoBreakSpace + Format::tr("s");
  return decimal(ms, ms < 9.95 ? 1 : 0, locale) + kNoBreakSpace + Format::tr("ms");
}

QString unitText(quantity::Unit unit) {
  using quantity::Unit;
  switch (unit) {
    case Unit::Gram:
      return Format::tr("g");
    case Unit::Milligram:
      return Format::tr("mg");
    case Unit::Microgram:
      return Format::tr("µg");
    case Unit::Kilocalorie:
      return Format::tr("kcal");
    case Unit::Kilojoule:
      return Format::tr("kJ");
    case Unit::InternationalUnit:
      return Format::tr("IU");
  }
  return {};
}

QString basisText(quantity::Basis basis) {
  using quantity::Basis;
  switch (basis) {
    case Basis::AsFed:
      return Format::tr("kg as fed");
    case Basis::DryMatter:
      return Format::tr("kg DM");
    case Basis::Energy:
      return Format::tr("1000 kcal");
    case Basis::Day:
      return Format::tr("day");
    case Basis::BodyMass:
      return Format::tr("kg body mass");
    case Basis::MetabolicMass:
      return Format::tr("kg^0.75");
  }
  return {};
}

QString unitPerBasis(quantity::Unit unit, quantity::Basis basis) {
  if (basis == quantity::Basis::Day) return Format::tr("%1 a day").arg(unitText(unit));
  return Format::tr("%1/%2").arg(unitText(unit), basisText(basis));
}

}  // namespace tarebowl::ui
