// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/diet_draft.h"
#include "ui/shared/energy_unit.h"

#include <QWidget>

class QComboBox;
class QLabel;

namespace tarebowl::ui {

class BalanceLadder;
class DietDesk;
class LadderModel;
class RungDetail;

/// The right of the room: the ladder, and what the chosen rung opens into.
class BalancePane : public QWidget {
  Q_OBJECT
 public:
  explicit BalancePane(DietDesk& desk, QWidget* parent = nullptr);
  void choose(RungRef rung);
  /// The rung that is open.
  [[nodiscard]] std::optional<RungRef> chosen() const;
  [[nodiscard]] LadderModel& ladder() const { return *model_; }
  /// In which unit energy is read.
  void setEnergy(EnergyUnit energy);
  [[nodiscard]] bool hasHand() const;

 signals:
  void exploreWanted(const tarebowl::ui::RungRef& rung);

 private:
  void reset();
  void chooseFirst();
  void showChosen();
  void buildSwitches();
  void showSummary();
  void showNotJudged();
  void showView();

  DietDesk& desk_;
  LadderModel* model_;
  BalanceLadder* ladder_;
  RungDetail* detail_;
  QLabel* summary_;
  QLabel* notJudged_;
  QWidget* switches_;
  QComboBox* order_;
  QComboBox* basis_;
  QComboBox* eaten_;
  bool chosenByHand_ = false;  ///< until then the first rung is open, whichever that is
  bool choosing_ = false;
};

}  // namespace tarebowl::ui
