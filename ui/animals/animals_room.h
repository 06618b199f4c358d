// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/animal_desk.h"
#include "ui/shared/room.h"

class QLabel;
class QStackedWidget;

namespace tarebowl::ui {

class AnimalList;
class GroupPane;
class IndividualPane;
class NewSpeciesPage;
class PageHeader;
class ReasonBar;
class SpeciesPane;

/// The animals of the collection: species, groups and individuals at the left, the one that is looked at at
/// the right. It only wires.
class AnimalsRoom : public Room {
  Q_OBJECT
 public:
  AnimalsRoom(OpenCollection& collection, AnimalDesk::Clock today, QWidget* parent = nullptr);

  [[nodiscard]] RoomState state() const override;
  [[nodiscard]] std::vector<FinderHit> find(const QString& partOfName, int most) const override;
  void goTo(qint64 id) override;

  [[nodiscard]] AnimalDesk& desk() const { return *desk_; }
  [[nodiscard]] AnimalList& list() const { return *list_; }
  [[nodiscard]] GroupPane& groupPane() const { return *group_; }
  [[nodiscard]] IndividualPane& individualPane() const { return *individual_; }
  [[nodiscard]] NewSpeciesPage& newSpecies() const { return *newSpecies_; }
  [[nodiscard]] ReasonBar& reasonBar() const { return *reason_; }

 signals:
  /// Somebody wants to design a diet for this group, by its code; it has a profile in force.
  void dietWanted(const QString& group);

 private:
  void build();
  [[nodiscard]] QWidget* makeStart();
  [[nodiscard]] QWidget* makeRight();
  void wire();
  void addActions();
  void showRight();
  void showPlace(const AnimalPlace& place);
  void startSpecies();
  void leaveSpecies();
  void addGroup();
  void addIndividual();
  void complain(const Refusal& refusal);

  OpenCollection& collection_;
  AnimalDesk* desk_;
  AnimalList* list_;
  PageHeader* header_;
  ReasonBar* reason_;
  GroupPane* group_;
  IndividualPane* individual_;
  SpeciesPane* species_;
  NewSpeciesPage* newSpecies_;
  QWidget* start_ = nullptr;
  QLabel* reading_;
  QStackedWidget* panes_;
  QLabel* banner_;
};

}  // namespace tarebowl::ui
