// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/pan_pane.h"

#include "core/intake/pan_doubt.h"
#include "ui/kitchen/big_type.h"
#include "ui/kitchen/pan_text.h"
#include "ui/shared/banner.h"
#include "ui/shared/format.h"
#include "ui/shared/number_reading.h"
#include "ui/shared/wrapping_row.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>
#include <map>
#include <utility>

namespace tarebowl::ui {
namespace {

constexpr int kFoodRole = Qt::UserRole;
constexpr int kClassRole = Qt::UserRole + 1;

QPushButton* button(const QString& text) {
  constexpr int kTall = 46;
  auto* made = new QPushButton(text);
  setPoints(made, kWordPoints);
  made->setMinimumHeight(kTall);
  return made;
}

QLabel* label(const QString& text) {
  auto* made = new QLabel(text);
  setPoints(made, kWordPoints);
  return made;
}

}  // namespace

PanPane::PanPane(KitchenDesk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      title_(new QLabel),
      pans_(new QListWidget),
      doing_(label({})),
      food_(new QComboBox),
      start_(makeWeightField()),
      end_(makeWeightField()),
      loss_(label({})),
      message_(makeBanner()),
      keep_(button(tr("Keep  (Enter)"))),
      takeOut_(button(tr("Take out  (Del)"))),
      back_(button(tr("Back  (Esc)"))) {
  build();
  connect(&desk_, &KitchenDesk::sheetChanged, this, [this] {
    showSheet();
    if (std::exchange(goesOn_, false) && isVisible() && start_->text().isEmpty()) begin();
  });
  connect(pans_, &QListWidget::itemActivated, this, [this] { change(pans_->currentRow()); });
  connect(pans_, &QListWidget::itemClicked, this, [this] { change(pans_->currentRow()); });
  for (QLineEdit* field : {start_, end_}) {
    connect(field, &QLineEdit::textChanged, this, &PanPane::showLoss);
    connect(field, &QLineEdit::textEdited, message_, &QWidget::hide);
  }
  connect(start_, &QLineEdit::returnPressed, end_, [this] { end_->setFocus(); });
  connect(end_, &QLineEdit::returnPressed, this, &PanPane::keep);
  connect(keep_, &QPushButton::clicked, this, &PanPane::keep);
  connect(takeOut_, &QPushButton::clicked, this, &PanPane::takeOut);
  connect(back_, &QPushButton::clicked, this, &PanPane::dismissed);
  for (QWidget* part : std::initializer_list<QWidget*>{pans_, food_, start_, end_})
    part->installEventFilter(this);
  setFocusProxy(food_);
}

void PanPane::build() {
  constexpr int kFieldWidth = 190;
  setPoints(title_, kFoodPoints, true);
  title_->setWordWrap(true);
  loss_->setWordWrap(true);
  setPoints(message_, kWordPoints);
  setPoints(pans_, kWordPoints);
  setPoints(food_, kWordPoints);
  pans_->setAccessibleName(tr("Control pans of the day"));
  for (QLabel* words : {title_, doing_}) words->setWordWrap(true);
  pans_->setWordWrap(true);
  food_->setAccessibleName(tr("Food, or class of foods that dry alike"));
  start_->setAccessibleName(tr("g when it was put out"));
  end_->setAccessibleName(tr("g when it came back"));
  for (QLineEdit* field : {start_, end_}) field->setFixedWidth(kFieldWidth);
  auto* why = new QLabel(
      tr("The same food in the same place, out of the animals' reach: what water it lost or drew overnight. "
         "Leftovers are put right by it. Without a second weight it still stands: Today reminds of it."));
  why->setWordWrap(true);
  why->setProperty("soft", true);
  auto* weights = new WrappingRow;
  for (auto& [word, field] : {std::pair{tr("put out"), start_}, std::pair{tr("came back"), end_}}) {
    auto* weight = new QWidget;
    auto* parts = new QHBoxLayout(weight);
    parts->setContentsMargins(0, 0, 10, 0);
    for (QWidget* part : std::initializer_list<QWidget*>{label(word), field, label(tr("g"))})
      parts->addWidget(part);
    weights->addWidget(weight);
  }
  keep_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  auto* buttons = new WrappingRow;
  for (QPushButton* button : {keep_, takeOut_, back_}) buttons->addWidget(button);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(18, 12, 18, 14);
  layout->setSpacing(8);
  layout->addWidget(title_);
  layout->addWidget(why);
  layout->addWidget(pans_, 1);
  layout->addWidget(doing_);
  layout->addWidget(food_);
  layout->addLayout(weights);
  layout->addWidget(loss_);
  layout->addWidget(message_);
  layout->addLayout(buttons);
}

void PanPane::begin() {
  showEmptyForm();
  const bool areWeighed = desk_.task() == KitchenDesk::Task::Leftovers && keep_->isEnabled();
  if (const int standing = firstStanding(); areWeighed && standing >= 0) change(standing);
}

int PanPane::firstStanding() const {
  if (!desk_.sheet()) return -1;
  const auto& pans = desk_.sheet()->pans;
  const auto found = std::ranges::find_if(pans, [](const auto& pan) { return !pan.record.end; });
  return found == pans.end() ? -1 : static_cast<int>(found - pans.begin());
}

void PanPane::showEmptyForm() {
  changed_.reset();
  asked_.reset();
  start_->clear();
  end_->clear();
  message_->hide();
  pans_->setCurrentRow(-1);
  showSheet();
  food_->setFocus();
}

void PanPane::showSheet() {
  const QSignalBlocker quiet(pans_);
  const int row = pans_->currentRow();
  pans_->clear();
  if (!desk_.sheet()) return;
  title_->setText(tr("Control pans · %1").arg(QString::fromStdString(desk_.sheet()->sheet.section)));
  for (const store::StoredControlPan& pan : desk_.sheet()->pans)
    pans_->addItem(panText(pan.record, *desk_.sheet()));
  pans_->setCurrentRow(std::min(row, pans_->count() - 1));
  showFoods();
  doing_->setText(changed_ && !changed_->record.end ? tr("This pan still stands. What came back of it?")
                  : changed_                        ? tr("This pan is changed:")
                  : desk_.sheet()->pans.empty() ? tr("No pan of this day is written down yet. The first one:")
                                                : tr("Another pan:"));
  keep_->setEnabled(!desk_.collection().isReadOnly());
  takeOut_->setEnabled(changed_.has_value() && keep_->isEnabled());
}

/// Foods of the day's bowls, and their classes: a class stands for all of its foods that dry alike.
void PanPane::showFoods() {
  const QVariant food = food_->currentData(kFoodRole);
  const QVariant ofClass = food_->currentData(kClassRole);
  food_->clear();
  std::map<QString, QString> classes;
  std::map<QString, QString> foods;
  for (const auto& [code, known] : desk_.sheet()->foods) {
    foods.emplace(panFoodText(known), QString::fromStdString(code));
    if (!known.group.empty()) classes.emplace(panClassText(known.group), QString::fromStdString(known.group));
  }
  for (const auto& [text, group] : classes) {
    food_->addItem(text);
    food_->setItemData(food_->count() - 1, group, kClassRole);
  }
  for (const auto& [text, code] : foods) {
    food_->addItem(text);
    food_->setItemData(food_->count() - 1, code, kFoodRole);
  }
  for (int i = 0; i < food_->count(); ++i)
    if (food_->itemData(i, kFoodRole) == food && food_->itemData(i, kClassRole) == ofClass)
      food_->setCurrentIndex(i);
}

void PanPane::change(int row) {
  if (row < 0 || !desk_.sheet()) return;
  changed_ = desk_.sheet()->pans.at(static_cast<std::size_t>(row));
  const intake::ControlPan& pan = changed_->record;
  const bool isOfClass = pan.food.empty();
  const QString wanted = QString::fromStdString(isOfClass ? pan.foodClass : pan.food);
  int place = food_->findData(wanted, isOfClass ? kClassRole : kFoodRole);
  if (place < 0) {  // of a food that is in no bowl of this day
    food_->addItem(wanted);
    place = food_->count() - 1;
    food_->setItemData(place, wanted, isOfClass ? kClassRole : kFoodRole);
  }
  food_->setCurrentIndex(place);
  start_->setText(stated(pan.start.value()));
  end_->setText(pan.end ? stated(pan.end->value()) : QString());
  pans_->setCurrentRow(row);
  showSheet();
  (pan.end ? start_ : end_)->setFocus();
}

std::optional<intake::ControlPan> PanPane::typed() const {
  const auto start = typedGrams(start_->text());
  const auto end = typedGrams(end_->text());
  const bool stands = end_->text().trimmed().isEmpty();
  if (!start || (!stands && (!end || *end < quantity::Grams(0)))) return std::nullopt;
  if (food_->currentIndex() < 0 || !desk_.sheet()) return std::nullopt;
  intake::ControlPan pan = changed_ ? changed_->record : intake::ControlPan{};
  pan.place = desk_.sheet()->sheet.section;
  pan.day = desk_.day();
  pan.food = food_->currentData(kFoodRole).toString().toStdString();
  pan.foodClass = food_->currentData(kClassRole).toString().toStdString();
  pan.start = *start;
  pan.end = end;
  pan.who = desk_.collection().author().who;
  if (!changed_ && stands) pan.startAt = desk_.collection().author().at;
  pan.endAt = stands ? std::string() : desk_.collection().author().at;
  return pan;
}

std::vector<intake::ControlPan> PanPane::others() const {
  std::vector<intake::ControlPan> pans;
  for (const store::StoredControlPan& pan : desk_.sheet()->pans)
    if (!changed_ || pan.id != changed_->id) pans.push_back(pan.record);
  return pans;
}

void PanPane::showLoss() {
  asked_.reset();
  const auto pan = typed();
  loss_->setText(pan && pan->start > quantity::Grams(0) ? waterText(*pan) : QString());
}

void PanPane::say(const QString& text) {
  message_->setText(text);
  message_->show();
}

QString PanPane::whatIsMissing() const {
  if (food_->currentIndex() < 0) return tr("No bowl of this day holds a food: there is nothing to put out.");
  if (!typedGrams(start_->text()))
    return start_->text().trimmed().isEmpty()
               ? tr("What did it weigh when it was put out? Type grams, such as 100.")
               : thousandsAdviceOr(start_->text(),
                                   tr("“%1” is no weight: type the grams that were put out, such as 100.")
                                       .arg(start_->text()));
  return thousandsAdviceOr(
      end_->text(), tr("“%1” is no weight: type the grams that came back, or nothing while it still stands.")
                        .arg(end_->text()));
}

void PanPane::keep() {
  if (!keep_->isEnabled()) return;
  const auto pan = typed();
  if (!pan) return say(whatIsMissing());
  const auto doubt = intake::doubtAbout(*pan, others());
  const bool isImpossible = doubt == intake::PanDoubt::NothingAtStart;
  const bool wasAsked = asked_ && asked_->start == pan->start && asked_->end == pan->end &&
                        asked_->food == pan->food && asked_->foodClass == pan->foodClass;
  if (doubt && (isImpossible || !wasAsked)) {
    asked_ = pan;
    return say(panDoubtText(*doubt));
  }
  goesOn_ = changed_ && !changed_->record.end && pan->end;
  if (changed_)
    desk_.changePan(*changed_, *pan);
  else
    desk_.addPan(*pan);
  showEmptyForm();
}

void PanPane::takeOut() {
  if (!changed_ || !keep_->isEnabled()) return;
  desk_.removePan(*changed_);
  showEmptyForm();
}

void PanPane::takeWeight(quantity::Grams read) {
  QLineEdit* field = end_->hasFocus() ? end_ : start_;
  field->setText(stated(read.value()));
}

bool PanPane::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
  const int key = static_cast<QKeyEvent*>(event)->key();
  const bool isEnter = key == Qt::Key_Return || key == Qt::Key_Enter;
  if (key == Qt::Key_Escape) {
    emit dismissed();
    return true;
  }
  if (isEnter && watched == food_) {
    start_->setFocus();
    return true;
  }
  if (key == Qt::Key_Delete && watched == pans_) {
    change(pans_->currentRow());
    takeOut();
    return true;
  }
  return QWidget::eventFilter(watched, event);
}

}  // namespace tarebowl::ui
