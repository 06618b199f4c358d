// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/checks_card.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

namespace tarebowl::ui {

ChecksCard::ChecksCard(QWidget* parent) : QFrame(parent), lines_(new QVBoxLayout) {
  layOutCard(*this, tr("Checks"))->addLayout(lines_);
  lines_->setSpacing(4);
}

void orderByWeight(std::vector<CheckSentence>& sentences) {
  const auto weight = [](const CheckSentence& sentence) {
    return sentence.mark == Mark::Lacking ? 0 : sentence.mark == Mark::AtLimit ? 1 : 2;
  };
  std::stable_sort(sentences.begin(), sentences.end(),
                   [&](const auto& a, const auto& b) { return weight(a) < weight(b); });
}

void ChecksCard::show(const std::vector<CheckSentence>& sentences) {
  while (QLayoutItem* item = lines_->takeAt(0)) {
    delete item->widget();
    delete item;
  }
  for (const CheckSentence& sentence : sentences) {
    auto* row = new QWidget;
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(7);
    layout->addWidget(new MarkWidget(sentence.mark), 0, Qt::AlignTop);
    auto* text = new QLabel(QStringLiteral("%1 %2").arg(sentence.what, sentence.advice).trimmed());
    text->setTextFormat(Qt::PlainText);
    text->setWordWrap(true);
    text->setTextInteractionFlags(Qt::TextSelectableByMouse);
    text->setAccessibleName(QStringLiteral("%1: %2").arg(wordOf(sentence.mark), text->text()));
    layout->addWidget(text, 1);
    lines_->addWidget(row);
  }
  setVisible(!sentences.empty());
}

}  // namespace tarebowl::ui
