// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/table_copy.h"

#include "core/exchange/formula_guard.h"

#include <QAbstractItemView>
#include <QAction>
#include <QClipboard>
#include <QCoreApplication>
#include <QGuiApplication>
#include <QKeySequence>
#include <QLocale>
#include <QStringList>

#include <algorithm>

namespace tarebowl::ui {
namespace {

bool isAmount(const QString& text) {
  const QString number = text.trimmed().section(QLatin1Char(' '), 0, 0);
  const QString unit = text.trimmed().section(QLatin1Char(' '), 1);
  bool isNumber = false;
  (void)QLocale().toDouble(number, &isNumber);
  if (!isNumber) (void)QLocale::c().toDouble(number, &isNumber);
  const QString operators = QStringLiteral("=+-*/|!(&@");
  return isNumber && std::ranges::none_of(unit, [&](QChar c) { return operators.contains(c); });
}

bool partsCells(QChar c) {
  return c.category() == QChar::Other_Control || c.category() == QChar::Separator_Line ||
         c.category() == QChar::Separator_Paragraph;
}

}  // namespace

QString copiedCell(QString text) {
  for (QChar& c : text)
    if (partsCells(c)) c = QLatin1Char(' ');
  return isAmount(text) ? text : QString::fromStdString(exchange::guarded(text.toStdString()));
}

QString tabSeparated(const QAbstractItemModel& model) {
  const auto line = [&](const auto& cell) {
    QStringList cells;
    for (int column = 0; column < model.columnCount(); ++column) cells << copiedCell(cell(column).toString());
    return cells.join(QLatin1Char('\t')) + QLatin1Char('\n');
  };
  QString text = line([&](int column) { return model.headerData(column, Qt::Horizontal); });
  for (int row = 0; row < model.rowCount(); ++row)
    text += line([&](int column) { return model.index(row, column).data(); });
  return text;
}

void addCopyAction(QAbstractItemView& view) {
  auto* copy = new QAction(QCoreApplication::translate("Table", "Copy table"), &view);
  copy->setShortcut(QKeySequence::Copy);
  copy->setShortcutContext(Qt::WidgetShortcut);
  QObject::connect(copy, &QAction::triggered, &view, [&view] {
    if (view.model() != nullptr) QGuiApplication::clipboard()->setText(tabSeparated(*view.model()));
  });
  view.addAction(copy);
  view.setContextMenuPolicy(Qt::ActionsContextMenu);
}

}  // namespace tarebowl::ui
