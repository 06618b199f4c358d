// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/sheet_export.h"

#include "core/exchange/problem_json.h"
#include "ui/shared/paths.h"

#include <QCoreApplication>
#include <QPageSize>
#include <QPdfWriter>
#include <QSaveFile>
#include <QTextDocument>

namespace tarebowl::ui {
namespace {

struct Sheets {
  Q_DECLARE_TR_FUNCTIONS(Sheets)
};

void layOutPdf(const exchange::DietSheet& sheet, QIODevice& out) {
  QPdfWriter writer(&out);
  writer.setPageSize(QPageSize(QPageSize::A4));
  writer.setPageMargins(QMarginsF(12, 12, 12, 12), QPageLayout::Millimeter);
  writer.setTitle(QString::fromStdString(sheet.title));
  writer.setCreator(QStringLiteral("Tarebowl"));
  QTextDocument document;
  document.setHtml(QString::fromStdString(exchange::sheetAsHtml(sheet)));
  document.print(&writer);
}

std::optional<QString> writeWhole(const std::filesystem::path& file, const auto& fill) {
  QSaveFile out(toText(file));
  if (out.open(QIODevice::WriteOnly)) {
    fill(out);
    if (out.commit()) return std::nullopt;
  }
  return Sheets::tr("%1 was not written: %2").arg(toText(file), out.errorString());
}

}  // namespace

std::optional<QString> writeSheet(const exchange::DietSheet& sheet, const std::filesystem::path& file) {
  const std::filesystem::path kind = file.extension();
  if (kind == ".pdf") return writeWhole(file, [&](QIODevice& out) { layOutPdf(sheet, out); });
  if (kind == ".html")
    return writeWhole(
        file, [&](QIODevice& out) { out.write(QByteArray::fromStdString(exchange::sheetAsHtml(sheet))); });
  if (kind != ".xlsx")
    return Sheets::tr("%1: a sheet is written as .pdf, .xlsx, .html or .json").arg(toText(file));
  try {
    exchange::writeSheetXlsx(sheet, file);
  } catch (const exchange::FormatError& error) {
    return QString::fromStdString(error.what());
  }
  return std::nullopt;
}

}  // namespace tarebowl::ui
