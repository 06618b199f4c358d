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
#include <QVBoxLayout>

namespace tarebowl::ui {

CalciumReview::CalciumReview(HealthDesk& desk, QWidget* parent)
    : QScrollArea(parent),
      desk_(desk),
      supplement_(new QComboBox),
      retained_(new NumberField),
      words_(new QLabel),
      zones_(new PlainTable(tr("Calcium against its targets"))),
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
  constexpr int kTableHeight = 200;
  setAccessibleName(tr("Calcium review"));
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  words_->setWordWrap(true);
  words_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  zones_->setModel(rows_);
  zones_->setWideColumn(1);
  zones_->setMinimumHeight(kTableHeight);
  supplement_->setAccessibleName(tr("Supplement"));
  // The field inside a spin box is a control of its own to a screen reader.
  for (QWidget* part : std::initializer_list<QWidget*>{retained_, retained_->findChild<QLineEdit*>()})
    part->setAccessibleName(tr("Share of a dust that reaches the mouth"));
  retained_->setRange(1.0, 100.0);
  retained_->setDecimals(0);
  retained_->setSuffix(tr(" %"));
  retained_->setValue(100.0);
  auto* asks = new WrappingRow;
  asks->addWidget(new QLabel(tr("Least addition of")));
  asks->addWidget(supplement_);
  asks->addWidget(new QLabel(tr("of which reaches the mouth")));
  asks->addWidget(retained_);
  auto* content = new QWidget;
  auto* layout = new QVBoxLayout(content);
  layout->setContentsMargins(0, 8, 0, 0);
  layout->addLayout(asks);
  layout->addWidget(words_);
  layout->addWidget(zones_, 1);
  setWidget(content);
}

void CalciumReview::showSupplements() {
  supplement_->clear();
  supplement_->addItem(tr("no supplement"), QString());
  for (const auto& [code, name] : desk_.supplements())
    supplement_->addItem(name, QString::fromStdString(code));
}

void CalciumReview::showView() {
  const auto& view = desk_.view();
  words_->setText(view ? reviewText(*view) : QString());
  rows_->show(view ? zoneRows(*view) : std::vector<RowsModel::Row>());
}

void CalciumReview::ask() {
  desk_.ask({supplement_->currentData().toString().toStdString(), retained_->value() / 100.0, 1.0});
}

}  // namespace tarebowl::ui
