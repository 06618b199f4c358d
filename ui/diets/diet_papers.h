// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/transfer/desk_diet.h"
#include "ui/shared/dialogs.h"

#include <QObject>

#include <string>

namespace tarebowl::ui {

class DietDesk;
class VersionDocument;

/// What leaves the collection of the version on the desk, written or not: its sheet on paper or as a file, or
/// the problem that the command line solves.
class DietPapers : public QObject {
  Q_OBJECT
 public:
  DietPapers(DietDesk& desk, VersionDocument& version, const Dialogs& dialogs, QWidget* parent);
  void print();
  void write();

 signals:
  void told(const QString& what);
  void refused(const QString& why);

 private:
  [[nodiscard]] transfer::DeskDiet asShown() const;

  DietDesk& desk_;
  VersionDocument& version_;
  QWidget* window_;
  Dialogs::AskForFile askForFile_;
  Dialogs::Print print_;
};

}  // namespace tarebowl::ui
