// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRegularExpression>
#include <QSet>
#include <QString>
#include <QStringList>

#include <vector>

class QWidget;

namespace tarebowl::ui {

/// All that a window shows or tells a screen reader now, sentence by sentence: labels, buttons, hints of
/// empty fields, tabs, titles of columns, tips and accessible names. Not what stands in cells and fields.
[[nodiscard]] QStringList saidInAll(const QWidget& window);

/// The English that a language says otherwise, by its .ts file.
class EnglishWords {
 public:
  explicit EnglishWords(const QString& language);
  /// How many strings it knows.
  [[nodiscard]] std::size_t size() const {
    return static_cast<std::size_t>(words_.size()) + patterns_.size();
  }
  /// The English string that a sentence is; empty where it is none.
  [[nodiscard]] QString in(const QString& sentence) const;

 private:
  struct Pattern {
    QString source;
    QRegularExpression pattern;
  };
  QSet<QString> words_;
  std::vector<Pattern> patterns_;  ///< with places
};

/// Whether words that end with an ellipsis, and are whole in a tip, count as cut.
enum class Ellipsis { IsCut, IsFine };

/// Labels and buttons in sight that have less room than their words need.
[[nodiscard]] QStringList cutIn(const QWidget& window, Ellipsis ellipsis);

}  // namespace tarebowl::ui
