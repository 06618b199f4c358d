// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/health/health_page_file.h"

#include "ui/shared/one_page.h"
#include "ui/shared/whole_file.h"

#include <QCoreApplication>

#include <functional>
#include <string>

namespace tarebowl::ui {

namespace {

std::optional<QString> writePage(const std::string& name, const std::function<std::string()>& html,
                                 const std::function<std::string()>& json,
                                 const std::filesystem::path& file) {
  const std::filesystem::path kind = file.extension();
  if (kind == ".pdf")
    return writeWholeFile(file, [&](QIODevice& out) {
      layOutOnePage(QString::fromStdString(html()), QString::fromStdString(name), out);
    });
  if (kind == ".html" || kind == ".json")
    return writeWholeFile(file, [&](QIODevice& out) {
      out.write(QByteArray::fromStdString(kind == ".html" ? html() : json()));
    });
  return QCoreApplication::translate("HealthPage",
                                     "%1: a page for the file is written as .pdf, .html or .json")
      .arg(toText(file));
}

}  // namespace

std::optional<QString> writeHealthPage(const exchange::CalciumPage& page, const std::filesystem::path& file) {
  return writePage(
      page.subject.name, [&] { return exchange::calciumPageAsHtml(page); },
      [&] { return exchange::writeCalcium(page); }, file);
}

std::optional<QString> writeHealthPage(const exchange::LookBackPage& page,
                                       const std::filesystem::path& file) {
  return writePage(
      page.subject.name, [&] { return exchange::lookBackPageAsHtml(page); },
      [&] { return exchange::writeLookBack(page); }, file);
}

}  // namespace tarebowl::ui
