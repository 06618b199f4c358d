// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/eaten.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <string_view>
#include <utility>

namespace tarebowl::intake {

namespace {

/// A bowl has so many sources of its own of each origin; what is beyond shares the last.
constexpr std::uint32_t kSourcesPerBowl = 1024;

/// How a mixed remainder's weight is parted: p_i, scaled to a sum of 1.
struct Parting {
  std::map<std::size_t, double> parts;
  double sum = 0.0;
  bool complete = true;  ///< every food in the remainder has an estimate
};

Parting partingOf(const FedBowl& bowl) {
  Parting parting;
  for (std::size_t i = 0; i < bowl.items.size(); ++i) {
    const auto* in = std::get_if<InRemainder>(&bowl.items[i].remains);
    if (in == nullptr) continue;
    parting.parts[i] = in->part.value_or(0.0);
    parting.sum += in->part.value_or(0.0);
    parting.complete = parting.complete && in->part.has_value();
  }
  parting.complete = parting.complete && parting.sum > 0.0;
  if (parting.sum > 0.0)
    for (auto& [item, part] : parting.parts) part /= parting.sum;
  return parting;
}

class BowlReader {
 public:
  BowlReader(const FedBowl& bowl, const PanBook& pans, std::uint32_t serial, const EatenRule& rule)
      : bowl_(bowl), pans_(pans), serial_(serial), rule_(rule), parting_(partingOf(bowl)) {}

  EatenBowl read() {
    result_.group = bowl_.group;
    result_.day = bowl_.day;
    result_.label = bowl_.label;
    result_.animals = bowl_.animals;
    result_.items.reserve(bowl_.items.size());
    for (index_ = 0; index_ < bowl_.items.size(); ++index_) {
      const FedItem& item = bowl_.items[index_];
      EatenItem& read = result_.items.emplace_back();
      read.food = item.food;
      read.foodClass = item.foodClass;
      read.offered = item.offered.grams.value();
      std::visit([&](const auto& remains) { readItem(item, remains, read); }, item.remains);
    }
    return std::move(result_);
  }

 private:
  void note(FindingKind kind, double amount = 0.0, double sds = 0.0) {
    result_.findings.push_back({kind, index_, amount, sds});
  }

  [[nodiscard]] Source source(Origin origin, std::size_t number) const {
    const auto capped = std::min<std::uint32_t>(static_cast<std::uint32_t>(number), kSourcesPerBowl - 1);
    return {origin, serial_ * kSourcesPerBowl + capped};
  }

  /// Foods that are corrected by the same pans share their error; one number for each class of the bowl.
  [[nodiscard]] Source waterSource(const FedItem& item, const WaterChange& water) {
    const bool byFood = water.from == WaterFrom::SameFood || water.from == WaterFrom::SameFoodOtherDays;
    const Waters::value_type key{item.foodClass, byFood ? std::string_view(item.food) : std::string_view()};
    const auto found = std::ranges::find(waters_, key);
    const auto number = static_cast<std::size_t>(found - waters_.begin());
    if (found == waters_.end()) waters_.push_back(key);
    return source(Origin::Water, number);
  }

  void readItem(const FedItem& item, const NotWeighed& /*unused*/, EatenItem& read) {
    note(FindingKind::NotWeighed);
    boundOnly(item, read, 0.0, read.offered);
  }

  void readItem(const FedItem& item, const AllEaten& /*unused*/, EatenItem& read) {
    read.left = read.leftAsOffered = 0.0;
    read.allEaten = true;
    finish(item, read, Uncertain(0.0));
  }

  void readItem(const FedItem& item, const ScaleReading& left, EatenItem& read) {
    read.left = left.grams.value();
    read.allEaten = !(left.grams.value() > 0.0);
    correct(
        item, read,
        Uncertain(left.grams.value()).addShared(source(Origin::Weighing, 2 + 2 * index_), readingSd(left)));
  }

  void readItem(const FedItem& item, const InRemainder& /*unused*/, EatenItem& read) {
    if (!bowl_.remainder) {
      note(FindingKind::NoRemainder);
      return boundOnly(item, read, 0.0, read.offered);
    }
    read.estimated = true;
    const double whole = bowl_.remainder->grams.value();
    if (!parting_.complete && whole > 0.0) {
      note(FindingKind::NoEstimate);
      return boundByRemainder(item, read, whole);
    }
    if (parting_.complete && std::abs(parting_.sum - 1.0) > kPartsTolerance)
      note(FindingKind::PartsMissing, parting_.sum);
    const Uncertain left = partOfRemainder(whole);
    read.left = left.value();
    correct(item, read, left);
  }

