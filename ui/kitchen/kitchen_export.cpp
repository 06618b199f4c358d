// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/kitchen_export.h"

#include "core/exchange/prep_sheet_page.h"
#include "ui/shared/caution_text.h"
#include "ui/shared/page_tongue.h"
#include "ui/shared/whole_file.h"

#include <QAbstractTextDocumentLayout>
#include <QCoreApplication>
#include <QLocale>
#include <QPageSize>
#include <QPdfWriter>
#include <QTextDocument>

namespace tarebowl::ui {
namespace {

struct KitchenExport {
  Q_DECLARE_TR_FUNCTIONS(KitchenExport)
};

constexpr int kDotsPerInch = 96;

std::string htmlOf(const KitchenSheet& sheet, KitchenPage page) {
  if (page == KitchenPage::Labels) return exchange::bowlLabelsAsHtml(sheet.sheet, pageTongue());
  intake::PrepSheet spoken = sheet.sheet;
  for (std::string& caution : spoken.cautions) caution = cautionSentence(caution).toStdString();
  return exchange::prepSheetAsHtml(
      spoken, [&](const std::string& code) { return sheet.foodOf(code); }, pageTongue());
}

void layOut(const KitchenSheet& sheet, KitchenPage page, QIODevice& out) {
  QPdfWriter writer(&out);
  writer.setPageSize(QPageSize(QPageSize::A4));
  writer.setPageMargins(QMarginsF(12, 12, 12, 12), QPageLayout::Millimeter);
  writer.setResolution(kDotsPerInch);
  writer.setTitle(QString::fromStdString(sheet.sheet.section));
  writer.setCreator(QStringLiteral("Tarebowl"));
  QTextDocument document;
  document.documentLayout()->setPaintDevice(&writer);
  document.setDocumentMargin(0);
  const QString border = page == KitchenPage::Labels ? QStringLiteral("1") : QStringLiteral("0");
  const QString padding = page == KitchenPage::Labels ? QStringLiteral("18") : QStringLiteral("4");
  // Qt's rich text takes a table's width and the room between its cells from the table, not from its style.
  document.setHtml(QString::fromStdString(htmlOf(sheet, page))
                       .replace(QStringLiteral("<table>"),
                                QStringLiteral("<table width=\"100%\" border=\"%1\" cellpadding=\"%2\" "
                                               "cellspacing=\"0\">")
                                    .arg(border, padding)));
  document.setPageSize(QSizeF(writer.width(), writer.height()));
  document.print(&writer);
}

}  // namespace

std::optional<QString> writeKitchenPage(const KitchenSheet& sheet, KitchenPage page,
                                        const std::filesystem::path& file) {
  const std::filesystem::path kind = file.extension();
  if (kind == ".pdf") return writeWholeFile(file, [&](QIODevice& out) { layOut(sheet, page, out); });
  if (kind == ".html")
    return writeWholeFile(file,
                          [&](QIODevice& out) { out.write(QByteArray::fromStdString(htmlOf(sheet, page))); });
  return KitchenExport::tr("%1: a sheet of the kitchen is written as .pdf or .html").arg(toText(file));
}

}  // namespace tarebowl::ui
