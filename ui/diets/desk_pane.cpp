// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/desk_pane.h"

#include "ui/diets/diet_desk.h"
#include "ui/diets/diet_facts.h"
#include "ui/diets/ingredient_model.h"
#include "ui/diets/ingredient_table.h"
#include "ui/diets/line_pane.h"
#include "ui/diets/problem_files.h"
#include "ui/diets/sought_button.h"
#include "ui/diets/why_card.h"
#include "ui/shared/decimal_text.h"
#include "ui/shared/elided_label.h"
#include "ui/shared/format.h"
#include "ui/shared/room_actions.h"
#include "ui/shared/segmented_switch.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTabBar>
#include <QTabWidget>
#include <QTimer>
#include <QVBoxLayout>

#include <chrono>

namespace tarebowl::ui {
namespace {

constexpr std::chrono::milliseconds kWhyAfter{40};

/// "0.14 kg · 24.6 kcal ME a day · cost 0.12".
QString subtitleOf(const DietDraft& draft) {
  const diet::BalanceProblem& problem = draft.problem;
  QStringList parts;
  if (problem.eater.count > 1) parts << animalsText(problem);
  if (problem.eater.bodyMass)
    parts << (problem.eater.count > 1 ? DeskPane::tr("%1 kg each") : DeskPane::tr("%1 kg"))
                 .arg(measured(problem.eater.bodyMass->value()));
  if (const auto energy = totalOf(problem, draft.grams, food::nutrients::energy())) {
    const QString amount =
        energy->atLeast ? QStringLiteral("≥ ") + measured(energy->amount) : measured(energy->amount);
    parts << DeskPane::tr("%1 kcal ME a day").arg(amount);
  }
  if (const auto cost = costPerDay(problem, draft.grams)) {
    const QString amount = decimal(cost->amount, 2);
    parts << DeskPane::tr("costs %1 a day").arg(cost->atLeast ? QStringLiteral("≥ ") + amount : amount);
  }
  return parts.join(QStringLiteral(" · "));
}

/// Which version it is stands in the bar below.
QString titleOf(const DietDraft& draft) {
  QString title = QString::fromStdString(draft.problem.title);
  if (!draft.frame) return title;
  const QString version = QStringLiteral(", version %1").arg(draft.frame->version.number);
  if (title.endsWith(version)) title.chop(version.size());
  return title;
}

/// The cautions that belong to every diet on this desk.
QString cautionOf(const diet::BalanceProblem& problem) {
  QStringList parts;
  const QStringList models = modelSpecies(problem);
  if (!models.isEmpty())
    parts << DeskPane::tr("Targets: %1 as model species, a starting point and not a requirement.")
                 .arg(models.join(QStringLiteral("; ")));
  const auto fromMemory = [](const auto& targets) {
    return std::any_of(targets.begin(), targets.end(), [](const auto& target) {
      return target.origin.provenance == animal::Provenance::FromMemory;
    });
  };
  if (fromMemory(problem.targets) || fromMemory(problem.ratios) || fromMemory(problem.shares))
    parts << DeskPane::tr("Some targets are from memory: verify them before use.");
  parts << DeskPane::tr(
      "This program supports, and does not replace, a qualified nutritionist and a licensed vet.");
  return parts.join(QLatin1Char(' '));
}

}  // namespace

DeskPane::DeskPane(DietDesk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      model_(new IngredientModel(desk, this)),
      table_(new IngredientTable(*model_, desk)),
      title_(new ElidedLabel),
      subtitle_(new QLabel),
      header_(new QWidget),
      switches_(new QWidget),
      perGroup_(new SegmentedSwitch(tr("Grams"), {tr("per animal"), tr("per group")})),
      hold_(new SegmentedSwitch(tr("On every edit"), {tr("solve as I type"), tr("hold")})),
      sought_(new SoughtButton),
      sure_(new SureButton),
      why_(new WhyCard),
      whyLater_(new QTimer(this)),
      lower_(new QTabWidget),
      moveBar_(new QFrame),
      line_(new LinePane(desk)),
      caution_(new QLabel) {
  build();
  wire();
  showProblem();
}

void DeskPane::build() {
  buildHeader();
  buildSwitches();
  buildMoveBar();
  auto* tableCard = new QFrame;
  tableCard->setProperty("card", true);
  tableCard->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
  tableLayout_ = new QVBoxLayout(tableCard);
  tableLayout_->setContentsMargins(7, 5, 7, 7);
  tableLayout_->addWidget(table_, 1);
  tableLayout_->addWidget(line_);
  caution_->setProperty("soft", true);
  caution_->setWordWrap(true);
  QFont small = caution_->font();
  small.setPointSizeF(small.pointSizeF() * 0.9);
  caution_->setFont(small);
  caution_->setAccessibleDescription(tr("Cautions"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(13, 10, 13, 10);
  layout->setSpacing(10);
  layout->addWidget(header_);
  layout->addWidget(switches_);
  layout->addWidget(moveBar_);
  layout->addWidget(tableCard, 300);
  lower_->setDocumentMode(true);
  lower_->setAccessibleName(tr("Below the foods"));
  lower_->tabBar()->setAccessibleName(tr("What is shown below the foods"));
  lower_->addTab(why_, tr("Why"));
  layout->addWidget(lower_, 200);
  layout->addStretch(1);
  layout->addWidget(caution_);
}

void DeskPane::buildHeader() {
  QFont large = title_->font();
  large.setPointSizeF(large.pointSizeF() * 1.4);
  large.setBold(true);
  title_->setFont(large);
  title_->setAccessibleDescription(tr("Diet"));
  title_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  subtitle_->setProperty("soft", true);
  subtitle_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  subtitle_->setWordWrap(true);
  auto* words = new QVBoxLayout;
  words->setSpacing(1);
  words->addWidget(title_);
  words->addWidget(subtitle_);
  auto* layout = new QHBoxLayout(header_);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(6);
  layout->addLayout(words, 1);
}

void DeskPane::buildSwitches() {
  perGroup_->setToolTips({tr("Grams for one animal a day"), tr("Grams for the whole group a day")});
  hold_->setToolTips({tr("What you type is held and the unlocked foods give way"),
                      tr("Only the balance is recomputed; no food gives way")});
  auto* layout = new QHBoxLayout(switches_);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(8);
  layout->addWidget(perGroup_);
  layout->addWidget(hold_);
  layout->addWidget(sought_);
  layout->addWidget(sure_);
  layout->addStretch(1);
}

void DeskPane::buildMoveBar() {
  moveBar_->setProperty("card", true);
  auto* words =
      new QLabel(tr("The grams stand as they were written. With what is known today the solver would "
                    "give others."));
  words->setWordWrap(true);
  auto* move = new QPushButton(tr("Let the foods give way"));
  auto* layout = new QHBoxLayout(moveBar_);
  layout->setContentsMargins(11, 6, 8, 6);
  layout->addWidget(words, 1);
  layout->addWidget(move);
  connect(move, &QPushButton::clicked, &desk_, &DietDesk::letFoodsMove);
  moveBar_->hide();
}

void DeskPane::addBar(QWidget& bar) {
  auto* column = static_cast<QVBoxLayout*>(layout());
  column->insertWidget(column->indexOf(switches_), &bar);
}

void DeskPane::addSheet(const QString& name, QWidget& sheet) {
  lower_->addTab(&sheet, name);
}

void DeskPane::showSheet(const QWidget& sheet) {
  for (int i = 0; i < lower_->count(); ++i)
    if (lower_->widget(i) == &sheet) lower_->setCurrentIndex(i);
}

void DeskPane::addBelowTable(QWidget& widget) {
  tableLayout_->addWidget(&widget);
}

void DeskPane::addAction(QAction* action) {
  header_->layout()->addWidget(iconButtonFor(action));
}

void DeskPane::wire() {
  connect(&desk_, &DietDesk::opened, this, &DeskPane::showProblem);
  connect(&desk_, &DietDesk::foodsChanged, this, &DeskPane::showHeading);
  connect(&desk_, &DietDesk::balanceChanged, this, &DeskPane::showSwitches);
  // Sentences take longer to lay out than a bowl to solve: they follow the ladder, once for what changed.
  whyLater_->setSingleShot(true);
  whyLater_->setInterval(kWhyAfter);
  const auto showWhyLater = [this] {
    if (!whyLater_->isActive()) whyLater_->start();
  };
  connect(&desk_, &DietDesk::balanceChanged, this, showWhyLater);
  connect(&desk_, &DietDesk::solvingChanged, this, showWhyLater);
  connect(whyLater_, &QTimer::timeout, this, &DeskPane::showWhy);
  connect(perGroup_, &SegmentedSwitch::chosen, model_,
          [this](int index) { model_->setPerGroup(index == 1); });
  connect(hold_, &SegmentedSwitch::chosen, &desk_, [this](int index) { desk_.setHolding(index == 1); });
  connect(sought_, &SoughtButton::chosen, &desk_, &DietDesk::setObjective);
  connect(sure_, &SureButton::chosen, &desk_, &DietDesk::setConfidence);
  connect(&desk_, &DietDesk::restructured, this, &DeskPane::fitTable);
  connect(&desk_, &DietDesk::solvingChanged, this, [this] { moveBar_->setVisible(desk_.wouldMove()); });
  connect(table_, &IngredientTable::handOn, line_, [this](int row) {
    line_->show(row < 0 ? std::nullopt : std::optional(static_cast<std::size_t>(row)));
  });
  connect(why_, &WhyCard::rungChosen, this, &DeskPane::rungChosen);
}

void DeskPane::showProblem() {
  const diet::BalanceProblem& problem = desk_.problem();
  perGroup_->setVisible(problem.eater.count > 1);
  perGroup_->setCurrent(0);
  sought_->show(problem);
  sure_->show(problem.confidence);
  model_->setPerGroup(false);
  caution_->setText(cautionOf(problem));
  moveBar_->setVisible(desk_.wouldMove());
  hold_->setEnabled(!desk_.isReadOnly());
  sought_->setEnabled(!desk_.isReadOnly());
  sure_->setEnabled(!desk_.isReadOnly());
  fitTable();
  showHeading();
  showSwitches();
  showWhy();
}

/// The table is as tall as its foods need, and no taller: what comes below it follows at once.
void DeskPane::fitTable() {
  table_->updateGeometry();
  table_->setMaximumHeight(table_->sizeHint().height());
}

void DeskPane::showHeading() {
  const QString title = titleOf(desk_.draft());
  title_->setText(title);
  title_->setToolTip(title);
  subtitle_->setText(subtitleOf(desk_.draft()));
}

void DeskPane::showSwitches() {
  hold_->setCurrent(desk_.isHolding() ? 1 : 0);
  // The menus list every nutrient: they are filled anew for another problem or choice, not on every
  // keystroke.
  const diet::BalanceProblem& problem = desk_.problem();
  if (shownObjective_ != problem.objective) sought_->show(problem);
  shownObjective_ = problem.objective;
  if (shownConfidence_ != problem.confidence) sure_->show(problem.confidence);
  shownConfidence_ = problem.confidence;
}

void DeskPane::showWhy() {
  // While the solver works the reasons of a moment ago stay: a card that flickers cannot be read.
  if (desk_.isEmpty())
    return why_->show({}, tr("No food is in this diet yet. It is worked out as foods are added."));
  if (desk_.isSolving() && desk_.solution() == std::nullopt && !desk_.isHolding()) return;
  why_->show(whySentences(desk_.draft(), desk_.balance(), desk_.solution()),
             QString::fromStdString(desk_.problem().notes));
}

}  // namespace tarebowl::ui
