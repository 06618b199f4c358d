// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/leftover_pane.h"

#include "ui/kitchen/big_type.h"
#include "ui/kitchen/keys_ahead.h"
#include "ui/kitchen/kitchen_text.h"
#include "ui/shared/banner.h"
#include "ui/shared/format.h"
#include "ui/shared/number_reading.h"
#include "ui/shared/reason_bar.h"
#include "ui/shared/wrapping_row.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace tarebowl::ui {

using intake::LeftoverKind;
using quantity::Grams;

LeftoverPane::LeftoverPane(KitchenDesk& desk, ReasonBar& reason, QWidget* parent)
    : QFrame(parent),
      desk_(desk),
      reason_(reason),
      food_(new QLabel),
      offered_(new QLabel),
      field_(makeWeightField()),
      message_(makeBanner()) {
  build();
  connect(&desk_, &KitchenDesk::placeChanged, this, &LeftoverPane::showPlace);
  connect(&desk_, &KitchenDesk::sheetChanged, this, &LeftoverPane::showPlace);
  connect(&desk_, &KitchenDesk::weighed, this, [this](bool second) {
    field_->clear();
    message_->hide();
    if (second && desk_.task() == KitchenDesk::Task::Leftovers)
      say(
          tr("Somebody wrote this down before: both entries are kept, and the first one counts until it is "
             "corrected."));
  });
  connect(field_, &QLineEdit::textEdited, message_, &QWidget::hide);
  connect(field_, &QLineEdit::returnPressed, this, &LeftoverPane::finish);
  field_->installEventFilter(this);
  new KeysAhead(desk_, *field_);
  showPlace();
}

void LeftoverPane::build() {
  setProperty("card", true);
  setAccessibleName(tr("What was left"));
  setPoints(food_, kFoodPoints, true);
  setPoints(offered_, kWordPoints);
  setPoints(message_, kWordPoints);
  for (QLabel* words : {food_, offered_, message_}) words->setWordWrap(true);
  auto* unit = new QLabel(tr("g left"));
  setPoints(unit, kFoodPoints);
  auto* row = new WrappingRow;
  row->addWidget(field_);
  row->addWidget(unit);
  addWord(*row, tr("E  of all together, by eye"), Qt::Key_E);
  auto* words = new WrappingRow;
  addWord(*words, tr("A  all eaten"), Qt::Key_A);
  addWord(*words, tr("N  not weighed"), Qt::Key_N);
  addWord(*words, tr("M  all together"), Qt::Key_M);
  addWord(*words, tr("P  control pans"), Qt::Key_P);
  auto* losses = new WrappingRow;
  addWord(*losses, tr("S  spilled"), Qt::Key_S);
  addWord(*losses, tr("T  stolen"), Qt::Key_T);
  auto* howLost = new QLabel(tr("type what is left + what was lost, such as 3 + 4"));
  howLost->setProperty("soft", true);
  howLost->setWordWrap(true);
  howLost->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
  losses->addWidget(howLost);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(16, 12, 16, 12);
  for (QWidget* line : std::initializer_list<QWidget*>{food_, offered_}) layout->addWidget(line);
  layout->addLayout(row);
  layout->addLayout(words);
  layout->addLayout(losses);
  layout->addWidget(message_);
}

void LeftoverPane::addWord(QLayout& row, const QString& word, int key) {
  constexpr int kButtonPoints = 13;
  auto* button = new QPushButton(word);
  setPoints(button, kButtonPoints);
  button->setFocusPolicy(Qt::NoFocus);  // its letter does the same, and the field keeps the focus
  connect(button, &QPushButton::clicked, this, [this, key] { sayByLetter(key); });
  row.addWidget(button);
}

void LeftoverPane::showPlace() {
  const intake::BowlItem* item = desk_.item();
  const bool isOpened = item != nullptr && desk_.bowl()->opened;
  const bool takesEntries = isOpened && !desk_.collection().isReadOnly();
  field_->setEnabled(takesEntries || desk_.isUnsettled());  // hands may be faster than the disk
  const std::optional<intake::ItemKey> now =
      item != nullptr ? std::optional(intake::ItemKey{desk_.bowl()->bowl.key, item->item}) : std::nullopt;
  if (now != shown_) {
    field_->clear();
    message_->hide();
  }
  shown_ = now;
  food_->setText(item != nullptr     ? foodText(desk_.sheet()->foodOf(item->food))
                 : desk_.isReading() ? tr("Reading the sheet…")
                                     : tr("No bowl on this sheet."));
  offered_->clear();
  if (item == nullptr) return;
  const intake::KitchenFood food = desk_.sheet()->foodOf(item->food);
  const auto offered = intake::entryThatCounts(item->weighings);
  if (!isOpened)
    offered_->setText(tr("This bowl was never put on a sheet: nothing can have been left."));
  else
    offered_->setText(
        offered ? tr("%1 g went in").arg(grams(offered->actual, food.step))
                : tr("%1 were planned, and nobody weighed it in").arg(portionText(item->planned, food)));
  if (const auto rest = intake::entryThatCounts(desk_.bowl()->bowl.remainders))
    offered_->setText(offered_->text() +
                      tr(" · of all together %1 g were left").arg(stated(rest->left.value())));
}

