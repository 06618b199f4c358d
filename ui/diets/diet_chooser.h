// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/diet_list_entry.h"
#include "ui/shared/room.h"

#include <QObject>

#include <filesystem>
#include <string>
#include <vector>

namespace tarebowl::ui {

class DietDesk;
class DietList;
class DietShelf;
class OpenCollection;
class ProblemDocument;
class VersionDocument;

/// What comes on the desk: a diet of the collection, a problem file, the first diet of a group. Knows the
/// list at the left and who opens what.
class DietChooser : public QObject {
  Q_OBJECT
 public:
  struct Parts {
    DietList& list;
    DietShelf& shelf;
    DietDesk& desk;
    ProblemDocument& document;
    VersionDocument& version;
  };
  DietChooser(Parts parts, OpenCollection& collection, QObject* parent = nullptr);

  /// Lists the folder and puts this file, or the folder's first readable one, on the desk.
  void openFolder(const std::filesystem::path& folder);
  void openFile(const std::filesystem::path& file);
  /// Begins the first diet of a group, judged by the targets that the group is fed by.
  void designFor(const QString& groupCode);

  /// Diets of the list, then foods of the diet on the desk.
  [[nodiscard]] std::vector<FinderHit> find(const QString& partOfName, int most) const;
  void goTo(qint64 id);

 signals:
  void refused(const QString& why);
  /// A new diet waits for its foods.
  void foodsWanted();
  /// The hand goes to this food of the diet.
  void foodChosen(int food);

 private:
  void openListed(DietListEntry::Kind kind, const QString& key);
  void openFirstDiet();
  void openFirstListed();
  void showCurrent();
  void followFile();

  Parts parts_;
  OpenCollection& collection_;
  bool wantsFirstDiet_ = false;  // once it is read, something is put on an empty desk
  std::filesystem::path folder_;
};

}  // namespace tarebowl::ui
