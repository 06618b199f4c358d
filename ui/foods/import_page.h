// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/import_desk.h"
#include "ui/foods/mapping_model.h"
#include "ui/shared/dialogs.h"

#include <QWidget>

class QLabel;
class QProgressBar;
class QPushButton;
class QTableView;

namespace tarebowl::ui {

class ImportPreview;
class ImportSettings;

/// A table on its way into the collection: how it is read at the left, what will become of each line at the
/// right, and below what the whole of it will do.
class ImportPage : public QWidget {
  Q_OBJECT
 public:
  ImportPage(ImportDesk& desk, Dialogs& dialogs, QWidget* parent = nullptr);

  [[nodiscard]] QTableView& mappingTable() const { return *mapping_; }
  [[nodiscard]] MappingModel& mappingModel() const { return *model_; }
  [[nodiscard]] ImportPreview& preview() const { return *preview_; }

 signals:
  void done();
  void otherTableWanted();

 private:
  void build();
  [[nodiscard]] QWidget* makeHeader();
  [[nodiscard]] QWidget* makeMapping();
  [[nodiscard]] QWidget* makeFoot();
  void wire();
  void showStage();
  void complain(const QString& what);
  void saveMapping();
  void loadMapping();
  void fitColumns();
  /// The table of columns has another width: a splitter or a window was moved.
  bool eventFilter(QObject* watched, QEvent* event) override;

  ImportDesk& desk_;
  Dialogs& dialogs_;
  MappingModel* model_;
  QTableView* mapping_;
  ImportSettings* settings_;
  ImportPreview* preview_;
  QLabel* title_;
  QLabel* complaint_;
  QLabel* summary_;
  QProgressBar* progress_;
  QPushButton* stop_;
  QPushButton* import_;
  QPushButton* back_ = nullptr;
};

}  // namespace tarebowl::ui
