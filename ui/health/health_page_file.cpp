// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/health/health_page_file.h"

#include "ui/shared/one_page.h"
#include "ui/shared/whole_file.h"

#include <QCoreApplication>

namespace tarebowl::ui {

std::optional<QString> writeHealthPage(const exchange::CalciumPage& page, const std::filesystem::path& file) {
  const std::filesystem::path kind = file.extension();
  if (kind == ".pdf")
    return writeWholeFile(file, [&](QIODevice& out) {
      layOutOnePage(QString::fromStdString(exchange::calciumPageAsHtml(page)),
                    QString::fromStdString(page.subject.name), out);
    });
  if (kind == ".html" || kind == ".json")
    return writeWholeFile(file, [&](QIODevice& out) {
      out.write(QByteArray::fromStdString(kind == ".html" ? exchange::calciumPageAsHtml(page)
                                                          : exchange::writeCalcium(page)));
    });
  return QCoreApplication::translate("HealthPage", "%1: a review is written as .pdf, .html or .json")
      .arg(toText(file));
}

}  // namespace tarebowl::ui
