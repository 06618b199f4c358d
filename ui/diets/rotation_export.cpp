// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/rotation_export.h"

#include "core/diet/rotation_purchase.h"
#include "core/exchange/kept_rotation_json.h"
#include "core/exchange/rotation_page.h"
#include "ui/diets/food_label.h"
#include "ui/diets/rotation_text.h"
#include "ui/shared/date_text.h"
#include "ui/shared/decimal_text.h"
#include "ui/shared/one_page.h"
#include "ui/shared/page_tongue.h"
#include "ui/shared/paths.h"
#include "ui/shared/whole_file.h"

#include <QCoreApplication>
#include <QLocale>

namespace tarebowl::ui {

namespace {

struct RotationExport {
  Q_DECLARE_TR_FUNCTIONS(RotationExport)
};

QString titleOf(const RotationView& view) {
  return QStringLiteral("%1, %2").arg(QString::fromStdString(view.problem().base.title),
                                      periodText(view.on.desk.from, view.on.desk.until()));
}

QString htmlOf(const RotationView& view) {
  const QStringList state = QStringList{madeText(view)} + rotationSentences(view);
  return QString::fromStdString(exchange::rotationAsHtml({.title = titleOf(view).toStdString(),
                                                          .state = state.join(QLatin1Char(' ')).toStdString(),
                                                          .problem = view.problem(),
                                                          .days = view.on.days,
                                                          .period = view.standing.period,
                                                          .from = view.on.desk.from},
                                                         pageTongue()));
}

/// To the gram: what a supplier weighs.
QString orderText(quantity::Kilograms mass) {
  return RotationExport::tr("%1 kg").arg(decimal(mass.value(), 3));
}

QString boughtText(quantity::Kilograms mass, bool lossIsKnown) {
  return lossIsKnown ? orderText(mass) : RotationExport::tr("%1 and what is lost").arg(orderText(mass));
}

}  // namespace

void printRotation(const RotationView& view, QPagedPaintDevice& device) {
  layOutOnePage(htmlOf(view), device);
}

std::optional<QString> writeRotation(const RotationView& view, const std::filesystem::path& file) {
  const std::filesystem::path kind = file.extension();
  if (kind == ".pdf")
    return writeWholeFile(file, [&](QIODevice& out) { layOutOnePage(htmlOf(view), titleOf(view), out); });
  if (kind == ".html") return writeWholeFile(file, [&](QIODevice& out) { out.write(htmlOf(view).toUtf8()); });
  if (kind == ".json")
    return writeWholeFile(file, [&](QIODevice& out) {
      out.write(QByteArray::fromStdString(
          exchange::writeKeptRotation({view.kept(), view.problem().base.invented})));
    });
  return RotationExport::tr("%1: a rotation is written as .pdf, .html or .json").arg(toText(file));
}

std::vector<RowsModel::Row> purchaseRows(const RotationView& view) {
  std::vector<RowsModel::Row> rows;
  const auto lines = diet::purchaseList(view.problem(), view.on.days);
  const auto weekText = [&](int week) { return shortDay(view.dateOf(7 * week)); };
  for (const diet::PurchaseOfGroup& group : diet::byGroup(view.problem(), lines)) {
    std::size_t foods = 0;
    for (const diet::PurchaseLine& line : lines) {
      const diet::DietFood& food = view.problem().base.foods[line.food];
      if (line.week != group.week || food.group != group.group) continue;
      ++foods;
      const FoodLabel label = foodLabel(food);
      const QString name =
          label.remark.isEmpty() ? label.name : label.name + QStringLiteral(", ") + label.remark;
      rows.push_back({.cells = {weekText(line.week), QString::fromStdString(food.group), name,
                                orderText(line.offered), boughtText(line.bought, line.lossIsKnown)}});
    }
    if (foods > 1)
      rows.push_back(
          {.cells = {weekText(group.week), QString::fromStdString(group.group), RotationExport::tr("in all"),
                     orderText(group.offered), boughtText(group.bought, group.lossIsKnown)}});
  }
  return rows;
}

}  // namespace tarebowl::ui
