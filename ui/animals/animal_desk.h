// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/target_profile.h"
#include "core/store/animal_verbs.h"
#include "core/store/change_log.h"
#include "core/store/mass_verbs.h"
#include "core/store/profile_verbs.h"
#include "ui/animals/animal_page.h"
#include "ui/animals/new_species.h"
#include "ui/collection/open_collection.h"

#include <QObject>
#include <QUndoStack>

#include <functional>
#include <optional>
#include <vector>

namespace tarebowl::ui {

/// The animals of the open collection, the species, group or individual that is looked at, and the way back.
/// No widget, and nothing here waits for the disk.
class AnimalDesk : public QObject {
  Q_OBJECT
 public:
  using Clock = std::function<quantity::Date()>;
  /// today: on which memberships, stages and masses are looked at.
  AnimalDesk(OpenCollection& collection, Clock today, QObject* parent = nullptr);
  ~AnimalDesk() override;

  [[nodiscard]] OpenCollection& collection() const { return collection_; }
  [[nodiscard]] quantity::Date today() const { return today_(); }
  [[nodiscard]] const Herd& herd() const { return herd_; }
  [[nodiscard]] bool isEmpty() const { return herd_.species.empty(); }
  /// The herd has not arrived yet.
  [[nodiscard]] bool isReading() const { return reading_; }

  void show(const AnimalPlace& place);
  [[nodiscard]] const std::optional<AnimalPlace>& shown() const { return shown_; }
  /// What is looked at; nothing until it was read.
  [[nodiscard]] const std::optional<AnimalPage>& page() const { return page_; }
  /// What changed of it, the newest first; read when there is nothing more pressing to do.
  [[nodiscard]] const std::vector<store::Change>& history() const { return history_; }

  // The verbs: each is one step of undo, and is on the disk as soon as it is done. Those that name nothing
  // are about the thing that is looked at.
  void addSpecies(const animal::Species& species);
  void changeSpecies(const animal::Species& after);
  void addGroup(const animal::Group& group);
  void changeGroup(const animal::Group& after);
  /// An animal, and its stay in a group where one is named.
  void addIndividual(const animal::Individual& individual, const std::string& group);
  void changeIndividual(const animal::Individual& after);
  void removeShown();
  void addStay(const animal::Membership& stay);
  void endStay(store::MembershipId id);

  void addMass(const store::MassRecord& mass, store::Confirmed confirmed);
  void leaveMassOut(store::MassId id, const QString& reason);
  void countMassAgain(store::MassId id);
  void correctMass(store::MassId id, quantity::Kilograms mass, const QString& reason);
  void addCondition(const store::ConditionRecord& condition);

  /// From today on; a plan of today is changed, an older one stays as it was.
  void setEnergyPlan(const animal::EnergyPlan& plan);
  /// Changes the draft; where the version is in force, drafts the next one with the change.
  void changeProfile(const ProfileInSight& version, const animal::TargetProfile& after, const QString& what);
  void removeDraft(const ProfileInSight& version);
  void putInForce(const ProfileInSight& version, const QString& reason);
  /// A species new to the collection, with its group and profile, in one step; its group is shown.
  /// written: called once it is on the disk.
  void takeIn(const NewSpecies& told, std::function<void()> written = {});
  /// Targets for the group that is shown, which has none: a profile that derives from a model.
  void startFromModel(const ModelChoice& choice);

  [[nodiscard]] QUndoStack& undoStack() { return undoStack_; }
  /// Reads the list and what is shown again: somebody else wrote.
  void refresh();

 signals:
  /// Another collection, or none.
  void opened();
  void listChanged();
  void pageChanged();
  void historyRead();

 private:
  void performAll(CollectionEdit edit);
  void perform(CollectionVerb verb, const QString& what, std::optional<AnimalKind> adds = std::nullopt);
  [[nodiscard]] const store::StoredMass* massOfId(store::MassId id) const;
  void startAnew();
  void readList();
  void takeList(Herd herd);
  void takePage(const AnimalPlace& place, std::optional<AnimalPage> page);
  void readHistory();
  void readAgain();

  OpenCollection& collection_;
  Clock today_;
  Herd herd_;
  std::optional<AnimalPlace> shown_;
  std::string awaited_;  // code of a group that is shown as soon as it is in the list
  std::optional<AnimalPage> page_;
  std::vector<store::Change> history_;
  bool reading_ = false;
  QUndoStack undoStack_;
};

}  // namespace tarebowl::ui
