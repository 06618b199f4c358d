// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/feeding_records.h"
#include "ui/kitchen/kitchen_desk.h"

#include <QTemporaryDir>

#include <filesystem>

namespace tarebowl::ui {

/// The day on which the tests cook.
[[nodiscard]] quantity::Date kitchenDay();  // 2026-11-25

/// A collection in a folder of its own, all invented. Section Small Mammals: two tenrecs are given 20 g of
/// kale (in steps of 0.1 g) and 6 g of crickets, live, in the evening; two mice 10 g of kale. Section
/// Reptiles: a dragon without a diet.
class ExampleKitchen {
 public:
  ExampleKitchen();
  [[nodiscard]] const std::filesystem::path& file() const { return file_; }
  [[nodiscard]] CollectionOpener opener() const;
  [[nodiscard]] intake::Bowl bowl(const char* group) const;

 private:
  QTemporaryDir folder_;
  std::filesystem::path file_;
};

}  // namespace tarebowl::ui
