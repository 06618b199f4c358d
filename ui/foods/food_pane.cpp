// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/food_pane.h"

#include "ui/foods/checks_card.h"
#include "ui/foods/collection_doubts.h"
#include "ui/foods/composition_view.h"
#include "ui/foods/food_text.h"
#include "ui/foods/group_strip_state.h"
#include "ui/shared/decimal_text.h"
#include "ui/shared/elided_label.h"
#include "ui/shared/format.h"
#include "ui/shared/room_actions.h"
#include "ui/shared/segmented_switch.h"
#include "ui/shared/wrapping_row.h"

#include <QAction>
#include <QLabel>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

namespace tarebowl::ui {
namespace {

QString subtitleOf(const food::Food& food) {
  QStringList parts{QString::fromStdString(food.group)};
  if (food.invented) parts << FoodPane::tr("an invented product");
  if (food.unitMass) parts << FoodPane::tr("one weighs %1 g").arg(stated(food.unitMass->value()));
  parts << FoodPane::tr("scale step %1 g").arg(stated(food.scaleStep.value()));
  if (food.edibleFraction < 1.0) parts << FoodPane::tr("%1 edible").arg(percent(food.edibleFraction));
  if (food.pricePerKg) parts << FoodPane::tr("%1 a kg").arg(decimal(*food.pricePerKg, 2));
  if (!food.inStock) parts << FoodPane::tr("none in stock");
  parts.removeAll(QString());
  return parts.join(QStringLiteral(" · "));
}

}  // namespace

FoodPane::FoodPane(FoodDesk& desk, const CollectionDoubts& doubts, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      doubts_(doubts),
      model_(new CompositionModel(desk, this)),
      view_(new CompositionView(*model_)),
      title_(new ElidedLabel),
      subtitle_(new ElidedLabel),
      basis_(new SegmentedSwitch(tr("Basis"), {tr("as fed, 100 g"), tr("kg DM"), tr("1000 kcal")})),
      editSample_(new QPushButton(tr("Edit sample…"))),
      setAside_(new QPushButton(tr("Set aside…"))),
      byHand_(new QPushButton(tr("Set by hand…"))),
      stripCard_(new QFrame),
      strip_(new GroupStrip),
      checks_(new ChecksCard) {
  build();
  wire();
  showPage();
}

void FoodPane::build() {
  auto* tableCard = new QFrame;
  tableCard->setProperty("card", true);
  auto* tableLayout = new QVBoxLayout(tableCard);
  tableLayout->setContentsMargins(7, 5, 7, 7);
  tableLayout->addWidget(view_);
  QVBoxLayout* stripLayout = layOutCard(*stripCard_, tr("Among its group"));
  stripTitle_ = stripCard_->findChild<QLabel*>(QStringLiteral("heading"));
  stripTitle_->setWordWrap(true);
  stripLayout->addWidget(strip_);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(16, 10, 16, 10);
  layout->setSpacing(10);
  header_ = makeHeader();
  layout->addWidget(header_);
  layout->addWidget(tableCard, 1);
  layout->addWidget(makeButtons());
  layout->addWidget(stripCard_);
  layout->addWidget(checks_);
}

QWidget* FoodPane::makeHeader() {
  QFont large = title_->font();
  large.setPointSizeF(large.pointSizeF() * 1.4);
  large.setBold(true);
  title_->setFont(large);
  title_->setAccessibleDescription(tr("Food"));
  title_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  subtitle_->setProperty("soft", true);
  subtitle_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  basis_->setToolTips({tr("Per 100 g as it is fed"), tr("Per kg of its dry matter (DM)"),
                       tr("Per 1000 kcal of its metabolizable energy (ME)")});
  auto* words = new QVBoxLayout;
  words->setSpacing(1);
  words->addWidget(title_);
  words->addWidget(subtitle_);
  auto* header = new QWidget;
  auto* layout = new QHBoxLayout(header);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(6);
  layout->addLayout(words, 1);
  layout->addWidget(basis_);
  return header;
}

QWidget* FoodPane::makeButtons() {
  auto* buttons = new QWidget;
  auto* layout = new WrappingRow(buttons);
  auto* editFood = new QPushButton(tr("Edit food…"));
  auto* removeFood = new QPushButton(tr("Remove food"));
  removeFood->setToolTip(tr("Takes the food out of the collection; undo brings it back"));
  auto* addSample = new QPushButton(tr("Add a sample…"));
  for (QPushButton* button : {addSample, editSample_, setAside_, byHand_, editFood, removeFood})
    layout->addWidget(button);
  connect(editFood, &QPushButton::clicked, this, &FoodPane::foodEditWanted);
  connect(removeFood, &QPushButton::clicked, this, &FoodPane::foodRemoveWanted);
  connect(addSample, &QPushButton::clicked, this, &FoodPane::sampleAddWanted);
  return buttons;
}

void FoodPane::addAction(QAction* action) {
  header_->layout()->addWidget(iconButtonFor(action));
}

void FoodPane::wire() {
  connect(&desk_, &FoodDesk::pageChanged, this, &FoodPane::showPage);
  connect(&desk_, &FoodDesk::energyChanged, this, [this] {
    basis_->setWord(2, tr("1000 %1").arg(unitText(unitOf(desk_.energy()))));
    showStrip();
  });
  connect(&doubts_, &CollectionDoubts::changed, this, &FoodPane::showChecks);
  connect(basis_, &SegmentedSwitch::chosen, this,
          [this](int index) { setBasis(static_cast<CompositionBasis>(index)); });
  connect(view_->selectionModel(), &QItemSelectionModel::currentChanged, this, [this] {
    showStrip();
    showButtons();
  });
  connect(editSample_, &QPushButton::clicked, this, [this] {
    if (const auto sample = model_->sampleAt(view_->currentIndex()))
      emit sampleEditWanted(static_cast<qint64>(*sample));
  });
  connect(setAside_, &QPushButton::clicked, this, &FoodPane::turnSample);
  connect(byHand_, &QPushButton::clicked, this, [this] {
    if (const auto nutrient = model_->nutrientAt(view_->currentIndex())) emit setByHandWanted(*nutrient);
  });
}

void FoodPane::setBasis(CompositionBasis basis) {
  basis_->setCurrent(static_cast<int>(basis));
  model_->setBasis(basis);
  showStrip();
}

const store::StoredSample* FoodPane::chosenSample() const {
  const auto id = model_->sampleAt(view_->currentIndex());
  return id ? desk_.sample(*id) : nullptr;
}

void FoodPane::turnSample() {
  const store::StoredSample* chosen = chosenSample();
  if (chosen == nullptr) return;
  if (chosen->sample.excluded)
    desk_.takeBackIn(chosen->id);
  else
    emit setAsideWanted(static_cast<qint64>(chosen->id));
}

void FoodPane::showButtons() {
  const store::StoredSample* chosen = chosenSample();
  const bool any = chosen != nullptr;
  const bool aside = any && chosen->sample.excluded.has_value();
  const QString open = tr("Open a nutrient's row and choose one of its samples first");
  editSample_->setEnabled(any);
  editSample_->setToolTip(any ? tr("Change this sample") : open);
  setAside_->setEnabled(any);
  setAside_->setText(aside ? tr("Count it again") : tr("Set aside…"));
  setAside_->setToolTip(any ? tr("Leave this sample out of the composition, with a reason") : open);
  byHand_->setEnabled(model_->nutrientAt(view_->currentIndex()).has_value());
  byHand_->setToolTip(tr("Put a value of your own before every sample, with a reason"));
}

void FoodPane::showPage() {
  const auto& page = desk_.page();
  setEnabled(page.has_value());
  const food::Food food = page ? page->food.record.food : food::Food{};
  const QString name = QString::fromStdString(food.name);
  const QString remark = remarkOf(food.form, food.invented);
  title_->setText(remark.isEmpty() ? name : QStringLiteral("%1, %2").arg(name, remark));
  title_->setToolTip(title_->text());
  subtitle_->setText(page ? subtitleOf(food) : QString());
  subtitle_->setToolTip(page ? QString::fromStdString(food.note) : QString());
  showChecks();
  showStrip();
  showButtons();
}

void FoodPane::showChecks() {
  std::vector<CheckSentence> sentences;
  if (desk_.page()) {
    sentences = checkSentences(*desk_.page());
    for (const Doubt& doubt : doubts_.comparisonsOf(desk_.page()->food.id))
      sentences.push_back(doubts_.sentenceOf(doubt));
    orderByWeight(sentences);
  }
  checks_->show(sentences);
}

void FoodPane::showStrip() {
  const auto nutrient = model_->nutrientAt(view_->currentIndex());
  if (!desk_.page() || !nutrient) {
    stripCard_->setVisible(false);
    return;
  }
  desk_.readCompositions(
      desk_.foodsOfGroup(desk_.page()->food.record.food.group),
      [this, nutrient = *nutrient](const FoodDesk::Figures& group) { takeGroup(nutrient, group); });
}

void FoodPane::takeGroup(food::NutrientId nutrient, const FoodDesk::Figures& group) {
  // An answer to an older question: another food or row is looked at by now.
  if (!desk_.page() || model_->nutrientAt(view_->currentIndex()) != nutrient) return;
  GroupStripState state = groupStripState(desk_, nutrient, model_->basis(), group);
  stripTitle_->setText(state.title);
  stripCard_->setVisible(state.others.size() + (state.thisFood ? 1U : 0U) > 1U);
  strip_->show(std::move(state));
}

}  // namespace tarebowl::ui
