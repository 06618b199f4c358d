// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/energy_card.h"

#include "ui/animals/energy_model.h"
#include "ui/animals/energy_text.h"
#include "ui/animals/provenance_text.h"
#include "ui/shared/card.h"
#include "ui/shared/days.h"
#include "ui/shared/format.h"
#include "ui/shared/plain_table.h"
#include "ui/shared/state_mark.h"
#include "ui/shared/wrapping_row.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace tarebowl::ui {
namespace {

QString massOrigin(const std::optional<PageMass>& mass) {
  if (!mass) return EnergyCard::tr("nothing was weighed yet");
  const QString whose =
      mass->animals > 1 ? EnergyCard::tr("mean of %1 animals").arg(mass->animals) : EnergyCard::tr("weighed");
  return EnergyCard::tr("%1, newest %2").arg(whose, dateText(mass->newest));
}

/// The plan of the day: the newest that holds by then.
const store::StoredEnergyPlan* planOn(const AnimalPage& page, quantity::Date day) {
  const store::StoredEnergyPlan* newest = nullptr;
  for (const store::StoredEnergyPlan& plan : page.plans)
    if (plan.record.from <= day) newest = &plan;
  return newest;
}

}  // namespace

EnergyCard::EnergyCard(AnimalDesk& desk, QWidget* parent)
    : QFrame(parent),
      desk_(desk),
      model_(new EnergyModel(this)),
      table_(new PlainTable(tr("Energy need, step by step"))),
      plans_(new QComboBox),
      factors_(new QComboBox),
      add_(new QPushButton(tr("Add this factor"))),
      remove_(new QPushButton(tr("Take the chosen factor away"))),
      about_(new QLabel),
      cautions_(new QWidget),
      cautionLines_(new QVBoxLayout(cautions_)) {
  build();
  connect(&desk_, &AnimalDesk::pageChanged, this, &EnergyCard::showPage);
  connect(model_, &EnergyModel::planEdited, this, &EnergyCard::keep, Qt::QueuedConnection);
  connect(table_->selectionModel(), &QItemSelectionModel::currentChanged, this, &EnergyCard::showButtons);
  connect(plans_, &QComboBox::activated, this, &EnergyCard::choosePlan);
  connect(add_, &QPushButton::clicked, this, &EnergyCard::addFactor);
  connect(remove_, &QPushButton::clicked, this, &EnergyCard::removeFactor);
  showPage();
}

void EnergyCard::build() {
  QVBoxLayout* layout = layOutCard(*this, tr("Energy need, step by step"));
  about_->setWordWrap(true);
  layout->addWidget(about_);
  layout->addWidget(makeChoices());
  table_->setModel(model_);
  table_->setWideColumn(EnergyModel::Origin);
  layout->addWidget(table_, 1);
  cautionLines_->setContentsMargins(0, 4, 0, 0);
  cautionLines_->setSpacing(4);
  layout->addWidget(cautions_);
  auto* told =
      new QLabel(tr("A worked-out need is where a diet begins, not where it ends: body mass and condition "
                    "say whether it was right."));
  told->setProperty("soft", true);
  told->setWordWrap(true);
  layout->addWidget(told);
}

QWidget* EnergyCard::makeChoices() {
  plans_->setAccessibleName(tr("Published energy at 1 kg of body mass"));
  plans_->addItem(tr("Choose a published energy at 1 kg…"));
  for (const animal::Allometry& allometry : animal::publishedAllometries()) {
    plans_->addItem(choiceText(allometry));
    plans_->setItemData(
        plans_->count() - 1,
        QString::fromUtf8(allometry.source.data(), static_cast<qsizetype>(allometry.source.size())),
        Qt::ToolTipRole);
  }
  factors_->setAccessibleName(tr("Published factors"));
  factors_->addItem(tr("A house factor of 1, to be edited"));
  for (const animal::EnergyMultiplier& multiplier : animal::publishedMultipliers()) {
    factors_->addItem(choiceText(multiplier));
    factors_->setItemData(
        factors_->count() - 1,
        QString::fromUtf8(multiplier.source.data(), static_cast<qsizetype>(multiplier.source.size())),
        Qt::ToolTipRole);
  }
  for (QComboBox* box : {plans_, factors_}) {
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(28);
  }
  auto* row = new QWidget;
  auto* layout = new WrappingRow(row);
  for (QComboBox* box : {plans_, factors_}) {
    box->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    layout->addWidget(box);
  }
  layout->addWidget(add_);
  layout->addWidget(remove_);
  return row;
}

