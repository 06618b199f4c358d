// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/import_desk.h"

#include <QAbstractTableModel>

#include <vector>

namespace tarebowl::ui {

/// What each column of the table becomes, to be looked at and changed; below them, in a long table, the names
/// of nutrients in it that need a meaning.
class MappingModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { Title, Examples, Becomes, Unit, Basis, ColumnCount };
  enum Role {
    RemarkRole = Qt::UserRole,  ///< a softer word after the text: "assumed"
    DoubtRole,                  ///< the guess was not sure of this row
    LeftOutRole
  };

  explicit MappingModel(ImportDesk& desk, QObject* parent = nullptr);

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  [[nodiscard]] bool isLong() const { return desk_.mapping().isLong; }
  /// A column of a long table, which becomes a role and not a nutrient.
  [[nodiscard]] bool usesRoles(const QModelIndex& index) const { return isLong() && isColumn(index.row()); }

 signals:
  /// What was typed is not understood; nothing was changed.
  void notUnderstood(const QString& complaint);

 private:
  /// A nutrient as a long table calls it.
  struct CodedName {
    std::string name;
    std::size_t lines = 0;  ///< that have it; 0 where the mapping brought it along
    bool kept = false;      ///< of some of them the value is kept under this name
    bool operator==(const CodedName&) const = default;
  };
  [[nodiscard]] bool isColumn(int row) const { return row < static_cast<int>(uses_.size()); }
  [[nodiscard]] const CodedName& codedAt(int row) const {
    return coded_[static_cast<std::size_t>(row) - uses_.size()];
  }
  void take();
  void takeCoded();
  [[nodiscard]] std::vector<CodedName> codedNames() const;
  [[nodiscard]] QVariant columnData(int row, int column, int role) const;
  [[nodiscard]] QVariant codedData(const CodedName& coded, int column, int role) const;
  [[nodiscard]] QString remarkOf(int row, int column) const;
  [[nodiscard]] bool hasUnit(int row) const;
  bool setColumn(int row, int column, const QVariant& value);
  bool setCoded(const CodedName& coded, const QString& text);
  void keep(int row, const exchange::ColumnUse& use);

  ImportDesk& desk_;
  std::vector<exchange::ColumnUse> uses_;  ///< one a column of the table
  std::vector<CodedName> coded_;
};

}  // namespace tarebowl::ui
