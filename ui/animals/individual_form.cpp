// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/individual_form.h"

#include "ui/animals/animal_text.h"
#include "ui/shared/banner.h"
#include "ui/shared/card.h"
#include "ui/shared/days.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace tarebowl::ui {
namespace {

constexpr animal::Sex kSexes[] = {animal::Sex::Unknown, animal::Sex::Female, animal::Sex::Male};
constexpr animal::LifeStage kStages[] = {animal::LifeStage::Unweaned,  animal::LifeStage::Growing,
                                         animal::LifeStage::Adult,     animal::LifeStage::Pregnant,
                                         animal::LifeStage::Lactating, animal::LifeStage::Senior};

QString dayText(const std::optional<quantity::Date>& day) {
  return day ? QString::fromStdString(quantity::isoDate(*day)) : QString();
}

QString stagesText(const animal::Individual& individual) {
  if (individual.stages.empty()) return IndividualForm::tr("adult, as long as nothing else is said");
  QStringList lines;
  for (const animal::StageEntry& entry : individual.stages)
    lines << IndividualForm::tr("%1 from %2").arg(wordFor(entry.stage), dateText(entry.from));
  return lines.join(QStringLiteral("; "));
}

}  // namespace

IndividualForm::IndividualForm(AnimalDesk& desk, QWidget* parent)
    : QFrame(parent),
      desk_(desk),
      sex_(new QComboBox),
      estimated_(new QCheckBox(tr("an estimate"))),
      died_(new QCheckBox(tr("by death"))),
      stage_(new QComboBox),
      stages_(new QLabel),
      stays_(new QLabel),
      complaint_(makeBanner()) {
  build();
  connect(&desk_, &AnimalDesk::pageChanged, this, &IndividualForm::showPage);
  showPage();
}

void IndividualForm::build() {
  QVBoxLayout* layout = layOutCard(*this, tr("The animal"));
  layout->addWidget(complaint_);
  auto* form = new QFormLayout;
  form->setHorizontalSpacing(12);
  form->setVerticalSpacing(6);
  code_ = addField(*form, tr("Name or number"), tr("of the house"));
  sex_->setAccessibleName(tr("Sex"));
  for (const animal::Sex sex : kSexes) sex_->addItem(wordFor(sex));
  form->addRow(tr("Sex"), sex_);
  born_ = addField(*form, tr("Born"), tr("2026-05-17"));
  form->addRow(QString(), estimated_);
  arrived_ = addField(*form, tr("Arrived"), tr("2026-05-17"));
  left_ = addField(*form, tr("Left"), tr("the first day on which it is not there"));
  form->addRow(QString(), died_);
  stages_->setWordWrap(true);
  stages_->setAccessibleDescription(tr("Life stages so far"));
  form->addRow(tr("Life stages"), stages_);
  stage_->setAccessibleName(tr("Life stage from today on"));
  for (const animal::LifeStage stage : kStages) stage_->addItem(wordFor(stage));
  stage_->setCurrentIndex(2);
  auto* add = new QPushButton(tr("From today"));
  add->setToolTip(tr("The animal is in this stage from today on"));
  auto* stageRow = new QHBoxLayout;
  stageRow->addWidget(stage_);
  stageRow->addWidget(add);
  stageRow->addStretch(1);
  form->addRow(QString(), stageRow);
  stays_->setWordWrap(true);
  stays_->setAccessibleDescription(tr("Groups it was in"));
  form->addRow(tr("In groups"), stays_);
  note_ = addField(*form, tr("Note"), QString());
  layout->addLayout(form);
  layout->addStretch(1);
  connect(sex_, &QComboBox::activated, this, &IndividualForm::keep);
  connect(estimated_, &QCheckBox::clicked, this, &IndividualForm::keep);
  connect(died_, &QCheckBox::clicked, this, &IndividualForm::keep);
  connect(add, &QPushButton::clicked, this, &IndividualForm::addStage);
}

QLineEdit* IndividualForm::addField(QFormLayout& form, const QString& name, const QString& hint) {
  auto* field = new QLineEdit;
  field->setAccessibleName(name);
  field->setPlaceholderText(hint);
  form.addRow(name, field);
  connect(field, &QLineEdit::editingFinished, this, &IndividualForm::keep);
  return field;
}

void IndividualForm::showPage() {
  const auto& page = desk_.page();
  setEnabled(page && page->individual);
  if (!page || !page->individual) return;
  const animal::Individual& animal = page->individual->record;
  code_->setText(QString::fromStdString(animal.code));
  sex_->setCurrentIndex(static_cast<int>(animal.sex));
  born_->setText(dayText(animal.born));
  estimated_->setChecked(animal.birthEstimated);
  arrived_->setText(dayText(animal.arrived));
  left_->setText(dayText(animal.left));
  died_->setChecked(animal.died);
  stages_->setText(stagesText(animal));
  note_->setText(QString::fromStdString(animal.note));
  QStringList stays;
  for (const store::StoredMembership& stay : page->stays) {
    const auto* group = desk_.herd().groupOf(stay.record.group);
    stays << tr("%1 %2").arg(
        QString::fromStdString(group == nullptr ? stay.record.group : group->record.name),
        stayText(stay.record));
  }
  stays_->setText(stays.isEmpty() ? tr("in none") : stays.join(QStringLiteral("; ")));
  complaint_->hide();
}

bool IndividualForm::readDay(const QLineEdit& field, std::optional<quantity::Date>& day) {
  const QString text = field.text().trimmed();
  day = quantity::parseDate(text.toStdString());
  if (text.isEmpty() || day) return true;
  complain(tr("%1: “%2” is no day; write it as 2026-05-17.").arg(field.accessibleName(), text));
  return false;
}

std::optional<animal::Individual> IndividualForm::read() {
  animal::Individual animal = desk_.page()->individual->record;
  animal.code = code_->text().trimmed().toStdString();
  animal.sex = kSexes[sex_->currentIndex()];
  animal.birthEstimated = estimated_->isChecked();
  animal.died = died_->isChecked();
  animal.note = note_->text().trimmed().toStdString();
  if (!readDay(*born_, animal.born) || !readDay(*arrived_, animal.arrived) || !readDay(*left_, animal.left))
    return std::nullopt;
  const auto problems = animal::problemsWith(animal);
  if (problems.empty()) return animal;
  complain(problemText(problems.front()));
  return std::nullopt;
}

void IndividualForm::keep() {
  if (!desk_.page() || !desk_.page()->individual) return;
  complaint_->hide();
  if (const auto animal = read()) desk_.changeIndividual(*animal);
}

void IndividualForm::addStage() {
  if (!desk_.page() || !desk_.page()->individual) return;
  animal::Individual animal = desk_.page()->individual->record;
  std::erase_if(animal.stages,
                [this](const animal::StageEntry& entry) { return entry.from >= desk_.today(); });
  animal.stages.push_back({desk_.today(), kStages[stage_->currentIndex()]});
  const auto problems = animal::problemsWith(animal);
  if (!problems.empty()) return complain(problemText(problems.front()));
  desk_.changeIndividual(animal);
}

void IndividualForm::complain(const QString& what) {
  complaint_->setText(what);
  complaint_->show();
}

}  // namespace tarebowl::ui