std::optional<animal::EnergyPlan> EnergyCard::plan() const {
  if (!desk_.page()) return std::nullopt;
  const store::StoredEnergyPlan* stored = planOn(*desk_.page(), desk_.today());
  return stored == nullptr ? std::nullopt : std::optional(stored->record.plan);
}

void EnergyCard::showPage() {
  if (!desk_.page() || !desk_.page()->group) return;
  const AnimalPage& page = *desk_.page();
  const store::StoredEnergyPlan* stored = planOn(page, desk_.today());
  const auto mass = massOf(page, desk_.today());
  table_->setVisible(stored != nullptr);
  add_->setEnabled(stored != nullptr);
  factors_->setEnabled(stored != nullptr);
  plans_->setCurrentIndex(0);
  if (stored == nullptr) {
    about_->setText(tr(
        "Nobody chose yet how the energy need of this group is worked out. Begin with a published choice."));
    model_->show({});
  } else {
    const QString validity = QString::fromStdString(stored->record.plan.validity);
    about_->setText(tr("In force since %1. %2")
                        .arg(dateText(stored->record.from),
                             validity.isEmpty() ? QString() : tr("The source speaks of: %1.").arg(validity))
                        .trimmed());
    model_->show({.plan = stored->record.plan,
                  .mass = mass ? std::optional(mass->mass) : std::nullopt,
                  .massOrigin = massOrigin(mass),
                  .headcount = headcountOf(page, desk_.today())});
  }
  showCautions();
  showButtons();
}

void EnergyCard::showCautions() {
  while (QLayoutItem* item = cautionLines_->takeAt(0)) {
    delete item->widget();
    delete item;
  }
  const auto now = plan();
  if (!now) return;
  for (const animal::EnergyCaution caution : model_->derivation().cautions) {
    auto* line = new QWidget;
    auto* row = new QHBoxLayout(line);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(7);
    auto* text = new QLabel(cautionText(caution, *now));
    text->setWordWrap(true);
    row->addWidget(new MarkWidget(Mark::AtLimit), 0, Qt::AlignTop);
    row->addWidget(text, 1);
    cautionLines_->addWidget(line);
  }
}

void EnergyCard::showButtons() {
  remove_->setEnabled(model_->factorAt(table_->currentIndex()).has_value());
}

void EnergyCard::choosePlan() {
  const int choice = plans_->currentIndex() - 1;
  if (choice < 0) return;
  animal::EnergyPlan chosen =
      animal::planFrom(animal::publishedAllometries()[static_cast<std::size_t>(choice)]);
  if (const auto now = plan()) chosen.factors = now->factors;
  keep(chosen);
}

void EnergyCard::addFactor() {
  auto changed = plan();
  if (!changed) return;
  const int choice = factors_->currentIndex() - 1;
  if (choice < 0)
    changed->factors.push_back({.kind = animal::EnergyFactor::Kind::House,
                                .words = tr("house factor").toStdString(),
                                .origin = houseOrigin()});
  else {
    const animal::EnergyMultiplier& multiplier =
        animal::publishedMultipliers()[static_cast<std::size_t>(choice)];
    changed->factors.push_back(animal::factorFrom(multiplier, kindOf(multiplier)));
  }
  keep(*changed);
}

void EnergyCard::removeFactor() {
  auto changed = plan();
  const auto factor = model_->factorAt(table_->currentIndex());
  if (!changed || !factor) return;
  changed->factors.erase(changed->factors.begin() + static_cast<std::ptrdiff_t>(*factor));
  keep(*changed);
}

void EnergyCard::keep(const animal::EnergyPlan& plan) {
  desk_.setEnergyPlan(plan);
}

}  // namespace tarebowl::ui
