// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/rotation_form.h"

#include "ui/shared/card.h"
#include "ui/shared/date_field.h"
#include "ui/shared/days.h"
#include "ui/shared/number_field.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include <array>

namespace tarebowl::ui {

namespace {

/// As files of rules name them, from Monday on.
constexpr std::array<const char*, 7> kWeekdays{"mon", "tue", "wed", "thu", "fri", "sat", "sun"};
constexpr int kMostDays = 28;
constexpr int kMostFoods = 99;

QSpinBox* countField(const QString& name, int least, int most, const QString& none) {
  auto* spin = new QSpinBox;
  spin->setRange(least, most);
  spin->setSpecialValueText(none);
  spin->setAccessibleName(name);
  return spin;
}

std::optional<int> countIn(const QSpinBox& spin) {
  return spin.value() == spin.minimum() ? std::nullopt : std::optional(spin.value());
}

}  // namespace

RotationForm::RotationForm(QWidget* parent)
    : QFrame(parent),
      from_(new DateField),
      days_(new QComboBox),
      run_(countField(tr("No food more days running than"), 0, kMostDays, tr("no limit"))),
      wanted_(countField(tr("Different foods wanted"), 0, kMostFoods, tr("no wish"))),
      most_(countField(tr("Different foods a day, at most"), 0, kMostFoods, tr("no limit"))),
      widen_(new NumberField),
      plan_(new QPushButton(tr("Plan"))) {
  build();
  connect(plan_, &QPushButton::clicked, this, &RotationForm::planWanted);
}

void RotationForm::build() {
  for (const int days : {7, 14, 28}) days_->addItem(tr("%1 days").arg(days), days);
  days_->setAccessibleName(tr("How many days"));
  from_->setAccessibleName(tr("First day"));
  widen_->setRange(0.0, 500.0);
  widen_->setDecimals(0);
  widen_->setSuffix(QStringLiteral(" %"));
  widen_->setAccessibleName(tr("A single day's zones are wider by"));
  run_->setValue(2);
  widen_->setValue(50.0);
  for (QWidget* field : std::initializer_list<QWidget*>{from_, run_, wanted_, most_, widen_})
    if (auto* inner = field->findChild<QLineEdit*>()) inner->setAccessibleName(field->accessibleName());
  auto* fasting = new QHBoxLayout;
  fasting->setSpacing(8);
  for (int day = 1; day <= static_cast<int>(kWeekdays.size()); ++day) {
    auto* box = new QCheckBox(QLocale().dayName(day, QLocale::ShortFormat));
    box->setAccessibleName(tr("Nothing is fed on %1").arg(QLocale().dayName(day)));
    fasting_.push_back(box);
    fasting->addWidget(box);
  }
  fasting->addStretch(1);
  auto* form = new QFormLayout;
  form->setFieldGrowthPolicy(QFormLayout::FieldsStayAtSizeHint);
  form->setHorizontalSpacing(14);
  form->addRow(tr("First day"), from_);
  form->addRow(tr("How long"), days_);
  form->addRow(tr("No food more days running than"), run_);
  form->addRow(tr("Different foods wanted over the days"), wanted_);
  form->addRow(tr("Different foods a day, at most"), most_);
  form->addRow(tr("A single day's zones are wider by"), widen_);
  form->addRow(tr("Nothing is fed on"), fasting);
  auto* file = new QPushButton(tr("Rules from a file…"));
  file->setToolTip(
      tr("Structure by the day, seasons, deliveries, stock to use up: a file of rules says them"));
  connect(file, &QPushButton::clicked, this, &RotationForm::fileWanted);
  plan_->setObjectName(QStringLiteral("primary"));
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(plan_);
  buttons->addWidget(file);
  buttons->addStretch(1);
  QVBoxLayout* layout = layOutCard(*this, tr("Plan days that vary"));
  auto* words =
      new QLabel(tr("Every day another bowl of this version's foods, within their limits; over the days the "
                    "targets hold. A "
                    "food that may come needs a line in the version, with 0 g if it is not fed now. Its "
                    "structure rules hold "
                    "each day."));
  words->setWordWrap(true);
  words->setProperty("soft", true);
  layout->addWidget(words);
  layout->addLayout(form);
  layout->addLayout(buttons);
}

void RotationForm::ask(quantity::Date from) {
  from_->setDate(toQDate(from));
  show();
  from_->setFocus();
}

exchange::PlainRules RotationForm::rules() const {
  exchange::PlainRules rules;
  rules.days = days_->currentData().toInt();
  rules.longestRun = countIn(*run_);
  rules.wanted = countIn(*wanted_);
  rules.mostFoods = countIn(*most_);
  rules.widenDaily = widen_->value() / 100.0;
  for (std::size_t day = 0; day < fasting_.size(); ++day)
    if (fasting_[day]->isChecked()) rules.fasting.emplace_back(kWeekdays[day]);
  return rules;
}

quantity::Date RotationForm::from() const {
  return toDate(from_->date());
}

}  // namespace tarebowl::ui
