// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/health/observation_form.h"

#include "core/health/health_words.h"
#include "ui/health/health_text.h"
#include "ui/shared/date_field.h"
#include "ui/shared/days.h"
#include "ui/shared/number_reading.h"

#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace tarebowl::ui {
namespace {

QString text(std::string_view words) {
  return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

QLineEdit* makeField(const QString& name, const QString& hint, int width) {
  auto* field = new QLineEdit;
  field->setAccessibleName(name);
  field->setPlaceholderText(hint);
  if (width > 0) field->setFixedWidth(width);
  return field;
}

QComboBox* makeChoice(const QString& name) {
  auto* choice = new QComboBox;
  choice->setAccessibleName(name);
  return choice;
}

}  // namespace

ObservationForm::ObservationForm(QWidget* parent)
    : QFrame(parent),
      kind_(makeChoice(tr("What was seen"))),
      day_(new DateField),
      time_(makeField(tr("Time"), tr("hh:mm"), 70)),
      scale_(makeChoice(tr("Scale of the score"))),
      score_(makeField(tr("Score"), tr("score"), 64)),
      appetite_(makeChoice(tr("Appetite"))),
      analyte_(makeChoice(tr("Analyte"))),
      value_(makeField(tr("Blood value"), tr("value"), 64)),
      unit_(makeChoice(tr("Unit of the blood value"))),
      low_(makeField(tr("Lab's range, low"), tr("from"), 60)),
      high_(makeField(tr("Lab's range, high"), tr("to"), 60)),
      note_(makeField(tr("Note"), tr("note"), 0)),
      file_(makeField(tr("File beside the collection"), tr("attached file"), 0)),
      choose_(new QPushButton(tr("Choose…"))),
      keep_(new QPushButton(tr("Keep"))),
      keepAnyway_(new QPushButton(tr("Keep as it is"))),
      words_(new QLabel) {
  for (int kind = 0; kind <= static_cast<int>(health::SignKind::Other); ++kind)
    kind_->addItem(kindText(static_cast<health::SignKind>(kind)), kind);
  for (const health::FaecalScale& scale : health::faecalScales())
    scale_->addItem(text(scale.name), text(scale.id));
  for (const std::string_view word : animal::Words<health::Appetite>::kWords) appetite_->addItem(text(word));
  for (const std::string_view word : animal::Words<health::Analyte>::kWords) analyte_->addItem(text(word));
  for (const char* unit : {"mmol/l", "mg/dl", "nmol/l", "ng/ml", "U/l"})
    unit_->addItem(QString::fromLatin1(unit));
  day_->setAccessibleName(tr("Day"));
  day_->findChild<QLineEdit*>()->setAccessibleName(tr("Day"));
  words_->setWordWrap(true);
  keepAnyway_->hide();
  words_->hide();
  build();
  connect(kind_, &QComboBox::currentIndexChanged, this, &ObservationForm::showKind);
  connect(keep_, &QPushButton::clicked, this, [this] { emit keepWanted(false); });
  connect(keepAnyway_, &QPushButton::clicked, this, [this] { emit keepWanted(true); });
  for (QLineEdit* field : {time_, score_, value_, low_, high_, note_, file_})
    connect(field, &QLineEdit::returnPressed, keep_, &QPushButton::click);
  choose_->setAccessibleName(tr("Choose a file beside the collection"));
  choose_->setToolTip(tr("A picture or report that lies in the collection's folder"));
  connect(choose_, &QPushButton::clicked, this, &ObservationForm::fileWanted);
  setFocusProxy(kind_);
  showKind();
}

void ObservationForm::build() {
  auto* first = new QHBoxLayout;
  for (QWidget* field : std::initializer_list<QWidget*>{kind_, day_, time_}) first->addWidget(field);
  first->addStretch(1);
  auto* second = new QHBoxLayout;
  for (QWidget* field :
       std::initializer_list<QWidget*>{scale_, score_, appetite_, analyte_, value_, unit_, low_, high_})
    second->addWidget(field);
  second->addStretch(1);
  auto* third = new QHBoxLayout;
  third->addWidget(note_, 2);
  third->addWidget(file_, 1);
  third->addWidget(choose_);
  auto* last = new QHBoxLayout;
  last->addWidget(keep_);
  last->addWidget(keepAnyway_);
  last->addWidget(words_, 1);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  for (QHBoxLayout* row : {first, second, third, last}) layout->addLayout(row);
}

void ObservationForm::showKind() {
  const auto kind = static_cast<health::SignKind>(kind_->currentData().toInt());
  for (QWidget* field : std::initializer_list<QWidget*>{scale_, score_})
    field->setVisible(kind == health::SignKind::Faeces);
  appetite_->setVisible(kind == health::SignKind::Appetite);
  for (QWidget* field : std::initializer_list<QWidget*>{analyte_, value_, unit_, low_, high_})
    field->setVisible(kind == health::SignKind::Blood);
}

void ObservationForm::setToday(quantity::Date today) {
  day_->setDate(toQDate(today));
}

void ObservationForm::takeFile(const QString& path) {
  file_->setText(path);
  words_->hide();
  file_->setFocus();
}

void ObservationForm::complain(const QString& what) const {
  words_->setText(what);
  words_->show();
}

bool ObservationForm::readScore(health::Observation& seen) const {
  const auto score = readNumber(score_->text());
  const auto* scale = health::findFaecalScale(scale_->currentData().toString().toStdString());
  if (!score || scale == nullptr) {
    complain(tr("Which score? %1 goes from %2 to %3.")
                 .arg(scale_->currentText())
                 .arg(scale == nullptr ? 0.0 : scale->lowest)
                 .arg(scale == nullptr ? 0.0 : scale->highest));
    return false;
  }
  seen.faeces = health::scoreOn(*scale, *score);
  if (!health::problemWith(*seen.faeces)) return true;
  complain(tr("%1 is not on this scale: it goes from %2 to %3.")
               .arg(score_->text())
               .arg(scale->lowest)
               .arg(scale->highest));
  return false;
}

bool ObservationForm::readBlood(health::Observation& seen) const {
  const auto value = readNumber(value_->text());
  if (!value) {
    complain(tr("Which blood value?"));
    return false;
  }
  health::BloodValue blood;
  blood.analyte = static_cast<health::Analyte>(analyte_->currentIndex());
  blood.value = *value;
  blood.unit = health::parseBloodUnit(unit_->currentText().toStdString()).value();
  blood.low = readNumber(low_->text());
  blood.high = readNumber(high_->text());
  if (health::problemWith(blood)) {
    complain(tr("%1 is not measured in %2, or its range is upside down.")
                 .arg(analyte_->currentText(), unit_->currentText()));
    return false;
  }
  seen.blood.push_back(blood);
  return true;
}

std::optional<health::Observation> ObservationForm::observation() const {
  words_->hide();
  health::Observation seen;
  seen.kind = static_cast<health::SignKind>(kind_->currentData().toInt());
  seen.on = toDate(day_->date());
  seen.time = time_->text().trimmed().toStdString();
  if (!seen.time.empty() && !health::minuteOf(seen)) {
    complain(tr("A time is hh:mm, 00:00 to 23:59."));
    return std::nullopt;
  }
  seen.note = note_->text().trimmed().toStdString();
  if (!file_->text().trimmed().isEmpty())
    seen.attachments.push_back({file_->text().trimmed().toStdString(), ""});
  if (seen.kind == health::SignKind::Faeces && !readScore(seen)) return std::nullopt;
  if (seen.kind == health::SignKind::Blood && !readBlood(seen)) return std::nullopt;
  if (seen.kind == health::SignKind::Appetite)
    seen.appetite = static_cast<health::Appetite>(appetite_->currentIndex());
  return seen;
}

void ObservationForm::question(const QString& why) {
  complain(why);
  keepAnyway_->show();
  keepAnyway_->setFocus();
}

void ObservationForm::clear() {
  for (QLineEdit* field : {time_, score_, value_, low_, high_, note_, file_}) field->clear();
  keepAnyway_->hide();
  words_->hide();
}

}  // namespace tarebowl::ui
