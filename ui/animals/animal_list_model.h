// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/animal_desk.h"

#include <QStandardItemModel>

#include <map>
#include <string>
#include <vector>

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
  /// Who is where today.
  struct Housing {
    std::map<std::string, const store::StoredIndividual*> individuals{};  ///< by their codes
    std::map<std::string, std::vector<animal::Membership>> stays{};       ///< by the groups' codes
    std::map<std::string, std::vector<std::string>> withoutGroup{};  ///< codes of animals, by their species'
  };
  [[nodiscard]] Housing housingToday() const;
  [[nodiscard]] QList<QStandardItem*> makeAnimals(const std::vector<std::string>& codes,
                                                  const Housing& housing, bool all) const;
  [[nodiscard]] QList<QStandardItem*> makeGroups(const animal::Species& species, Housing& housing,
                                                 bool all) const;

  AnimalDesk& desk_;
  QString text_;
};

}  // namespace tarebowl::ui
