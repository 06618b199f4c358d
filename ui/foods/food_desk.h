// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/food_reading.h"
#include "ui/collection/open_collection.h"
#include "ui/shared/energy_unit.h"

#include <QObject>
#include <QUndoStack>

#include <map>
#include <optional>
#include <set>
#include <vector>

namespace tarebowl::ui {

using store::FoodId;
using store::SampleId;

/// What the list shows of a food beside its names.
struct FoodFigures {
  food::Composition composition;
  bool inStock = true;
  bool invented = false;
};

/// The foods of the open collection, the one that is looked at, and the way back. No widget, and nothing
/// here waits for the disk.
class FoodDesk : public QObject {
  Q_OBJECT
 public:
  explicit FoodDesk(OpenCollection& collection, QObject* parent = nullptr);
  ~FoodDesk() override;

  [[nodiscard]] OpenCollection& collection() const { return collection_; }

  /// By name and form.
  [[nodiscard]] const std::vector<food::FoodLine>& foods() const { return foods_; }
  /// Places in foods(): the best `most` for what was typed; all of them for an empty text.
  [[nodiscard]] std::vector<int> find(const QString& text, std::size_t most) const;
  [[nodiscard]] const food::FoodLine* lineOf(FoodId id) const;
  /// The whole list has not arrived yet.
  [[nodiscard]] bool isReading() const { return reading_; }

  /// A food's figures, once the clerk has read them; asks for them where it has not.
  [[nodiscard]] const FoodFigures* figures(FoodId id);
  /// The same without asking.
  [[nodiscard]] const FoodFigures* knownFigures(FoodId id) const;
  void readFigures(std::vector<FoodId> foods);
  using Figures = std::vector<std::pair<FoodId, FoodFigures>>;
  /// Reads what these foods are made of when there is nothing more pressing to do.
  void readCompositions(const std::vector<FoodId>& foods, std::function<void(const Figures&)> then);
  [[nodiscard]] std::vector<FoodId> foodsOfGroup(const std::string& group) const;

  void show(FoodId id);
  [[nodiscard]] std::optional<FoodId> shownId() const { return shown_; }
  /// The food that is looked at; nothing until it was read.
  [[nodiscard]] const std::optional<store::KnownFood>& page() const { return page_; }
  [[nodiscard]] const store::StoredSample* sample(SampleId id) const;

  // The verbs: each is one step of undo, and is on the disk as soon as it is done.
  void addFood(const food::Food& food);
  void changeFood(const food::Food& after);
  void removeFood();
  void addSample(const food::Sample& sample);
  void changeSample(SampleId id, const food::Sample& after);
  void removeSample(SampleId id);
  void setAside(SampleId id, const QString& reason);
  void takeBackIn(SampleId id);
  void setByHand(const food::Override& value);
  void takeHandAway(food::NutrientId nutrient);
  void changePlan(const std::vector<food::PlannedAnalysis>& plan);
  /// Nothing: the food is not worked out from another. What it was mixed from goes, as it cannot be both.
  void changeCooking(const std::optional<food::Cooking>& cooking);
  /// Nothing: the food is not mixed from others. What it was cooked from goes, as it cannot be both.
  void changeRecipe(const std::optional<food::Recipe>& recipe);

  /// An import that was written on another thread for this desk: it goes on the way back.
  void takeImport(TakenImport import);

  /// In which unit energy is read in this room.
  [[nodiscard]] EnergyUnit energy() const { return energy_; }
  void setEnergy(EnergyUnit energy);

  [[nodiscard]] QUndoStack& undoStack() { return undoStack_; }
  /// Reads the list and the shown food again: somebody else wrote.
  void refresh();

 signals:
  /// Another collection, or none.
  void opened();
  void listChanged();
  void pageChanged();
  void figuresRead();
  void energyChanged();

 private:
  /// food: nothing where the verb makes a new one.
  void perform(CollectionVerb verb, const QString& what, std::optional<FoodId> food);
  void editRecord(store::FoodRecord record, const QString& what);
  void startAnew();
  void readList();
  void takeList(std::vector<food::FoodLine> foods);
  void takePage(FoodId id, std::optional<store::KnownFood> page);
  void readAgain(FoodId id);

  OpenCollection& collection_;
  std::vector<food::FoodLine> foods_;
  std::map<FoodId, int> places_;
  food::FoodIndex index_{{}};
  std::map<FoodId, FoodFigures> figures_;
  std::set<FoodId> asked_;
  std::set<FoodId> wanted_;  ///< to be asked for
  std::optional<FoodId> shown_;
  std::optional<store::KnownFood> page_;
  bool reading_ = false;
  EnergyUnit energy_ = EnergyUnit::Kilocalorie;
  QUndoStack undoStack_;
};

/// "Kale": what the list calls it.
[[nodiscard]] QString nameOf(const food::FoodLine& line);

}  // namespace tarebowl::ui
