// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/scale_reading.h"
#include "core/quantity/date.h"

#include <cstddef>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace tarebowl::intake {

/// The same food in the same place overnight, out of the animals' reach.
struct WaterPan {
  std::string place{};
  quantity::Date day{};  ///< on which it was put out
  std::string food{};
  std::string foodClass{};  ///< "leafy vegetable": whose foods dry alike
  ScaleReading start{};
  ScaleReading end{};
  bool operator==(const WaterPan&) const = default;
};

/// Why a pan says nothing: it was empty from the first, or nothing is left of it (L >= 1).
enum class PanDefect { StartedEmpty, EndedEmpty };
[[nodiscard]] std::optional<PanDefect> defectOf(const WaterPan& pan);

/// L = 1 - end / start of a sound pan, the share of its mass that was lost; below 0 where it gained.
[[nodiscard]] double waterLoss(const WaterPan& pan);
/// Of L, from the two weighings: sqrt(sd_end² + (end / start)² sd_start²) / start.
[[nodiscard]] double waterLossSd(const WaterPan& pan);

/// Whose pans a correction rests on, best first.
enum class WaterFrom { Stated, SameFood, SameClass, SameFoodOtherDays, SameClassOtherDays };
/// Whether no pan of the day itself stood there.
[[nodiscard]] bool isBorrowed(WaterFrom from);

/// What a bowl's food lost overnight. sd is that of the bowl's own loss, which scatters as pans do:
///   m pans of the day             s_w sqrt(1 + 1/m)
///   k other days, m pans on each  sqrt(s_d² (1 + 1/k) + s_w² (1 - 1/m))
/// s_w: of pans within a day, s_d: of days' means, both pooled over all pans of the place and class. Never
/// below what the scale alone makes of it.
struct WaterChange {
  double loss = 0.0;
  double sd = 0.0;
  WaterFrom from = WaterFrom::SameFood;
  std::size_t pans = 0;
  int daysApart = 0;         ///< of the farthest pan
  bool scatterKnown = true;  ///< false: too few pans to say how they scatter; sd is the scale's alone
  bool operator==(const WaterChange&) const = default;
};

/// How far a bowl without pans may look for others: house rule, no source.
struct BorrowRule {
  int daysApart = 7;     ///< at most
  std::size_t days = 5;  ///< the nearest, so many at most (and all as far as the last)
};

/// The pans of a period, to be asked for each bowl. Unsound pans are set aside and can be listed.
class PanBook {
 public:
  /// unchanged: food classes of which the house states that they neither dry nor draw water (powders).
  explicit PanBook(std::span<const WaterPan> pans, BorrowRule rule = {},
                   std::vector<std::string> unchanged = {});

  /// Nothing where no pan is near.
  [[nodiscard]] std::optional<WaterChange> find(const std::string& place, quantity::Date day,
                                                const std::string& food, const std::string& foodClass) const;

  struct Unsound {
    std::size_t pan = 0;
    PanDefect defect = PanDefect::StartedEmpty;
  };
  [[nodiscard]] const std::vector<Unsound>& unsound() const { return unsound_; }

 private:
  struct Loss {
    int day = 0;
    std::string food{};
    double loss = 0.0;
    double sd = 0.0;
  };
  /// Pans of one place and food class by day, and how they scatter within a day and from day to day.
  struct Shelf {
    std::vector<Loss> losses{};
    bool namesFoods = false;  ///< some pan is of one food, and not of its class
    std::optional<double> withinDay{};
    std::optional<double> dayToDay{};
  };
  struct DayMean {
    int day = 0;
    double loss = 0.0;
    double scaleVariance = 0.0;
    std::size_t pans = 0;
    void add(double lossOfPan, double sd);  ///< sums, until divide() makes means of them
    void divide();
  };

  static std::vector<DayMean> dayMeans(std::span<const Loss> losses, const std::string* food);
  static void learnScatter(Shelf& shelf);
  /// Asked for every leftover: takes no room of its own. food null: of any.
  static std::optional<DayMean> meanOn(const Shelf& shelf, int day, const std::string* food);
  [[nodiscard]] std::vector<DayMean> nearest(const Shelf& shelf, int day, const std::string* food) const;
  static WaterChange pooled(std::span<const DayMean> near, int day, WaterFrom from, const Shelf& shelf);

  BorrowRule rule_;
  std::vector<std::string> unchanged_;
  std::map<std::string, std::map<std::string, Shelf>> shelves_;  ///< by place and class
  std::vector<Unsound> unsound_;
};

}  // namespace tarebowl::intake
