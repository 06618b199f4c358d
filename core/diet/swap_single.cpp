// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/swap_single.h"

#include "core/diet/scale_step.h"

#include <cmath>
#include <cstdint>

namespace tarebowl::diet {
namespace {

using Steps = std::int64_t;

/// Every bound as max(0, at0 + slope g + sqrt(held + (sd g)^2)) over the grams g of one food: what a minimum
/// lacks, what a maximum is passed by.
class Bounds {
 public:
  Bounds(const SwapFrame& frame, const SwapColumns& columns, std::size_t candidate) {
    const solver::Program& program = frame.formulation().program;
    Eigen::VectorXd rest = frame.rest();
    if (const auto line = columns.ownLine(candidate)) rest[static_cast<Eigen::Index>(*line)] = 0.0;
    const Eigen::ArrayXd lacks = (program.rowLower.array() > -solver::kInfinity).cast<double>();
    const Eigen::ArrayXd sign = 1.0 - 2.0 * lacks;  // -1 for a minimum
    const Eigen::ArrayXd limit = (lacks > 0.0).select(program.rowLower, program.rowUpper);
    at0_ = sign * ((program.rows * rest).array() - limit);
    slope_ = sign * columns.rows(candidate).array();
    isHard_ = program.price.array() == solver::kInfinity;
    price_ = isHard_.select(0.0, program.price.array());
    if (!columns.scatters()) return;
    heldVariance_ = (program.scatter->array().square().matrix() * rest.array().square().matrix()).array();
    sd_ = columns.scatter(candidate).array();
  }

  [[nodiscard]] double hard(double grams) const { return isHard_.select(missed(grams), 0.0).sum(); }
  [[nodiscard]] double shortfall(double grams) const { return (price_ * missed(grams)).sum(); }
  [[nodiscard]] Eigen::Index worstHard(double grams) const {
    Eigen::Index worst = 0;
    isHard_.select(missed(grams), -1.0).maxCoeff(&worst);
    return worst;
  }

 private:
  [[nodiscard]] Eigen::ArrayXd missed(double grams) const {
    Eigen::ArrayXd by = at0_ + slope_ * grams;
    if (sd_.size() > 0) by += (heldVariance_ + (sd_ * grams).square()).sqrt();
    return by.max(0.0);
  }

  Eigen::ArrayXd at0_;
  Eigen::ArrayXd slope_;
  Eigen::ArrayXd price_;
  Eigen::Array<bool, Eigen::Dynamic, 1> isHard_;
  Eigen::ArrayXd heldVariance_;
  Eigen::ArrayXd sd_;
};

/// The kept nutrients over the grams of one food.
class Kept {
 public:
  Kept(const SwapFrame& frame, const SwapColumns& columns, std::size_t candidate)
      : slope_(columns.kept(candidate).array()), weight_(slope_.size()) {
    Eigen::VectorXd rest = frame.rest();
    if (const auto line = columns.ownLine(candidate)) rest[static_cast<Eigen::Index>(*line)] = 0.0;
    at0_ = (frame.keptRows() * rest - frame.keptAmounts()).array();
    for (Eigen::Index k = 0; k < weight_.size(); ++k)
      weight_[k] = frame.kept()[static_cast<std::size_t>(k)].weight / frame.weightOfKept();
  }

  [[nodiscard]] double difference(double grams) const {
    return (weight_ * (at0_ + slope_ * grams).abs()).sum();
  }

 private:
  Eigen::ArrayXd slope_;
  Eigen::ArrayXd weight_;
  Eigen::ArrayXd at0_;
};

struct Range {
  Steps least;
  Steps most;
};

constexpr double kNoFall = 1e-14;  // a step that gains less than rounding gains nothing

/// The first of the steps where a convex function is least.
template <class Function>
Steps firstLeast(Range range, const Function& f) {
  while (range.least < range.most) {
    const Steps middle = range.least + (range.most - range.least) / 2;
    const double here = f(middle);
    if (f(middle + 1) < here - kNoFall * std::max(1.0, here))
      range.least = middle + 1;
    else
      range.most = middle;
  }
  return range.least;
}

/// The steps about `inside` where a convex function is not above a level.
template <class Function>
Range within(Range range, Steps inside, double level, const Function& f) {
  Range found{inside, inside};
  for (Steps from = range.least; from < found.least;) {
    const Steps middle = from + (found.least - from) / 2;
    if (f(middle) <= level)
      found.least = middle;
    else
      from = middle + 1;
  }
  for (Steps to = range.most; to > found.most;) {
    const Steps middle = to - (to - found.most) / 2;
    if (f(middle) <= level)
      found.most = middle;
    else
      to = middle - 1;
  }
  return found;
}

}  // namespace

double shortfallAllowed(double least) {
  return least * (1.0 + 1e-6) + 1e-9;
}

SingleSwaps::SingleSwaps(const SwapFrame& frame, const SwapColumns& columns)
    : frame_(frame), columns_(columns) {}

SingleSwaps::Answer SingleSwaps::nearest(std::size_t candidate, const SwapRange& range) const {
  const Bounds bounds(frame_, columns_, candidate);
  const Kept kept(frame_, columns_, candidate);
  const auto gramsAt = [&](Steps steps) { return static_cast<double>(steps) * range.step; };
  const auto hard = [&](Steps steps) { return bounds.hard(gramsAt(steps)); };
  const auto shortfall = [&](Steps steps) { return bounds.shortfall(gramsAt(steps)); };
  const auto difference = [&](Steps steps) { return kept.difference(gramsAt(steps)); };

  Range steps{std::llround(range.least / range.step), std::llround(range.most / range.step)};
  const Steps leastMiss = firstLeast(steps, hard);
  if (hard(leastMiss) > kHardSlack) {
    const auto row = static_cast<std::size_t>(bounds.worstHard(gramsAt(leastMiss)));
    return {std::nullopt,
            frame_.measures()[frame_.formulation().rows[row].measure].id,
            {hard(leastMiss), shortfall(leastMiss), difference(leastMiss)}};
  }
  steps = within(steps, leastMiss, kHardSlack, hard);
  const Steps leastShort = firstLeast(steps, shortfall);
  steps = within(steps, leastShort, shortfallAllowed(shortfall(leastShort)), shortfall);
  const Steps nearest = firstLeast(steps, difference);

  const quantity::Grams total =
      nearestOnScale(quantity::Grams(gramsAt(nearest)), quantity::Grams(range.step));
  const quantity::Grams given =
      nearestOnScale(total - quantity::Grams(range.held), quantity::Grams(range.step));
  Swap swap;
  swap.parts = {{candidate, given}};
  swap.shortfall = shortfall(nearest);
  swap.difference = difference(nearest);
  const SwapStanding standing{0.0, swap.shortfall, swap.difference};
  return {std::move(swap), {}, standing};
}

SwapStanding SingleSwaps::at(std::size_t candidate, double grams) const {
  const Bounds bounds(frame_, columns_, candidate);
  return {bounds.hard(grams), bounds.shortfall(grams), Kept(frame_, columns_, candidate).difference(grams)};
}

}  // namespace tarebowl::diet
