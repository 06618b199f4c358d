// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/collection_doubts.h"

#include "core/store/checked_foods.h"
#include "ui/shared/days.h"

#include <utility>

namespace tarebowl::ui {
namespace {

constexpr int kLeftAloneMs = 700;

/// On the errand's thread, with a connection of its own: reading waits for nobody.
std::vector<Doubt> doubtsIn(const CollectionFile& what, const std::string& at, quantity::Date day,
                            const std::stop_token& stop) {
  const auto collection = store::Collection::open(
      what.file, at, {.access = store::OpenOptions::Access::ReadOnly, .password = what.password});
  const store::CheckedFoods read = store::readForChecks(collection, stop);
  std::vector<Doubt> doubts;
  if (stop.stop_requested()) return doubts;
  for (food::FoodFinding& finding : food::checkFoods(read.foods, day)) {
    Doubt doubt{.food = FoodId{read.lines[finding.food].id}};
    if (finding.other) doubt.other = FoodId{read.lines[*finding.other].id};
    doubt.finding = std::move(finding);
    doubts.push_back(std::move(doubt));
  }
  return doubts;
}

bool isByComparison(food::CheckCode code) {
  switch (code) {
    case food::CheckCode::MineralsOverAsh:
    case food::CheckCode::UnitSlip:
    case food::CheckCode::FarFromGroup:
    case food::CheckCode::RatioFarFromGroup:
    case food::CheckCode::SameName:
    case food::CheckCode::SameComposition:
    case food::CheckCode::Stale:
      return true;
    default:
      return false;
  }
}

}  // namespace

CollectionDoubts::CollectionDoubts(OpenCollection& collection, FoodDesk& foods, QObject* parent)
    : QObject(parent), collection_(collection), foods_(foods) {
  wait_.setSingleShot(true);
  wait_.setInterval(kLeftAloneMs);
  connect(&wait_, &QTimer::timeout, this, &CollectionDoubts::work);
  connect(&errand_, &Errand::failed, this, &CollectionDoubts::takeFailure);
  connect(&foods_, &FoodDesk::opened, this, &CollectionDoubts::startAnew);
  connect(&foods_, &FoodDesk::listChanged, this, [this] { wait_.start(); });
}

void CollectionDoubts::startAnew() {
  wait_.stop();
  errand_.cancel();
  doubts_.reset();
  complaint_.clear();
  emit changed();
}

void CollectionDoubts::takeFailure(const std::exception_ptr& error) {
  try {
    std::rethrow_exception(error);
  } catch (const std::exception& wrong) {
    complaint_ = refusalOf(wrong).why;
  }
  doubts_.reset();  // what was found before may no longer hold
  emit changed();
}

void CollectionDoubts::work() {
  if (!collection_.file()) return;
  if (!collection_.isIdle()) return wait_.start();
  errand_.run([what = *collection_.file(), at = collection_.author().at,
               day = today()](const Errand::Terms& terms) { return doubtsIn(what, at, day, terms.stop); },
              [this](std::vector<Doubt> doubts) {
                doubts_ = std::move(doubts);
                complaint_.clear();
                emit changed();
              });
  emit changed();
}

std::vector<Doubt> CollectionDoubts::comparisonsOf(FoodId food) const {
  std::vector<Doubt> found;
  if (!doubts_) return found;
  for (const Doubt& doubt : *doubts_)
    if (doubt.food == food && isByComparison(doubt.finding.finding.code)) found.push_back(doubt);
  return found;
}

CheckSentence CollectionDoubts::sentenceOf(const Doubt& doubt) const {
  CheckSentence sentence = ui::sentenceOf(doubt.finding.finding);
  const food::FoodLine* other = doubt.other ? foods_.lineOf(*doubt.other) : nullptr;
  if (other != nullptr)
    sentence.what += QStringLiteral(" (%1, %2)").arg(nameOf(*other), QString::fromStdString(other->code));
  return sentence;
}

}  // namespace tarebowl::ui
