// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTableView>

namespace tarebowl::ui {

/// The balance ladder: one rung per target. Shows any model whose rows give a Rung (see rung.h); the rungs
/// are also there as text, for screen readers and for copying.
class BalanceLadder : public QTableView {
  Q_OBJECT
 public:
  explicit BalanceLadder(QWidget* parent = nullptr);
  void setModel(QAbstractItemModel* model) override;
  /// Tall enough for every rung.
  [[nodiscard]] QSize sizeHint() const override;

 private:
  void fitColumns();
};

}  // namespace tarebowl::ui
