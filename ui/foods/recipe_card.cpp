// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/recipe_card.h"

#include "ui/collection/food_picker.h"
#include "ui/foods/recipe_parts_model.h"
#include "ui/foods/stated_text.h"
#include "ui/shared/card.h"
#include "ui/shared/entry_table.h"
#include "ui/shared/format.h"

#include <QFormLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace tarebowl::ui {
namespace {

QTableView* makeTable(RecipePartsModel& model) {
  constexpr int kLeastLines = 3;
  auto* table = new EntryTable;
  table->setModel(&model);
  table->setAccessibleName(RecipeCard::tr("Parts of the mix, and their grams"));
  table->setShowGrid(false);
  table->setSelectionBehavior(QAbstractItemView::SelectRows);
  table->setSelectionMode(QAbstractItemView::SingleSelection);
  table->setEditTriggers(QAbstractItemView::AllEditTriggers);
  table->setTabKeyNavigation(false);
  table->verticalHeader()->hide();
  const int line = table->fontMetrics().height() + 10;
  table->verticalHeader()->setDefaultSectionSize(line);
  QHeaderView* header = table->horizontalHeader();
  header->setHighlightSections(false);
  header->setSectionResizeMode(RecipePartsModel::Food, QHeaderView::Stretch);
  for (const int column : {RecipePartsModel::Grams, RecipePartsModel::Share})
    header->resizeSection(column, table->fontMetrics().averageCharWidth() * 11);
  table->setMinimumHeight((kLeastLines + 1) * line);
  return table;
}

QString wordsFor(food::RecipeProblem problem) {
  switch (problem) {
    case food::RecipeProblem::MoreThanFood:
      return RecipeCard::tr(
          "With this yield the dry matter of the parts would weigh more than the mix; "
          "nothing is worked out from it.");
    case food::RecipeProblem::FactorOutOfRange:
      return RecipeCard::tr("A share that stays lies outside 0 to 2; nothing is worked out from it.");
    case food::RecipeProblem::NoParts:
    case food::RecipeProblem::MassNotAboveZero:
    case food::RecipeProblem::YieldNotAboveZero:
      break;
  }
  return RecipeCard::tr("Nothing can be worked out from this recipe.");
}

}  // namespace

RecipeCard::RecipeCard(FoodDesk& desk, QWidget* parent)
    : QFrame(parent),
      desk_(desk),
      picker_(new FoodPicker([&desk](const QString& text, std::size_t most) {
        std::vector<food::FoodLine> lines;
        for (const int place : desk.find(text, most))
          lines.push_back(desk.foods()[static_cast<std::size_t>(place)]);
        return lines;
      })),
      parts_(new RecipePartsModel(this)),
      table_(makeTable(*parts_)),
      remove_(new QPushButton(tr("Take out"))),
      yield_(new QLineEdit),
      source_(new QLineEdit),
      standing_(new QLabel) {
  build();
  connect(&desk_, &FoodDesk::pageChanged, this, &RecipeCard::showRecipe);
  connect(&desk_, &FoodDesk::listChanged, this, &RecipeCard::showRecipe);
  connect(picker_, &FoodPicker::picked, this, &RecipeCard::addPart);
  connect(picker_, &FoodPicker::notFound, this, [this](const QString& text) {
    emit complained(tr("No food of this collection has “%1” in its name.").arg(text));
  });
  connect(parts_, &RecipePartsModel::edited, this, &RecipeCard::keep);
  connect(remove_, &QPushButton::clicked, this, &RecipeCard::removePart);
  for (QLineEdit* field : {yield_, source_})
    connect(field, &QLineEdit::editingFinished, this, &RecipeCard::keep);
  showRecipe();
}

void RecipeCard::build() {
  picker_->setPlaceholderText(tr("Add a part: type part of its name…"));
  picker_->setAccessibleName(tr("Add a part of the mix by part of its name"));
  yield_->setAccessibleName(tr("Grams of the mix from 1 g weighed in"));
  source_->setAccessibleName(tr("Source of the recipe"));
  source_->setPlaceholderText(tr("who says so"));
  standing_->setWordWrap(true);
  standing_->setProperty("soft", true);
  auto* fields = new QFormLayout;
  fields->addRow(tr("1 g weighed in gives, g"), yield_);
  fields->addRow(tr("Source"), source_);
  QVBoxLayout* layout = layOutCard(*this, tr("Mixed from"));
  layout->addWidget(makeParts(), 1);
  layout->addLayout(fields);
  layout->addWidget(standing_);
}

