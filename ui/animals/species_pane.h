// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/animal_desk.h"

#include <QWidget>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;

namespace tarebowl::ui {

/// A species: its names, what it lives on, the groups of animals it belongs to, and the cautions that follow.
class SpeciesPane : public QWidget {
  Q_OBJECT
 public:
  explicit SpeciesPane(AnimalDesk& desk, QWidget* parent = nullptr);

 private:
  [[nodiscard]] QWidget* makeForm();
  [[nodiscard]] QLineEdit* addField(QFormLayout& form, const QString& name, const QString& hint);
  void showPage();
  void keep();

  AnimalDesk& desk_;
  QLineEdit* name_;
  QLineEdit* scientific_;
  QComboBox* feeding_;
  QLineEdit* taxa_;
  QLineEdit* note_;
};

/// "mammal, primate, lemur" as a list, without empty words.
[[nodiscard]] std::vector<std::string> taxaFrom(const QString& text);
/// All feeding types, in their order.
void addFeedingTypes(QComboBox& box);

}  // namespace tarebowl::ui
