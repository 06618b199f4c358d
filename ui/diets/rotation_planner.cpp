// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/rotation_planner.h"

#include "core/exchange/problem_json.h"
#include "core/store/reading.h"
#include "core/transfer/desk_diet.h"
#include "ui/diets/rotation_text.h"
#include "ui/shared/date_text.h"

#include <algorithm>
#include <utility>
#include <variant>

namespace tarebowl::ui {

namespace {

using store::RotationId;
using transfer::RotationOnDesk;

/// A hand that moves one food waits for the rest, which adapts from what it was; who plans a week will wait
/// longer for a better one. So many tries in a row that better nothing end the search; the time is for a
/// machine that is busy.
constexpr int kTriesForAHand = 6;
constexpr int kTriesForAPlan = 60;
constexpr std::chrono::seconds kMostTime{20};

std::vector<RotationPlanner::Listed> listOf(store::Collection& collection, const std::string& diet,
                                            int version) {
  std::vector<RotationPlanner::Listed> list;
  for (const store::StoredRotation& rotation : store::rotationsOfDiet(collection, diet))
    if (rotation.record.version == version)
      list.push_back({rotation.id, rotation.record.from, rotation.record.until});
  return list;
}

/// The one that has the day, or that comes next, or the last.
std::optional<RotationId> nearest(const std::vector<RotationPlanner::Listed>& list, quantity::Date day) {
  if (list.empty()) return std::nullopt;
  const auto next = std::ranges::find_if(list, [day](const auto& each) { return each.until >= day; });
  return next == list.end() ? list.back().id : next->id;
}

/// The cells that were laid down as they will be, before the rest has followed.
void layDown(const diet::LockedCells& locks, RotationView& view) {
  view.on.desk.problem.rules.locked = locks;
  const auto& foods = view.problem().base.foods;
  for (const diet::LockedCell& cell : locks) {
    const auto food = std::ranges::find(foods, cell.food, &diet::DietFood::id);
    if (food != foods.end() && !view.isOver(cell.day))
      view.on.days.at(static_cast<std::size_t>(cell.day)).at(static_cast<std::size_t>(food - foods.begin())) =
          cell.grams;
  }
  view.standing = diet::standingOf(view.problem(), view.on.days);
}

}  // namespace

RotationPlanner::RotationPlanner(Function rotate, OpenCollection& collection, Clock today, QObject* parent)
    : QObject(parent), rotate_(std::move(rotate)), collection_(collection), today_(std::move(today)) {
  connect(&errand_, &Errand::failed, this, [this](const std::exception_ptr&) {
    emit told(tr("Nothing was planned: the planning itself failed."));
    readAgain();
  });
  connect(&collection_, &OpenCollection::outdated, this, [this](const store::Touched& what) {
    using enum store::Part;
    if (what.any({Foods, Animals, Targets, Diets, Kitchen})) readAgain();
  });
  connect(&collection_, &OpenCollection::written, this, [this](const QObject* by) {
    if (by != this) readAgain();
  });
  connect(&collection_, &OpenCollection::hindered, this, [this](const Refusal& refusal) {
    if (std::exchange(keeping_, 0) == 0) return;
    emit told(refusal.why);
    readAgain();
  });
  connect(&collection_, &OpenCollection::opened, this, [this] {
    errand_.cancel();
    undoStack_.clear();
    diet_.clear();
    list_.clear();
    view_.reset();
    emit listChanged();
    emit viewChanged();
  });
}

void RotationPlanner::open(const std::string& dietCode, store::VersionId version, int number) {
  errand_.cancel();
  undoStack_.clear();
  diet_ = dietCode;
  version_ = version;
  number_ = number;
  view_.reset();
  list_.clear();
  emit listChanged();
  emit viewChanged();
  emit planningChanged();
  readList(std::nullopt);
}

void RotationPlanner::readList(std::optional<RotationId> toShow) {
  collection_.ask(store::inOneReading([diet = diet_, number = number_](store::Collection& collection) {
                    return listOf(collection, diet, number);
                  }),
                  [this, diet = diet_, number = number_, toShow](std::vector<Listed> list) {
                    if (diet != diet_ || number != number_) return;
                    list_ = std::move(list);
                    const bool isThere =
                        toShow && std::ranges::find(list_, *toShow, &Listed::id) != list_.end();
                    const auto id = isThere ? toShow : nearest(list_, today_());
                    if (id)
                      show(*id);
                    else
                      showNone();
                    emit listChanged();
                  });
}

void RotationPlanner::show(RotationId id) {
  collection_.ask(store::inOneReading([id, day = today_()](store::Collection& collection) {
                    auto read = transfer::readRotation(collection, id, day);
                    std::optional<RotationView> view;
                    if (!read) return view;
                    view.emplace();
                    view->on = std::move(*read);
                    view->standing = diet::standingOf(view->problem(), view->on.days);
                    return view;
                  }),
                  [this](std::optional<RotationView> view) {
                    if (errand_.isBusy()) return;  // what is being planned is read again once it is written
                    if (view && (view->kept().diet != diet_ || view->kept().version != number_)) return;
                    view_ = std::move(view);
                    *revision_ = view_ ? view_->on.kept.revision : 0;
                    emit viewChanged();
                  });
}

void RotationPlanner::showNone() {
  view_.reset();
  *revision_ = 0;
  emit viewChanged();
}

void RotationPlanner::readAgain() {
  if (diet_.empty()) return;
  readList(view_ && view_->on.kept.id != RotationId{} ? std::optional(view_->on.kept.id) : std::nullopt);
}

void RotationPlanner::plan(const std::string& rules, quantity::Date from) {
  using Laid = std::variant<transfer::RotationDesk, QString>;
  collection_.ask(
      [version = version_, rules, from, day = today_()](store::Collection& collection) -> Laid {
        try {
          auto desk = transfer::readDesk(collection, version, day);
          if (!desk) return tr("This version is no longer in the collection.");
          return transfer::layOutRotation(collection, std::move(*desk), rules, {std::nullopt, from}, day);
        } catch (const exchange::FormatError& error) {
          return QString::fromStdString(error.what());
        }
      },
      [this](const Laid& laid) {
        if (const auto* why = std::get_if<QString>(&laid)) return emit told(*why);
        const auto& desk = std::get<transfer::RotationDesk>(laid);
        showNone();
        solve(desk, desk.from, {kTriesForAPlan}, tr("plan %1").arg(periodText(desk.from, desk.until())));
      });
}

void RotationPlanner::moveFood(std::size_t food, int from, int to) {
  if (!view_) return;
  const QString name = QString::fromStdString(view_->problem().base.foods.at(food).name);
  adapt(diet::locksWithFoodMoved(view_->problem(), view_->on.days, food, from, to),
        tr("%1 from %2 to %3").arg(name, shortDay(view_->dateOf(from)), shortDay(view_->dateOf(to))));
}

void RotationPlanner::setGrams(std::size_t food, int day, quantity::Grams grams) {
  if (!view_) return;
  const QString name = QString::fromStdString(view_->problem().base.foods.at(food).name);
  adapt(diet::locksWithGrams(view_->problem(), food, day, grams),
        tr("%1 on %2").arg(name, shortDay(view_->dateOf(day))));
}

void RotationPlanner::turnLock(std::size_t food, int day) {
  if (!view_ || view_->isOver(day) || view_->isAllowance(food)) return;
  const bool locked = view_->isLocked(day, food);
  view_->on.desk.problem.rules.locked =
      diet::locksWithCellTurned(view_->problem(), view_->on.days, food, day);
  emit viewChanged();
  const QString name = QString::fromStdString(view_->problem().base.foods.at(food).name);
  keep(transfer::keptRotation(view_->on.desk, transfer::planOf(view_->on),
                              static_cast<std::uint64_t>(view_->kept().seed), view_->kept().plannedFrom),
       (locked ? tr("free %1 on %2") : tr("lock %1 on %2")).arg(name, shortDay(view_->dateOf(day))));
}

void RotationPlanner::adapt(const diet::LockedCells& locks, const QString& what) {
  if (locks == view_->problem().rules.locked) return;
  std::vector<diet::Diet> before = view_->on.days;
  layDown(locks, *view_);
  emit viewChanged();
  solve(view_->on.desk, view_->kept().plannedFrom, {kTriesForAHand, std::move(before)}, what);
}

void RotationPlanner::planAgain(bool asEaten) {
  if (!view_) return;
  if (today_() > view_->kept().until)
    return emit told(tr("All days of this rotation are over: plan the next ones."));
  collection_.ask(
      [id = view_->on.kept.id, asEaten, day = today_()](store::Collection& collection) {
        auto read = transfer::readRotation(collection, id, day);
        if (!read) return read;
        read->desk.asEaten = asEaten;
        transfer::takeFedDays(collection, read->kept.record, day, read->desk);
        return read;
      },
      [this](const std::optional<RotationOnDesk>& read) {
        if (!read || !view_ || read->kept.id != view_->on.kept.id) return;
        solve(read->desk, std::max(today_(), read->desk.from), {kTriesForAPlan}, tr("plan again from today"));
      });
}

void RotationPlanner::solve(transfer::RotationDesk desk, quantity::Date plannedFrom, Effort effort,
                            const QString& what) {
  const auto seed = static_cast<std::uint64_t>(view_ ? view_->kept().seed : 1);
  diet::RotationProblem problem = desk.problem;
  errand_.run(
      [rotate = rotate_, problem = std::move(problem), seed,
       effort = std::move(effort)](const Errand::Terms& terms) {
        diet::RotationOptions options;
        options.deadline = kMostTime;
        options.rounds = effort.tries;
        options.start = effort.start;
        options.seed = seed;
        options.stop = terms.stop;
        return rotate(problem, options);
      },
      [this, desk = std::move(desk), plannedFrom, seed, what](const diet::RotationPlan& plan) {
        emit planningChanged();
        if (plan.days.empty()) {
          emit told(noPlanText(plan));
          return readAgain();
        }
        keep(transfer::keptRotation(desk, plan, seed, plannedFrom), what);
      });
  emit planningChanged();
}

void RotationPlanner::keep(const diet::KeptRotation& rotation, const QString& what) {
  CollectionEdit edit;
  edit.what = what;
  const std::optional<RotationId> id = view_ ? std::optional(view_->on.kept.id) : std::nullopt;
  edit.verb = [id, rotation, revision = revision_](store::Collection& collection,
                                                   const store::Author& author) {
    const store::Written written = id ? store::editRotation(collection, *id, *revision, rotation, author)
                                      : store::addRotation(collection, rotation, author);
    *revision = written.revision;
    return written;
  };
  edit.done = [this, diet = rotation.diet](const store::Written& written) {
    --keeping_;
    if (diet == diet_) readList(RotationId{written.id});
  };
  edit.takenBack = [this] { readAgain(); };
  ++keeping_;
  collection_.perform(undoStack_, this, std::move(edit));
}

void RotationPlanner::remove() {
  if (!view_) return;
  CollectionEdit edit;
  edit.what = tr("remove the rotation");
  edit.verb = [id = view_->on.kept.id, revision = revision_](store::Collection& collection,
                                                             const store::Author& author) {
    return store::removeRotation(collection, id, *revision, author);
  };
  edit.done = [this](const store::Written&) {
    view_.reset();
    readList(std::nullopt);
  };
  edit.takenBack = [this] { readAgain(); };
  collection_.perform(undoStack_, this, std::move(edit));
}

}  // namespace tarebowl::ui
