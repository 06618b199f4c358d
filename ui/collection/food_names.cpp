// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/food_names.h"

#include "core/store/food_reading.h"
#include "core/store/reading.h"
#include "ui/collection/open_collection.h"

#include <utility>

namespace tarebowl::ui {

FoodNames::FoodNames(OpenCollection& collection, QObject* parent) : QObject(parent), collection_(collection) {
  collection.whenOpened(this, [this] {
    index_ = food::FoodIndex({});
    emit changed();
    read();
  });
  connect(&collection, &OpenCollection::outdated, this, [this](const store::Touched& what) {
    if (what.any({store::Part::Foods})) read();
  });
  connect(&collection, &OpenCollection::written, this, &FoodNames::read);
}

void FoodNames::read() {
  if (!collection_.file()) return;
  collection_.askWhenIdle(
      store::inOneReading([](store::Collection& collection) { return store::listFoods(collection); }),
      [this](std::vector<food::FoodLine> foods) {
        index_ = food::FoodIndex(std::move(foods));
        emit changed();
      });
}

std::vector<food::FoodLine> FoodNames::find(const QString& text, std::size_t most) const {
  return index_.find(text.toStdString(), most);
}

}  // namespace tarebowl::ui
