// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/diet_shelf.h"
#include "ui/diets/version_document.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QToolButton;

namespace tarebowl::ui {

class ApprovalForm;
class ReasonBar;

/// Which version of the diet is on the desk, where it stands in its life, and what can be done with it next.
class VersionBar : public QWidget {
  Q_OBJECT
 public:
  VersionBar(VersionDocument& document, const DietShelf& shelf, ReasonBar& reason, ApprovalForm& approval,
             QWidget* parent = nullptr);

 signals:
  /// version: a store::VersionId as Qt can carry it.
  void versionWanted(qint64 version);
  void compareWanted(int number);
  void sheetWanted();

 private:
  void build();
  void show();
  void fillVersions();
  void fillFurther();
  void stepOn();
  void stepBack();

  VersionDocument& document_;
  const DietShelf& shelf_;
  ReasonBar& reason_;
  ApprovalForm& approval_;
  QToolButton* versions_;
  QLabel* life_;
  QPushButton* on_;
  QPushButton* back_;
  QPushButton* next_;
  QToolButton* further_;
};

}  // namespace tarebowl::ui
