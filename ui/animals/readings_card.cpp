// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/readings_card.h"

#include "ui/animals/animal_text.h"
#include "ui/animals/readings_model.h"
#include "ui/shared/card.h"
#include "ui/shared/days.h"
#include "ui/shared/plain_table.h"
#include "ui/shared/reason_bar.h"

#include <QPushButton>
#include <QVBoxLayout>

namespace tarebowl::ui {
namespace {

constexpr double kGramsAKilogram = 1000.0;

}  // namespace

ReadingsCard::ReadingsCard(AnimalDesk& desk, ReasonBar& reason, QWidget* parent)
    : QFrame(parent),
      desk_(desk),
      reason_(reason),
      model_(new ReadingsModel(desk, this)),
      table_(new PlainTable(tr("Masses and condition scores"))),
      leaveOut_(new QPushButton(tr("Leave out…"))),
      correct_(new QPushButton(tr("Put right…"))) {
  QVBoxLayout* layout = layOutCard(*this, tr("Masses and condition scores"));
  table_->setModel(model_);
  table_->setWideColumn(ReadingsModel::Remark);
  table_->setMinimumHeight(90);
  layout->addWidget(table_, 1);
  auto* buttons = new QHBoxLayout;
  buttons->setSpacing(7);
  for (QPushButton* button : {correct_, leaveOut_}) buttons->addWidget(button);
  buttons->addStretch(1);
  layout->addLayout(buttons);
  connect(table_->selectionModel(), &QItemSelectionModel::currentChanged, this, &ReadingsCard::showButtons);
  connect(model_, &QAbstractItemModel::modelReset, this, &ReadingsCard::showButtons);
  connect(leaveOut_, &QPushButton::clicked, this, &ReadingsCard::leaveOut);
  connect(correct_, &QPushButton::clicked, this, &ReadingsCard::correct);
  showButtons();
}

void ReadingsCard::showButtons() {
  const ReadingsModel::Row* row = model_->rowAt(table_->currentIndex());
  const bool mass = row != nullptr && row->mass;
  const bool out = mass && row->trust == ReadingTrust::LeftOut;
  leaveOut_->setEnabled(mass);
  leaveOut_->setText(out ? tr("Count it again") : tr("Leave out…"));
  correct_->setEnabled(mass && !out);
  const QString choose = mass ? QString() : tr("Choose a mass in the list first");
  leaveOut_->setToolTip(mass ? tr("It stays in the record, and does not count") : choose);
  correct_->setToolTip(mass ? tr("What was written first stays beside it") : choose);
}

void ReadingsCard::leaveOut() {
  const ReadingsModel::Row* row = model_->rowAt(table_->currentIndex());
  if (row == nullptr || !row->mass) return;
  if (row->trust == ReadingTrust::LeftOut) return desk_.countMassAgain(*row->mass);
  reason_.ask(
      tr("Leave %1 of %2 out of what counts?").arg(row->value, dateText(row->on)), {}, tr("Leave out"),
      [this, id = *row->mass](const ReasonBar::Answer& answer) { desk_.leaveMassOut(id, answer.reason); });
}

void ReadingsCard::correct() {
  const ReadingsModel::Row* row = model_->rowAt(table_->currentIndex());
  if (row == nullptr || !row->mass) return;
  const auto meant = row->doubt ? meantBy(*row->doubt, row->kilograms) : std::nullopt;
  const bool grams = meant.value_or(row->kilograms) < quantity::Kilograms(1.0);
  reason_.ask(tr("What should %1 of %2 have been?").arg(row->value, dateText(row->on)),
              grams ? tr("g") : tr("kg"), tr("Put right"),
              [this, id = *row->mass, grams](const ReasonBar::Answer& answer) {
                const double kilograms = answer.amount.value() / (grams ? kGramsAKilogram : 1.0);
                desk_.correctMass(id, quantity::Kilograms(kilograms), answer.reason);
              });
}

}  // namespace tarebowl::ui
