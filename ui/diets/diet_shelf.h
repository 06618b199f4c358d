// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/diet_reading.h"
#include "ui/collection/open_collection.h"

#include <QObject>

#include <optional>
#include <vector>

namespace tarebowl::ui {

/// A diet and its versions, the oldest first.
struct ShelvedDiet {
  diet::NamedDiet diet{};
  QString group{};  ///< its name
  std::vector<store::VersionLine> versions{};

  /// The one that is opened: the newest that is not retired, or the newest.
  [[nodiscard]] std::optional<store::VersionId> toOpen() const;
};

/// The diets of the open collection, and the groups that have none yet. Kept as the collection is.
class DietShelf : public QObject {
  Q_OBJECT
 public:
  explicit DietShelf(OpenCollection& collection, QObject* parent = nullptr);

  /// By group and name.
  [[nodiscard]] const std::vector<ShelvedDiet>& diets() const { return contents_.diets; }
  [[nodiscard]] const std::vector<store::StoredGroup>& groupsWithout() const {
    return contents_.groupsWithout;
  }
  [[nodiscard]] const ShelvedDiet* find(const std::string& code) const;
  /// A code that no diet has yet: "tenrecs-diet", "tenrecs-diet-2".
  [[nodiscard]] std::string freeCode(const std::string& group) const;
  /// Some version was approved, and is fed or was.
  [[nodiscard]] bool hasFedDiet() const;
  /// What was read is of the collection that is open.
  [[nodiscard]] bool isRead() const { return isRead_; }
  void read();

 signals:
  void changed();

 private:
  struct Contents {
    std::vector<ShelvedDiet> diets{};
    std::vector<store::StoredGroup> groupsWithout{};
  };
  static Contents readFrom(store::Collection& collection);

  OpenCollection& collection_;
  Contents contents_;
  bool isRead_ = false;
};

}  // namespace tarebowl::ui
