// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/intake/study_desk.h"

#include <QFrame>

class QDateEdit;
class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;

namespace tarebowl::ui {

/// Faeces of the group that were collected and analysed: those that are there, and a line for another. Enter
/// keeps it, Delete on one of the list takes it out.
class FaecesCard : public QFrame {
  Q_OBJECT
 public:
  explicit FaecesCard(StudyDesk& desk, QWidget* parent = nullptr);

  /// The days that a new collection begins with.
  void setDays(const DaySpan& days);
  [[nodiscard]] QListWidget& list() const { return *list_; }
  [[nodiscard]] QLineEdit& fresh() const { return *fresh_; }
  [[nodiscard]] QLineEdit& dryMatter() const { return *dryMatter_; }
  [[nodiscard]] QLineEdit& values() const { return *values_; }
  [[nodiscard]] QLabel& message() const { return *message_; }

  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void build();
  void showFaeces();
  void empty();
  void keep();
  void takeOut();
  void say(const QString& text);

  StudyDesk& desk_;
  QListWidget* list_;
  QLabel* none_;
  QDateEdit* from_;
  QDateEdit* until_;
  QLineEdit* fresh_;
  QLineEdit* dryMatter_;
  QLineEdit* values_;
  QLineEdit* source_;
  QPushButton* keep_;
  QPushButton* takeOut_;
  QLabel* message_;
};

}  // namespace tarebowl::ui
