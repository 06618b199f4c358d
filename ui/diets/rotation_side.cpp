// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/rotation_side.h"

#include "ui/diets/rotation_ladder_model.h"
#include "ui/diets/rotation_text.h"
#include "ui/shared/balance_ladder.h"
#include "ui/shared/date_text.h"
#include "ui/shared/segmented_switch.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace tarebowl::ui {

RotationSide::RotationSide(QWidget* parent)
    : QWidget(parent),
      model_(new RotationLadderModel(this)),
      which_(new SegmentedSwitch(tr("What the ladder shows"), {tr("all days"), tr("this day")})),
      words_(new QLabel) {
  setObjectName(QStringLiteral("balancePane"));
  setAttribute(Qt::WA_StyledBackground);
  auto* heading = new QLabel(tr("Balance"));
  heading->setProperty("soft", true);
  QFont bold = heading->font();
  bold.setBold(true);
  heading->setFont(bold);
  auto* row = new QHBoxLayout;
  row->addWidget(heading);
  row->addStretch(1);
  row->addWidget(which_);
  auto* ladder = new BalanceLadder;
  ladder->setModel(model_);
  words_->setWordWrap(true);
  words_->setAccessibleDescription(tr("How the days stand"));
  words_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(13, 12, 12, 8);
  layout->setSpacing(8);
  layout->addLayout(row);
  layout->addWidget(words_);
  layout->addWidget(ladder, 100);
  layout->addStretch(1);
  which_->setCurrent(0);
  which_->setToolTips({tr("The mean day of the period against the targets"),
                       tr("The day that the hand is on, against its own, wider zones")});
  connect(which_, &SegmentedSwitch::chosen, this, &RotationSide::showAgain);
}

void RotationSide::show(const RotationView* view, std::optional<int> day) {
  view_ = view;
  day_ = view == nullptr ? std::nullopt : day;
  showAgain();
}

void RotationSide::showAgain() {
  const bool ofDay = which_->current() == 1 && day_;
  which_->setWord(1, day_ ? shortDay(view_->dateOf(*day_)) : tr("this day"));
  model_->show(view_, ofDay ? day_ : std::nullopt);
  QStringList sentences;
  if (view_ != nullptr) sentences = ofDay ? daySentences(*view_, *day_) : rotationSentences(*view_);
  words_->setText(sentences.join(QLatin1Char('\n')));
  words_->setVisible(!sentences.isEmpty());
}

QString RotationSide::sentences() const {
  return words_->text();
}

}  // namespace tarebowl::ui
