// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/target_rows.h"

#include <QAbstractTableModel>

#include <optional>
#include <vector>

namespace tarebowl::ui {

/// The targets of a profile as a ladder: each with its zone, whether it must hold, where it comes from and
/// which version states it. Bounds are edited in place.
class TargetsModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { Name, Min, Preferred, Max, Unit, Zone, Must, Provenance, StatedIn, ColumnCount };
  enum Role { RowRole = Qt::UserRole + 1 };

  explicit TargetsModel(QObject* parent = nullptr);

  /// Nothing: no profile. editable: whether a bound may be typed.
  void show(std::optional<animal::ResolvedProfile> profile, bool editable);
  [[nodiscard]] const std::optional<animal::ResolvedProfile>& profile() const { return profile_; }
  [[nodiscard]] const TargetRow* rowAt(const QModelIndex& index) const;
  [[nodiscard]] int rowOf(const std::string& id) const;
  /// The whole row as a sentence, with its source and what it stands in the place of.
  [[nodiscard]] static QString describe(const TargetRow& row);

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;

 signals:
  void profileEdited(const tarebowl::animal::TargetProfile& after, const QString& what);
  /// The edit raises a safe upper limit: it is made once a reason was given.
  void reasonWanted(const tarebowl::animal::TargetProfile& after, const QString& name, const std::string& id);
  void refused(const QString& why);

 private:
  [[nodiscard]] QVariant textAt(const TargetRow& row, int column) const;

  std::optional<animal::ResolvedProfile> profile_;
  std::vector<TargetRow> rows_;
  bool editable_ = false;
};

}  // namespace tarebowl::ui
