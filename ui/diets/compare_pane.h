// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/version_comparison.h"

#include <QWidget>

class QLabel;

namespace tarebowl::ui {

/// Two versions of a diet: what differs, in words and side by side.
class ComparePane : public QWidget {
  Q_OBJECT
 public:
  explicit ComparePane(QWidget* parent = nullptr);
  void show(const ComparedVersion& before, const ComparedVersion& after);
  /// Nothing is compared.
  void clear();
  [[nodiscard]] const VersionComparison& comparison() const { return *comparison_; }

 private:
  VersionComparison* comparison_;
  QLabel* words_;
};

}  // namespace tarebowl::ui
