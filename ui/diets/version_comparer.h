// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/version_comparison.h"

#include <QObject>

#include <optional>
#include <string>

namespace tarebowl::ui {

class ComparePane;
class DietDesk;
class DietShelf;
class OpenCollection;
class VersionDocument;

/// Keeps the pane of comparison at what differs between the desk and another version of its diet.
class VersionComparer : public QObject {
  Q_OBJECT
 public:
  struct Parts {
    DietDesk& desk;
    VersionDocument& version;
    const DietShelf& shelf;
    ComparePane& pane;
  };
  VersionComparer(Parts parts, OpenCollection& collection, QObject* parent = nullptr);
  void compareWith(int number);

 signals:
  /// There is something to look at.
  void compared();

 private:
  void show();

  Parts parts_;
  OpenCollection& collection_;
  std::optional<ComparedVersion> other_;
};

}  // namespace tarebowl::ui
