// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/individual_pane.h"

#include "ui/animals/history_card.h"
#include "ui/animals/individual_form.h"
#include "ui/animals/mass_card.h"
#include "ui/animals/mass_entry.h"
#include "ui/animals/readings_card.h"

#include <QHBoxLayout>
#include <QScrollArea>
#include <QVBoxLayout>

namespace tarebowl::ui {

IndividualPane::IndividualPane(AnimalDesk& desk, ReasonBar& reason, QWidget* parent)
    : QWidget(parent), entry_(new MassEntry(desk)) {
  auto* form = new QScrollArea;
  form->setWidget(new IndividualForm(desk));
  form->setWidgetResizable(true);
  form->setFocusPolicy(Qt::NoFocus);
  auto* left = new QVBoxLayout;
  left->setSpacing(10);
  left->addWidget(form, 3);
  left->addWidget(new HistoryCard(desk), 2);
  auto* right = new QVBoxLayout;
  right->setSpacing(10);
  right->addWidget(new MassCard(desk), 3);
  right->addWidget(new ReadingsCard(desk, reason), 2);
  auto* columns = new QHBoxLayout;
  columns->setSpacing(10);
  columns->addLayout(left, 2);
  columns->addLayout(right, 3);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(16, 8, 16, 10);
  layout->setSpacing(10);
  layout->addLayout(columns, 1);
  layout->addWidget(entry_);
}

}  // namespace tarebowl::ui
