// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/weigh_pane.h"

#include "ui/kitchen/big_type.h"
#include "ui/kitchen/keys_ahead.h"
#include "ui/kitchen/kitchen_text.h"
#include "ui/kitchen/tolerance_bar.h"
#include "ui/shared/banner.h"
#include "ui/shared/format.h"
#include "ui/shared/number_reading.h"
#include "ui/shared/reason_bar.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

namespace tarebowl::ui {

WeighPane::WeighPane(KitchenDesk& desk, ReasonBar& reason, QWidget* parent)
    : QFrame(parent),
      desk_(desk),
      reason_(reason),
      food_(new QLabel),
      planned_(new QLabel),
      entries_(new QLabel),
      field_(makeWeightField()),
      bar_(new ToleranceBar),
      question_(makeBanner()),
      missing_(new QPushButton),
      lot_(new QPushButton),
      lotField_(new QLineEdit) {
  build();
  connect(&desk_, &KitchenDesk::placeChanged, this, &WeighPane::showPlace);
  connect(&desk_, &KitchenDesk::sheetChanged, this, &WeighPane::showPlace);
  connect(&desk_, &KitchenDesk::weighed, this, [this](bool second) {
    startAnew();
    showPlace();
    if (second)
      say(
          tr("Somebody weighed this in before: both weights are kept, and the first one counts until it is "
             "corrected."));
  });
  connect(field_, &QLineEdit::textEdited, this, &WeighPane::showTyped);
  connect(field_, &QLineEdit::returnPressed, this, &WeighPane::finish);
  field_->installEventFilter(this);
  new KeysAhead(desk_, *field_);
  showPlace();
}

void WeighPane::build() {
  setProperty("card", true);
  setAccessibleName(tr("On the scale"));
  setPoints(food_, kFoodPoints, true);
  setPoints(planned_, kWordPoints);
  setPoints(bar_, kWordPoints);
  setPoints(question_, kWordPoints);
  food_->setWordWrap(true);
  entries_->setWordWrap(true);
  entries_->setProperty("soft", true);
  field_->setAccessibleName(tr("Weight in g"));
  field_->setAlignment(Qt::AlignRight);
  field_->setMaximumWidth(260);
  missing_->setText(tr("Not available  *"));
  missing_->setAccessibleName(tr("Not available: what to give instead"));
  missing_->setToolTip(tr("What to give instead (key *)"));
  missing_->setFocusPolicy(Qt::NoFocus);
  connect(missing_, &QPushButton::clicked, this, &WeighPane::notAvailable);
  lot_->setToolTip(tr("The lot that the house feeds this food from (key L)"));
  lot_->setFocusPolicy(Qt::NoFocus);
  connect(lot_, &QPushButton::clicked, this, &WeighPane::askLot);
  lotField_->setAccessibleName(tr("A new lot, as the box names it"));
  lotField_->setPlaceholderText(tr("A new lot from this day on: what does the box say? Enter keeps it"));
  setPoints(lotField_, kWordPoints);
  lotField_->hide();
  lotField_->installEventFilter(this);
  connect(lotField_, &QLineEdit::returnPressed, this, &WeighPane::keepLot);
  auto* unit = new QLabel(tr("g"));
  setPoints(unit, kFieldPoints);
  auto* weight = new QHBoxLayout;
  weight->addWidget(field_);
  weight->addWidget(unit);
  weight->addSpacing(18);
  weight->addWidget(bar_, 1);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(16, 12, 16, 12);
  auto* name = new QHBoxLayout;
  name->addWidget(food_, 1);
  name->addWidget(lot_, 0, Qt::AlignTop);
  name->addWidget(missing_, 0, Qt::AlignTop);
  layout->addLayout(name);
  layout->addWidget(lotField_);
  layout->addWidget(planned_);
  layout->addLayout(weight);
  layout->addWidget(entries_);
  layout->addWidget(question_);
}

void WeighPane::showPlace() {
  const intake::BowlItem* item = desk_.item();
  const bool mayWeigh = item != nullptr && !desk_.collection().isReadOnly();
  field_->setEnabled(mayWeigh || desk_.isUnsettled());  // hands may be faster than the disk
  missing_->setEnabled(mayWeigh);
  lot_->setEnabled(mayWeigh);
  lot_->setVisible(item != nullptr);
  const std::optional<intake::ItemKey> now =
      item != nullptr ? std::optional(intake::ItemKey{desk_.bowl()->bowl.key, item->item}) : std::nullopt;
  if (now != shown_) {
    startAnew();
    lotField_->hide();
  }
  shown_ = now;
  if (item == nullptr) {
    food_->setText(desk_.isReading() ? tr("Reading the sheet…") : tr("Nothing to weigh on this sheet."));
    planned_->clear();
    entries_->clear();
    field_->setAccessibleDescription(food_->text());
    return;
  }
  const intake::KitchenFood food = desk_.sheet()->foodOf(item->food);
  const quantity::Grams tolerance = desk_.tolerance();
  food_->setText(foodText(food));
  const std::optional<store::StoredLot> lot = desk_.sheet()->lotOf(item->food);
  lot_->setText(lot ? tr("L  lot %1").arg(QString::fromStdString(lot->record.lot)) : tr("L  lot ?"));
  lot_->setAccessibleName(lot ? lot_->text()
                              : QStringLiteral("%1: %2").arg(lot_->text(), tr("Nobody named the lot")));
  planned_->setText(tr("%1 ± %2 g%3")
                        .arg(portionText(item->planned, food), toleranceText(tolerance),
                             item->preparation.empty()
                                 ? QString()
                                 : QStringLiteral(" · ") + QString::fromStdString(item->preparation)));
  field_->setAccessibleDescription(
      tr("%1, %2, of %3")
          .arg(food_->text(), planned_->text(), QString::fromStdString(desk_.bowl()->bowl.label)));
  entries_->setText(entriesText(*item, food));
  entries_->setVisible(!item->weighings.empty());
  bar_->setPlan(item->planned, tolerance);
  const auto weighed = intake::entryThatCounts(item->weighings);
  field_->setPlaceholderText(weighed ? grams(weighed->actual, food.step) : QString());
  if (field_->text().isEmpty()) bar_->setWeight(weighed ? std::optional(weighed->actual) : std::nullopt);
}

/// What was typed stays while others change the sheet, but not on another food.
void WeighPane::startAnew() {
  field_->clear();
  asked_.clear();
  question_->hide();
  bar_->setWeight(std::nullopt);
}

void WeighPane::showTyped() {
  asked_.clear();
  question_->hide();
  bar_->setWeight(typedGrams(field_->text()));
}

void WeighPane::takeWeight(quantity::Grams actual) {
  if (desk_.item() == nullptr) return;
  field_->setText(grams(actual, desk_.sheet()->foodOf(desk_.item()->food).step));
  showTyped();
}

void WeighPane::say(const QString& text) {
  question_->setText(text);
  question_->show();
}

void WeighPane::finish() {
  if (desk_.item() == nullptr || desk_.isUnsettled()) return;
  if (field_->text().trimmed().isEmpty()) return desk_.goOn();
  const auto actual = typedGrams(field_->text());
  if (!actual)
    return say(thousandsAdviceOr(field_->text(),
                                 tr("“%1” is no weight: type grams, such as 20.5.").arg(field_->text())));
  const auto doubts = desk_.doubtsAbout(*actual);
  const bool impossible = !doubts.empty() && doubts.front() == intake::WeighingDoubt::BelowNothing;
  if (!doubts.empty() && (impossible || asked_ != field_->text())) {
    asked_ = field_->text();
    return say(questionText(doubts));
  }
  keep(*actual);
}

void WeighPane::keep(quantity::Grams actual) {
  if (isWeighed(*desk_.item())) return askWhy(actual);
  desk_.weigh(actual);
}

void WeighPane::askWhy(quantity::Grams actual) {
  const intake::KitchenFood food = desk_.sheet()->foodOf(desk_.item()->food);
  const auto before = intake::entryThatCounts(desk_.item()->weighings);
  reason_.ask(tr("%1 g instead of %2 g: why? Both are kept.")
                  .arg(grams(actual, food.step), grams(before->actual, food.step)),
              {}, tr("Correct"), [this, actual](const ReasonBar::Answer& answer) {
                desk_.correct(actual, answer.reason);
                field_->setFocus();
              });
}

void WeighPane::askLot() {
  lotField_->clear();
  lotField_->show();
  lotField_->setFocus();
}

void WeighPane::keepLot() {
  if (!lotField_->text().trimmed().isEmpty()) desk_.beginLot(lotField_->text());
  lotField_->hide();
  field_->setFocus();
}

bool WeighPane::eventFilter(QObject* watched, QEvent* event) {
  if (watched == lotField_ && event->type() == QEvent::KeyPress &&
      static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
    lotField_->hide();
    field_->setFocus();
    return true;
  }
  if (watched != field_ || event->type() != QEvent::KeyPress) return QFrame::eventFilter(watched, event);
  const int key = static_cast<QKeyEvent*>(event)->key();
  if (key == Qt::Key_L) {
    askLot();
    return true;
  }
  if (key == Qt::Key_Asterisk) {
    emit notAvailable();
    return true;
  }
  if (key == Qt::Key_P) {
    emit pansWanted();
    return true;
  }
  return desk_.moveBy(key) || QFrame::eventFilter(watched, event);
}

}  // namespace tarebowl::ui
