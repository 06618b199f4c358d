// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/intake/simulated_feeding.h"

#include "tests/core/intake/feeding.h"

#include <cmath>

namespace tarebowl::intake::testing {

namespace {

ScaleReading onScale(double grams, double step) {
  return weighed(step > 0.0 ? std::round(grams / step) * step : grams, step);
}

class Feeder {
 public:
  Feeder(const World& world, std::mt19937& random) : world_(world), random_(random) {}

  SimulatedDay day(int number) {
    SimulatedDay made;
    made.bowl = bowlOf({}, dayAfter("2026-01-01", number));
    const double loss = normal(world_.loss, world_.lossDayToDay);
    const double hunger = world_.intensity * std::exp(normal(0.0, world_.intensityScatter));
    for (const TrueFood& food : world_.foods) {
      const double offered = food.offered * (1.0 + normal(0.0, 0.05));
      const double left =
          offered * std::exp(-hunger * food.appetite * std::exp(normal(0.0, world_.appetiteScatter)));
      made.eaten.push_back(offered - left);
      FedItem item = fed(food.name, 0.0, onScale(left * (1.0 - bowlLoss(loss)), world_.step), food.foodClass);
      item.offered = onScale(offered, world_.step);
      made.bowl.items.push_back(std::move(item));
    }
    if (!(uniform() < world_.panMissing)) addPans(made, loss);
    return made;
  }

 private:
  double normal(double mean, double sd) { return mean + sd * std::normal_distribution<>()(random_); }
  double uniform() { return std::uniform_real_distribution<>()(random_); }
  double bowlLoss(double loss) { return normal(loss, world_.lossWithinDay); }

  void addPans(SimulatedDay& made, double loss) {
    for (int i = 0; i < world_.pansADay; ++i) {
      WaterPan one = pan(0, 0, made.bowl.day);
      const double start = 100.0 * (1.0 + normal(0.0, 0.05));
      one.start = onScale(start, world_.step);
      one.end = onScale(start * (1.0 - bowlLoss(loss)), world_.step);
      made.pans.push_back(one);
    }
  }

  const World& world_;
  std::mt19937& random_;
};

}  // namespace

std::vector<SimulatedDay> feed(const World& world, int days, std::mt19937& random) {
  Feeder feeder(world, random);
  std::vector<SimulatedDay> made;
  made.reserve(static_cast<std::size_t>(days));
  for (int i = 0; i < days; ++i) made.push_back(feeder.day(i));
  return made;
}

std::vector<WaterPan> pansOf(const std::vector<SimulatedDay>& days) {
  std::vector<WaterPan> pans;
  for (const SimulatedDay& day : days) pans.insert(pans.end(), day.pans.begin(), day.pans.end());
  return pans;
}

}  // namespace tarebowl::intake::testing
