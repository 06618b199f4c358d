// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/transfer/day_overview.h"
#include "ui/collection/open_collection.h"
#include "ui/shared/room.h"
#include "ui/today/today_rows.h"

#include <functional>
#include <optional>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace tarebowl::ui {

class ReasonBar;

/// What is due today, section by section, and what waits for a decision; each row leads to its place. What is
/// shown is read while the room is in sight.
class TodayRoom : public Room {
  Q_OBJECT
 public:
  using Clock = std::function<quantity::Date()>;
  TodayRoom(OpenCollection& collection, Clock today, QWidget* parent = nullptr);

  [[nodiscard]] RoomState state() const override;
  [[nodiscard]] std::vector<FinderHit> find(const QString& partOfName, int most) const override;
  void goTo(qint64 id) override;

  [[nodiscard]] const std::optional<transfer::DayOverview>& overview() const { return overview_; }
  [[nodiscard]] std::vector<QPushButton*> rows() const { return rows_; }
  [[nodiscard]] ReasonBar& reasonBar() const { return *reason_; }
  [[nodiscard]] QPushButton& writeDown() const { return *writeDown_; }

 signals:
  /// day: days since 1970-01-01.
  void kitchenWanted(const QString& section, int day);
  void leftoversWanted(const QString& section, int day);
  void pansWanted(const QString& section, int day);
  /// Part of the name by which the diets' own finder knows it.
  void dietWanted(const QString& name);
  /// Something was seen of an animal and is to be written down.
  void observationWanted();

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  void read();
  void showOverview();
  void addCard(const TodayCard& card);
  void follow(const TodayRow& row);
  void decide(const store::StoredSwap& swap);
  void decideOn(const store::StoredSwap& swap, bool approved, const QString& reason);

  OpenCollection& collection_;
  Clock today_;
  std::optional<transfer::DayOverview> overview_;
  bool old_ = true;
  QLabel* heading_;
  QPushButton* writeDown_;
  QLabel* banner_;
  ReasonBar* reason_;
  QVBoxLayout* cards_;
  std::vector<QPushButton*> rows_;
};

}  // namespace tarebowl::ui
