// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/diet_verbs.h"
#include "core/transfer/desk_diet.h"
#include "ui/collection/clerk.h"
#include "ui/collection/open_collection.h"

#include <QObject>
#include <QString>
#include <QTimer>

#include <functional>
#include <memory>
#include <optional>

namespace tarebowl::ui {

class DietDesk;
struct DietDraft;

/// The version of a diet of the collection that lies on the desk. A draft is on the disk as soon as a hand
/// rests; there is no button to forget. What others do to it, to its foods or its targets is told, and moves
/// no gram.
class VersionDocument : public QObject {
  Q_OBJECT
 public:
  using Clock = std::function<quantity::Date()>;
  VersionDocument(DietDesk& desk, OpenCollection& collection, Clock today, QObject* parent = nullptr);

  [[nodiscard]] quantity::Date today() const { return today_(); }
  void open(store::VersionId version);
  /// Something else goes on the desk.
  void close();
  /// Whether the diet is judged and solved by what is offered, or by what the group is known to eat of it.
  [[nodiscard]] transfer::CountedAs counted() const { return counted_; }
  void countAs(transfer::CountedAs counted);
  [[nodiscard]] bool isOpen() const { return shown_.has_value(); }
  [[nodiscard]] const std::optional<transfer::DeskDiet>& shown() const { return shown_; }
  /// What the desk shows is what the collection holds.
  [[nodiscard]] bool isSaved() const { return !isDirty() && writing_ == 0; }
  /// Writes at once what waits for a hand to rest.
  void saveNow();

  /// A diet for a group and its first draft, which is opened.
  void design(const diet::NamedDiet& diet, const diet::DietVersion& first);
  /// The next draft, begun from what is on the desk, which is opened.
  void beginNewVersion();
  void rename(const QString& name);
  void submit(const QString& reason);
  void sendBack(const QString& reason);
  void approve(const store::FeedingStart& start, const QString& reason);
  void retire(const QString& reason);
  void removeDraft();
  /// Judges the draft by the targets that its group is fed by now.
  void takeNewerTargets();

  /// After another window was faster: what it wrote, or what is here as a draft of its own.
  void takeTheirs();
  void keepMine();
  [[nodiscard]] bool isInConflict() const { return inConflict_; }

 signals:
  /// Another version is on the desk, or none.
  void opened();
  /// Its state, or what is said of it, differs.
  void changed();
  void savedChanged();
  /// Diets or versions came or went.
  void listChanged();
  void refused(const tarebowl::ui::Refusal& refusal);
  /// What the diet is made from changed meanwhile.
  void told(const QString& what);

 private:
  struct Answer {
    store::Written written{};
    std::optional<Refusal> refusal{};
  };

  void read(store::VersionId version);
  void take(std::optional<transfer::DeskDiet> desk);
  void readAgain();
  void takeAgain(const transfer::DeskDiet& desk);
  void write(
      CollectionVerb verb, std::function<void(const store::Written&)> then,
      std::function<void()> orElse = [] {});
  void save();
  [[nodiscard]] CollectionVerb editOf(const diet::DietVersion& version) const;
  void step(CollectionVerb verb);
  [[nodiscard]] bool isDirty() const;
  [[nodiscard]] bool isDraft() const;

  DietDesk& desk_;
  OpenCollection& collection_;
  Clock today_;
  std::optional<transfer::DeskDiet> shown_;
  diet::DietVersion saved_;
  transfer::CountedAs counted_ = transfer::CountedAs::Offered;
  std::shared_ptr<int> revision_ = std::make_shared<int>(0);  // the newest that was written; writers share it
  int writing_ = 0;                                           // writes that are not answered yet
  bool readsAgain_ = false;                                   // once what is here is written
  bool inConflict_ = false;
  QTimer rest_;
};

}  // namespace tarebowl::ui
