// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/intake/intake_page.h"

#include "core/exchange/sheet_words.h"
#include "core/exchange/wording.h"
#include "ui/intake/intake_table.h"
#include "ui/intake/intake_text.h"
#include "ui/shared/one_page.h"
#include "ui/shared/theme.h"
#include "ui/shared/whole_file.h"

#include <QBuffer>
#include <QPainter>

#include <algorithm>

namespace tarebowl::ui {
namespace {

struct Intake {
  Q_DECLARE_TR_FUNCTIONS(Intake)
};

QString titleOf(const IntakePage& page) {
  return Intake::tr("Intake: %1, %2")
      .arg(QString::fromStdString(page.trend.group.group.record.name), spanText(page.span));
}

QString row(const QStringList& cells, const QString& tag) {
  QString html = QStringLiteral("<tr>");
  for (int i = 0; i < cells.size(); ++i)
    html +=
        QStringLiteral("<%1 align=\"%2\">%3</%1>")
            .arg(tag, i == 0 ? QStringLiteral("left") : QStringLiteral("right"), cells[i].toHtmlEscaped());
  return html + QStringLiteral("</tr>");
}

QString paragraph(const QString& text) {
  return text.isEmpty() ? QString() : QStringLiteral("<p>") + text.toHtmlEscaped() + QStringLiteral("</p>");
}

QString picture(const QImage& image) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  image.save(&buffer, "PNG");
  constexpr int kPageWidth = 640;  // of a page of A4 at 96 dots an inch, a little room left
  return QStringLiteral("<p><img width=\"%1\" src=\"data:image/png;base64,%2\"></p>")
      .arg(kPageWidth)
      .arg(QString::fromLatin1(bytes.toBase64()));
}

/// All charts, one under the other.
QImage stacked(const std::vector<QImage>& charts) {
  int width = 1;
  int height = 0;
  for (const QImage& chart : charts) {
    width = std::max(width, chart.width());
    height += chart.height();
  }
  QImage whole(width, std::max(1, height), QImage::Format_ARGB32_Premultiplied);
  whole.fill(currentTheme().card);
  QPainter painter(&whole);
  int top = 0;
  for (const QImage& chart : charts) {
    painter.drawImage(QRect(0, top, chart.width(), chart.height()), chart);
    top += chart.height();
  }
  return whole;
}

}  // namespace

QString intakePageAsHtml(const IntakePage& page) {
  QString html = QStringLiteral("<html><body style=\"font-family: sans-serif; font-size: 9pt\"><h2>") +
                 titleOf(page).toHtmlEscaped() + QStringLiteral("</h2>");
  if (page.trend.invented)
    html +=
        QStringLiteral("<p><b>") + QString::fromUtf8(exchange::kInventedMark) + QStringLiteral("</b></p>");
  html += paragraph(knownText(page.trend, page.span));
  for (const QImage& chart : page.charts) html += picture(chart);
  html += QStringLiteral("<table>") + row(foodTitles(), QStringLiteral("th"));
  for (const RowsModel::Row& food : foodRows(page.trend, page.span))
    html += row(food.cells, QStringLiteral("td"));
  html += QStringLiteral("</table>");
  for (const NoticedLine& line : noticedIn(page.trend, page.span)) html += paragraph(line.text);
  html += paragraph(dropRuleText(page.trend.dropRule)) + paragraph(perAnimalText(page.trend, page.span)) +
          paragraph(QString::fromUtf8(exchange::kCaution.data(),
                                      static_cast<qsizetype>(exchange::kCaution.size())));
  return html + QStringLiteral("</body></html>");
}

std::optional<QString> writeIntake(const IntakePage& page, const std::filesystem::path& file) {
  const std::filesystem::path kind = file.extension();
  return kind == ".pdf"
             ? writeWholeFile(
                   file, [&](QIODevice& out) { layOutOnePage(intakePageAsHtml(page), titleOf(page), out); })
         : kind == ".png"
             ? writeWholeFile(file, [&](QIODevice& out) { stacked(page.charts).save(&out, "PNG"); })
         : kind == ".csv"
             ? writeWholeFile(file,
                              [&](QIODevice& out) {
                                out.write(QByteArray::fromStdString(intakeTableAsCsv(page.trend, page.span)));
                              })
             : Intake::tr("%1: what is shown is written as .png, .pdf or .csv").arg(toText(file));
}

}  // namespace tarebowl::ui
