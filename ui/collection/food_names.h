// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/food_index.h"

#include <QObject>

namespace tarebowl::ui {

class OpenCollection;

/// The names of the open collection's foods, for rooms that take foods from it. Kept as the collection is.
class FoodNames : public QObject {
  Q_OBJECT
 public:
  explicit FoodNames(OpenCollection& collection, QObject* parent = nullptr);

  [[nodiscard]] std::vector<food::FoodLine> find(const QString& text, std::size_t most) const;
  [[nodiscard]] bool isEmpty() const { return index_.size() == 0; }

 signals:
  void changed();

 private:
  void read();

  OpenCollection& collection_;
  food::FoodIndex index_{{}};
};

}  // namespace tarebowl::ui
