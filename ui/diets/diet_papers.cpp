// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/diet_papers.h"

#include "core/transfer/desk_sheet.h"
#include "ui/diets/diet_desk.h"
#include "ui/diets/problem_files.h"
#include "ui/diets/sheet_export.h"
#include "ui/diets/version_document.h"
#include "ui/shared/page_tongue.h"
#include "ui/shared/paths.h"

#include <QWidget>

namespace tarebowl::ui {

DietPapers::DietPapers(DietDesk& desk, VersionDocument& version, const Dialogs& dialogs, QWidget* parent)
    : QObject(parent),
      desk_(desk),
      version_(version),
      window_(parent),
      askForFile_(dialogs.sheetToSave),
      print_(dialogs.printer) {}

transfer::DeskDiet DietPapers::asShown() const {
  transfer::DeskDiet shown = *version_.shown();
  if (desk_.isReadOnly()) return shown;
  shown.version.record.version = versionOf(desk_.draft());
  shown.made = diet::versionProblem(shown.version.record.version, desk_.draft().frame->context);
  return shown;
}

void DietPapers::print() {
  if (!version_.isOpen()) return;
  if (!print_) return write();
  const exchange::DietSheet sheet = transfer::sheetOf(asShown(), pageTongue());
  const QString title = QString::fromStdString(sheet.title);
  if (print_(window_, title, [&](QPagedPaintDevice& device) { printSheet(sheet, device); }))
    emit told(tr("printed: %1").arg(title));
}

void DietPapers::write() {
  if (!version_.isOpen() || !askForFile_) return;
  const transfer::DeskDiet shown = asShown();
  const std::string name = shown.diet.record.code + "-" + std::to_string(shown.version.record.version.number);
  const auto file = askForFile_(window_, toPath(QString::fromStdString(name + ".pdf")));
  if (!file) return;
  const auto why = file->extension() == ".json" ? saveProblem(*file, problemToSave(desk_.draft()))
                                                : writeSheet(transfer::sheetOf(shown, pageTongue()), *file);
  if (why)
    emit refused(*why);
  else
    emit told(tr("written: %1").arg(toText(*file)));
}

}  // namespace tarebowl::ui
