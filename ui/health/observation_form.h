// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/health/observation.h"

#include <QFrame>

#include <functional>
#include <optional>
#include <string>

class QComboBox;
class QDateEdit;
class QLabel;
class QLineEdit;
class QPushButton;

namespace tarebowl::ui {

/// Quick entry of what was seen: kind, day, time, what its kind asks for, a note. Enter keeps it.
class ObservationForm : public QFrame {
  Q_OBJECT
 public:
  explicit ObservationForm(QWidget* parent = nullptr);

  void setToday(quantity::Date today);
  /// What stands in the fields; nothing where a field cannot be read, and the form says which.
  [[nodiscard]] std::optional<health::Observation> observation() const;
  /// Asks whether it is to be kept as it is.
  void question(const QString& why);
  /// A file that was chosen, by its path from the collection's folder.
  void takeFile(const QString& path);
  /// What is the matter with what was chosen or typed.
  void complain(const QString& what) const;
  void clear();

 signals:
  void keepWanted(bool confirmed);
  void fileWanted();

 private:
  void build();
  void showKind();
  [[nodiscard]] bool readScore(health::Observation& seen) const;
  [[nodiscard]] bool readBlood(health::Observation& seen) const;

  QComboBox* kind_;
  QDateEdit* day_;
  QLineEdit* time_;
  QComboBox* scale_;
  QLineEdit* score_;
  QComboBox* appetite_;
  QComboBox* analyte_;
  QLineEdit* value_;
  QComboBox* unit_;
  QLineEdit* low_;
  QLineEdit* high_;
  QLineEdit* note_;
  QLineEdit* file_;
  QPushButton* choose_;
  QPushButton* keep_;
  QPushButton* keepAnyway_;
  QLabel* words_;
};

}  // namespace tarebowl::ui
