// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/target_profile.h"

#include <QAbstractTableModel>

#include <optional>
#include <vector>

namespace tarebowl::ui {

/// Candidate model species side by side: a row for each target, on one basis and in its own unit. What a
/// candidate does not state is `?`; what differs from the first candidate that states it is marked.
class CandidatesModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { Target, Unit, FirstCandidate };

  explicit CandidatesModel(QObject* parent = nullptr);

  void show(const std::vector<animal::ResolvedProfile>& candidates, quantity::Basis basis);
  [[nodiscard]] bool differs(const QModelIndex& index) const;
  [[nodiscard]] int rowOf(const QString& target) const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  struct Cell {
    std::optional<double> min{};
    std::optional<double> max{};
    animal::Provenance provenance = animal::Provenance::Unstated;
    bool stated = false;  ///< by the candidate, on whatever basis
    bool convertible = true;
    bool differs = false;
  };
  struct Row {
    QString name{};
    QString unit{};
    std::vector<Cell> cells{};
  };
  void addTargets(std::size_t candidate, const animal::ResolvedProfile& profile, quantity::Basis basis);
  void addRatios(std::size_t candidate, const animal::ResolvedProfile& profile);
  [[nodiscard]] Cell& cellOf(const QString& name, const QString& unit, std::size_t candidate);
  void markDifferences();
  [[nodiscard]] const Cell* cellAt(const QModelIndex& index) const;

  QStringList names_;
  std::vector<Row> rows_;
};

}  // namespace tarebowl::ui
