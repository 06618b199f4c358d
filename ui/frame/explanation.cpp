// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/explanation.h"

#include "ui/frame/part_texts.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QLabel>
#include <QStringList>
#include <QTextDocument>
#include <QWhatsThis>

namespace tarebowl::ui {
namespace {

QString plain(const QString& text) {
  if (!Qt::mightBeRichText(text)) return text;
  QTextDocument document;
  document.setHtml(text);
  return document.toPlainText();
}

QString ownText(const QWidget& control) {
  if (!control.whatsThis().isEmpty()) return control.whatsThis();
  return control.toolTip().isEmpty() ? control.accessibleDescription() : control.toolTip();
}

/// The table or list that a control is, or that it edits a cell of.
const QAbstractItemView* viewOf(const QWidget& control) {
  for (const QWidget* part = &control; part != nullptr && !part->isWindow(); part = part->parentWidget())
    if (const auto* view = qobject_cast<const QAbstractItemView*>(part)) return view;
  return nullptr;
}

/// Of the column and the cell that the hand is on.
QStringList cellTexts(const QAbstractItemView& view) {
  const QModelIndex cell = view.currentIndex();
  if (!cell.isValid()) return {};
  QStringList texts;
  const int column = cell.column();
  const QString title = view.model()->headerData(column, Qt::Horizontal).toString();
  const QString tip = plain(view.model()->headerData(column, Qt::Horizontal, Qt::ToolTipRole).toString());
  if (!tip.isEmpty() && tip != title) texts << (title.isEmpty() ? tip : title + QStringLiteral(": ") + tip);
  const QString ofCell = plain(cell.data(Qt::ToolTipRole).toString());
  if (!ofCell.isEmpty()) texts << ofCell;
  return texts;
}

QString partTextOf(const QWidget& control) {
  for (const QWidget* part = &control; part != nullptr; part = part->parentWidget()) {
    const QString text = part == &control || part->whatsThis().isEmpty() ? partText(*part->metaObject())
                                                                         : plain(part->whatsThis());
    if (!text.isEmpty()) return text;
  }
  return {};
}

}  // namespace

QString nameOf(const QWidget& control) {
  if (!control.accessibleName().isEmpty()) return control.accessibleName();
  QString text;
  if (const auto* button = qobject_cast<const QAbstractButton*>(&control))
    text = button->text();
  else if (const auto* label = qobject_cast<const QLabel*>(&control))
    text = plain(label->text());
  return text.remove(QLatin1Char('&'));
}

QString explanationOf(const QWidget& control) {
  QStringList texts;
  if (!ownText(control).isEmpty()) texts << plain(ownText(control));
  if (const QAbstractItemView* view = viewOf(control)) texts += cellTexts(*view);
  const QString part = partTextOf(control);
  if (!part.isEmpty()) texts << part;
  if (texts.isEmpty()) return {};
  QString html;
  const QString name = nameOf(control);
  if (!name.isEmpty()) html = QStringLiteral("<p><b>%1</b></p>").arg(name.toHtmlEscaped());
  texts.removeDuplicates();
  for (const QString& text : texts)
    html += QStringLiteral("<p>%1</p>")
                .arg(text.toHtmlEscaped().replace(QLatin1Char('\n'), QLatin1String("<br>")));
  return html;
}

void explain(QWidget& control) {
  const QString text = explanationOf(control);
  if (text.isEmpty()) return;
  QRect beside = control.rect();
  if (const auto* view = qobject_cast<const QAbstractItemView*>(&control);
      view && view->currentIndex().isValid())
    beside = view->visualRect(view->currentIndex()).translated(view->viewport()->pos());
  QWhatsThis::showText(control.mapToGlobal(beside.center()), text, &control);
}

}  // namespace tarebowl::ui
