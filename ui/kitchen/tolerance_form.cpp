// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/tolerance_form.h"

#include "ui/kitchen/kitchen_text.h"
#include "ui/shared/card.h"
#include "ui/shared/number_field.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace tarebowl::ui {
namespace {

constexpr double kPercent = 100.0;

NumberField* makeField(const QString& suffix, int decimals) {
  constexpr double kMost = 1000.0;
  auto* made = new NumberField;
  made->setRange(0.0, kMost);
  made->setDecimals(decimals);
  made->setSingleStep(decimals > 1 ? 0.1 : 0.5);
  made->setSuffix(suffix);
  return made;
}

}  // namespace

ToleranceForm::ToleranceForm(KitchenDesk& desk, QWidget* parent)
    : QFrame(parent),
      desk_(desk),
      fields_{makeField(tr(" steps of the scale"), 1), makeField(tr(" steps of the scale"), 1),
              makeField(tr(" % of the bowl"), 2), makeField(tr(" % of body mass"), 2)},
      example_(new QLabel) {
  build();
  for (NumberField* each : fields_)
    connect(each, &NumberField::valueChanged, this, &ToleranceForm::showExample);
  connect(&desk_, &KitchenDesk::placeChanged, this, &ToleranceForm::showExample);
  hide();
}

void ToleranceForm::build() {
  QVBoxLayout* card = layOutCard(*this, tr("How far a weight may lie from the plan: the rule of this house"));
  auto* rows = new QGridLayout;
  const std::array<QString, 4> words{tr("Always allowed"), tr("and up to the least of"), tr("and"),
                                     tr("and, where it is known,")};
  for (std::size_t i = 0; i < fields_.size(); ++i) {
    auto* word = new QLabel(words.at(i));
    word->setBuddy(fields_.at(i));
    const QString name = words.at(i) + fields_.at(i)->suffix();
    fields_.at(i)->setAccessibleName(name);
    fields_.at(i)->findChild<QLineEdit*>()->setAccessibleName(name);
    rows->addWidget(word, static_cast<int>(i), 0);
    rows->addWidget(fields_.at(i), static_cast<int>(i), 1);
  }
  rows->setColumnStretch(1, 1);
  card->addLayout(rows);
  example_->setWordWrap(true);
  example_->setProperty("soft", true);
  card->addWidget(example_);
  auto* keep = new QPushButton(tr("Keep the rule"));
  auto* usual = new QPushButton(tr("As it is by default"));
  auto* close = new QPushButton(tr("Leave it"));
  auto* buttons = new QHBoxLayout;
  for (QPushButton* button : {keep, usual, close}) buttons->addWidget(button);
  card->addLayout(buttons);
  connect(keep, &QPushButton::clicked, this, &ToleranceForm::keep);
  connect(usual, &QPushButton::clicked, this, [this] { show({}); });
  connect(close, &QPushButton::clicked, this, &QWidget::hide);
}

void ToleranceForm::open() {
  if (!desk_.sheet() || desk_.collection().isReadOnly()) return;
  show(desk_.sheet()->rule);
  QWidget::show();
  fields_.front()->setFocus();
  fields_.front()->selectAll();
}

void ToleranceForm::show(const intake::ToleranceRule& rule) {
  fields_[0]->setValue(rule.ofStep);
  fields_[1]->setValue(rule.leastSteps);
  fields_[2]->setValue(rule.ofBowl * kPercent);
  fields_[3]->setValue(rule.ofBody * kPercent);
  showExample();
}

intake::ToleranceRule ToleranceForm::rule() const {
  return {.ofStep = fields_[0]->value(),
          .leastSteps = fields_[1]->value(),
          .ofBowl = fields_[2]->value() / kPercent,
          .ofBody = fields_[3]->value() / kPercent};
}

void ToleranceForm::showExample() {
  if (desk_.item() == nullptr) return example_->clear();
  transfer::JudgedBy by = desk_.sheet()->judgedBy();
  by.rule = rule();
  example_->setText(tr("%1 in this bowl: ± %2 g")
                        .arg(foodText(desk_.sheet()->foodOf(desk_.item()->food)),
                             toleranceText(transfer::toleranceIn(*desk_.bowl(), desk_.item()->food, by))));
}

void ToleranceForm::keep() {
  hide();
  if (rule() != desk_.sheet()->rule) desk_.setRule(rule());
}

void ToleranceForm::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Escape:
      hide();
      return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
      return keep();
    default:
      QFrame::keyPressEvent(event);
  }
}

}  // namespace tarebowl::ui
