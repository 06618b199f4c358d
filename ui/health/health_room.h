// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/health/health_desk.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/room.h"
#include "ui/shared/rows_model.h"

#include <string>

class QComboBox;
class QLabel;
class QListWidget;
class QPushButton;
class QTabWidget;

namespace tarebowl::ui {

class CalciumReview;
class HealthTimeline;
class LookBackPane;
class ObservationForm;
class PlainTable;

/// The health of the animals: what was seen, on one time axis with what was eaten; the calcium review and the
/// look-back. It only wires.
class HealthRoom : public Room {
  Q_OBJECT
 public:
  HealthRoom(OpenCollection& collection, Dialogs dialogs, HealthDesk::Clock today, QWidget* parent = nullptr);

  [[nodiscard]] RoomState state() const override;
  [[nodiscard]] std::vector<FinderHit> find(const QString& partOfName, int most) const override;
  void goTo(qint64 id) override;

  [[nodiscard]] HealthDesk& desk() const { return *desk_; }
  [[nodiscard]] HealthTimeline& timeline() const { return *timeline_; }
  [[nodiscard]] ObservationForm& form() const { return *form_; }
  [[nodiscard]] PlainTable& observations() const { return *seen_; }
  [[nodiscard]] PlainTable& zones() const;
  [[nodiscard]] PlainTable& links() const;
  /// The form of what was seen, ready to be typed into.
  void writeDown();

 protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;

 private:
  void build();
  [[nodiscard]] QWidget* makeLeft();
  [[nodiscard]] QWidget* makeHead();
  void explainParts();
  void wire();
  void showPatients();
  void showView();
  void lookBackFromRow(int row);
  void chooseFile();
  void keep(bool confirmed);
  void writePage();
  void showPageButton();
  void complain(const QString& text);

  OpenCollection& collection_;
  Dialogs dialogs_;
  HealthDesk* desk_;
  QListWidget* patients_;
  ObservationForm* form_;
  PlainTable* seen_;
  RowsModel* seenRows_;
  HealthTimeline* timeline_;
  CalciumReview* review_;
  LookBackPane* lookBack_;
  QTabWidget* tabs_;  ///< the review, the look-back
  QComboBox* days_;
  QPushButton* page_;
  QLabel* heading_;
  QLabel* invented_;
  QLabel* upTo_;
  QLabel* banner_;
};

}  // namespace tarebowl::ui
