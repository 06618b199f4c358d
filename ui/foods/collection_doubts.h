// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/collection_checks.h"
#include "ui/foods/check_sentences.h"
#include "ui/foods/food_desk.h"
#include "ui/shared/errand.h"

#include <QTimer>

#include <optional>
#include <vector>

namespace tarebowl::ui {

/// A doubt about a food of the collection, and the other food where it is about two.
struct Doubt {
  FoodId food{};
  food::FoodFinding finding{};
  std::optional<FoodId> other{};
};

/// What a careful analyst would doubt in the whole collection: each food by itself, beside its group and by
/// the calendar. Worked out on a thread of its own once the collection has been left alone for a moment, and
/// again after each change.
class CollectionDoubts : public QObject {
  Q_OBJECT
 public:
  CollectionDoubts(OpenCollection& collection, FoodDesk& foods, QObject* parent = nullptr);

  /// By food, in the order of the collection; nothing until they were worked out for the first time.
  [[nodiscard]] const std::optional<std::vector<Doubt>>& doubts() const { return doubts_; }
  /// Those about a food that only other foods or the calendar show.
  [[nodiscard]] std::vector<Doubt> comparisonsOf(FoodId food) const;
  [[nodiscard]] bool isWorking() const { return wait_.isActive() || errand_.isBusy(); }
  /// Why the foods could not be looked through the last time; empty where they could.
  [[nodiscard]] const QString& complaint() const { return complaint_; }
  /// The doubt as the room says it, the other food by its name.
  [[nodiscard]] CheckSentence sentenceOf(const Doubt& doubt) const;

 signals:
  void changed();

 private:
  void startAnew();
  void work();
  void takeFailure(const std::exception_ptr& error);

  OpenCollection& collection_;
  FoodDesk& foods_;
  std::optional<std::vector<Doubt>> doubts_;
  QString complaint_;
  QTimer wait_;
  Errand errand_;
};

}  // namespace tarebowl::ui
