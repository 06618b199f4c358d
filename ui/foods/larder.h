// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/composition.h"
#include "core/food/food.h"
#include "core/food/sample.h"

#include <QString>

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <stdexcept>
#include <variant>
#include <vector>

namespace tarebowl::ui {

enum class FoodKey : qint64 {};  // qint64: what Qt can carry in a signal
enum class SampleKey : qint64 {};

/// A food as the list shows it.
struct FoodListing {
  FoodKey key{};
  food::Food food{};
};

struct KeptSample {
  SampleKey key{};
  food::Sample sample{};
  bool operator==(const KeptSample&) const = default;
};

/// A value that a person put before every sample, and why. Per 100 g as fed in the nutrient's own unit.
struct SetByHand {
  food::NutrientId nutrient{0};
  double amount = 0.0;
  std::optional<double> sd{};
  std::string reason{};  ///< not empty
  bool operator==(const SetByHand&) const = default;
};

/// Everything that is kept of one food.
struct FoodPage {
  FoodKey key{};
  food::Food food{};
  std::vector<KeptSample> samples{};
  std::vector<SetByHand> setByHand{};
  bool operator==(const FoodPage&) const = default;
};

/// One edit: what was there before and what is after it; missing means not there. Turned round it is its own
/// undo.
template <class Key, class Value>
struct Edit {
  Key key{};  ///< zero for what is new
  std::optional<Value> before{};
  std::optional<Value> after{};
};
struct FoodEdit : Edit<FoodKey, food::Food> {};
struct SampleEdit : Edit<SampleKey, food::Sample> {
  FoodKey food{};
};
struct HandEdit {
  FoodKey food{};
  food::NutrientId nutrient{0};
  std::optional<SetByHand> before{};
  std::optional<SetByHand> after{};
};
using LarderEdit = std::variant<FoodEdit, SampleEdit, HandEdit>;

/// An edit that was refused, with nothing written. Where another window was faster, both versions.
class Refusal : public std::runtime_error {
 public:
  explicit Refusal(const QString& why, QString mine = {}, QString theirs = {})
      : std::runtime_error(why.toStdString()), mine_(std::move(mine)), theirs_(std::move(theirs)) {}
  [[nodiscard]] QString why() const { return QString::fromStdString(what()); }
  [[nodiscard]] const QString& mine() const { return mine_; }
  [[nodiscard]] const QString& theirs() const { return theirs_; }

 private:
  QString mine_;
  QString theirs_;
};

/// The foods of a collection, as the Foods room asks for them. An object is for one thread, and may wait for
/// the disk: never for the window's own. Every call may throw Refusal or another std::exception.
class Larder {
 public:
  virtual ~Larder() = default;

  /// All foods, in no order.
  [[nodiscard]] virtual std::vector<FoodListing> foods() = 0;
  [[nodiscard]] virtual std::optional<FoodPage> page(FoodKey key) = 0;
  /// What the foods are made of, in their order; an unknown food has an empty composition. Only these
  /// nutrients; all of them where none is named.
  [[nodiscard]] virtual std::vector<food::Composition> compositions(
      std::span<const FoodKey> foods, std::span<const food::NutrientId> nutrients) = 0;
  /// Does the edit and returns it with the key it was given. who: for the log.
  virtual LarderEdit apply(const LarderEdit& edit, const QString& who) = 0;
  /// Whether somebody else has written since the last call.
  [[nodiscard]] virtual bool changedElsewhere() { return false; }
};

/// Opens the foods of a collection; called on the thread that will use them.
using LarderOpener = std::function<std::unique_ptr<Larder>()>;

}  // namespace tarebowl::ui
