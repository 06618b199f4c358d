// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/table_copy.h"

#include <QAbstractItemView>
#include <QAction>
#include <QClipboard>
#include <QCoreApplication>
#include <QGuiApplication>
#include <QKeySequence>
#include <QStringList>

namespace tarebowl::ui {

QString tabSeparated(const QAbstractItemModel& model) {
  const auto line = [&](const auto& cell) {
    QStringList cells;
    for (int column = 0; column < model.columnCount(); ++column) {
      QString text = cell(column).toString();
      cells << text.replace(QLatin1Char('\t'), QLatin1Char(' ')).replace(QLatin1Char('\n'), QLatin1Char(' '));
    }
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
