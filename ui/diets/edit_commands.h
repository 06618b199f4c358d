// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/diet_draft.h"

#include <QString>
#include <QUndoCommand>

#include <functional>
#include <optional>

/// The verbs of the design desk. Each makes a change that can be taken back, or nothing where nothing would
/// change.
namespace tarebowl::ui {

struct DraftChange {
  QString text;  ///< "House crickets to 6 g", for the undo button
  QString cell;  ///< what it touches; changes of one cell in one gesture are one step of undo
  std::function<void(DietDraft&)> apply;
  std::function<void(DietDraft&)> revert;
};

[[nodiscard]] std::optional<DraftChange> changeGrams(const DietDraft& draft, std::size_t food,
                                                     quantity::Grams mass, bool lock);
[[nodiscard]] std::optional<DraftChange> changeAllGrams(const DietDraft& draft, const diet::Diet& grams);
[[nodiscard]] std::optional<DraftChange> changeLock(const DietDraft& draft, std::size_t food, bool locked);
[[nodiscard]] std::optional<DraftChange> changeLimits(const DietDraft& draft, std::size_t food,
                                                      quantity::Grams min,
                                                      std::optional<quantity::Grams> max);
/// reason: of a hard rule that is loosened; kept with the bound in a draft of the collection.
[[nodiscard]] std::optional<DraftChange> changeBounds(const DietDraft& draft, RungRef rung,
                                                      const Bounds& bounds, const QString& rungName,
                                                      const QString& reason = {});
[[nodiscard]] std::optional<DraftChange> changeObjective(const DietDraft& draft,
                                                         const diet::Objective& objective);
[[nodiscard]] std::optional<DraftChange> changeConfidence(const DietDraft& draft,
                                                          std::optional<double> confidence);

/// A change that is taken back as a whole: what an edit of foods does to their rules is not undone piece by
/// piece.
[[nodiscard]] DraftChange wholeChange(const DietDraft& draft, const QString& text, const QString& touched,
                                      std::function<void(DietDraft&)> apply);
/// A food at the end of the draft, and one out of it; within restructure().
void putFood(DietDraft& draft, const diet::DietFood& food, quantity::Grams amount);
void takeFood(DietDraft& draft, std::size_t food);
/// As a line that is weighed in.
[[nodiscard]] bool hasFood(const DietDraft& draft, const std::string& food);

/// A food more, at the end, with nothing of it in the bowl yet; nothing where it is there already.
[[nodiscard]] std::optional<DraftChange> addFood(const DietDraft& draft, const diet::DietFood& food);
[[nodiscard]] std::optional<DraftChange> removeFood(const DietDraft& draft, std::size_t food);
[[nodiscard]] std::optional<DraftChange> changePreparation(const DietDraft& draft, std::size_t food,
                                                           const QString& preparation);
[[nodiscard]] std::optional<DraftChange> changePurpose(const DietDraft& draft, std::size_t food,
                                                       diet::Purpose purpose);
/// Something that is given unweighed, or its range changed; nothing for the food it is of where it is not
/// known.
[[nodiscard]] std::optional<DraftChange> addAllowance(const DietDraft& draft, const diet::DietFood& food,
                                                      const diet::Allowance& allowance);
/// The rules that the diet has of its own, in place of those it had.
[[nodiscard]] std::optional<DraftChange> changeChoices(const DietDraft& draft,
                                                       const std::vector<animal::ChoiceRule>& own);
[[nodiscard]] std::optional<DraftChange> changeShares(const DietDraft& draft,
                                                      const std::vector<animal::ShareRule>& own);

/// Whoever owns the draft.
class DraftHost {
 public:
  virtual ~DraftHost() = default;
  virtual DietDraft& editableDraft() = 0;
  virtual void draftEdited() = 0;
};

/// A change on the undo stack. Taking it back also brings back the grams and locks that stood before it,
/// which the solver may have moved since.
class DraftCommand : public QUndoCommand {
 public:
  /// gesture: a number shared by the edits of one movement of the hand; 0 never merges.
  DraftCommand(DraftHost& host, DraftChange change, int gesture);

  void redo() override;
  void undo() override;
  [[nodiscard]] int id() const override { return gesture_ == 0 ? -1 : 1; }
  bool mergeWith(const QUndoCommand* other) override;

 private:
  DraftHost& host_;
  DraftChange change_;
  int gesture_;
  diet::Diet gramsBefore_;
  std::vector<bool> lockedBefore_;
};

}  // namespace tarebowl::ui
