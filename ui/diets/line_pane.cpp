// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/line_pane.h"

#include "core/diet/food_safety.h"
#include "ui/diets/allowance_bar.h"
#include "ui/diets/diet_desk.h"
#include "ui/diets/version_text.h"
#include "ui/shared/caution_text.h"
#include "ui/shared/elided_label.h"
#include "ui/shared/format.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QToolButton>
#include <QVBoxLayout>

namespace tarebowl::ui {
namespace {

constexpr diet::Purpose kPurposes[] = {diet::Purpose::Bowl, diet::Purpose::Treat,
                                       diet::Purpose::TrainingReward, diet::Purpose::Enrichment,
                                       diet::Purpose::Browse};

}  // namespace

LinePane::LinePane(DietDesk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      name_(new ElidedLabel),
      preparation_(new QLineEdit),
      purpose_(new QComboBox),
      remove_(new QToolButton),
      explore_(new QToolButton),
      range_(new QWidget),
      low_(new QLineEdit),
      high_(new QLineEdit),
      cautions_(new QLabel) {
  build();
  connect(preparation_, &QLineEdit::editingFinished, this, [this] {
    if (food_ && preparation_->isModified()) desk_.setPreparation(*food_, preparation_->text());
  });
  connect(purpose_, &QComboBox::activated, this, [this](int place) {
    if (food_) desk_.setPurpose(*food_, kPurposes[place]);
  });
  connect(remove_, &QToolButton::clicked, this, [this] {
    if (food_) desk_.removeFood(*food_);
  });
  for (QLineEdit* field : {low_, high_})
    connect(field, &QLineEdit::editingFinished, this, &LinePane::takeRange);
  connect(explore_, &QToolButton::clicked, this, [this] {
    if (food_) emit exploreWanted(static_cast<qint64>(*food_));
  });
  connect(&desk, &DietDesk::opened, this, [this] { show(std::nullopt); });
  connect(&desk, &DietDesk::foodsChanged, this, &LinePane::refresh);
  refresh();
}

void LinePane::build() {
  name_->setProperty("soft", true);
  name_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  preparation_->setPlaceholderText(tr("how the kitchen prepares it"));
  preparation_->setAccessibleName(tr("Preparation of the food"));
  for (const diet::Purpose purpose : kPurposes) purpose_->addItem(purposeText(purpose));
  purpose_->setAccessibleName(tr("What the food is given for"));
  purpose_->setToolTip(tr("All that is offered counts, whatever it is given for"));
  remove_->setText(tr("Remove"));
  remove_->setProperty("plain", true);
  remove_->setToolTip(tr("Takes the food out of the diet (Delete)"));
  explore_->setText(tr("Explore"));
  explore_->setProperty("plain", true);
  explore_->setToolTip(tr("Moves the food's maximum over a range and shows what has to give (Ctrl+E)"));
  cautions_->setWordWrap(true);
  cautions_->setAccessibleDescription(tr("Cautions on the food"));
  auto* row = new QHBoxLayout;
  row->setSpacing(7);
  row->addWidget(name_, 2);
  row->addWidget(preparation_, 3);
  row->addWidget(purpose_);
  auto* rangeRow = new QHBoxLayout(range_);
  rangeRow->setContentsMargins(0, 0, 0, 0);
  rangeRow->addWidget(low_);
  rangeRow->addWidget(new QLabel(tr("to")));
  rangeRow->addWidget(high_);
  rangeRow->addWidget(new QLabel(tr("g a day, unweighed")));
  low_->setAccessibleName(tr("At least so many grams a day of what is given unweighed"));
  high_->setAccessibleName(tr("At most so many grams a day of what is given unweighed"));
  row->addWidget(range_, 2);
  row->addWidget(explore_);
  row->addWidget(remove_);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(4);
  layout->addLayout(row);
  layout->addWidget(cautions_);
}

void LinePane::show(std::optional<std::size_t> food) {
  food_ = food;
  refresh();
}

void LinePane::takeRange() {
  if (!food_ || (!low_->isModified() && !high_->isModified())) return;
  const diet::PlaceInVersion& place = desk_.draft().places.at(*food_);
  const auto& frame = desk_.draft().frame;
  low_->setModified(false);
  high_->setModified(false);
  const auto range = rangeIn(*low_, *high_);
  if (!place.allowance || !frame) return;
  const auto known = frame->context.foods.find(place.food);
  if (!range || known == frame->context.foods.end()) return refresh();
  diet::Allowance allowance = *place.allowance;
  allowance.low = range->low;
  allowance.high = range->high;
  desk_.allow(diet::DietFood(known->second), allowance);
}

void LinePane::showRange(const diet::PlaceInVersion& place, bool isDraft) {
  range_->setVisible(place.allowance.has_value());
  if (!place.allowance) return;
  const auto fill = [isDraft](QLineEdit& field, quantity::Grams amount) {
    if (!field.isModified()) field.setText(stated(amount.value()));
    field.setReadOnly(!isDraft);
  };
  fill(*low_, place.allowance->low);
  fill(*high_, place.allowance->high);
}

QString LinePane::cautions() const {
  QStringList parts;
  for (const diet::FoodFinding& finding : diet::findingsOn(desk_.problem())) {
    if (finding.food != *food_) continue;
    QString words = cautionWords(finding.reason);
    if (!finding.advice.empty()) words += QLatin1Char(' ') + cautionWords(finding.advice);
    parts << (finding.forbids() ? tr("▲ Not given to this animal: %1").arg(words)
                                : tr("◐ Caution: %1").arg(words));
  }
  return parts.join(QLatin1Char('\n'));
}

void LinePane::refresh() {
  if (food_ && *food_ >= desk_.problem().foods.size()) food_.reset();
  const bool isThere = food_.has_value();
  const bool isDraft = isThere && !desk_.isReadOnly();
  setVisible(isThere);
  if (!isThere) return;
  const diet::DietFood& food = desk_.problem().foods[*food_];
  const diet::PlaceInVersion& place = desk_.draft().places.at(*food_);
  const QString name = QString::fromStdString(food.name);
  name_->setText(place.allowance ? tr("%1, unweighed").arg(name) : name);
  name_->setToolTip(name);
  if (!preparation_->hasFocus()) preparation_->setText(QString::fromStdString(food.preparation));
  preparation_->setReadOnly(!isDraft);
  preparation_->setVisible(!place.allowance);
  purpose_->setVisible(desk_.draft().frame != nullptr);
  purpose_->setEnabled(isDraft && !place.allowance);
  purpose_->setCurrentIndex(static_cast<int>(place.allowance ? place.allowance->purpose : place.purpose));
  remove_->setVisible(isDraft);
  explore_->setVisible(!place.allowance);
  showRange(place, isDraft);
  const QString words = cautions();
  cautions_->setText(words);
  cautions_->setVisible(!words.isEmpty());
}

}  // namespace tarebowl::ui
