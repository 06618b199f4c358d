// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/suggestion.h"
#include "ui/diets/why_sentences.h"

#include <QFrame>

class QScrollArea;
class QVBoxLayout;

namespace tarebowl::ui {

/// The card below the table: why the diet stands as it does.
class WhyCard : public QFrame {
  Q_OBJECT
 public:
  explicit WhyCard(QWidget* parent = nullptr);
  void show(const std::vector<WhySentence>& sentences, const QString& notes);
  /// What would settle it: each a button that tries it.
  void offer(const std::vector<Suggestion>& suggestions);

 signals:
  /// One of those offered.
  void tried(int suggestion);
  /// A sentence that speaks of a rung was clicked.
  void rungChosen(const tarebowl::ui::RungRef& rung);

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void fitHeight();
  void rebuild();
  void addSentence(const WhySentence& sentence, int index);
  void addSuggestions();
  void addNotes(const QString& notes);

  std::vector<WhySentence> sentences_;
  std::vector<Suggestion> suggestions_;
  QString notes_;
  QScrollArea* scroll_;
  QWidget* content_ = nullptr;
  QVBoxLayout* lines_ = nullptr;
};

}  // namespace tarebowl::ui