std::optional<Grams> LeftoverPane::typed() const {
  const auto grams = typedGrams(field_->text());
  return grams && *grams >= Grams(0) ? grams : std::nullopt;
}

void LeftoverPane::takeWeight(Grams left) {
  if (desk_.item() == nullptr) return;
  field_->setText(grams(left, desk_.sheet()->foodOf(desk_.item()->food).step));
}

void LeftoverPane::say(const QString& text) {
  message_->setText(text);
  message_->show();
}

void LeftoverPane::finish() {
  if (field_->text().trimmed().isEmpty()) return desk_.goOn();
  const auto left = typed();
  if (!left)
    return say(thousandsAdviceOr(
        field_->text(),
        tr("“%1” is no weight: type grams, such as 20.5; tare the empty bowl where it is below nothing.")
            .arg(field_->text())));
  note({LeftoverKind::Weighed, left, {}});
}

/// Not while the entry before is written: it would be one of the same food.
bool LeftoverPane::mayNote() const {
  return desk_.item() != nullptr && field_->isEnabled() && !desk_.isUnsettled();
}

void LeftoverPane::note(const KitchenDesk::LeftInBowl& what) {
  if (!mayNote()) return;
  if (desk_.item()->leftovers.empty()) return desk_.noteLeft(what);
  reason_.ask(tr("%1 is written already. Why is it put right? Both are kept.")
                  .arg(leftText(*desk_.item(), desk_.sheet()->foodOf(desk_.item()->food))),
              {}, tr("Correct"), [this, what](const ReasonBar::Answer& answer) {
                desk_.correctLeft(what, answer.reason);
                field_->setFocus();
              });
}

void LeftoverPane::noteLost(LeftoverKind kind) {
  const auto amounts = typedLeftAndLost(field_->text());
  if (!amounts) return say(tr("Type what is left + what was lost in g, such as 3 + 4, or nothing."));
  note({kind, amounts->left, amounts->lost});
}

void LeftoverPane::noteTogether() {
  if (!mayNote()) return;
  const auto left = typed();
  if (!left)
    return say(thousandsAdviceOr(field_->text(), tr("Type the grams of all foods together, then M.")));
  const auto before = intake::entryThatCounts(desk_.bowl()->bowl.remainders);
  if (!before) return desk_.noteRemainder(*left);
  reason_.ask(tr("%1 g of all together is written already. Why is it put right? Both are kept.")
                  .arg(stated(before->left.value())),
              {}, tr("Correct"), [this, left](const ReasonBar::Answer& answer) {
                desk_.correctRemainder(*left, answer.reason);
                field_->setFocus();
              });
}

void LeftoverPane::noteByEye() {
  const auto part = typed();
  if (!part)
    return say(thousandsAdviceOr(
        field_->text(), tr("Type how many grams of what is left together are this food, by eye, then E.")));
  note({LeftoverKind::Estimated, part, {}});
}

bool LeftoverPane::sayByLetter(int key) {
  switch (key) {
    case Qt::Key_A:
      note({LeftoverKind::AllEaten, {}, {}});
      return true;
    case Qt::Key_N:
      note({LeftoverKind::NotWeighed, {}, {}});
      return true;
    case Qt::Key_S:
      noteLost(LeftoverKind::Spilled);
      return true;
    case Qt::Key_T:
      noteLost(LeftoverKind::Stolen);
      return true;
    case Qt::Key_M:
      noteTogether();
      return true;
    case Qt::Key_P:
      emit pansWanted();
      return true;
    case Qt::Key_E:
      noteByEye();
      return true;
    default:
      return false;
  }
}

bool LeftoverPane::eventFilter(QObject* watched, QEvent* event) {
  if (watched == field_ && event->type() == QEvent::KeyPress) {
    const auto* pressed = static_cast<QKeyEvent*>(event);
    const bool plain = (pressed->modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == Qt::NoModifier;
    if (desk_.moveBy(pressed->key()) || (plain && sayByLetter(pressed->key()))) return true;
  }
  return QFrame::eventFilter(watched, event);
}

}  // namespace tarebowl::ui
