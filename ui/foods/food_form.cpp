// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/food_form.h"

#include "ui/foods/cooking_card.h"
#include "ui/foods/plan_card.h"
#include "ui/foods/recipe_card.h"
#include "ui/foods/stated_text.h"
#include "ui/shared/banner.h"
#include "ui/shared/format.h"
#include "ui/shared/segmented_switch.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <set>

namespace tarebowl::ui {
namespace {

QString numberText(std::optional<double> number) {
  return number ? stated(*number) : QString();
}

QString complaintOf(food::FoodProblem problem) {
  switch (problem) {
    case food::FoodProblem::NoCode:
      return FoodForm::tr("A food needs a code: problem files name it by that.");
    case food::FoodProblem::NoName:
      return FoodForm::tr("A food needs a name.");
    case food::FoodProblem::UnitMassNotAboveZero:
      return FoodForm::tr("The mass of one must be above 0 g.");
    case food::FoodProblem::ScaleStepNotAboveZero:
      return FoodForm::tr("The scale step must be above 0 g.");
    case food::FoodProblem::EdibleFractionOutOfRange:
      return FoodForm::tr("The edible part lies above 0 % and up to 100 %.");
    case food::FoodProblem::PriceNegative:
      return FoodForm::tr("A price is not below 0.");
  }
  return {};
}

QComboBox* makeChoice(const QString& name) {
  auto* box = new QComboBox;
  box->setEditable(true);
  box->setInsertPolicy(QComboBox::NoInsert);
  box->setAccessibleName(name);
  return box;
}

}  // namespace

FoodForm::FoodForm(FoodDesk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      form_(makeChoice(tr("Form"))),
      group_(makeChoice(tr("Group"))),
      inStock_(new QCheckBox(tr("in stock"))),
      making_(new SegmentedSwitch(tr("How it is made"), {tr("cooked"), tr("mixed")})),
      makingCard_(new QStackedWidget),
      complaint_(makeBanner()) {
  build();
  connect(&desk_, &FoodDesk::pageChanged, this, &FoodForm::showFood);
  showFood();
}

void FoodForm::build() {
  auto* fields = new QFormLayout;
  auto* weights = new QFormLayout;
  for (QFormLayout* column : {fields, weights}) {
    column->setHorizontalSpacing(12);
    column->setVerticalSpacing(8);
  }
  auto* columns = new QHBoxLayout;
  columns->setSpacing(20);
  columns->addLayout(fields, 5);
  columns->addLayout(weights, 4);
  name_ = addField(*fields, tr("Name"));
  fields->addRow(tr("Form"), form_);
  fields->addRow(tr("Group"), group_);
  code_ = addField(*fields, tr("Code"), tr("names it in problem files: kale-raw"));
  unitMass_ = addField(*weights, tr("One weighs, g"), tr("where it comes whole"));
  scaleStep_ = addField(*weights, tr("Scale step, g"));
  edible_ = addField(*weights, tr("Edible part, %"), tr("of what is bought"));
  price_ = addField(*weights, tr("Price a kg"), tr("as bought"));
  weights->addRow(QString(), inStock_);
  note_ = addField(*fields, tr("Note"));
  for (const std::string_view form : food::commonForms())
    form_->addItem(QString::fromUtf8(form.data(), static_cast<qsizetype>(form.size())));
  for (QComboBox* box : {form_, group_}) {
    connect(box->lineEdit(), &QLineEdit::editingFinished, this, &FoodForm::keep);
    connect(box, &QComboBox::activated, this, &FoodForm::keep);
  }
  connect(inStock_, &QCheckBox::clicked, this, &FoodForm::keep);
  auto* heading = new QLabel(tr("What the food is"));
  QFont large = heading->font();
  large.setPointSizeF(large.pointSizeF() * 1.4);
  large.setBold(true);
  heading->setFont(large);
  auto* told = new QLabel(tr("Each field is kept as soon as you leave it; undo takes it back."));
  told->setProperty("soft", true);
  told->setWordWrap(true);
  auto* back = new QPushButton(tr("Back to the composition"));
  connect(back, &QPushButton::clicked, this, &FoodForm::done);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(16, 10, 16, 10);
  layout->setSpacing(8);
  layout->addWidget(heading);
  layout->addWidget(told);
  layout->addWidget(complaint_);
  layout->addLayout(columns);
  layout->addWidget(makeCards(), 1);
  layout->addWidget(back, 0, Qt::AlignLeft);
}

QWidget* FoodForm::makeCards() {
  auto* plan = new PlanCard(desk_);
  auto* cards = new QWidget;
  auto* layout = new QHBoxLayout(cards);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(10);
  layout->addWidget(plan, 1);
  layout->addWidget(makeMaking(), 1);
  connect(plan, &PlanCard::complained, this, &FoodForm::complain);
  return cards;
}

QWidget* FoodForm::makeMaking() {
  auto* cooking = new CookingCard(desk_);
  auto* recipe = new RecipeCard(desk_);
  connect(cooking, &CookingCard::complained, this, &FoodForm::complain);
  connect(recipe, &RecipeCard::complained, this, &FoodForm::complain);
  making_->setToolTips({tr("Worked out from one raw food"), tr("Worked out from the parts of a house mix")});
  connect(making_, &SegmentedSwitch::chosen, makingCard_, &QStackedWidget::setCurrentIndex);
  makingCard_->addWidget(cooking);
  makingCard_->addWidget(recipe);
  auto* making = new QWidget;
  auto* layout = new QVBoxLayout(making);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(6);
  layout->addWidget(making_, 0, Qt::AlignLeft);
  layout->addWidget(makingCard_, 1);
  return making;
}

/// The card of what the food is now; where it is neither, the one that was looked at last.
void FoodForm::showMaking() {
  const store::FoodRecord& record = desk_.page()->food.record;
  if (!record.cooking && !record.recipe) return;
  const int index = record.recipe ? 1 : 0;
  making_->setCurrent(index);
  makingCard_->setCurrentIndex(index);
}

QLineEdit* FoodForm::addField(QFormLayout& form, const QString& name, const QString& hint) {
  auto* field = new QLineEdit;
  field->setAccessibleName(name);
  field->setPlaceholderText(hint);
  form.addRow(name, field);
  connect(field, &QLineEdit::editingFinished, this, &FoodForm::keep);
  return field;
}

void FoodForm::showFood() {
  setEnabled(desk_.page().has_value());
  if (!desk_.page()) return;
  const food::Food& food = desk_.page()->food.record.food;
  const QSignalBlocker noForm(form_);
  const QSignalBlocker noGroup(group_);
  std::set<std::string> groups;
  for (const food::FoodLine& line : desk_.foods()) groups.insert(line.group);
  group_->clear();
  for (const std::string& group : groups) group_->addItem(QString::fromStdString(group));
  name_->setText(QString::fromStdString(food.name));
  form_->setCurrentText(QString::fromStdString(food.form));
  group_->setCurrentText(QString::fromStdString(food.group));
  code_->setText(QString::fromStdString(food.code));
  unitMass_->setText(numberText(food.unitMass ? std::optional(food.unitMass->value()) : std::nullopt));
  scaleStep_->setText(numberText(food.scaleStep.value()));
  edible_->setText(numberText(100.0 * food.edibleFraction));
  price_->setText(numberText(food.pricePerKg));
  inStock_->setChecked(food.inStock);
  note_->setText(QString::fromStdString(food.note));
  complaint_->hide();
  if (shown_ != desk_.page()->food.id) showMaking();
  shown_ = desk_.page()->food.id;
}

std::optional<food::Food> FoodForm::read() {
  food::Food food = desk_.page()->food.record.food;
  const auto text = [](const QString& typed) { return typed.trimmed().toStdString(); };
  food.name = text(name_->text());
  food.form = text(form_->currentText());
  food.group = text(group_->currentText());
  food.code = text(code_->text());
  food.note = text(note_->text());
  food.inStock = inStock_->isChecked();
  for (const QLineEdit* field : {unitMass_, scaleStep_, edible_, price_})
    if (!field->text().isEmpty() && !readNumber(field->text())) {
      complain(
          tr("“%1” is not a number that can stand for: %2.").arg(field->text(), field->accessibleName()));
      return std::nullopt;
    }
  const auto unitMass = readNumber(unitMass_->text());
  food.unitMass = unitMass ? std::optional(quantity::Grams(*unitMass)) : std::nullopt;
  food.scaleStep = quantity::Grams(readNumber(scaleStep_->text()).value_or(0.0));
  food.edibleFraction = readNumber(edible_->text()).value_or(0.0) / 100.0;
  food.pricePerKg = readNumber(price_->text());
  if (const auto problem = food::problemWith(food)) {
    complain(complaintOf(*problem));
    return std::nullopt;
  }
  return food;
}

void FoodForm::keep() {
  if (!desk_.page()) return;
  complaint_->hide();
  if (const auto food = read()) desk_.changeFood(*food);
}

void FoodForm::complain(const QString& what) {
  complaint_->setText(what);
  complaint_->setVisible(!what.isEmpty());
}

void FoodForm::focusName() {
  name_->setFocus();
  name_->selectAll();
}

}  // namespace tarebowl::ui
