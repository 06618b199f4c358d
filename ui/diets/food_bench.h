// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/diet_version.h"

#include <QWidget>

#include <string>

namespace tarebowl::ui {

class AllowanceBar;
class DietDesk;
class FoodNames;
class FoodPicker;
class OpenCollection;
class ProblemDocument;
class VersionDocument;

/// Below the table of foods: foods of the collection are added by name, or allowed without weighing.
class FoodBench : public QWidget {
  Q_OBJECT
 public:
  FoodBench(DietDesk& desk, const ProblemDocument& document, const VersionDocument& version,
            OpenCollection& collection, QWidget* parent = nullptr);
  void pick();

 signals:
  void refused(const QString& why);

 private:
  void add(const QString& code);
  void allow(const diet::Allowance& allowance);
  void showWhatCanBe();

  [[nodiscard]] bool isSomethingOpen() const;

  DietDesk& desk_;
  const ProblemDocument& document_;
  const VersionDocument& version_;
  OpenCollection& collection_;
  FoodNames* names_;
  FoodPicker* picker_;
  AllowanceBar* allowances_;
};

}  // namespace tarebowl::ui
