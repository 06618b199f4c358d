// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/edit_commands.h"
#include "ui/diets/live_solver.h"
#include "ui/diets/suggestion.h"

#include <QObject>
#include <QUndoStack>

#include <optional>

namespace tarebowl::ui {

/// The diet that is being designed: the draft, its balance, the solver behind it and the way back. No widget.
class DietDesk : public QObject, private DraftHost {
  Q_OBJECT
 public:
  explicit DietDesk(LiveSolver::Function solve, QObject* parent = nullptr);
  ~DietDesk() override;

  enum class Opening {
    Solve,       ///< the foods give way at once
    AsItStands,  ///< no food moves before a hand does; wouldMove() tells whether one would
    ToRead       ///< nothing can be edited
  };
  /// Puts another problem on the desk; what was undone or could be is forgotten.
  void open(diet::BalanceProblem problem);
  void open(DietDraft draft, Opening how);
  /// The same diet after what it is made from has changed: grams and locks stay as they are. There is no way
  /// back beyond it, since that would lead to values that hold no longer.
  void replace(DietDraft draft);
  [[nodiscard]] bool isReadOnly() const { return opening_ == Opening::ToRead; }
  /// The diet stands as it was written, and the solver would now give other grams.
  [[nodiscard]] bool wouldMove() const { return wouldMove_; }
  void letFoodsMove();
  [[nodiscard]] bool isEmpty() const { return draft_.problem.foods.empty(); }

  [[nodiscard]] const DietDraft& draft() const { return draft_; }
  [[nodiscard]] const diet::BalanceProblem& problem() const { return draft_.problem; }
  [[nodiscard]] const diet::Balance& balance() const { return balance_; }
  /// The solver's answer for the draft as it stands; nothing while it works, in hold, or after an edit.
  [[nodiscard]] const std::optional<diet::DietSolution>& solution() const { return solution_; }
  [[nodiscard]] bool isSolving() const { return solver_.isBusy(); }

  /// Hold: edits only recompute the balance, no food gives way.
  [[nodiscard]] bool isHolding() const { return holding_; }
  void setHolding(bool holding);

  // The verbs: each is one step of undo and re-solves or, in hold, recomputes the balance.
  /// While solving, the food is also locked: it keeps what was typed and the others give way.
  void setGrams(std::size_t food, quantity::Grams mass);
  /// Every food's at once, on the scale, and on hold: the solver would move them again.
  void setAllGrams(const diet::Diet& grams);
  void setLocked(std::size_t food, bool locked);
  /// False, and refused() says why, where the maximum would lie below the minimum.
  bool setLimits(std::size_t food, quantity::Grams min, std::optional<quantity::Grams> max);
  /// False also where a hard rule of the targets would be loosened: reasonWanted() asks why.
  bool setBounds(RungRef rung, const Bounds& bounds);
  void loosenBounds(RungRef rung, const Bounds& bounds, const QString& reason);
  void addFood(const diet::DietFood& food);
  void removeFood(std::size_t food);
  void setPreparation(std::size_t food, const QString& preparation);
  void setPurpose(std::size_t food, diet::Purpose purpose);
  void allow(const diet::DietFood& food, const diet::Allowance& allowance);
  void setChoices(const std::vector<animal::ChoiceRule>& own);
  void setShares(const std::vector<animal::ShareRule>& own);
  /// Tries what was suggested.
  void tryOut(const Suggestion& suggestion);
  void setObjective(const diet::Objective& objective);
  void setConfidence(std::optional<double> confidence);

  /// Between the two, edits of one cell are one step of undo: a number being typed, a wheel being turned.
  void beginGesture() { gesture_ = ++lastGesture_; }
  void endGesture() { gesture_ = 0; }
  /// Takes back what the gesture has done so far.
  void cancelGesture();

  [[nodiscard]] QUndoStack& undoStack() { return undoStack_; }

 signals:
  /// Something else comes on the desk; what is there can still be kept.
  void aboutToOpen();
  void opened();
  /// Other foods or other rules than before: what shows a row for each begins anew.
  void restructured();
  /// Grams, locks or limits differ.
  void foodsChanged();
  /// An edit came to rest: nothing is being typed or solved.
  void settled();
  /// The balance was computed anew; bounds may differ too.
  void balanceChanged();
  /// solution(), isSolving() or isHolding() differ.
  void solvingChanged();
  void refused(const QString& why);
  void reasonWanted(const tarebowl::ui::RungRef& rung, const tarebowl::ui::Bounds& bounds);

 private:
  DietDraft& editableDraft() override { return draft_; }
  void draftEdited() override;
  void push(std::optional<DraftChange> change);
  void tryBound(const MovedBound& moved);
  void solveOrHold();
  void take(const diet::DietSolution& solution);
  void recompute();
  [[nodiscard]] std::vector<std::string> rows() const;

  DietDraft draft_;
  diet::Balance balance_;
  std::optional<diet::DietSolution> solution_;
  std::vector<std::string> shownRows_;  // ids of the foods and rules that were last announced
  Opening opening_ = Opening::Solve;
  bool wouldMove_ = false;
  bool holding_ = false;
  int gesture_ = 0;
  int lastGesture_ = 0;
  int gesturePushed_ = 0;  // the gesture of the newest step of undo
  QUndoStack undoStack_;
  LiveSolver solver_;
};

}  // namespace tarebowl::ui
