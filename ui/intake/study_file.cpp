// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/intake/study_file.h"

#include "core/exchange/problem_json.h"
#include "ui/shared/one_page.h"
#include "ui/shared/whole_file.h"

#include <QCoreApplication>

namespace tarebowl::ui {

std::optional<QString> writeStudy(const exchange::IntakeToWrite& study, const std::filesystem::path& file) {
  const std::filesystem::path kind = file.extension();
  const auto page = [&] { return QString::fromStdString(exchange::studyAsHtml(study)); };
  if (kind == ".pdf")
    return writeWholeFile(file, [&](QIODevice& out) {
      layOutOnePage(page(), QString::fromStdString(exchange::studyHead(study).front()), out);
    });
  if (kind == ".html") return writeWholeFile(file, [&](QIODevice& out) { out.write(page().toUtf8()); });
  if (kind != ".xlsx")
    return QCoreApplication::translate("Study", "%1: a study is written as .pdf, .xlsx or .html")
        .arg(toText(file));
  try {
    exchange::writeStudyXlsx(study, file);
  } catch (const exchange::FormatError& error) {
    return QString::fromStdString(error.what());
  }
  return std::nullopt;
}

}  // namespace tarebowl::ui
