// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/food_desk.h"

#include "core/store/backup.h"

#include <QDateTime>
#include <QTimer>

#include <algorithm>
#include <utility>

namespace tarebowl::ui {
namespace {

constexpr std::size_t kFiguresAtATime = 50;
constexpr int kLookAroundMs = 1500;

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

FoodDesk::FoodDesk(QObject* parent) : QObject(parent) {
  auto* timer = new QTimer(this);
  connect(timer, &QTimer::timeout, this, [this] {
    if (!clerk_ || !clerk_->isIdle() || reading_ || foods_.empty()) return;
    clerk_->askWhenIdle([](store::Collection& collection) { return collection.changedElsewhere(); },
                        [this](bool changed) {
                          if (changed) refresh();
                        });
  });
  timer->start(kLookAroundMs);
}

FoodDesk::~FoodDesk() {
  clerk_.reset();
  undoStack_.disconnect();
}

store::Author FoodDesk::author() const {
  return {.who = person_.toStdString(),
          .at = QDateTime::currentDateTimeUtc().toString(Qt::ISODate).toStdString()};
}

void FoodDesk::open(OpenCollection what, CollectionOpener opener) {
  collection_ = std::move(what);
  undoStack_.clear();
  foods_.clear();
  places_.clear();
  index_ = food::FoodIndex({});
  figures_.clear();
  asked_.clear();
  shown_.reset();
  page_.reset();
  clerk_ = std::make_unique<Clerk>(std::move(opener));
  connect(clerk_.get(), &Clerk::busyChanged, this, &FoodDesk::busyChanged);
  connect(clerk_.get(), &Clerk::refused, this, [this](const Refusal& refusal) {
    reading_ = false;
    undoStack_.clear();  // it would lead to something that is no longer there
    emit refused(refusal);
    if (!refusal.cannotOpen) return refresh();
    collection_.reset();
    emit opened();
  });
  readList();
  clerk_->askWhenIdle(
      [file = collection_->file, at = author().at](store::Collection& /*collection*/) {
        return store::makeDailyBackup(file, at).has_value();
      },
      [](bool /*made*/) {});
  emit opened();
  emit pageChanged();
}

void FoodDesk::readList() {
  reading_ = true;
  clerk_->ask(
      [](store::Collection& collection) {
        std::vector<food::FoodLine> foods = store::listFoods(collection);
        std::sort(foods.begin(), foods.end(), [](const food::FoodLine& a, const food::FoodLine& b) {
          return std::tie(a.name, a.form, a.id) < std::tie(b.name, b.form, b.id);
        });
        return foods;
      },
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
}

void FoodDesk::restore(const std::filesystem::path& backup) {
  undoStack_.clear();
  clerk_->ask([file = collection_->file, backup, author = author()](
                  store::Collection& /*collection*/) { return store::restore(file, backup, author); },
              [this](const std::filesystem::path& /*before*/) { refresh(); });
}

void FoodDesk::refresh() {
  if (!clerk_) return;
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
  readFigures({id});
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
  clerk_->askWhenIdle(
      [foods](store::Collection& collection) {
        Figures result;
        for (const FoodId id : foods)
          if (const auto known = store::knowFood(collection, id))
            result.emplace_back(id, FoodFigures{known->composition, known->food.record.food.inStock,
                                                known->food.record.food.invented});
        return result;
      },
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
  clerk_->ask([id](store::Collection& collection) { return store::knowFood(collection, id); },
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
