// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/one_page.h"

#include <QAbstractTextDocumentLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QTextDocument>

namespace tarebowl::ui {
namespace {

constexpr int kDotsPerInch = 96;
constexpr double kLeastScale = 0.6;  // smaller than that nobody reads it on a wall
constexpr double kScaleStep = 0.02;

/// Qt's rich text takes the room between cells from the table, not from its style.
QString richText(QString html) {
  return html.replace(QStringLiteral("<table>"),
                      QStringLiteral("<table width=\"100%\" cellpadding=\"2\" cellspacing=\"0\">"));
}

/// The greatest scale at which the text, wrapped to the width that this leaves, is no taller than the page.
double scaleToFit(QTextDocument& document, QSizeF page) {
  for (double scale = 1.0; scale > kLeastScale; scale -= kScaleStep) {
    document.setTextWidth(page.width() / scale);
    if (document.size().height() * scale <= page.height()) return scale;
  }
  return kLeastScale;
}

}  // namespace

void layOutOnePage(const QString& html, const QString& title, QIODevice& out) {
  QPdfWriter writer(&out);
  writer.setPageSize(QPageSize(QPageSize::A4));
  writer.setPageMargins(QMarginsF(12, 12, 12, 12), QPageLayout::Millimeter);
  writer.setResolution(kDotsPerInch);
  writer.setTitle(title);
  writer.setCreator(QStringLiteral("Tarebowl"));
  QTextDocument document;
  document.documentLayout()->setPaintDevice(&writer);
  document.setDocumentMargin(0);
  document.setHtml(richText(html));
  const QSizeF page(writer.width(), writer.height());
  const double scale = scaleToFit(document, page);
  document.setTextWidth(page.width() / scale);
  QPainter painter(&writer);
  const double height = page.height() / scale;
  for (double top = 0; top < document.size().height(); top += height) {
    if (top > 0) writer.newPage();
    painter.save();
    painter.scale(scale, scale);
    painter.translate(0, -top);
    document.drawContents(&painter, QRectF(0, top, page.width() / scale, height));
    painter.restore();
  }
}

}  // namespace tarebowl::ui
