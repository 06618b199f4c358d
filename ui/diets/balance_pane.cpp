// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/balance_pane.h"

#include "ui/diets/diet_desk.h"
#include "ui/diets/ladder_model.h"
#include "ui/diets/not_counted_text.h"
#include "ui/diets/rung_detail.h"
#include "ui/shared/balance_ladder.h"
#include "ui/shared/state_mark.h"

#include <QHBoxLayout>
#include <QItemSelectionModel>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

#include <array>

namespace tarebowl::ui {

BalancePane::BalancePane(DietDesk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      model_(new LadderModel(desk, this)),
      ladder_(new BalanceLadder),
      detail_(new RungDetail(desk)),
      summary_(new QLabel),
      notJudged_(new QLabel) {
  setObjectName(QStringLiteral("balancePane"));
  setAttribute(Qt::WA_StyledBackground);
  ladder_->setModel(model_);
  auto* heading = new QLabel(tr("Balance"));
  heading->setProperty("soft", true);
  QFont bold = heading->font();
  bold.setBold(true);
  heading->setFont(bold);
  summary_->setProperty("soft", true);
  auto* headingRow = new QHBoxLayout;
  headingRow->addWidget(heading);
  headingRow->addStretch(1);
  headingRow->addWidget(summary_);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(13, 12, 12, 8);
  layout->setSpacing(6);
  layout->addLayout(headingRow);
  layout->addWidget(ladder_, 100);
  notJudged_->setProperty("soft", true);
  notJudged_->setWordWrap(true);
  notJudged_->setAccessibleName(tr("Rules that cannot be judged"));
  layout->addWidget(notJudged_);
  layout->addWidget(detail_);
  layout->addStretch(1);
  connect(ladder_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &BalancePane::showChosen);
  connect(model_, &QAbstractItemModel::modelReset, this, &BalancePane::reset);
  connect(model_, &QAbstractItemModel::layoutChanged, this, &BalancePane::chooseFirst);
  connect(&desk, &DietDesk::balanceChanged, this, &BalancePane::showSummary);
  reset();
}

void BalancePane::choose(RungRef rung) {
  const int row = model_->rowOf(rung);
  if (row < 0) return;
  ladder_->setCurrentIndex(model_->index(row, RungName));
  ladder_->scrollTo(model_->index(row, RungName));
}

void BalancePane::reset() {
  chosenByHand_ = false;
  chooseFirst();
  choosing_ = true;
  showChosen();
  choosing_ = false;
  showSummary();
  showNotJudged();
}

void BalancePane::chooseFirst() {
  if (chosenByHand_ || model_->rowCount() == 0) return;
  choosing_ = true;
  ladder_->setCurrentIndex(model_->index(0, RungName));
  choosing_ = false;
}

void BalancePane::showChosen() {
  const QModelIndex current = ladder_->currentIndex();
  chosenByHand_ = chosenByHand_ || (!choosing_ && current.isValid());
  detail_->show(current.isValid() ? std::optional(model_->refAt(current.row())) : std::nullopt);
}

void BalancePane::showNotJudged() {
  const auto& frame = desk_.draft().frame;
  const QString text = frame ? notCountedText(frame->opened.notCounted) : QString();
  notJudged_->setText(text);
  notJudged_->setToolTip(text);
  notJudged_->setVisible(!text.isEmpty());
}

/// "3 short · 1 at limit · 8 met".
void BalancePane::showSummary() {
  constexpr std::array kOrder{Mark::Lacking, Mark::Over, Mark::AtLimit, Mark::Met, Mark::Unknown};
  QStringList parts;
  for (const Mark mark : kOrder) {
    const auto& targets = desk_.balance().targets;
    const auto count = std::count_if(targets.begin(), targets.end(),
                                     [&](const auto& target) { return markOf(target.state) == mark; });
    if (count > 0) parts << tr("%1 %2").arg(count).arg(wordOf(mark));
  }
  summary_->setText(parts.join(QStringLiteral(" · ")));
}

}  // namespace tarebowl::ui
