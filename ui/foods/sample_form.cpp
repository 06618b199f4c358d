// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/sample_form.h"

#include "ui/foods/food_text.h"
#include "ui/foods/sample_values_delegate.h"
#include "ui/shared/banner.h"
#include "ui/shared/elided_label.h"
#include "ui/shared/entry_table.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

namespace tarebowl::ui {
namespace {

constexpr food::SampleOrigin kOrigins[] = {food::SampleOrigin::OwnLab, food::SampleOrigin::Publication,
                                           food::SampleOrigin::Label, food::SampleOrigin::Estimate};

QLineEdit* addField(QFormLayout& form, const QString& name, const QString& hint = {}) {
  auto* field = new QLineEdit;
  field->setAccessibleName(name);
  field->setPlaceholderText(hint);
  form.addRow(name, field);
  return field;
}

}  // namespace

SampleForm::SampleForm(FoodDesk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      values_(new SampleValuesModel(this)),
      heading_(new ElidedLabel),
      complaint_(makeBanner()),
      origin_(new QComboBox),
      table_(new EntryTable),
      remove_(new QPushButton(tr("Remove this sample"))) {
  build();
}

void SampleForm::build() {
  QFont large = heading_->font();
  large.setPointSizeF(large.pointSizeF() * 1.4);
  large.setBold(true);
  heading_->setFont(large);
  heading_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  origin_->setAccessibleName(tr("Where it comes from"));
  for (const food::SampleOrigin origin : kOrigins) origin_->addItem(textOf(origin));
  auto* left = new QFormLayout;
  auto* right = new QFormLayout;
  left->addRow(tr("Origin"), origin_);
  source_ = addField(*left, tr("Source"), tr("report number, or the publication"));
  date_ = addField(*left, tr("Date"), tr("2026-10-03"));
  lab_ = addField(*left, tr("Laboratory"));
  method_ = addField(*right, tr("Method"));
  batch_ = addField(*right, tr("Batch"));
  note_ = addField(*right, tr("Note"));
  auto* fields = new QHBoxLayout;
  fields->setSpacing(18);
  fields->addLayout(left, 1);
  fields->addLayout(right, 1);
  auto* keep = new QPushButton(tr("Keep this sample"));
  keep->setObjectName(QStringLiteral("primary"));
  auto* cancel = new QPushButton(tr("Cancel"));
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(keep);
  buttons->addWidget(cancel);
  buttons->addStretch(1);
  buttons->addWidget(remove_);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(16, 10, 16, 10);
  layout->setSpacing(10);
  layout->addWidget(heading_);
  layout->addWidget(complaint_);
  layout->addLayout(fields);
  layout->addWidget(makeTable(), 1);
  layout->addLayout(buttons);
  connect(keep, &QPushButton::clicked, this, &SampleForm::keep);
  connect(cancel, &QPushButton::clicked, this, &SampleForm::done);
  connect(remove_, &QPushButton::clicked, this, [this] {
    if (edited_) desk_.removeSample(edited_->id);
    emit done();
  });
}

QWidget* SampleForm::makeTable() {
  table_->setModel(values_);
  table_->setItemDelegate(new SampleValuesDelegate(table_));
  table_->setAccessibleName(tr("Values of the sample"));
  table_->setShowGrid(false);
  table_->setEditTriggers(QAbstractItemView::AllEditTriggers);
  table_->verticalHeader()->hide();
  table_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 10);
  table_->horizontalHeader()->setHighlightSections(false);
  table_->horizontalHeader()->setSectionResizeMode(SampleValuesModel::Nutrient, QHeaderView::Stretch);
  const int unit = fontMetrics().averageCharWidth();
  table_->horizontalHeader()->resizeSection(SampleValuesModel::Amount, 12 * unit);
  table_->horizontalHeader()->resizeSection(SampleValuesModel::Unit, 7 * unit);
  table_->horizontalHeader()->resizeSection(SampleValuesModel::Basis, 20 * unit);
  table_->horizontalHeader()->resizeSection(SampleValuesModel::Sd, 10 * unit);
  table_->horizontalHeader()->resizeSection(SampleValuesModel::Count, 6 * unit);
  auto* card = new QFrame;
  card->setProperty("card", true);
  auto* layout = new QVBoxLayout(card);
  layout->setContentsMargins(7, 5, 7, 7);
  layout->addWidget(table_);
  auto* told = new QLabel(
      tr("A value may be < 0.05, ≥ 33, tr or n.d.; a nutrient may be typed by its tagname (CA) or by "
         "the laboratory's word for it."));
  told->setProperty("soft", true);
  told->setWordWrap(true);
  layout->addWidget(told);
  return card;
}

void SampleForm::startNew(quantity::Date today) {
  edited_.reset();
  const QString food = desk_.page() ? QString::fromStdString(desk_.page()->food.record.food.name) : QString();
  heading_->setText(tr("A sample of %1").arg(food));
  remove_->hide();
  show(food::Sample{.origin = food::SampleOrigin::OwnLab, .date = today});
  source_->setFocus();
}

void SampleForm::startEdit(const store::StoredSample& stored) {
  edited_ = stored;
  const QString food = desk_.page() ? QString::fromStdString(desk_.page()->food.record.food.name) : QString();
  heading_->setText(tr("A sample of %1").arg(food));
  remove_->show();
  show(stored.sample);
  table_->setFocus();
}

void SampleForm::show(const food::Sample& sample) {
  complaint_->hide();
  origin_->setCurrentIndex(static_cast<int>(sample.origin));
  source_->setText(QString::fromStdString(sample.source));
  date_->setText(sample.date ? QString::fromStdString(quantity::isoDate(*sample.date)) : QString());
  lab_->setText(QString::fromStdString(sample.lab));
  method_->setText(QString::fromStdString(sample.method));
  batch_->setText(QString::fromStdString(sample.batch));
  note_->setText(QString::fromStdString(sample.note));
  for (QLineEdit* field : {source_, method_, note_}) field->setCursorPosition(0);
  values_->show(sample.values);
}

std::optional<food::Sample> SampleForm::read() {
  food::Sample sample = edited_ ? edited_->sample : food::Sample{};
  const auto text = [](const QLineEdit* field) { return field->text().trimmed().toStdString(); };
  sample.origin = kOrigins[origin_->currentIndex()];
  sample.source = text(source_);
  sample.lab = text(lab_);
  sample.method = text(method_);
  sample.batch = text(batch_);
  sample.note = text(note_);
  sample.date = quantity::parseDate(text(date_));
  if (!date_->text().trimmed().isEmpty() && !sample.date) {
    complain(tr("“%1” is no date; write it as 2026-10-03.").arg(date_->text()));
    return std::nullopt;
  }
  if (sample.source.empty()) {
    complain(tr("A sample needs its source: a number with no origin helps nobody."));
    return std::nullopt;
  }
  if (const QString complaint = values_->complaint(); !complaint.isEmpty()) {
    complain(complaint);
    return std::nullopt;
  }
  sample.values = values_->values().value();
  return sample;
}

void SampleForm::keep() {
  const auto sample = read();
  if (!sample) return;
  if (edited_)
    desk_.changeSample(edited_->id, *sample);
  else
    desk_.addSample(*sample);
  emit done();
}

void SampleForm::complain(const QString& what) {
  complaint_->setText(what);
  complaint_->show();
}

}  // namespace tarebowl::ui
