// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/uncertain.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::intake {

namespace {

std::size_t indexOf(Origin origin) {
  return static_cast<std::size_t>(origin);
}

}  // namespace

double Uncertain::sd(Origin origin) const {
  double variance = own_[indexOf(origin)];
  for (const Loading& loading : loadings_)
    if (loading.source.origin == origin) variance += loading.amount * loading.amount;
  return std::sqrt(variance);
}

double Uncertain::sd() const {
  double variance = 0.0;
  for (const double own : own_) variance += own;
  for (const Loading& loading : loadings_) variance += loading.amount * loading.amount;
  return std::sqrt(variance);
}

Uncertain& Uncertain::addOwn(Origin origin, double sd) {
  own_[indexOf(origin)] += sd * sd;
  return *this;
}

Uncertain& Uncertain::addShared(Source source, double loading) {
  constexpr std::size_t kOfOneFood = 4;  // two weighings, water, composition
  if (loadings_.capacity() == 0) loadings_.reserve(kOfOneFood);
  if (loadings_.empty() || loadings_.back().source < source) {
    loadings_.push_back({source, loading});
    return *this;
  }
  const auto at = std::ranges::lower_bound(loadings_, source, {}, &Loading::source);
  if (at != loadings_.end() && at->source == source)
    at->amount += loading;
  else
    loadings_.insert(at, {source, loading});
  return *this;
}

Uncertain& Uncertain::settle(Origin origin) {
  for (const Loading& loading : loadings_)
    if (loading.source.origin == origin) addOwn(origin, loading.amount);
  std::erase_if(loadings_, [&](const Loading& loading) { return loading.source.origin == origin; });
  return *this;
}

Uncertain& Uncertain::addScaled(const Uncertain& other, double factor) {
  value_ += factor * other.value_;
  for (std::size_t i = 0; i < kOrigins; ++i) own_[i] += factor * factor * other.own_[i];
  for (const Loading& loading : other.loadings_) addShared(loading.source, factor * loading.amount);
  return *this;
}

Uncertain& Uncertain::operator*=(double factor) {
  value_ *= factor;
  for (double& own : own_) own *= factor * factor;
  for (Loading& loading : loadings_) loading.amount *= factor;
  return *this;
}

Uncertain quotient(const Uncertain& a, const Uncertain& b) {
  const double ratio = a.value() / b.value();
  const Uncertain moved = (a - b * ratio) * (1.0 / b.value());  // its value is 0: the errors alone
  return moved + Uncertain(ratio);
}

}  // namespace tarebowl::intake
