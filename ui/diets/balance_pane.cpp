// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/balance_pane.h"

#include "ui/diets/diet_desk.h"
#include "ui/diets/ladder_model.h"
#include "ui/diets/not_counted_text.h"
#include "ui/diets/rung_detail.h"
#include "ui/shared/balance_ladder.h"
#include "ui/shared/format.h"
#include "ui/shared/state_mark.h"

#include <QApplication>
#include <QComboBox>
#include <QHBoxLayout>
#include <QItemSelectionModel>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

#include <array>

namespace tarebowl::ui {
namespace {

constexpr std::array kBases{quantity::Basis::AsFed, quantity::Basis::DryMatter, quantity::Basis::Energy,
                            quantity::Basis::Day};

}  // namespace

BalancePane::BalancePane(DietDesk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      model_(new LadderModel(desk, this)),
      ladder_(new BalanceLadder),
      detail_(new RungDetail(desk)),
      summary_(new QLabel),
      notJudged_(new QLabel),
      switches_(new QWidget),
      order_(new QComboBox),
      basis_(new QComboBox),
      eaten_(new QComboBox) {
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
  buildSwitches();
  layout->addWidget(switches_);
  layout->addWidget(ladder_, 100);
  notJudged_->setProperty("soft", true);
  notJudged_->setWordWrap(true);
  notJudged_->setAccessibleDescription(tr("Rules that cannot be judged"));
  layout->addWidget(notJudged_);
  layout->addWidget(detail_);
  layout->addStretch(1);
  connect(ladder_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &BalancePane::showChosen);
  connect(model_, &QAbstractItemModel::modelReset, this, &BalancePane::reset);
  connect(model_, &QAbstractItemModel::layoutChanged, this, &BalancePane::chooseFirst);
  connect(&desk, &DietDesk::balanceChanged, this, &BalancePane::showSummary);
  connect(detail_, &RungDetail::exploreWanted, this, &BalancePane::exploreWanted);
  reset();
}

void BalancePane::buildSwitches() {
  order_->addItems({tr("trouble first"), tr("as stated"), tr("by name")});
  order_->setAccessibleName(tr("Order of the balance"));
  basis_->addItem(tr("own basis"));
  for (const quantity::Basis basis : kBases) basis_->addItem(tr("per %1").arg(basisText(basis)));
  basis_->setAccessibleName(tr("Basis of the balance"));
  basis_->setToolTip(tr("Reads every target on this basis, as it comes to in this bowl"));
  eaten_->addItems({tr("as eaten"), tr("as offered")});
  eaten_->setAccessibleName(tr("As eaten or as offered"));
  auto* row = new QHBoxLayout(switches_);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(6);
  for (QComboBox* box : {order_, basis_, eaten_}) {
    row->addWidget(box);
    connect(box, &QComboBox::activated, this, &BalancePane::showView);
  }
  row->addStretch(1);
}

void BalancePane::showView() {
  LadderView view = model_->view();
  view.order = static_cast<LadderOrder>(order_->currentIndex());
  const int basis = basis_->currentIndex();
  view.basis = basis > 0 ? std::optional(kBases.at(static_cast<std::size_t>(basis - 1))) : std::nullopt;
  view.asOffered = eaten_->currentIndex() == 1;
  model_->setView(view);
}

void BalancePane::setEnergy(EnergyUnit energy) {
  LadderView view = model_->view();
  view.energy = energy;
  model_->setView(view);
}

void BalancePane::choose(RungRef rung) {
  const int row = model_->rowOf(rung);
  if (row < 0) return;
  ladder_->setCurrentIndex(model_->index(row, RungName));
  ladder_->scrollTo(model_->index(row, RungName));
}

std::optional<RungRef> BalancePane::chosen() const {
  const QModelIndex current = ladder_->currentIndex();
  return current.isValid() ? std::optional(model_->refAt(current.row())) : std::nullopt;
}

bool BalancePane::hasHand() const {
  return isAncestorOf(QApplication::focusWidget());
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
  eaten_->setVisible(isLeftInPart(desk_.problem()));
  if (!isLeftInPart(desk_.problem()) && eaten_->currentIndex() != 0) {
    eaten_->setCurrentIndex(0);
    showView();
  }
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
