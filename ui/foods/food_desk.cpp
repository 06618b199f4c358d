// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/food_desk.h"

#include "ui/foods/larder_command.h"

#include <QTimer>

#include <algorithm>
#include <utility>

namespace tarebowl::ui {
namespace {

constexpr std::size_t kFiguresAtATime = 100;
constexpr int kLookAroundMs = 1500;

const std::vector<food::NutrientId>& figureNutrients() {
  static const std::vector<food::NutrientId> nutrients{food::nutrients::water(), food::nutrients::protein(),
                                                       food::nutrients::calcium(),
                                                       food::nutrients::phosphorus()};
  return nutrients;
}

}  // namespace

FoodDesk::FoodDesk(QObject* parent) : QObject(parent) {
  auto* timer = new QTimer(this);
  connect(timer, &QTimer::timeout, this, [this] {
    if (!clerk_ || !clerk_->isIdle()) return;
    clerk_->askWhenIdle([](Larder& larder) { return larder.changedElsewhere(); },
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

void FoodDesk::open(OpenCollection what, LarderOpener opener) {
  collection_ = std::move(what);
  undoStack_.clear();
  foods_.clear();
  search_.setFoods(foods_);
  figures_.clear();
  asked_.clear();
  shown_.reset();
  page_.reset();
  values_.clear();
  clerk_ = std::make_unique<Clerk>(std::move(opener));
  connect(clerk_.get(), &Clerk::busyChanged, this, &FoodDesk::busyChanged);
  connect(clerk_.get(), &Clerk::refused, this, [this](const Refusal& refusal) {
    reading_ = false;
    undoStack_.clear();  // it would lead to something that is no longer there
    emit refused(refusal);
    refresh();
  });
  emit opened();
  emit pageChanged();
  readList();
}

void FoodDesk::readList() {
  reading_ = true;
  clerk_->ask(
      [](Larder& larder) {
        std::vector<FoodListing> foods = larder.foods();
        std::sort(foods.begin(), foods.end(), [](const FoodListing& a, const FoodListing& b) {
          return std::tie(a.food.name, a.food.form, a.key) < std::tie(b.food.name, b.food.form, b.key);
        });
        return foods;
      },
      [this](std::vector<FoodListing> foods) { takeList(std::move(foods)); });
}

void FoodDesk::takeList(std::vector<FoodListing> foods) {
  reading_ = false;
  foods_ = std::move(foods);
  search_.setFoods(foods_);
  emit listChanged();
  if (!shown_ && !foods_.empty()) show(foods_.front().key);
}

void FoodDesk::refresh() {
  if (!clerk_) return;
  figures_.clear();
  asked_.clear();
  readList();
  if (shown_) show(*shown_);
}

const food::Composition* FoodDesk::knownFigures(FoodKey key) const {
  const auto found = figures_.find(key);
  return found == figures_.end() ? nullptr : &found->second;
}

const food::Composition* FoodDesk::figures(FoodKey key) {
  if (const food::Composition* known = knownFigures(key)) return known;
  readFigures({key});
  return nullptr;
}

void FoodDesk::readFigures(std::vector<FoodKey> foods) {
  std::erase_if(foods, [this](FoodKey key) { return asked_.contains(key); });
  for (std::size_t from = 0; from < foods.size(); from += kFiguresAtATime) {
    const auto first = foods.begin() + static_cast<std::ptrdiff_t>(from);
    const auto last =
        foods.begin() + static_cast<std::ptrdiff_t>(std::min(foods.size(), from + kFiguresAtATime));
    const std::vector<FoodKey> some(first, last);
    asked_.insert(some.begin(), some.end());
    readCompositions(some, figureNutrients(), [this](const Compositions& read) {
      for (const auto& [key, composition] : read)
        if (asked_.contains(key)) figures_[key] = composition;
      emit figuresRead();
    });
  }
}

void FoodDesk::readCompositions(const std::vector<FoodKey>& foods,
                                const std::vector<food::NutrientId>& nutrients,
                                std::function<void(const Compositions&)> then) {
  clerk_->askWhenIdle(
      [foods, nutrients](Larder& larder) {
        std::vector<food::Composition> read = larder.compositions(foods, nutrients);
        Compositions result;
        for (std::size_t i = 0; i < foods.size(); ++i) result.emplace_back(foods[i], std::move(read[i]));
        return result;
      },
      std::move(then));
}

std::vector<FoodKey> FoodDesk::foodsOfGroup(const std::string& group) const {
  std::vector<FoodKey> keys;
  for (const FoodListing& listing : foods_)
    if (listing.food.group == group) keys.push_back(listing.key);
  return keys;
}

void FoodDesk::show(FoodKey key) {
  shown_ = key;
  clerk_->ask([key](Larder& larder) { return larder.page(key); },
              [this, key](std::optional<FoodPage> page) { takePage(key, std::move(page)); });
}

void FoodDesk::takePage(FoodKey key, std::optional<FoodPage> page) {
  if (shown_ != key) return;
  page_ = std::move(page);
  values_ = page_ ? derivedValues(*page_) : std::vector<DerivedValue>();
  if (page_) {
    figures_[key] = compositionOf(values_);
    asked_.insert(key);
    emit figuresRead();
  } else {
    shown_.reset();
  }
  emit pageChanged();
}

std::optional<food::Food> FoodDesk::foodOf(FoodKey key) const {
  const auto found = std::find_if(foods_.begin(), foods_.end(),
                                  [key](const FoodListing& listing) { return listing.key == key; });
  if (found == foods_.end()) return std::nullopt;
  return found->food;
}

}  // namespace tarebowl::ui
