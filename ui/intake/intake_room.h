// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/intake/intake_desk.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/room.h"

class QComboBox;
class QFrame;
class QLabel;
class QTabWidget;

namespace tarebowl::exchange {
struct StudyPlanToWrite;
}

namespace tarebowl::ui {

class ChoiceChart;
class FoodBandsChart;
class GroupChoice;
class IntakeSide;
class PlainTable;
class RowsModel;
class SegmentedSwitch;
class StudyPage;
class SubjectBox;
class TimeChart;
class ValueChart;
class YesterdayPage;

/// What was really eaten: over a week or ten years, and yesterday's bowls to fill in. It only wires.
class IntakeRoom : public Room {
  Q_OBJECT
 public:
  IntakeRoom(OpenCollection& collection, Dialogs dialogs, IntakeDesk::Clock today, QWidget* parent = nullptr);

  [[nodiscard]] RoomState state() const override;
  [[nodiscard]] std::vector<FinderHit> find(const QString& partOfName, int most) const override;
  void goTo(qint64 id) override;

  [[nodiscard]] IntakeDesk& desk() const { return *desk_; }
  [[nodiscard]] FoodBandsChart& foods() const { return *foods_; }
  [[nodiscard]] ValueChart& value() const { return *value_; }
  [[nodiscard]] PlainTable& table() const { return *table_; }
  [[nodiscard]] StudyPage& study() const { return *study_; }
  [[nodiscard]] YesterdayPage& yesterday() const { return *yesterday_; }

 protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;

 private:
  void build();
  [[nodiscard]] QWidget* makeOverTime();
  [[nodiscard]] QWidget* makeHead();
  [[nodiscard]] QWidget* makeCharts();
  void wire();
  void wire(TimeChart& chart);
  void showGroup();
  void showSpan();
  void showTrend();
  void showChoice();
  void showWords();
  void copy();
  void write(const char* ending);
  void writeStudyOf(const DaySpan& days);
  void writePlan(const exchange::StudyPlanToWrite& plan);
  void complain(const QString& text);

  OpenCollection& collection_;
  Dialogs dialogs_;
  IntakeDesk* desk_;
  QTabWidget* pages_;
  GroupChoice* groups_;
  SegmentedSwitch* range_;
  SegmentedSwitch* shows_;
  SubjectBox* subject_;
  FoodBandsChart* foods_;
  QTabWidget* below_;
  ValueChart* value_;
  ValueChart* ratio_;
  ChoiceChart* choice_;
  QComboBox* bowl_;
  PlainTable* table_;
  RowsModel* rows_;
  IntakeSide* side_;
  StudyPage* study_;
  YesterdayPage* yesterday_;
  QLabel* heading_;
  QLabel* invented_;
  QLabel* inSight_;
  QLabel* valueTitle_;
  QLabel* ratioTitle_;
  QLabel* banner_;
};

}  // namespace tarebowl::ui
