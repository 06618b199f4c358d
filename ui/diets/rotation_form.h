// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/plain_rules.h"
#include "core/quantity/date.h"

#include <QFrame>

#include <string>

class QCheckBox;
class QComboBox;
class QDateEdit;
class QDoubleSpinBox;
class QPushButton;
class QSpinBox;

namespace tarebowl::ui {

/// Asks what a new rotation is to keep to, in the page and not over it.
class RotationForm : public QFrame {
  Q_OBJECT
 public:
  explicit RotationForm(QWidget* parent = nullptr);
  /// from: the day that is proposed.
  void ask(quantity::Date from);
  [[nodiscard]] exchange::PlainRules rules() const;
  [[nodiscard]] quantity::Date from() const;

 signals:
  void planWanted();
  /// Rules that say more than this form asks, from a file.
  void fileWanted();

 private:
  void build();

  QDateEdit* from_;
  QComboBox* days_;
  QSpinBox* run_;
  QSpinBox* wanted_;
  QSpinBox* most_;
  QDoubleSpinBox* widen_;
  std::vector<QCheckBox*> fasting_;
  QPushButton* plan_;
};

}  // namespace tarebowl::ui
