// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/one_page.h"

#include <QAbstractTextDocumentLayout>
#include <QImage>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QTextDocument>

namespace tarebowl::ui {
namespace {

constexpr int kDotsPerInch = 96;
constexpr int kDotsPerMetre = 3780;  // the same: 96 / 0.0254
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

void layOutOnePage(const QString& html, QPagedPaintDevice& device) {
  const double dots = device.logicalDpiX() / static_cast<double>(kDotsPerInch);
  QImage ruler(1, 1, QImage::Format_Grayscale8);
  ruler.setDotsPerMeterX(kDotsPerMetre);
  ruler.setDotsPerMeterY(kDotsPerMetre);
  QTextDocument document;
  document.documentLayout()->setPaintDevice(&ruler);
  document.setDocumentMargin(0);
  document.setHtml(richText(html));
  const QSizeF page(device.width() / dots, device.height() / dots);
  const double scale = scaleToFit(document, page);
  document.setTextWidth(page.width() / scale);
  QPainter painter(&device);
  const double height = page.height() / scale;
  for (double top = 0; top < document.size().height(); top += height) {
    if (top > 0) device.newPage();
    painter.save();
    painter.scale(scale * dots, scale * dots);
    painter.translate(0, -top);
    document.drawContents(&painter, QRectF(0, top, page.width() / scale, height));
    painter.restore();
  }
}

void layOutOnePage(const QString& html, const QString& title, QIODevice& out) {
  QPdfWriter writer(&out);
  writer.setPageSize(QPageSize(QPageSize::A4));
  writer.setPageMargins(QMarginsF(12, 12, 12, 12), QPageLayout::Millimeter);
  writer.setResolution(kDotsPerInch);
  writer.setTitle(title);
  writer.setCreator(QStringLiteral("Tarebowl"));
  layOutOnePage(html, writer);
}

}  // namespace tarebowl::ui
