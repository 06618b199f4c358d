// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/intake/study_file.h"

#include "core/exchange/problem_json.h"
#include "ui/shared/one_page.h"
#include "ui/shared/whole_file.h"

#include <QCoreApplication>

namespace tarebowl::ui {

namespace {

/// Nothing where it is neither .pdf nor .html.
std::optional<std::optional<QString>> writePage(const std::string& html, const QString& title,
                                                const std::filesystem::path& file) {
  const QString page = QString::fromStdString(html);
  if (file.extension() == ".pdf")
    return writeWholeFile(file, [&](QIODevice& out) { layOutOnePage(page, title, out); });
  if (file.extension() == ".html")
    return writeWholeFile(file, [&](QIODevice& out) { out.write(page.toUtf8()); });
  return std::nullopt;
}

}  // namespace

std::optional<QString> writeStudyPlan(const exchange::StudyPlanToWrite& plan,
                                      const std::filesystem::path& file) {
  const QString title =
      QCoreApplication::translate("Study", "Study of %1").arg(QString::fromStdString(plan.groupName));
  if (const auto written = writePage(exchange::studyPlanAsHtml(plan), title, file)) return *written;
  return QCoreApplication::translate("Study", "%1: a plan is written as .pdf or .html").arg(toText(file));
}

std::optional<QString> writeStudy(const exchange::IntakeToWrite& study, const std::filesystem::path& file) {
  const QString title = QString::fromStdString(exchange::studyHead(study).front());
  if (const auto written = writePage(exchange::studyAsHtml(study), title, file)) return *written;
  if (file.extension() != ".xlsx")
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
