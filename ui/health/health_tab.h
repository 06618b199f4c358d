// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QScrollArea>

class QLabel;

namespace tarebowl::ui {

class PlainTable;
class WrappingRow;

/// A tab of the health room, which scrolls: what is asked, what comes of it in words, and in a table.
class HealthTab : public QScrollArea {
  Q_OBJECT
 protected:
  HealthTab(const QString& name, PlainTable* table, QWidget* parent);

  [[nodiscard]] WrappingRow& asked() const { return *asked_; }
  [[nodiscard]] QLabel& words() const { return *words_; }
  [[nodiscard]] PlainTable& table() const { return *table_; }

 private:
  WrappingRow* asked_;
  QLabel* words_;
  PlainTable* table_;
};

}  // namespace tarebowl::ui
