// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/health/calcium_review.h"

#include "ui/health/health_text.h"
#include "ui/shared/number_field.h"
#include "ui/shared/plain_table.h"
#include "ui/shared/wrapping_row.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>

namespace tarebowl::ui {

CalciumReview::CalciumReview(HealthDesk& desk, QWidget* parent)
    : HealthTab(tr("Calcium review"), new PlainTable(tr("Calcium against its targets")), parent),
      desk_(desk),
      supplement_(new QComboBox),
      retained_(new NumberField),
      rows_(new RowsModel({tr("As eaten"), tr("Target"), tr("Zone"), tr("Offered"), tr("Eaten"),
                           tr("With the dose"), tr("Unit")},
                          {2, 3, 4, 5}, this)) {
  build();
  connect(&desk_, &HealthDesk::patientsChanged, this, &CalciumReview::showSupplements);
  connect(&desk_, &HealthDesk::viewChanged, this, &CalciumReview::showView);
  connect(supplement_, &QComboBox::activated, this, &CalciumReview::ask);
  connect(retained_, &QDoubleSpinBox::valueChanged, this, &CalciumReview::ask);
  showSupplements();
  showView();
}

void CalciumReview::build() {
  table().setModel(rows_);
  table().setWideColumn(1);
  supplement_->setAccessibleName(tr("Supplement"));
  // The field inside a spin box is a control of its own to a screen reader.
  for (QWidget* part : std::initializer_list<QWidget*>{retained_, retained_->findChild<QLineEdit*>()})
    part->setAccessibleName(tr("Share of a dust that reaches the mouth"));
  retained_->setRange(1.0, 100.0);
  retained_->setDecimals(0);
  retained_->setSuffix(tr(" %"));
  retained_->setValue(100.0);
  asked().addWidget(new QLabel(tr("Least addition of")));
  asked().addWidget(supplement_);
  asked().addWidget(new QLabel(tr("of which reaches the mouth")));
  asked().addWidget(retained_);
}

void CalciumReview::showSupplements() {
  supplement_->clear();
  supplement_->addItem(tr("no supplement"), QString());
  for (const auto& [code, name] : desk_.supplements())
    supplement_->addItem(name, QString::fromStdString(code));
}

void CalciumReview::showView() {
  const auto& view = desk_.view();
  words().setText(view ? reviewText(*view) : QString());
  rows_->show(view ? zoneRows(*view) : std::vector<RowsModel::Row>());
}

void CalciumReview::ask() {
  desk_.ask({supplement_->currentData().toString().toStdString(), retained_->value() / 100.0, 1.0});
}

}  // namespace tarebowl::ui
