// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/health/look_back_pane.h"

#include "ui/health/health_text.h"
#include "ui/shared/plain_table.h"
#include "ui/shared/wrapping_row.h"

#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>

namespace tarebowl::ui {

LookBackPane::LookBackPane(HealthDesk& desk, QWidget* parent)
    : HealthTab(tr("Look-back"), new PlainTable(tr("Foods and the sign")), parent),
      desk_(desk),
      hours_(new QSpinBox),
      rows_(new RowsModel({tr("Food"), tr("Sign, with it"), tr("without"), tr("Fisher"), tr("corrected"),
                           tr("Risk ratio (95 %)")},
                          {1, 2, 3, 4, 5}, this)) {
  build();
  connect(&desk_, &HealthDesk::lookBackChanged, this, &LookBackPane::showPage);
  connect(hours_, &QSpinBox::valueChanged, this, [this](int hours) {
    if (const auto& page = desk_.lookBack()) desk_.lookBackFrom(page->kind, page->lookBack.sign.day, hours);
  });
  showPage();
}

void LookBackPane::build() {
  table().setModel(rows_);
  table().setWideColumn(0);
  // The field inside a spin box is a control of its own to a screen reader.
  for (QWidget* part : std::initializer_list<QWidget*>{hours_, hours_->findChild<QLineEdit*>()})
    part->setAccessibleName(tr("Hours before the sign"));
  hours_->setRange(health::kShortestWindow, health::kLongestWindow);
  hours_->setSingleStep(6);
  hours_->setValue(health::LookBackRule().hours);
  hours_->setSuffix(tr(" h before"));
  asked().addWidget(new QLabel(tr("Bowls given in the")));
  asked().addWidget(hours_);
}

int LookBackPane::hours() const {
  return hours_->value();
}

void LookBackPane::showPage() {
  const auto& page = desk_.lookBack();
  words().setText(
      page ? lookBackText(*page)
           : tr("Choose a sign (▲) at the left: what was eaten before it is compared with days without it."));
  rows_->show(page ? linkRows(*page) : std::vector<RowsModel::Row>());
}

}  // namespace tarebowl::ui
