// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/larder.h"

#include <map>
#include <mutex>

namespace tarebowl::ui {

/// Foods that are kept in memory alone, shared by all larders opened on them.
class MemoryShelf {
 public:
  explicit MemoryShelf(std::vector<FoodPage> pages);

 private:
  friend class MemoryLarder;
  std::mutex mutex_;
  std::map<FoodKey, FoodPage> pages_;
  std::map<FoodKey, FoodPage> removed_;  // what an undo of the removal brings back
  std::int64_t lastKey_ = 0;
};

class MemoryLarder : public Larder {
 public:
  explicit MemoryLarder(std::shared_ptr<MemoryShelf> shelf);

  [[nodiscard]] std::vector<FoodListing> foods() override;
  [[nodiscard]] std::optional<FoodPage> page(FoodKey key) override;
  [[nodiscard]] std::vector<food::Composition> compositions(
      std::span<const FoodKey> foods, std::span<const food::NutrientId> nutrients) override;
  LarderEdit apply(const LarderEdit& edit, const QString& who) override;

 private:
  FoodEdit applyTo(FoodEdit edit);
  SampleEdit applyTo(SampleEdit edit);
  HandEdit applyTo(HandEdit edit);
  FoodPage& pageOf(FoodKey key);

  std::shared_ptr<MemoryShelf> shelf_;
};

}  // namespace tarebowl::ui