  /// p_i M with the errors of M and of the parts: sqrt(p_i) z_i - p_i sum of sqrt(p_j) z_j, over
  /// sqrt(pieces + 1), has the covariances of Dirichlet shares.
  [[nodiscard]] Uncertain partOfRemainder(double whole) const {
    const auto found = parting_.parts.find(index_);
    const double part = parting_.complete ? found->second : 0.0;
    Uncertain left(part * whole);
    left.addShared(source(Origin::Weighing, 0), part * readingSd(*bowl_.remainder));
    const double scale = whole / std::sqrt(rule_.piecesSorted + 1.0);
    std::size_t number = 0;
    for (const auto& [item, other] : parting_.parts) {
      const double own = item == index_ ? std::sqrt(part) : 0.0;
      left.addShared(source(Origin::Parts, number++), scale * (own - part * std::sqrt(other)));
    }
    return left;
  }

  void correct(const FedItem& item, EatenItem& read, Uncertain left) {
    if (!(left.value() > 0.0)) return finish(item, read, std::move(left));  // nothing of it can have dried
    read.water = pans_.find(bowl_.place, bowl_.day, item.food, item.foodClass);
    if (!read.water) {
      note(FindingKind::NoPan);
      return boundOnly(item, read, 0.0, read.offered - left.value());
    }
    if (isBorrowed(read.water->from)) note(FindingKind::BorrowedPan);
    const double kept = 1.0 - read.water->loss;
    const double asWeighed = left.value();
    left *= 1.0 / kept;
    if (read.water->sd > 0.0)
      left.addShared(waterSource(item, *read.water), asWeighed * read.water->sd / (kept * kept));
    read.leftAsOffered = left.value();
    finish(item, read, std::move(left));
  }

  void finish(const FedItem& item, EatenItem& read, Uncertain leftAsOffered) {
    const double most = read.offered - leftAsOffered.value();
    if (item.loss && !item.loss->grams) {
      note(FindingKind::LossUnknown);
      read.atMost = std::max(0.0, most);
      return;
    }
    addLoss(item, read);
    Uncertain eaten = std::move(leftAsOffered);
    eaten *= -1.0;
    eaten += Uncertain(read.offered - (read.spilled + read.stolen));
    eaten.addShared(source(Origin::Weighing, 1 + 2 * index_), readingSd(item.offered));
    if (eaten.value() < 0.0) {
      const double sd = eaten.sd();
      note(FindingKind::LeftoverAboveOffered, -eaten.value(), sd > 0.0 ? -eaten.value() / sd : INFINITY);
    }
    read.atLeast = read.atMost = eaten.value();
    read.eaten = std::move(eaten);
  }

  void boundOnly(const FedItem& item, EatenItem& read, double low, double high) {
    addLoss(item, read);
    const double lost = read.spilled + read.stolen;
    read.atLeast = std::max(0.0, low - lost);
    read.atMost = std::max(0.0, high - lost);
  }

  /// A remainder of unknown parts: this food may be all of it, or none.
  void boundByRemainder(const FedItem& item, EatenItem& read, double whole) {
    const auto water = pans_.find(bowl_.place, bowl_.day, item.food, item.foodClass);
    boundOnly(item, read, water ? read.offered - whole / (1.0 - water->loss) : 0.0, read.offered);
  }

  static void addLoss(const FedItem& item, EatenItem& read) {
    if (!item.loss || !item.loss->grams) return;
    (item.loss->kind == LossKind::Spilled ? read.spilled : read.stolen) = item.loss->grams->value();
  }

  static constexpr double kPartsTolerance = 0.02;
  const FedBowl& bowl_;
  const PanBook& pans_;
  std::uint32_t serial_;
  const EatenRule& rule_;
  Parting parting_;
  std::size_t index_ = 0;
  using Waters = std::vector<std::pair<std::string_view, std::string_view>>;
  Waters waters_;  ///< class and, where a pan is of one food, food
  EatenBowl result_;
};

}  // namespace

EatenBowl eatenFrom(const FedBowl& bowl, const PanBook& pans, std::uint32_t serial, const EatenRule& rule) {
  return BowlReader(bowl, pans, serial, rule).read();
}

}  // namespace tarebowl::intake
