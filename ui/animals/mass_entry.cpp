// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/mass_entry.h"

#include "ui/animals/animal_text.h"
#include "ui/shared/card.h"
#include "ui/shared/days.h"
#include "ui/shared/format.h"
#include "ui/shared/number_reading.h"
#include "ui/shared/state_mark.h"
#include "ui/shared/wrapping_row.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <utility>

namespace tarebowl::ui {
namespace {

constexpr animal::MassMethod kMethods[] = {animal::MassMethod::Scale, animal::MassMethod::TrainedOnScale,
                                           animal::MassMethod::Carried, animal::MassMethod::UnderAnaesthesia,
                                           animal::MassMethod::Estimated};
constexpr int kGram = 0;
constexpr double kGramsAKilogram = 1000.0;

QLineEdit* makeField(const QString& name, const QString& hint, int characters) {
  auto* field = new QLineEdit;
  field->setAccessibleName(name);
  field->setPlaceholderText(hint);
  field->setToolTip(name);
  field->setFixedWidth(field->fontMetrics().averageCharWidth() * characters + 18);
  return field;
}

}  // namespace

MassEntry::MassEntry(AnimalDesk& desk, QWidget* parent)
    : QFrame(parent),
      desk_(desk),
      who_(new QComboBox),
      day_(makeField(tr("Day of the weighing"), tr("2026-11-25"), 12)),
      mass_(makeField(tr("Body mass"), tr("mass"), 9)),
      unit_(new QComboBox),
      method_(new QComboBox),
      score_(makeField(tr("Body condition score"), tr("score"), 7)),
      scale_(new QComboBox),
      keep_(new QPushButton(tr("Write down"))),
      asked_(new QLabel),
      yes_(new QPushButton),
      meant_(new QPushButton) {
  build();
  connect(&desk_, &AnimalDesk::pageChanged, this, &MassEntry::showPage);
  connect(keep_, &QPushButton::clicked, this, &MassEntry::keep);
  for (QLineEdit* field : {mass_, score_, day_}) {
    connect(field, &QLineEdit::returnPressed, this, &MassEntry::keep);
    connect(field, &QLineEdit::textEdited, this, &MassEntry::dismiss);
  }
  connect(unit_, &QComboBox::activated, this, &MassEntry::dismiss);
  connect(who_, &QComboBox::activated, this, &MassEntry::dismiss);
}

void MassEntry::build() {
  QVBoxLayout* layout = layOutCard(*this, tr("Write down a mass or a condition score"));
  who_->setAccessibleName(tr("Who was weighed"));
  unit_->setAccessibleName(tr("Unit of the mass"));
  unit_->addItems({unitText(quantity::Unit::Gram), tr("kg")});
  method_->setAccessibleName(tr("How it was weighed"));
  for (const animal::MassMethod method : kMethods) method_->addItem(wordFor(method));
  scale_->setAccessibleName(tr("Scale of the condition score"));
  for (const animal::ScoreScale& scale : animal::conditionScales()) {
    scale_->addItem(tr("of %1").arg(stated(scale.highest)),
                    QByteArray(scale.id.data(), static_cast<qsizetype>(scale.id.size())));
    scale_->setItemData(scale_->count() - 1,
                        QString::fromUtf8(scale.source.data(), static_cast<qsizetype>(scale.source.size())),
                        Qt::ToolTipRole);
  }
  auto* fields = new WrappingRow;
  for (QWidget* widget :
       std::initializer_list<QWidget*>{who_, day_, mass_, unit_, method_, score_, scale_, keep_})
    fields->addWidget(widget);
  layout->addLayout(fields);
  question_ = new QWidget;
  question_->setLayout(makeQuestion());
  layout->addWidget(question_);
  question_->hide();
}

QHBoxLayout* MassEntry::makeQuestion() {
  auto* row = new QHBoxLayout;
  row->setContentsMargins(0, 2, 0, 0);
  row->setSpacing(7);
  asked_->setWordWrap(true);
  row->addWidget(new MarkWidget(Mark::AtLimit));
  row->addWidget(asked_, 1);
  auto* cancel = new QPushButton(tr("Cancel"));
  for (QPushButton* button : {meant_, yes_, cancel}) row->addWidget(button);
  connect(cancel, &QPushButton::clicked, this, [this] {
    dismiss();
    focusMass();
  });
  connect(yes_, &QPushButton::clicked, this, [this] {
    if (const auto mass = std::exchange(doubted_, std::nullopt)) keepMass(*mass, store::Confirmed::Yes);
  });
  connect(meant_, &QPushButton::clicked, this, [this] {
    if (const auto mass = std::exchange(instead_, std::nullopt)) keepMass(*mass, store::Confirmed::No);
  });
  return row;
}

void MassEntry::showPage() {
  const auto& page = desk_.page();
  setEnabled(page.has_value());
  if (!page) return;
  const bool same = filledFor_ == page->place;
  const QString before = who_->currentText();
  who_->clear();
  for (const MeasuredSeries& series : page->series) {
    const QString code = QString::fromStdString(series.code);
    who_->addItem(series.ofGroup ? tr("mean of the group") : code, code);
    who_->setItemData(who_->count() - 1, series.ofGroup, Qt::UserRole + 1);
  }
  if (page->group && who_->count() > 1) who_->setCurrentIndex(1);  // its animals are known one by one
  if (same && who_->findText(before) >= 0) who_->setCurrentText(before);
  who_->setVisible(page->group.has_value());
  if (same) return;
  filledFor_ = page->place;
  dismiss();
  mass_->clear();
  score_->clear();
  day_->setText(QString::fromStdString(quantity::isoDate(desk_.today())));
  const auto known = massOf(*page, desk_.today());
  const auto about = known ? std::optional(known->mass) : page->expectedMass;
  unit_->setCurrentIndex(about && *about >= quantity::Kilograms(1.0) ? 1 : kGram);
}

const MeasuredSeries* MassEntry::chosenSeries() const {
  if (!desk_.page()) return nullptr;
  const int place = who_->currentIndex();
  const auto& series = desk_.page()->series;
  return place < 0 || place >= static_cast<int>(series.size()) ? nullptr
                                                               : &series[static_cast<std::size_t>(place)];
}

void MassEntry::focusMass() {
  mass_->setFocus();
  mass_->selectAll();
}

std::optional<animal::MassReading> MassEntry::read() {
  const auto day = quantity::parseDate(day_->text().trimmed().toStdString());
  if (!day) {
    say(tr("“%1” is no day; write it as 2026-11-25.").arg(day_->text()));
    return std::nullopt;
  }
  const auto mass = readNumber(mass_->text());
  if (!mass || *mass <= 0.0) {
    say(tr("“%1” is no mass; a mass is a number above 0.").arg(mass_->text()));
    return std::nullopt;
  }
  const double kilograms = unit_->currentIndex() == kGram ? *mass / kGramsAKilogram : *mass;
  return animal::MassReading{
      .on = *day, .mass = quantity::Kilograms(kilograms), .method = kMethods[method_->currentIndex()]};
}

bool MassEntry::readScore(std::optional<animal::ConditionReading>& score) {
  if (score_->text().trimmed().isEmpty()) return true;
  const auto day = quantity::parseDate(day_->text().trimmed().toStdString());
  const auto number = readNumber(score_->text());
  if (!day || !number) {
    say(tr("“%1” is no score, or the day is none.").arg(score_->text()));
    return false;
  }
  const animal::ConditionReading reading{
      .on = *day, .scale = scale_->currentData().toByteArray().toStdString(), .score = *number};
  if (animal::problemWith(reading)) {
    say(tr("The scale %1 has no score of %2.").arg(scale_->currentText(), score_->text()));
    return false;
  }
  score = reading;
  return true;
}

void MassEntry::keep() {
  dismiss();
  const MeasuredSeries* series = chosenSeries();
  std::optional<animal::ConditionReading> score;
  if (series == nullptr || !readScore(score)) return;
  if (mass_->text().trimmed().isEmpty()) {
    if (score)
      keepScore();
    else
      say(tr("Type a mass or a score first."));
    return;
  }
  const auto reading = read();
  if (!reading) return;
  const auto readings = store::readingsOf(series->masses);
  const auto doubt = animal::doubtAbout(*reading, readings, desk_.today(), desk_.page()->expectedMass);
  if (!doubt) return keepMass(reading->mass, store::Confirmed::No);
  const auto current = animal::massOn(readings, reading->on);
  ask(*doubt, *reading, current ? std::optional(current->mass) : desk_.page()->expectedMass);
}

void MassEntry::ask(animal::MassDoubt doubt, const animal::MassReading& reading,
                    std::optional<quantity::Kilograms> expected) {
  const bool impossible = doubt == animal::MassDoubt::NotAboveZero || doubt == animal::MassDoubt::InTheFuture;
  say(doubtText(doubt, reading.mass, expected));
  if (impossible) return;
  doubted_ = reading.mass;
  instead_ = meantBy(doubt, reading.mass);
  yes_->setText(tr("It is %1: write it down").arg(massText(reading.mass)));
  yes_->show();
  meant_->setVisible(instead_.has_value());
  if (instead_) meant_->setText(tr("It was %1").arg(massText(*instead_)));
  (instead_ ? meant_ : yes_)->setFocus();
}

void MassEntry::say(const QString& what) {
  asked_->setText(what);
  asked_->setAccessibleName(what);
  yes_->hide();
  meant_->hide();
  question_->show();
}

void MassEntry::dismiss() {
  doubted_.reset();
  instead_.reset();
  question_->hide();
}

void MassEntry::keepMass(quantity::Kilograms mass, store::Confirmed confirmed) {
  const MeasuredSeries* series = chosenSeries();
  auto reading = read();
  if (series == nullptr || !reading) return;
  reading->mass = mass;
  store::MassRecord record{.reading = *reading};
  (series->ofGroup ? record.group : record.individual) = series->code;
  dismiss();
  desk_.addMass(record, confirmed);
  mass_->clear();
  if (!score_->text().trimmed().isEmpty()) keepScore();
  mass_->setFocus();
}

void MassEntry::keepScore() {
  const MeasuredSeries* series = chosenSeries();
  std::optional<animal::ConditionReading> score;
  if (series == nullptr || !readScore(score) || !score) return;
  store::ConditionRecord record{.reading = *score};
  (series->ofGroup ? record.group : record.individual) = series->code;
  desk_.addCondition(record);
  score_->clear();
}

}  // namespace tarebowl::ui