QWidget* RecipeCard::makeParts() {
  remove_->setToolTip(tr("Takes the chosen part out of the mix (Delete)"));
  auto* deleting = new QShortcut(QKeySequence(Qt::Key_Delete), table_);
  deleting->setContext(Qt::WidgetShortcut);
  connect(deleting, &QShortcut::activated, this, &RecipeCard::removePart);
  auto* adding = new QHBoxLayout;
  adding->addWidget(picker_, 1);
  adding->addWidget(remove_);
  auto* all = new QWidget;
  auto* layout = new QVBoxLayout(all);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addLayout(adding);
  layout->addWidget(table_, 1);
  return all;
}

QString RecipeCard::nameOfPart(const std::string& code) const {
  const auto line = std::ranges::find(desk_.foods(), code, &food::FoodLine::code);
  if (line == desk_.foods().end()) return QString::fromStdString(code);
  const QString form = QString::fromStdString(line->form);
  return form.isEmpty() ? nameOf(*line) : QStringLiteral("%1, %2").arg(nameOf(*line), form);
}

QString RecipeCard::standing() const {
  if (!desk_.page()) return {};
  const store::FoodRecord& record = desk_.page()->food.record;
  if (record.cooking)
    return tr("It is worked out as cooked from %1 now; a recipe takes the place of that.")
        .arg(nameOfPart(record.cooking->rawCode));
  if (!record.recipe) return tr("Not mixed from other foods. Samples of the mix itself go before a recipe.");
  if (desk_.page()->recipeProblem) return wordsFor(*desk_.page()->recipeProblem);
  return tr("What a part does not state is “at least” in the mix.");
}

void RecipeCard::showRecipe() {
  if (!desk_.page()) return;
  showing_ = true;
  const auto& recipe = desk_.page()->food.record.recipe;
  std::vector<RecipePartsModel::Part> parts;
  if (recipe)
    for (const food::RecipePart& part : recipe->parts)
      parts.push_back({part.code, nameOfPart(part.code), stated(part.mass.value())});
  // A part that waits for its grams stays when the page is read again.
  const bool isAnother = shown_ != desk_.page()->food.id;
  shown_ = desk_.page()->food.id;
  if (isAnother || parts_->parts()) parts_->show(std::move(parts));
  yield_->setText(stated(recipe ? recipe->massYield : 1.0));
  source_->setText(recipe ? QString::fromStdString(recipe->source) : QString());
  standing_->setText(standing());
  showing_ = false;
}

void RecipeCard::addPart(const QString& code) {
  if (!desk_.page()) return;
  if (code.toStdString() == desk_.page()->food.record.food.code) {
    emit complained(tr("A food is not mixed from itself."));
    return;
  }
  emit complained(QString());
  const int row = parts_->add(code.toStdString(), nameOfPart(code.toStdString()));
  const QModelIndex grams = parts_->index(row, RecipePartsModel::Grams);
  table_->setCurrentIndex(grams);
  table_->setFocus();
  table_->edit(grams);
}

void RecipeCard::removePart() {
  parts_->remove(table_->currentIndex().row());
}

std::optional<food::Recipe> RecipeCard::read() {
  const auto yield = readNumber(yield_->text());
  if (!yield || *yield <= 0.0) {
    emit complained(
        tr("“%1” is no yield: the grams of the mix that 1 g weighed in gives, above 0.").arg(yield_->text()));
    return std::nullopt;
  }
  const auto parts = parts_->parts();
  if (!parts) {
    emit complained(parts_->complaint());
    return std::nullopt;
  }
  const auto& before = desk_.page()->food.record.recipe;
  return food::Recipe{.parts = *parts,
                      .massYield = *yield,
                      .retentions = before ? before->retentions : std::vector<food::Retention>{},
                      .source = source_->text().trimmed().toStdString()};
}

void RecipeCard::keep() {
  if (showing_ || !desk_.page()) return;
  emit complained(QString());
  if (parts_->rowCount() == 0) return desk_.changeRecipe(std::nullopt);
  if (const auto recipe = read()) desk_.changeRecipe(recipe);
}

}  // namespace tarebowl::ui
