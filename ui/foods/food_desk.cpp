// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/food_desk.h"

#include "core/store/reading.h"

#include <algorithm>
#include <utility>

namespace tarebowl::ui {
namespace {

constexpr std::size_t kFiguresAtATime = 50;

/// No more than the list shows: thousands of foods are kept so.
FoodFigures trimmed(FoodFigures figures) {
  namespace n = food::nutrients;
  for (const food::NutrientId nutrient : figures.composition.knownNutrients())
    if (nutrient != n::water() && nutrient != n::protein() && nutrient != n::calcium() &&
        nutrient != n::phosphorus())
      figures.composition.erase(nutrient);
  return figures;
}

}  // namespace

FoodDesk::FoodDesk(OpenCollection& collection, QObject* parent) : QObject(parent), collection_(collection) {
  collection_.whenOpened(this, [this] { startAnew(); });
  connect(&collection_, &OpenCollection::outdated, this, [this](const store::Touched& what) {
    if (what.any({store::Part::Foods, store::Part::Targets})) refresh();
  });
  connect(&collection_, &OpenCollection::refused, this, [this] {
    reading_ = false;
    undoStack_.clear();  // it would lead to something that is no longer there
  });
  connect(&collection_, &OpenCollection::written, this, [this](const QObject* by) {
    if (by != this) refresh();
  });
}

FoodDesk::~FoodDesk() {
  undoStack_.disconnect();
}

void FoodDesk::startAnew() {
  undoStack_.clear();
  foods_.clear();
  places_.clear();
  index_ = food::FoodIndex({});
  figures_.clear();
  asked_.clear();
  wanted_.clear();
  shown_.reset();
  page_.reset();
  if (collection_.file()) readList();
  emit opened();
  emit pageChanged();
}

void FoodDesk::readList() {
  reading_ = true;
  // The room in sight has read what it shows before this.
  collection_.askWhenIdle(
      store::inOneReading([](store::Collection& collection) {
        std::vector<food::FoodLine> foods = store::listFoods(collection);
        std::sort(foods.begin(), foods.end(), [](const food::FoodLine& a, const food::FoodLine& b) {
          return std::tie(a.name, a.form, a.id) < std::tie(b.name, b.form, b.id);
        });
        return foods;
      }),
      [this](std::vector<food::FoodLine> foods) { takeList(std::move(foods)); });
}

void FoodDesk::takeList(std::vector<food::FoodLine> foods) {
  reading_ = false;
  foods_ = std::move(foods);
  places_.clear();
  for (std::size_t i = 0; i < foods_.size(); ++i) places_[FoodId{foods_[i].id}] = static_cast<int>(i);
  index_ = food::FoodIndex(foods_);
  emit listChanged();
  if (!shown_ && !foods_.empty()) show(FoodId{foods_.front().id});
  collection_.readAhead(this, [this] {
    for (std::size_t i = 0; i < std::min(kFiguresAtATime, foods_.size()); ++i)
      (void)figures(FoodId{foods_[i].id});
  });
}

void FoodDesk::setEnergy(EnergyUnit energy) {
  if (energy == energy_) return;
  energy_ = energy;
  emit energyChanged();
}

void FoodDesk::refresh() {
  if (!collection_.file()) return;
  figures_.clear();
  asked_.clear();
  readList();
  if (shown_) show(*shown_);
}

std::vector<int> FoodDesk::find(const QString& text, std::size_t most) const {
  std::vector<int> places;
  if (text.trimmed().isEmpty()) {
    for (std::size_t i = 0; i < std::min(most, foods_.size()); ++i) places.push_back(static_cast<int>(i));
    return places;
  }
  for (const food::FoodLine& line : index_.find(text.toStdString(), most))
    places.push_back(places_.at(FoodId{line.id}));
  return places;
}

const food::FoodLine* FoodDesk::lineOf(FoodId id) const {
  const auto found = places_.find(id);
  return found == places_.end() ? nullptr : &foods_[static_cast<std::size_t>(found->second)];
}

const FoodFigures* FoodDesk::knownFigures(FoodId id) const {
  const auto found = figures_.find(id);
  return found == figures_.end() ? nullptr : &found->second;
}

const FoodFigures* FoodDesk::figures(FoodId id) {
  if (const FoodFigures* known = knownFigures(id)) return known;
  // A list asks for one after another while it is painted: they are read together.
  if (wanted_.empty())
    QMetaObject::invokeMethod(
        this,
        [this] {
          const std::set<FoodId> wanted = std::exchange(wanted_, {});
          readFigures({wanted.begin(), wanted.end()});
        },
        Qt::QueuedConnection);
  wanted_.insert(id);
  return nullptr;
}

void FoodDesk::readFigures(std::vector<FoodId> foods) {
  std::erase_if(foods, [this](FoodId id) { return asked_.contains(id); });
  for (std::size_t from = 0; from < foods.size(); from += kFiguresAtATime) {
    const auto first = foods.begin() + static_cast<std::ptrdiff_t>(from);
    const auto last =
        foods.begin() + static_cast<std::ptrdiff_t>(std::min(foods.size(), from + kFiguresAtATime));
    const std::vector<FoodId> some(first, last);
    asked_.insert(some.begin(), some.end());
    readCompositions(some, [this](const Figures& read) {
      for (const auto& [id, figures] : read)
        if (asked_.contains(id)) figures_[id] = trimmed(figures);
      emit figuresRead();
    });
  }
}

void FoodDesk::readCompositions(const std::vector<FoodId>& foods, std::function<void(const Figures&)> then) {
  collection_.askWhenIdle(store::inOneReading([foods](store::Collection& collection) {
                            Figures result;
                            for (const FoodId id : foods)
                              store::askAhead(collection, [&] { return store::knowFood(collection, id); });
                            for (const FoodId id : foods)
                              if (const auto known = store::knowFood(collection, id))
                                result.emplace_back(
                                    id, FoodFigures{known->composition, known->food.record.food.inStock,
                                                    known->food.record.food.invented});
                            return result;
                          }),
                          std::move(then));
}

std::vector<FoodId> FoodDesk::foodsOfGroup(const std::string& group) const {
  std::vector<FoodId> ids;
  for (const food::FoodLine& line : foods_)
    if (line.group == group) ids.push_back(FoodId{line.id});
  return ids;
}

void FoodDesk::show(FoodId id) {
  shown_ = id;
  collection_.ask(
      store::inOneReading([id](store::Collection& collection) { return store::knowFood(collection, id); }),
      [this, id](std::optional<store::KnownFood> page) { takePage(id, std::move(page)); });
}

void FoodDesk::takePage(FoodId id, std::optional<store::KnownFood> page) {
  if (shown_ != id) return;
  page_ = std::move(page);
  if (page_) {
    const food::Food& food = page_->food.record.food;
    figures_[id] = trimmed({page_->composition, food.inStock, food.invented});
    asked_.insert(id);
    emit figuresRead();
  } else {
    shown_.reset();
  }
  emit pageChanged();
  // It is gone: the list, read before, no longer has it.
  if (!shown_ && !foods_.empty() && lineOf(id) == nullptr) show(FoodId{foods_.front().id});
}

const store::StoredSample* FoodDesk::sample(SampleId id) const {
  if (!page_) return nullptr;
  for (const store::StoredSample& stored : page_->samples)
    if (stored.id == id) return &stored;
  return nullptr;
}

QString nameOf(const food::FoodLine& line) {
  return QString::fromStdString(line.name);
}

}  // namespace tarebowl::ui
