// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/group_pane.h"

#include "ui/animals/energy_card.h"
#include "ui/animals/history_card.h"
#include "ui/animals/mass_card.h"
#include "ui/animals/mass_entry.h"
#include "ui/animals/members_card.h"
#include "ui/animals/readings_card.h"
#include "ui/animals/targets_card.h"
#include "ui/shared/folding_panes.h"
#include "ui/shared/segmented_switch.h"
#include "ui/shared/wrapping_row.h"

#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <utility>

namespace tarebowl::ui {

GroupPane::GroupPane(AnimalDesk& desk, ReasonBar& reason, Starters starters, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      sheet_(new SegmentedSwitch(tr("Of the group"), {tr("animals and mass"), tr("energy need"),
                                                      tr("targets"), tr("what changed")})),
      design_(new QPushButton(tr("Design a diet"))),
      sheets_(new QStackedWidget),
      members_(new MembersCard(desk)),
      readings_(new ReadingsCard(desk, reason)),
      mass_(new MassCard(desk)),
      entry_(new MassEntry(desk)),
      energy_(new EnergyCard(desk)),
      targets_(new TargetsCard(desk, reason, std::move(starters))),
      history_(new HistoryCard(desk)) {
  sheets_->addWidget(makeAnimals());
  sheets_->addWidget(energy_);
  sheets_->addWidget(targets_);
  sheets_->addWidget(history_);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(16, 8, 16, 10);
  layout->setSpacing(10);
  auto* top = new WrappingRow;
  top->addWidget(sheet_);
  top->addWidget(design_);
  layout->addLayout(top);
  layout->addWidget(sheets_, 1);
  connect(sheet_, &SegmentedSwitch::chosen, sheets_, &QStackedWidget::setCurrentIndex);
  connect(members_, &MembersCard::shownWanted, this, &GroupPane::shownWanted);
  connect(&desk_, &AnimalDesk::pageChanged, this, &GroupPane::showPage);
  connect(design_, &QPushButton::clicked, this, [this] {
    if (desk_.page() && desk_.page()->group)
      emit dietWanted(QString::fromStdString(desk_.page()->group->record.code));
  });
  showPage();
}

void GroupPane::showPage() {
  const ProfileInSight* profile = desk_.page() ? profileToShow(*desk_.page()) : nullptr;
  const bool fed = profile != nullptr && profile->state == store::ProfileState::InForce;
  design_->setEnabled(fed);
  design_->setToolTip(fed ? tr("A bowl for this group that meets its targets")
                          : tr("A diet is designed to targets: this group has no profile in force yet"));
}

QWidget* GroupPane::makeAnimals() {
  auto* page = new QWidget;
  auto* top = new FoldingPanes;
  top->setHandleWidth(10);
  for (QWidget* card : std::initializer_list<QWidget*>{members_, readings_}) {
    top->addWidget(card);
    top->setStretchFactor(top->count() - 1, 1);
  }
  top->setWidths({500, 500});
  auto* layout = new QVBoxLayout(page);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(10);
  layout->addWidget(top, 4);
  layout->addWidget(mass_, 5);
  layout->addWidget(entry_);
  return page;
}

void GroupPane::showSheet(int sheet) {
  sheet_->setCurrent(sheet);
  sheets_->setCurrentIndex(sheet);
}

}  // namespace tarebowl::ui
