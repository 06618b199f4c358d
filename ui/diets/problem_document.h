// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/diet_desk.h"
#include "ui/shared/dialogs.h"

#include <QObject>

#include <filesystem>

namespace tarebowl::ui {

/// The file behind the diet on the desk: opening, saving, and whether what is on the desk is on the disk.
class ProblemDocument : public QObject {
  Q_OBJECT
 public:
  ProblemDocument(DietDesk& desk, Dialogs dialogs, QWidget* window);

  /// False where the file cannot be read (failed() says why) or the person would rather stay.
  bool open(const std::filesystem::path& file);
  bool openByDialog();
  /// Something else is on the desk: there is no file behind it.
  void forget();
  /// Writes to the file that was opened, or asks for a place: a file of the sample is never written over.
  bool save();
  bool saveAs();
  /// True once nothing would be lost: saved, or the person said to let it go.
  bool mayLeave();

  [[nodiscard]] const std::filesystem::path& file() const { return file_; }
  [[nodiscard]] bool isSaved() const { return file_.empty() || desk_.undoStack().isClean(); }
  [[nodiscard]] QString title() const;

 signals:
  /// Another file is on the desk, or this one got another place.
  void fileChanged();
  void savedChanged();
  void failed(const QString& why);

 private:
  bool writeTo(const std::filesystem::path& file);

  DietDesk& desk_;
  Dialogs dialogs_;
  QWidget* window_;
  std::filesystem::path file_;
};

}  // namespace tarebowl::ui
