// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/target_profile.h"
#include "ui/animals/candidates_model.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QLabel;
class QLineEdit;
class QListWidget;

namespace tarebowl::ui {

class PlainTable;

/// Choosing a model species: the starters to tick, those ticked side by side, and the one that stands in.
class ModelPicker : public QWidget {
  Q_OBJECT
 public:
  static constexpr int kMostCandidates = 4;

  /// starters: to choose from. lookup: what they take over from.
  ModelPicker(std::vector<animal::TargetProfile> starters, animal::ProfileLookup lookup,
              QWidget* parent = nullptr);

  /// Ticks it, as a hand would.
  void tick(const std::string& code);
  void choose(const std::string& code);
  void clear();
  /// Nothing where none is chosen yet.
  [[nodiscard]] const animal::TargetProfile* chosen() const;
  [[nodiscard]] CandidatesModel& candidates() const { return *model_; }

 signals:
  void chosenChanged();

 private:
  void build();
  void showCandidates();
  [[nodiscard]] std::vector<const animal::TargetProfile*> ticked() const;

  std::vector<animal::TargetProfile> starters_;
  animal::ProfileLookup lookup_;
  QListWidget* list_;
  QComboBox* basis_;
  QComboBox* standsIn_;
  QLabel* told_;
  CandidatesModel* model_;
  PlainTable* table_;
};

}  // namespace tarebowl::ui
