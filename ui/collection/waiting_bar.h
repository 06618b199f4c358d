// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/collection/open_collection.h"

#include <QFrame>

class QLabel;
class QPushButton;

namespace tarebowl::ui {

class PlainTable;
class RowsModel;

/// Below every room while the server is away, or while something that this desk wrote meanwhile is not there
/// yet: what waits, and where the server has something else by now, the choice between the two.
class WaitingBar : public QFrame {
  Q_OBJECT
 public:
  explicit WaitingBar(OpenCollection& collection, QWidget* parent = nullptr);

  [[nodiscard]] QString text() const;
  [[nodiscard]] PlainTable& table() const { return *table_; }
  [[nodiscard]] QPushButton& listButton() const { return *list_; }
  [[nodiscard]] QPushButton& mineButton() const { return *mine_; }
  [[nodiscard]] QPushButton& theirsButton() const { return *theirs_; }

 private:
  void build();
  void show();
  void showEntries();
  void showChoice();
  [[nodiscard]] const store::WaitingEntry* chosen() const;
  void choose(store::Choice choice);

  OpenCollection& collection_;
  QLabel* text_;
  QPushButton* list_;
  QWidget* page_;
  PlainTable* table_;
  RowsModel* rows_;
  QLabel* about_;  ///< the entry that is chosen
  QPushButton* mine_;
  QPushButton* theirs_;
};

}  // namespace tarebowl::ui
