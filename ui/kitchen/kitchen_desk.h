// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/collection/open_collection.h"
#include "ui/kitchen/kitchen_sheet.h"

#include <QObject>
#include <QString>

#include <functional>
#include <optional>
#include <string>

namespace tarebowl::ui {

/// The kitchen of one section on one day: the sheet, the line that is on the scale, and what becomes of a
/// weight. No widget, and nothing here waits for the disk.
class KitchenDesk : public QObject {
  Q_OBJECT
 public:
  using Clock = std::function<quantity::Date()>;
  KitchenDesk(OpenCollection& collection, Clock today, QObject* parent = nullptr);

  [[nodiscard]] OpenCollection& collection() const { return collection_; }
  [[nodiscard]] quantity::Date today() const { return today_(); }
  [[nodiscard]] quantity::Date day() const { return day_; }
  [[nodiscard]] const std::optional<KitchenSheet>& sheet() const { return sheet_; }
  [[nodiscard]] bool isReading() const { return reading_; }
  /// What is on the scale is about to change: the sheet is not there yet, or a weight is being written.
  [[nodiscard]] bool isUnsettled() const { return writing_ > 0 || (reading_ && item() == nullptr); }

  /// What is weighed: what goes into the bowls, or what came back in them.
  enum class Task { WeighIn, Leftovers };
  [[nodiscard]] Task task() const { return task_; }
  void setTask(Task task);

  void showSection(const QString& section);
  void showDay(quantity::Date day);
  void refresh();
  /// What others write is read while somebody looks; else when somebody looks again.
  void setInSight(bool inSight);

  /// The line on the scale; nothing where the sheet has none.
  [[nodiscard]] const std::optional<SheetLine>& place() const { return place_; }
  [[nodiscard]] const intake::PrepBowl* bowl() const;
  [[nodiscard]] const intake::BowlItem* item() const;
  [[nodiscard]] quantity::Grams tolerance() const;  ///< of the line on the scale
  void goTo(SheetLine place);
  /// Steps through the lines of the sheet, or bowl by bowl.
  void step(int lines);
  void stepBowl(int bowls);
  /// Up, down, page up and page down do the same; false for any other key (Qt::Key).
  bool moveBy(int key);
  /// To the next line that is not done, after this one and then from the beginning.
  void goOn();

  /// What is to be asked about a weight before it is kept.
  [[nodiscard]] std::vector<intake::WeighingDoubt> doubtsAbout(quantity::Grams actual) const;
  /// Writes the weight of the line on the scale, opening the sheet where it is not, and goes on.
  void weigh(quantity::Grams actual);
  /// Writes that others are given instead of a food, opening the sheet where it is not.
  void swapFood(intake::SwapMade made);
  /// Puts a weight right that is written already.
  void correct(quantity::Grams actual, const QString& reason);

  /// What was left of the line on the scale; lost: of what was spilled or stolen, where somebody can say.
  struct LeftInBowl {
    intake::LeftoverKind kind = intake::LeftoverKind::NotWeighed;
    std::optional<quantity::Grams> left{};
    std::optional<quantity::Grams> lost{};
  };
  /// Writes it, and goes on.
  void noteLeft(const LeftInBowl& what);
  void correctLeft(const LeftInBowl& what, const QString& reason);
  /// What is left of all foods of the bowl together.
  void noteRemainder(quantity::Grams left);
  void correctRemainder(quantity::Grams left, const QString& reason);

  /// A control pan of this section and day; one that is there already is changed or taken out.
  void addPan(intake::ControlPan pan);
  void changePan(const store::StoredControlPan& seen, intake::ControlPan changed);
  void removePan(const store::StoredControlPan& seen);
  /// From the day of the sheet on the house feeds the food on the scale from this lot; one that begins on
  /// this day already is put right.
  void beginLot(const QString& lot);
  /// The rule of weighing of the house.
  void setRule(const intake::ToleranceRule& rule);

 signals:
  void opened();
  void sheetChanged();
  void placeChanged();
  void taskChanged();
  /// What was asked for has been answered, and the line that comes next is on the scale.
  void settled();
  /// Something was written: where a first entry of somebody else was there, that is told.
  void weighed(bool second);
  /// What was asked for waits for the server: the desk's copy does not take it.
  void waitsForServer();
  /// The desk's copy does not hold the day.
  void dayNotOnCopy();

 private:
  void startAnew();
  void read();
  void showNothing();
  void take(KitchenSheet sheet);
  [[nodiscard]] bool isDone(const SheetLine& line) const;
  [[nodiscard]] std::optional<intake::WeightBefore> weightBefore() const;
  using Work = std::function<store::Kept(store::Collection&, const store::Author&)>;
  /// Works on the sheet's next line afterwards, or stays where it is.
  enum class Then { GoOn, Stay };
  void write(Work work, Then then = Then::GoOn);
  /// What was read off the scale: it is kept on the desk's copy where the server is away, and sent later.
  void record(store::KitchenEntry entry);
  void keepForLater(const store::KitchenEntry& entry);
  [[nodiscard]] store::KitchenEntry entryOf(store::Noted noted, store::NotedValue value,
                                            const QString& reason = {}) const;
  struct Written {
    store::Kept kept = store::Kept::First;
    std::optional<KitchenSheet> sheet{};  ///< nothing where the server went away after it was written
    bool reached = true;                  ///< the server was there
  };
  struct SheetOf {
    std::string section{};
    quantity::Date day{};
  };
  void takeWritten(Written written, const SheetOf& of, Then then);

  OpenCollection& collection_;
  Clock today_;
  quantity::Date day_;
  Task task_ = Task::WeighIn;
  std::string section_;
  std::optional<KitchenSheet> sheet_;
  std::optional<SheetLine> place_;
  bool reading_ = false;
  int writing_ = 0;  ///< writes that are not answered yet
  bool inSight_ = false;
  bool old_ = false;  ///< something was written since it was read
};

}  // namespace tarebowl::ui
