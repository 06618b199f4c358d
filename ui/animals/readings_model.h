// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/animal_desk.h"
#include "ui/animals/mass_chart_state.h"

#include <QAbstractTableModel>

#include <vector>

namespace tarebowl::ui {

/// Every weighing and score of what is shown, the newest first; what is doubtful or left out says so.
class ReadingsModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { Day, Who, Value, How, Remark, ColumnCount };

  explicit ReadingsModel(AnimalDesk& desk, QObject* parent = nullptr);

  struct Row {
    quantity::Date on{};
    QString who{};
    QString value{};
    QString how{};
    QString remark{};
    ReadingTrust trust = ReadingTrust::Counts;
    std::optional<store::MassId> mass{};  ///< nothing: a score
    std::optional<animal::MassDoubt> doubt{};
    quantity::Kilograms kilograms{};
  };
  [[nodiscard]] const Row* rowAt(const QModelIndex& index) const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  void rebuild();
  void addMasses(const MeasuredSeries& series);

  AnimalDesk& desk_;
  std::vector<Row> rows_;
};

}  // namespace tarebowl::ui
