// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/collection/open_collection.h"
#include "ui/diets/rotation_view.h"
#include "ui/shared/errand.h"

#include <QObject>
#include <QUndoStack>

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace tarebowl::ui {

/// The rotations of a version of a diet, and the one that is looked at: plans on a thread of its own, writes
/// what comes of it, and keeps the way back. What a hand does is shown at once, and again once the rest has
/// adapted. No widget.
class RotationPlanner : public QObject {
  Q_OBJECT
 public:
  using Function =
      std::function<diet::RotationPlan(const diet::RotationProblem&, const diet::RotationOptions&)>;
  using Clock = std::function<quantity::Date()>;
  RotationPlanner(Function rotate, OpenCollection& collection, Clock today, QObject* parent = nullptr);

  /// Of a version, the first one first.
  struct Listed {
    store::RotationId id{};
    quantity::Date from{};
    quantity::Date until{};
  };
  /// Lists the rotations of a version and shows the one that has today, or that comes next, or the last.
  void open(const std::string& dietCode, store::VersionId version, int number);
  [[nodiscard]] store::VersionId version() const { return version_; }
  [[nodiscard]] const std::vector<Listed>& list() const { return list_; }
  void show(store::RotationId id);
  /// Nothing where the version has no rotation, or none is read yet.
  [[nodiscard]] const RotationView* view() const { return view_ ? &*view_ : nullptr; }
  [[nodiscard]] quantity::Date today() const { return today_(); }

  /// Plans days of the version that is open, by a file of rules.
  void plan(const std::string& rules, quantity::Date from);
  void moveFood(std::size_t food, int from, int to);
  void setGrams(std::size_t food, int day, quantity::Grams grams);
  /// Locks a cell as it is, or sets it free; nothing is planned anew.
  void turnLock(std::size_t food, int day);
  /// What was fed stays, and the days from today on are planned anew.
  void planAgain(bool asEaten);
  void remove();

  [[nodiscard]] bool isPlanning() const { return errand_.isBusy(); }
  /// Takes the best plan that is found so far.
  void stop() { errand_.stop(); }
  [[nodiscard]] QUndoStack& undoStack() { return undoStack_; }

 signals:
  void listChanged();
  void viewChanged();
  void planningChanged();
  /// Why nothing came of something.
  void told(const QString& what);

 private:
  void readList(std::optional<store::RotationId> toShow);
  void showNone();
  void readAgain();
  void adapt(const diet::LockedCells& locks, const QString& what);
  /// How much is looked for, and the plan from before that is adapted; none: every day is planned anew.
  struct Effort {
    int tries = 0;
    std::vector<diet::Diet> start{};
  };
  void solve(transfer::RotationDesk desk, quantity::Date plannedFrom, Effort effort, const QString& what);
  void keep(const diet::KeptRotation& rotation, const QString& what);

  Function rotate_;
  OpenCollection& collection_;
  Clock today_;
  std::string diet_{};
  store::VersionId version_{};
  int number_ = 0;
  std::vector<Listed> list_;
  std::optional<RotationView> view_;
  std::shared_ptr<int> revision_ = std::make_shared<int>(0);  // the newest that was written; writers share it
  int keeping_ = 0;                                           // writes that are not answered yet
  QUndoStack undoStack_;
  Errand errand_;  // last: its thread ends first
};

}  // namespace tarebowl::ui
