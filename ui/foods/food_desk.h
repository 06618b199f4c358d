// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/clerk.h"
#include "ui/foods/derived_values.h"
#include "ui/foods/food_search.h"

#include <QObject>
#include <QUndoStack>

#include <map>
#include <optional>
#include <set>
#include <vector>

namespace tarebowl::ui {

/// What is open: a collection by its name, and whether it is the invented sample.
struct OpenCollection {
  QString name;  ///< "Brackenmere foods"
  QString file;  ///< its file's name; empty while it is kept in memory alone
  bool invented = false;
};

/// The foods of the open collection, the one that is looked at, and the way back. No widget, and nothing
/// here waits for the disk.
class FoodDesk : public QObject {
  Q_OBJECT
 public:
  explicit FoodDesk(QObject* parent = nullptr);
  ~FoodDesk() override;

  void open(OpenCollection what, LarderOpener opener);
  [[nodiscard]] const std::optional<OpenCollection>& collection() const { return collection_; }
  void setPerson(const QString& name) { person_ = name; }

  /// By name and form.
  [[nodiscard]] const std::vector<FoodListing>& foods() const { return foods_; }
  [[nodiscard]] const FoodSearch& search() const { return search_; }
  /// The whole list has not arrived yet.
  [[nodiscard]] bool isReading() const { return reading_; }
  [[nodiscard]] bool isBusy() const { return clerk_ && clerk_->isBusy(); }
  [[nodiscard]] bool isIdle() const { return !clerk_ || clerk_->isIdle(); }

  /// Water, protein, calcium and phosphorus of a food, once the clerk has read them; asks for them where it
  /// has not.
  [[nodiscard]] const food::Composition* figures(FoodKey key);
  /// The same without asking.
  [[nodiscard]] const food::Composition* knownFigures(FoodKey key) const;
  void readFigures(std::vector<FoodKey> foods);
  using Compositions = std::vector<std::pair<FoodKey, food::Composition>>;
  /// Reads what these foods are made of when there is nothing more pressing to do.
  void readCompositions(const std::vector<FoodKey>& foods, const std::vector<food::NutrientId>& nutrients,
                        std::function<void(const Compositions&)> then);
  [[nodiscard]] std::vector<FoodKey> foodsOfGroup(const std::string& group) const;

  void show(FoodKey key);
  [[nodiscard]] std::optional<FoodKey> shownKey() const { return shown_; }
  /// The food that is looked at; nothing until it was read.
  [[nodiscard]] const std::optional<FoodPage>& page() const { return page_; }
  [[nodiscard]] const std::vector<DerivedValue>& values() const { return values_; }
  [[nodiscard]] std::optional<food::Food> foodOf(FoodKey key) const;

  // The verbs: each is one step of undo, and is on the disk as soon as it is done.
  void addFood(const food::Food& food);
  void changeFood(const food::Food& after);
  void removeFood();
  void addSample(const food::Sample& sample);
  void changeSample(SampleKey key, const food::Sample& after, const QString& what = {});
  void removeSample(SampleKey key);
  void setAside(SampleKey key, const QString& reason);
  void takeBackIn(SampleKey key);
  void setByHand(const SetByHand& hand);
  void takeHandAway(food::NutrientId nutrient);

  [[nodiscard]] QUndoStack& undoStack() { return undoStack_; }
  /// Reads the list and the shown food again: somebody else wrote.
  void refresh();

 signals:
  void opened();
  void listChanged();
  void pageChanged();
  void figuresRead();
  void refused(const tarebowl::ui::Refusal& refusal);
  void busyChanged();

 private:
  friend class LarderCommand;
  void perform(const LarderEdit& edit, const QString& what);
  void write(const LarderEdit& edit, std::function<void(const LarderEdit&)> then);
  void readList();
  void takeList(std::vector<FoodListing> foods);
  void takePage(FoodKey key, std::optional<FoodPage> page);
  void afterEdit(const LarderEdit& edit);
  [[nodiscard]] const KeptSample* sample(SampleKey key) const;

  std::optional<OpenCollection> collection_;
  QString person_;
  std::vector<FoodListing> foods_;
  FoodSearch search_;
  std::map<FoodKey, food::Composition> figures_;
  std::set<FoodKey> asked_;
  std::optional<FoodKey> shown_;
  std::optional<FoodPage> page_;
  std::vector<DerivedValue> values_;
  bool reading_ = false;
  QUndoStack undoStack_;
  std::unique_ptr<Clerk> clerk_;
};

}  // namespace tarebowl::ui
