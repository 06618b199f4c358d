// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/food_bench.h"

#include "core/store/food_reading.h"
#include "ui/collection/food_names.h"
#include "ui/collection/food_picker.h"
#include "ui/collection/open_collection.h"
#include "ui/diets/allowance_bar.h"
#include "ui/diets/diet_desk.h"
#include "ui/diets/problem_document.h"
#include "ui/diets/version_document.h"

#include <QVBoxLayout>

namespace tarebowl::ui {

FoodBench::FoodBench(DietDesk& desk, const ProblemDocument& document, const VersionDocument& version,
                     OpenCollection& collection, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      document_(document),
      version_(version),
      collection_(collection),
      names_(new FoodNames(collection, this)),
      picker_(new FoodPicker(*names_)),
      allowances_(new AllowanceBar(*names_)) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(picker_);
  layout->addWidget(allowances_);
  picker_->hide();
  allowances_->hide();
  connect(picker_, &FoodPicker::picked, this, &FoodBench::add);
  connect(picker_, &FoodPicker::notFound, this, [this](const QString& text) {
    emit refused(
        tr("No food of this collection is called “%1”. Foods are added in the Foods room.").arg(text));
  });
  connect(allowances_, &AllowanceBar::wanted, this, &FoodBench::allow);
  connect(allowances_, &AllowanceBar::refused, this, &FoodBench::refused);
  connect(&desk_, &DietDesk::opened, this, &FoodBench::showWhatCanBe);
  collection_.whenOpened(this, [this] { showWhatCanBe(); });
}

void FoodBench::pick() {
  picker_->setFocus();
}

bool FoodBench::isSomethingOpen() const {
  return version_.isOpen() || !document_.file().empty() || !desk_.isEmpty();
}

void FoodBench::add(const QString& code) {
  if (!isSomethingOpen())
    return emit refused(tr("Choose a diet at the left first, or design one for a group."));
  collection_.ask([code = code.toStdString()](
                      store::Collection& collection) { return store::dietFood(collection, code); },
                  [this](const std::optional<diet::DietFood>& food) {
                    if (!food) return emit refused(tr("This food is no longer in the collection."));
                    desk_.addFood(*food);
                  });
}

void FoodBench::allow(const diet::Allowance& allowance) {
  collection_.ask(
      [code = allowance.food](store::Collection& collection) { return store::dietFood(collection, code); },
      [this, allowance](const std::optional<diet::DietFood>& food) {
        if (!food) return emit refused(tr("This food is no longer in the collection."));
        desk_.allow(*food, allowance);
      });
}

/// Only a version of the collection can say what is given unweighed; a problem file cannot.
void FoodBench::showWhatCanBe() {
  picker_->setVisible(collection_.file().has_value());
  allowances_->setVisible(desk_.draft().frame != nullptr && !desk_.isReadOnly());
}

}  // namespace tarebowl::ui
