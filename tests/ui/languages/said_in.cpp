// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/languages/said_in.h"

#include "tests/source_dir.h"
#include "ui/shared/elided_label.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QTabBar>
#include <QTableView>
#include <QTextDocument>
#include <QTreeView>
#include <QXmlStreamReader>

#include <algorithm>

namespace tarebowl::ui {
namespace {

const QRegularExpression kPlace(QStringLiteral("%L?[0-9n]"));

QString plain(const QString& text) {
  if (!Qt::mightBeRichText(text)) return text;
  QTextDocument document;
  document.setHtml(text);
  return document.toPlainText();
}

void addColumns(const QAbstractItemModel* model, QStringList& said) {
  if (model == nullptr) return;
  for (int column = 0; column < model->columnCount(); ++column) {
    said << model->headerData(column, Qt::Horizontal).toString();
    said << model->headerData(column, Qt::Horizontal, Qt::ToolTipRole).toString();
  }
}

void addWordsOf(const QWidget& widget, QStringList& said) {
  said << widget.toolTip() << widget.accessibleName() << widget.accessibleDescription();
  if (const auto* label = qobject_cast<const QLabel*>(&widget)) said << plain(label->text());
  if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) said << button->text();
  if (const auto* field = qobject_cast<const QLineEdit*>(&widget)) said << field->placeholderText();
  if (const auto* tabs = qobject_cast<const QTabBar*>(&widget))
    for (int tab = 0; tab < tabs->count(); ++tab) said << tabs->tabText(tab);
  if (const auto* table = qobject_cast<const QTableView*>(&widget)) addColumns(table->model(), said);
  if (const auto* tree = qobject_cast<const QTreeView*>(&widget))
    if (!tree->isHeaderHidden()) addColumns(tree->model(), said);
}

/// "%1 of %2 weighed" → whatever stands in its places.
QRegularExpression patternOf(const QString& source) {
  QString pattern;
  qsizetype from = 0;
  for (auto place = kPlace.globalMatch(source); place.hasNext();) {
    const auto found = place.next();
    pattern +=
        QRegularExpression::escape(source.mid(from, found.capturedStart() - from)) + QStringLiteral(".+");
    from = found.capturedEnd();
  }
  return QRegularExpression(
      QRegularExpression::anchoredPattern(pattern + QRegularExpression::escape(source.mid(from))));
}

/// Enough to be told from names and numbers.
bool isTelling(const QString& source) {
  const bool hasPlace = source.contains(kPlace);
  QString words = source;
  words.remove(kPlace);
  const auto letters =
      std::count_if(words.begin(), words.end(), [](QChar letter) { return letter.isLetter(); });
  return letters >= (hasPlace ? 6 : 3);
}

bool isCut(const QWidget& widget) {
  if (const auto* label = qobject_cast<const QLabel*>(&widget))
    return !label->text().isEmpty() && !label->wordWrap() && label->pixmap().isNull() &&
           label->width() < label->sizeHint().width();
  const auto* button = qobject_cast<const QAbstractButton*>(&widget);
  return button != nullptr && !button->text().isEmpty() &&
         button->width() < std::min(button->sizeHint().width(), button->minimumSizeHint().width());
}

}  // namespace

QStringList saidInAll(const QWidget& window) {
  QStringList said{window.windowTitle()};
  for (const QWidget* widget : window.findChildren<QWidget*>())
    if (widget->isVisible()) addWordsOf(*widget, said);
  static const QRegularExpression kSentences(QStringLiteral("\n| · "));
  QStringList sentences;
  for (const QString& text : said)
    for (const QString& sentence : text.split(kSentences, Qt::SkipEmptyParts))
      sentences << sentence.trimmed();
  sentences.removeDuplicates();
  return sentences;
}

EnglishWords::EnglishWords(const QString& language) {
  QFile file(QStringLiteral(TAREBOWL_SOURCE_DIR "/resources/languages/tarebowl_%1.ts").arg(language));
  if (!file.open(QIODevice::ReadOnly)) return;
  QXmlStreamReader xml(&file);
  QString source;
  while (!xml.atEnd()) {
    xml.readNext();
    if (!xml.isStartElement()) continue;
    if (xml.name() == QLatin1String("source")) source = xml.readElementText();
    if (xml.name() != QLatin1String("translation")) continue;
    const QString translated = xml.readElementText(QXmlStreamReader::IncludeChildElements).trimmed();
    const QString english = source.trimmed();
    if (translated == english || !isTelling(english)) continue;
    if (english.contains(kPlace))
      patterns_.push_back({english, patternOf(english)});
    else
      words_.insert(english);
  }
}

QString EnglishWords::in(const QString& sentence) const {
  if (words_.contains(sentence)) return sentence;
  const auto found = std::find_if(patterns_.begin(), patterns_.end(),
                                  [&](const Pattern& one) { return one.pattern.match(sentence).hasMatch(); });
  return found == patterns_.end() ? QString() : found->source;
}

QStringList cutIn(const QWidget& window, Ellipsis ellipsis) {
  QStringList cut;
  for (const QWidget* widget : window.findChildren<QWidget*>())
    if (widget->isVisible() && isCut(*widget) &&
        (ellipsis == Ellipsis::IsCut || qobject_cast<const ElidedLabel*>(widget) == nullptr))
      cut << QStringLiteral("%1: “%2” has %3 of %4 pixels")
                 .arg(QLatin1String(widget->metaObject()->className()), widget->property("text").toString())
                 .arg(widget->width())
                 .arg(widget->sizeHint().width());
  return cut;
}

}  // namespace tarebowl::ui
