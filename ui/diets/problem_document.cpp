// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/problem_document.h"

#include "core/exchange/problem_json.h"
#include "core/transfer/sample_place.h"
#include "ui/diets/problem_files.h"

#include <QWidget>

#include <system_error>
#include <utility>

namespace tarebowl::ui {
namespace {

bool liesInSample(const std::filesystem::path& file) {
  std::error_code error;
  return std::filesystem::equivalent(file.parent_path(), transfer::sampleFolder(), error);
}

}  // namespace

ProblemDocument::ProblemDocument(DietDesk& desk, Dialogs dialogs, QWidget* window)
    : QObject(window), desk_(desk), dialogs_(std::move(dialogs)), window_(window) {
  connect(&desk.undoStack(), &QUndoStack::cleanChanged, this, &ProblemDocument::savedChanged);
}

QString ProblemDocument::title() const {
  const QString title = QString::fromStdString(desk_.problem().title);
  return title.isEmpty() ? toText(file_.stem()) : title;
}

bool ProblemDocument::open(const std::filesystem::path& file) {
  if (!mayLeave()) return false;
  try {
    diet::BalanceProblem problem = exchange::readProblem(file);
    file_ = file;
    desk_.open(std::move(problem));
  } catch (const exchange::FormatError& error) {
    emit failed(QString::fromStdString(error.what()));
    return false;
  }
  emit fileChanged();
  emit savedChanged();
  return true;
}

void ProblemDocument::forget() {
  file_.clear();
}

bool ProblemDocument::openByDialog() {
  const auto file =
      dialogs_.fileToOpen(window_, file_.empty() ? transfer::sampleFolder() : file_.parent_path());
  return file && open(*file);
}

bool ProblemDocument::save() {
  if (desk_.isEmpty()) return false;
  return file_.empty() || liesInSample(file_) ? saveAs() : writeTo(file_);
}

bool ProblemDocument::saveAs() {
  if (desk_.isEmpty()) return false;
  // A copy of a sample starts where the person keeps files, not in the program's own folder.
  const std::filesystem::path start = liesInSample(file_) ? file_.filename() : file_;
  const auto file = dialogs_.fileToSave(window_, start);
  if (!file || !writeTo(*file)) return false;
  file_ = *file;
  emit fileChanged();
  return true;
}

bool ProblemDocument::writeTo(const std::filesystem::path& file) {
  if (const auto why = saveProblem(file, problemToSave(desk_.draft()))) {
    emit failed(*why);
    return false;
  }
  desk_.undoStack().setClean();
  emit savedChanged();
  return true;
}

bool ProblemDocument::mayLeave() {
  if (isSaved()) return true;
  switch (dialogs_.unsavedChanges(window_, title())) {
    case UnsavedAnswer::Save:
      return save();
    case UnsavedAnswer::Discard:
      return true;
    case UnsavedAnswer::Stay:
      break;
  }
  return false;
}

}  // namespace tarebowl::ui
