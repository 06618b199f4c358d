// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/intake/intake_side.h"

#include "ui/intake/intake_text.h"
#include "ui/shared/card.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace tarebowl::ui {
namespace {

QLabel* makeWords(bool isSoft = false) {
  auto* words = new QLabel;
  words->setWordWrap(true);
  words->setTextFormat(Qt::PlainText);
  words->setTextInteractionFlags(Qt::TextSelectableByMouse);
  words->setProperty("soft", isSoft);
  return words;
}

QWidget* makeLine(const NoticedLine& line) {
  auto* row = new QWidget;
  auto* layout = new QHBoxLayout(row);
  layout->setContentsMargins(0, 0, 0, 0);
  auto* words = makeWords();
  words->setText(line.text);
  layout->addWidget(new MarkWidget(line.mark), 0, Qt::AlignTop);
  layout->addWidget(words, 1);
  return row;
}

}  // namespace

IntakeSide::IntakeSide(QWidget* parent)
    : QScrollArea(parent), known_(makeWords()), rule_(makeWords(true)), perAnimal_(makeWords()) {
  setAccessibleName(tr("Noticed, and what it means for one animal"));
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  auto* content = new QWidget;
  auto* layout = new QVBoxLayout(content);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(10);
  auto* noticed = new QFrame;
  auto* card = layOutCard(*noticed, tr("Noticed"));
  noticed_ = new QVBoxLayout;
  card->addLayout(noticed_);
  card->addWidget(rule_);
  auto* known = new QFrame;
  layOutCard(*known, tr("How much is known"))->addWidget(known_);
  auto* perAnimal = new QFrame;
  layOutCard(*perAnimal, tr("Per animal"))->addWidget(perAnimal_);
  for (QWidget* part : {noticed, known, perAnimal}) layout->addWidget(part);
  layout->addStretch(1);
  setWidget(content);
}

void IntakeSide::show(const transfer::IntakeTrend* trend, const DaySpan& span) {
  while (QLayoutItem* item = noticed_->takeAt(0)) {
    delete item->widget();
    delete item;
  }
  known_->setText(trend != nullptr ? knownText(*trend, span) : QString());
  rule_->setText(trend != nullptr ? dropRuleText(trend->dropRule) : QString());
  perAnimal_->setText(trend != nullptr ? perAnimalText(*trend, span) : QString());
  if (trend == nullptr) return;
  for (const NoticedLine& line : noticedIn(*trend, span)) noticed_->addWidget(makeLine(line));
}

}  // namespace tarebowl::ui
