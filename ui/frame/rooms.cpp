// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/rooms.h"

#include "core/intake/time_of_sheet.h"
#include "ui/animals/animals_room.h"
#include "ui/collection/open_collection.h"
#include "ui/diets/diet_shelf.h"
#include "ui/diets/diets_room.h"
#include "ui/foods/foods_room.h"
#include "ui/frame/room_numbers.h"
#include "ui/health/health_room.h"
#include "ui/intake/intake_room.h"
#include "ui/kitchen/kitchen_room.h"
#include "ui/kitchen/scale_bar.h"
#include "ui/today/today_room.h"

#include <algorithm>
#include <utility>

namespace tarebowl::ui {

Rooms::Rooms(RoomParts parts, QObject* parent)
    : QObject(parent),
      parts_(std::move(parts)),
      places_{{kTodayNumber, tr("Today"), QStringLiteral("today")},
              {kFoodsNumber, tr("Foods"), QStringLiteral("foods")},
              {kAnimalsNumber, tr("Animals"), QStringLiteral("animals")},
              {kDietsNumber, tr("Diets"), QStringLiteral("diets")},
              {kKitchenNumber, tr("Kitchen"), QStringLiteral("kitchen")},
              {kIntakeNumber, tr("Intake"), QStringLiteral("intake")},
              {kHealthNumber, tr("Health"), QStringLiteral("health")}} {}

Rooms::~Rooms() {
  for (Room* room : built_)
    if (room->parent() == nullptr) delete room;
}

template <class RoomType>
RoomType& Rooms::take(int number, RoomType*& place, RoomType* (Rooms::*build)()) {
  if (place != nullptr) return *place;
  place = (this->*build)();
  built_.push_back(place);
  connect(place, &Room::stateChanged, this, [this, number] { emit stateChanged(number); });
  emit built(number, place);
  return *place;
}

TodayRoom& Rooms::today() {
  return take(kTodayNumber, today_, &Rooms::buildToday);
}
FoodsRoom& Rooms::foods() {
  return take(kFoodsNumber, foods_, &Rooms::buildFoods);
}
AnimalsRoom& Rooms::animals() {
  return take(kAnimalsNumber, animals_, &Rooms::buildAnimals);
}
DietsRoom& Rooms::diets() {
  return take(kDietsNumber, diets_, &Rooms::buildDiets);
}
KitchenRoom& Rooms::kitchen() {
  return take(kKitchenNumber, kitchen_, &Rooms::buildKitchen);
}
IntakeRoom& Rooms::intake() {
  return take(kIntakeNumber, intake_, &Rooms::buildIntake);
}
HealthRoom& Rooms::health() {
  return take(kHealthNumber, health_, &Rooms::buildHealth);
}

bool Rooms::has(int number) const {
  return std::ranges::any_of(places_, [=](const RoomPlace& place) { return place.number == number; });
}

Room& Rooms::at(int number) {
  switch (number) {
    case kFoodsNumber:
      return foods();
    case kAnimalsNumber:
      return animals();
    case kDietsNumber:
      return diets();
    case kKitchenNumber:
      return kitchen();
    case kIntakeNumber:
      return intake();
    case kHealthNumber:
      return health();
    default:
      return today();
  }
}

bool Rooms::buildNext() {
  for (const RoomPlace& place : places_) {
    const std::size_t before = built_.size();
    (void)at(place.number);
    if (built_.size() > before) return true;
  }
  return false;
}

TodayRoom* Rooms::buildToday() {
  auto* room = new TodayRoom(parts_.collection, parts_.today);
  const auto showKitchen = [this](KitchenDesk::Task task) {
    return [this, task](const QString& section, int day) {
      emit roomWanted(kKitchenNumber);
      kitchen().showSheet(section, intake::dayOfNumber(day), task);
    };
  };
  connect(room, &TodayRoom::kitchenWanted, this, showKitchen(KitchenDesk::Task::WeighIn));
  connect(room, &TodayRoom::leftoversWanted, this, showKitchen(KitchenDesk::Task::Leftovers));
  connect(room, &TodayRoom::pansWanted, this, [this](const QString& section, int day) {
    emit roomWanted(kKitchenNumber);
    kitchen().showPans(section, intake::dayOfNumber(day));
  });
  connect(room, &TodayRoom::observationWanted, this, [this] {
    emit roomWanted(kHealthNumber);
    health().writeDown();
  });
  connect(room, &TodayRoom::dietWanted, this, [this](const QString& name) {
    emit roomWanted(kDietsNumber);
    const std::vector<FinderHit> hits = diets().find(name, 1);
    if (!hits.empty()) diets().goTo(hits.front().id);
  });
  return room;
}

FoodsRoom* Rooms::buildFoods() {
  auto* room = new FoodsRoom(parts_.collection, parts_.files, parts_.dialogs);
  room->desk().setEnergy(parts_.preferences.energy());
  // Only what could be read is opened again next time.
  connect(&room->desk(), &FoodDesk::listChanged, this, [this] {
    if (parts_.collection.file()) parts_.preferences.setLastCollection(parts_.collection.file()->file);
  });
  return room;
}

AnimalsRoom* Rooms::buildAnimals() {
  auto* room = new AnimalsRoom(parts_.collection, parts_.today);
  connect(room, &AnimalsRoom::dietWanted, this, [this](const QString& group) {
    emit roomWanted(kDietsNumber);
    diets().designFor(group);
  });
  connect(&room->desk(), &AnimalDesk::listChanged, this, &Rooms::contentsChanged);
  return room;
}

DietsRoom* Rooms::buildDiets() {
  auto* room = new DietsRoom(parts_.solve, parts_.collection, parts_.dialogs, parts_.today);
  room->setEnergy(parts_.preferences.energy());
  connect(&room->shelf(), &DietShelf::changed, this, &Rooms::contentsChanged);
  return room;
}

KitchenRoom* Rooms::buildKitchen() {
  auto* room = new KitchenRoom(parts_.collection, parts_.dialogs, parts_.today);
  room->scaleBar().use(parts_.preferences.scale());
  connect(&room->scaleBar(), &ScaleBar::chosen, this,
          [this](const ScaleSettings& scale) { parts_.preferences.setScale(scale); });
  return room;
}

IntakeRoom* Rooms::buildIntake() {
  return new IntakeRoom(parts_.collection, parts_.dialogs, parts_.today);
}

HealthRoom* Rooms::buildHealth() {
  return new HealthRoom(parts_.collection, parts_.dialogs, parts_.today);
}

std::optional<EmptyRoom> Rooms::hintOf(int number) const {
  if (foods_ == nullptr || animals_ == nullptr || diets_ == nullptr) return std::nullopt;
  const DietShelf& shelf = diets_->shelf();
  if (!shelf.isRead() || animals_->desk().isReading() || foods_->desk().isReading()) return std::nullopt;
  return hintFor(number, {.foods = !foods_->desk().foods().empty(),
                          .animals = !animals_->desk().isEmpty(),
                          .diets = !shelf.diets().empty(),
                          .fedDiets = shelf.hasFedDiet()});
}

bool Rooms::mayLeave() const {
  return std::ranges::all_of(built_, [](Room* room) { return room->mayLeave(); });
}

void Rooms::setEnergy(EnergyUnit energy) {
  parts_.preferences.setEnergy(energy);
  if (foods_ != nullptr) foods_->desk().setEnergy(energy);
  if (diets_ != nullptr) diets_->setEnergy(energy);
}

}  // namespace tarebowl::ui
