// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/why_card.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>

#include <algorithm>

namespace tarebowl::ui {

WhyCard::WhyCard(QWidget* parent) : QFrame(parent), scroll_(new QScrollArea) {
  setProperty("card", true);
  setAccessibleName(tr("Why"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(13, 9, 4, 9);
  layout->setSpacing(5);
  auto* heading = new QLabel(tr("Why"));
  heading->setProperty("soft", true);
  QFont bold = heading->font();
  bold.setBold(true);
  heading->setFont(bold);
  layout->addWidget(heading);
  scroll_->setWidgetResizable(true);
  scroll_->setFrameShape(NoFrame);
  scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll_->setFocusPolicy(Qt::StrongFocus);
  scroll_->setAccessibleName(tr("Reasons"));
  layout->addWidget(scroll_);
}

void WhyCard::show(const std::vector<WhySentence>& sentences, const QString& notes) {
  const auto same = [](const WhySentence& a, const WhySentence& b) {
    return a.mark == b.mark && a.lead == b.lead && a.rest == b.rest && a.rung == b.rung;
  };
  if (content_ != nullptr && notes == notes_ &&
      std::equal(sentences.begin(), sentences.end(), sentences_.begin(), sentences_.end(), same))
    return;
  sentences_ = sentences;
  notes_ = notes;
  rebuild();
}

void WhyCard::offer(const std::vector<Suggestion>& suggestions) {
  const auto same = [](const Suggestion& a, const Suggestion& b) {
    return a.words == b.words && a.effect == b.effect;
  };
  const bool isSame =
      std::equal(suggestions.begin(), suggestions.end(), suggestions_.begin(), suggestions_.end(), same);
  suggestions_ = suggestions;
  if (!isSame) rebuild();
}

void WhyCard::rebuild() {
  content_ = new QWidget;
  lines_ = new QVBoxLayout(content_);
  lines_->setContentsMargins(0, 0, 8, 0);
  lines_->setSpacing(6);
  for (int i = 0; i < static_cast<int>(sentences_.size()); ++i)
    addSentence(sentences_[static_cast<std::size_t>(i)], i);
  if (!suggestions_.empty()) addSuggestions();
  if (!notes_.isEmpty()) addNotes(notes_);
  lines_->addStretch(1);
  const int position = scroll_->verticalScrollBar()->value();
  scroll_->setWidget(content_);
  scroll_->verticalScrollBar()->setValue(position);
  fitHeight();
}

/// No taller than its sentences; where there is no room for all, they scroll.
void WhyCard::fitHeight() {
  if (content_ == nullptr) return;
  const int needed = content_->layout()->heightForWidth(scroll_->viewport()->width());
  const int frame = height() - scroll_->height();
  setMaximumHeight(needed + std::max(frame, 0) + 2);
}

void WhyCard::resizeEvent(QResizeEvent* event) {
  QFrame::resizeEvent(event);
  fitHeight();
}

void WhyCard::addSentence(const WhySentence& sentence, int index) {
  auto* row = new QHBoxLayout;
  row->setSpacing(7);
  row->addWidget(new MarkWidget(sentence.mark), 0, Qt::AlignTop);
  QString lead = sentence.lead.toHtmlEscaped();
  // The lead is a link to its rung, though it looks like text: the whole row of words takes a click.
  if (sentence.rung)
    lead = QStringLiteral("<a href=\"%1\" style=\"color:%2; text-decoration:none\">%3</a>")
               .arg(index)
               .arg(currentTheme().ink.name(), lead);
  auto* text = new QLabel(QStringLiteral("<b>%1</b> %2").arg(lead, sentence.rest.toHtmlEscaped()));
  text->setTextFormat(Qt::RichText);
  text->setWordWrap(true);
  text->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::LinksAccessibleByMouse |
                                Qt::LinksAccessibleByKeyboard);
  text->setAccessibleName(
      QStringLiteral("%1: %2 %3").arg(wordOf(sentence.mark), sentence.lead, sentence.rest));
  if (sentence.rung)
    connect(text, &QLabel::linkActivated, this, [this, rung = *sentence.rung] { emit rungChosen(rung); });
  row->addWidget(text, 1);
  lines_->addLayout(row);
}

void WhyCard::addSuggestions() {
  auto* lead = new QLabel(tr("What would settle it (each can be tried, and undo takes it back):"));
  lead->setProperty("soft", true);
  lead->setWordWrap(true);
  lines_->addWidget(lead);
  for (int i = 0; i < static_cast<int>(suggestions_.size()); ++i) {
    const Suggestion& suggestion = suggestions_[static_cast<std::size_t>(i)];
    auto* button = new QPushButton(suggestion.words);
    button->setAccessibleName(tr("Try: %1, %2").arg(suggestion.words, suggestion.effect));
    button->setToolTip(i == 0 ? tr("Tries it on the diet (Ctrl+T); Ctrl+Z takes it back")
                              : tr("Tries it on the diet; Ctrl+Z takes it back"));
    // Later: what is tried makes other sentences, and this button goes with those of now.
    connect(
        button, &QPushButton::clicked, this, [this, i] { emit tried(i); }, Qt::QueuedConnection);
    auto* effect = new QLabel(suggestion.effect);
    effect->setWordWrap(true);
    auto* row = new QHBoxLayout;
    row->setSpacing(9);
    row->addWidget(button);
    row->addWidget(effect, 1);
    lines_->addLayout(row);
  }
}

void WhyCard::addNotes(const QString& notes) {
  auto* text = new QLabel(notes);
  text->setProperty("soft", true);
  text->setTextFormat(Qt::PlainText);
  text->setWordWrap(true);
  text->setTextInteractionFlags(Qt::TextSelectableByMouse);
  text->setContentsMargins(0, 4, 0, 0);
  text->setAccessibleName(tr("Notes: %1").arg(notes));
  lines_->addWidget(text);
}

}  // namespace tarebowl::ui
