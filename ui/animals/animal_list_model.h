// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/animal_desk.h"

#include <QStandardItemModel>

namespace tarebowl::ui {

/// Species, the groups under each, and the animals under each group; animals of no group stand under their
/// species.
class AnimalListModel : public QStandardItemModel {
  Q_OBJECT
 public:
  enum Role { RemarkRole = Qt::UserRole + 1, KindRole, IdRole };

  explicit AnimalListModel(AnimalDesk& desk, QObject* parent = nullptr);

  /// Keeps what has the text in its name, scientific name, code or section, with what it stands under.
  void look(const QString& text);
  [[nodiscard]] const QString& text() const { return text_; }
  [[nodiscard]] std::optional<AnimalPlace> placeAt(const QModelIndex& index) const;
  /// Invalid where it is not in the list.
  [[nodiscard]] QModelIndex indexOf(const AnimalPlace& place) const;

 private:
  void rebuild();
  [[nodiscard]] bool has(const QStringList& words) const;
  [[nodiscard]] QList<QStandardItem*> makeAnimals(const std::vector<std::string>& codes, bool all) const;
  [[nodiscard]] QList<QStandardItem*> makeGroups(const animal::Species& species, bool all) const;
  [[nodiscard]] std::vector<std::string> withoutGroup(const animal::Species& species) const;

  AnimalDesk& desk_;
  QString text_;
};

}  // namespace tarebowl::ui
