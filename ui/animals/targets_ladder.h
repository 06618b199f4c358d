// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/targets_model.h"

#include <QWidget>

#include <functional>
#include <optional>
#include <string>

class QLabel;
class QPushButton;

namespace tarebowl::ui {

class PlainTable;
class ReasonBar;
class RuleAdder;

/// The ladder with all that can be done to a rule. What is to become of the profile is announced; whoever
/// shows it keeps it.
class TargetsLadder : public QWidget {
  Q_OBJECT
 public:
  using Who = std::function<animal::LiftedLimit(const QString& reason)>;
  /// who: names the person and the day where a limit is lifted.
  TargetsLadder(ReasonBar& reason, Who who, QWidget* parent = nullptr);

  void show(std::optional<animal::ResolvedProfile> profile, bool editable);
  [[nodiscard]] TargetsModel& model() const { return *model_; }
  [[nodiscard]] PlainTable& table() const { return *table_; }

 signals:
  void profileEdited(const tarebowl::animal::TargetProfile& after, const QString& what);

 private:
  void build();
  void wire();
  void showChosen();
  void turnHardness();
  void takeOut();
  void lift(const animal::TargetProfile& after, const QString& name, const std::string& id);
  void complain(const QString& why);
  [[nodiscard]] const TargetRow* chosen() const;

  ReasonBar& reason_;
  Who who_;
  TargetsModel* model_;
  PlainTable* table_;
  QLabel* about_;
  QPushButton* turn_;
  QPushButton* takeOut_;
  RuleAdder* adder_;
  bool editable_ = false;
};

}  // namespace tarebowl::ui
