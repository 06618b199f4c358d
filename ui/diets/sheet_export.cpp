// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/sheet_export.h"

#include "core/exchange/problem_json.h"
#include "ui/shared/one_page.h"
#include "ui/shared/page_tongue.h"
#include "ui/shared/paths.h"
#include "ui/shared/whole_file.h"

#include <QCoreApplication>

namespace tarebowl::ui {
namespace {

struct Sheets {
  Q_DECLARE_TR_FUNCTIONS(Sheets)
};

}  // namespace

void printSheet(const exchange::DietSheet& sheet, QPagedPaintDevice& device) {
  layOutOnePage(QString::fromStdString(exchange::sheetAsHtml(sheet, pageTongue())), device);
}

std::optional<QString> writeSheet(const exchange::DietSheet& sheet, const std::filesystem::path& file) {
  const std::filesystem::path kind = file.extension();
  if (kind == ".pdf")
    return writeWholeFile(file, [&](QIODevice& out) {
      layOutOnePage(QString::fromStdString(exchange::sheetAsHtml(sheet, pageTongue())),
                    QString::fromStdString(sheet.title), out);
    });
  if (kind == ".html")
    return writeWholeFile(file, [&](QIODevice& out) {
      out.write(QByteArray::fromStdString(exchange::sheetAsHtml(sheet, pageTongue())));
    });
  if (kind != ".xlsx")
    return Sheets::tr("%1: a sheet is written as .pdf, .xlsx, .html or .json").arg(toText(file));
  try {
    exchange::writeSheetXlsx(sheet, file, pageTongue());
  } catch (const exchange::FormatError& error) {
    return QString::fromStdString(error.what());
  }
  return std::nullopt;
}

}  // namespace tarebowl::ui
