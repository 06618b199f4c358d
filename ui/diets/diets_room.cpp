// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/diets_room.h"

#include "ui/collection/collection_state.h"
#include "ui/collection/conflict_text.h"
#include "ui/diets/approval_form.h"
#include "ui/diets/balance_pane.h"
#include "ui/diets/compare_pane.h"
#include "ui/diets/desk_pane.h"
#include "ui/diets/diet_chooser.h"
#include "ui/diets/diet_desk.h"
#include "ui/diets/diet_list.h"
#include "ui/diets/diet_papers.h"
#include "ui/diets/diet_shelf.h"
#include "ui/diets/explore_pane.h"
#include "ui/diets/food_bench.h"
#include "ui/diets/ingredient_table.h"
#include "ui/diets/ladder_model.h"
#include "ui/diets/larder.h"
#include "ui/diets/line_pane.h"
#include "ui/diets/problem_document.h"
#include "ui/diets/rotation_entry.h"
#include "ui/diets/rotation_pane.h"
#include "ui/diets/rotation_planner.h"
#include "ui/diets/rules_pane.h"
#include "ui/diets/solving_text.h"
#include "ui/diets/standing_bar.h"
#include "ui/diets/suggestions.h"
#include "ui/diets/target_names.h"
#include "ui/diets/version_bar.h"
#include "ui/diets/version_comparer.h"
#include "ui/diets/why_card.h"
#include "ui/kitchen/swap_entry.h"
#include "ui/kitchen/swap_pane.h"
#include "ui/shared/banner.h"
#include "ui/shared/folding_panes.h"
#include "ui/shared/format.h"
#include "ui/shared/reason_bar.h"
#include "ui/shared/room_actions.h"

#include <QAction>
#include <QLabel>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <utility>

namespace tarebowl::ui {

DietsRoom::DietsRoom(LiveSolver::Function solve, OpenCollection& collection, Dialogs dialogs,
                     VersionDocument::Clock today, QWidget* parent)
    : Room(parent),
      collection_(collection),
      desk_(new DietDesk(std::move(solve), this)),
      document_(new ProblemDocument(*desk_, dialogs, this)),
      version_(new VersionDocument(*desk_, collection, today, this)),
      shelf_(new DietShelf(collection, this)),
      larder_(new Larder(collection, this)),
      suggestions_(new Suggestions(*desk_, *larder_, this)),
      list_(new DietList),
      deskPane_(new DeskPane(*desk_)),
      balancePane_(new BalancePane(*desk_)),
      bench_(new FoodBench(*desk_, *document_, *version_, collection)),
      reason_(new ReasonBar),
      approval_(new ApprovalForm),
      versionBar_(new VersionBar(*version_, *shelf_, *reason_, *approval_)),
      standing_(new StandingBar(*version_)),
      rules_(new RulesPane(*desk_)),
      compare_(new ComparePane),
      swap_(new SwapPane),
      swapEntry_(new SwapEntry(*desk_, *version_, collection, *swap_, this)),
      planner_(new RotationPlanner(&diet::rotate, collection, std::move(today), this)),
      rotation_(new RotationPane(*planner_, dialogs)),
      rotationEntry_(new RotationEntry(*version_, *planner_, *rotation_, this)),
      explore_(new ExplorePane(*desk_)),
      chooser_(new DietChooser({*list_, *shelf_, *desk_, *document_, *version_}, collection, this)),
      papers_(new DietPapers(*desk_, *version_, dialogs, this)),
      comparer_(new VersionComparer({*desk_, *version_, *shelf_, *compare_}, collection, this)),
      pages_(new QStackedWidget),
      banner_(makeBanner()) {
  build();
  wire();
  wireDesk();
  wireCollection();
  wirePages();
  addActions();
}

void DietsRoom::build() {
  deskPage_ = buildDeskPage();
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(pages_);
  for (QWidget* page : std::initializer_list<QWidget*>{deskPage_, swap_, rotation_}) pages_->addWidget(page);
  setFocusProxy(&deskPane_->table());
}

QWidget* DietsRoom::buildDeskPage() {
  auto* middle = new QWidget;
  auto* middleLayout = new QVBoxLayout(middle);
  middleLayout->setContentsMargins(0, 0, 0, 0);
  middleLayout->setSpacing(0);
  auto* bannerRow = new QHBoxLayout;
  bannerRow->setContentsMargins(13, 8, 13, 0);
  bannerRow->addWidget(banner_);
  middleLayout->addLayout(bannerRow);
  middleLayout->addWidget(deskPane_);
  for (QWidget* bar : std::initializer_list<QWidget*>{versionBar_, reason_, approval_, standing_})
    deskPane_->addBar(*bar);
  deskPane_->addBelowTable(*bench_);
  deskPane_->addSheet(tr("Explore"), *explore_);
  deskPane_->addSheet(tr("Structure rules"), *rules_);
  deskPane_->addSheet(tr("Compare"), *compare_);
  auto* panes = new QSplitter(Qt::Horizontal);
  panes->setHandleWidth(1);
  panes->setChildrenCollapsible(false);
  auto* version = new FoldingPanes;
  version->addWidget(middle);
  version->addWidget(balancePane_);
  balancePane_->setMinimumWidth(400);
  version->setStretchFactor(0, 3);
  version->setStretchFactor(1, 2);
  version->setWidths({600, 490});
  panes->addWidget(list_);
  panes->addWidget(version);
  list_->setMinimumWidth(150);
  panes->setStretchFactor(0, 0);
  panes->setStretchFactor(1, 1);
  panes->setSizes({200, 1090});
  return panes;
}

void DietsRoom::wire() {
  connect(list_, &DietList::notListed, this, [this](const QString& text) {
    if (!deskPane_->table().goTo(text))
      complain(tr("No diet and no food of this diet is called “%1”.").arg(text));
  });
  connect(chooser_, &DietChooser::refused, this, &DietsRoom::complain);
  connect(chooser_, &DietChooser::foodsWanted, bench_, &FoodBench::pick);
  connect(chooser_, &DietChooser::foodChosen, &deskPane_->table(), &IngredientTable::goToFood);
  connect(document_, &ProblemDocument::fileChanged, banner_, &QWidget::hide);
  connect(document_, &ProblemDocument::fileChanged, this, &Room::stateChanged);
  connect(document_, &ProblemDocument::savedChanged, this, &Room::stateChanged);
  connect(document_, &ProblemDocument::failed, this, &DietsRoom::complain);
  connect(bench_, &FoodBench::refused, this, &DietsRoom::complain);
  connect(rules_, &RulesPane::refused, this, &DietsRoom::complain);
  connect(papers_, &DietPapers::told, this, &DietsRoom::tell);
  connect(papers_, &DietPapers::refused, this, &DietsRoom::complain);
  connect(comparer_, &VersionComparer::compared, deskPane_, [this] { deskPane_->showSheet(*compare_); });
}

void DietsRoom::wireDesk() {
  connect(desk_, &DietDesk::refused, this, &DietsRoom::complain);
  connect(&desk_->undoStack(), &QUndoStack::indexChanged, banner_, &QWidget::hide);
  connect(desk_, &DietDesk::foodsChanged, this, [this] { told_.clear(); });
  connect(desk_, &DietDesk::solvingChanged, this, &Room::stateChanged);
  connect(deskPane_, &DeskPane::rungChosen, balancePane_, &BalancePane::choose);
  connect(balancePane_, &BalancePane::exploreWanted, this, &DietsRoom::exploreRung);
  connect(&deskPane_->line(), &LinePane::exploreWanted, this, &DietsRoom::exploreFood);
  connect(suggestions_, &Suggestions::changed, this,
          [this] { deskPane_->why().offer(suggestions_->found()); });
  connect(&deskPane_->why(), &WhyCard::tried, suggestions_,
          [this](int suggestion) { suggestions_->tryOut(static_cast<std::size_t>(suggestion)); });
  connect(desk_, &DietDesk::reasonWanted, this, [this](const RungRef& rung, const Bounds& bounds) {
    reason_->ask(tr("%1 is a hard rule of the targets (%2). Why may this diet go beyond it?")
                     .arg(rungName(desk_->problem(), rung), boundsText(desk_->problem(), rung)),
                 {}, tr("Loosen"), [this, rung, bounds](const ReasonBar::Answer& answer) {
                   desk_->loosenBounds(rung, bounds, answer.reason);
                 });
  });
}

void DietsRoom::wireCollection() {
  connect(version_, &VersionDocument::opened, this, [this] {
    banner_->hide();
    if (version_->isOpen()) document_->forget();
    emit stateChanged();
  });
  connect(version_, &VersionDocument::savedChanged, this, &Room::stateChanged);
  connect(version_, &VersionDocument::told, this, &DietsRoom::complain);
  connect(version_, &VersionDocument::refused, this,
          [this](const Refusal& refusal) { complain(refusalText(refusal)); });
  connect(&collection_, &OpenCollection::busyChanged, this, &Room::stateChanged);
  collection_.whenReadOnly(this, [this] { complain(readOnlyText()); });
  connect(versionBar_, &VersionBar::versionWanted, version_,
          [this](qint64 version) { version_->open(store::VersionId{version}); });
  connect(versionBar_, &VersionBar::compareWanted, this, &DietsRoom::compareWith);
  connect(versionBar_, &VersionBar::sheetWanted, papers_, &DietPapers::write);
}

void DietsRoom::wirePages() {
  connect(swapEntry_, &SwapEntry::opened, this, [this] { showPage(*swap_); });
  connect(swapEntry_, &SwapEntry::told, this, &DietsRoom::tell);
  connect(swap_, &SwapPane::used, this, &DietsRoom::backToTheDesk);
  connect(swap_, &SwapPane::dismissed, this, &DietsRoom::backToTheDesk);
  connect(rotationEntry_, &RotationEntry::opened, this, [this] { showPage(*rotation_); });
  connect(rotationEntry_, &RotationEntry::refused, this, &DietsRoom::complain);
  connect(rotation_, &RotationPane::dismissed, this, &DietsRoom::backToTheDesk);
  connect(rotation_, &RotationPane::told, this, &DietsRoom::tell);
  connect(desk_, &DietDesk::opened, this, [this] {
    if (pages_->currentWidget() == swap_) backToTheDesk();
  });
  // What the calendar writes has the diet read again: only another one takes it away.
  connect(version_, &VersionDocument::opened, this, [this] {
    const bool isSame = version_->isOpen() && version_->shown()->version.id == planner_->version();
    if (pages_->currentWidget() == rotation_ && !isSame) backToTheDesk();
  });
}

void DietsRoom::showPage(QWidget& page) {
  pages_->setCurrentWidget(&page);
  page.setFocus();
}

void DietsRoom::backToTheDesk() {
  if (pages_->currentWidget() == deskPage_) return;
  pages_->setCurrentWidget(deskPage_);
  deskPane_->table().setFocus();
}

void DietsRoom::showRotation() {
  rotationEntry_->open();
}

void DietsRoom::compareWith(int number) {
  comparer_->compareWith(number);
}

/// The food or the rung that the hand is on.
void DietsRoom::exploreHere() {
  const auto food = deskPane_->line().food();
  const auto rung = balancePane_->chosen();
  if (food && !balancePane_->hasHand()) return exploreFood(static_cast<qint64>(*food));
  if (rung) exploreRung(*rung);
}

void DietsRoom::exploreRung(const RungRef& rung) {
  deskPane_->showSheet(*explore_);
  explore_->exploreRung(rung);
}

void DietsRoom::exploreFood(qint64 food) {
  deskPane_->showSheet(*explore_);
  explore_->exploreFood(static_cast<std::size_t>(food));
}

void DietsRoom::openFolder(const std::filesystem::path& folder) {
  chooser_->openFolder(folder);
}

void DietsRoom::openFile(const std::filesystem::path& file) {
  chooser_->openFile(file);
}

void DietsRoom::designFor(const QString& groupCode) {
  chooser_->designFor(groupCode);
}

void DietsRoom::notAvailable() {
  const QModelIndex line = deskPane_->table().currentIndex();
  if (!line.isValid()) return complain(tr("Put the hand on the food that is not available first."));
  swapEntry_->notAvailable(static_cast<std::size_t>(line.row()));
}

/// A diet of the collection is on the disk as soon as a hand rests; what leaves it is a page or a problem
/// file.
void DietsRoom::addActions() {
  // They belong to the desk: the other pages have their own way back.
  auto* actions = new RoomActions(*deskPage_);
  const RoomActions::UndoRedo edits = actions->addUndoRedo(desk_->undoStack());
  QAction* open = actions->add(tr("Open"), QKeySequence::Open, QStringLiteral("open"));
  QAction* save = actions->add(tr("Save"), QKeySequence::Save, QStringLiteral("save"));
  QAction* saveAs = actions->add(tr("Save as"), QKeySequence(tr("Ctrl+Shift+S")));
  connect(open, &QAction::triggered, document_, &ProblemDocument::openByDialog);
  connect(save, &QAction::triggered, this, [this] {
    if (version_->isOpen())
      version_->saveNow();
    else
      document_->save();
  });
  connect(saveAs, &QAction::triggered, this, [this] {
    if (version_->isOpen())
      papers_->write();
    else
      document_->saveAs();
  });
  const auto add = [&](const QString& text, const QKeySequence& keys, auto* receiver, auto work,
                       const QString& iconName = {}) {
    QAction* action = actions->add(text, keys, iconName);
    connect(action, &QAction::triggered, receiver, work);
    return action;
  };
  add(tr("Add a food"), QKeySequence(tr("Ctrl+I")), bench_, &FoodBench::pick);
  deskPane_->table().QWidget::addAction(
      add(tr("Not available…"), QKeySequence(tr("Ctrl+Shift+N")), this, &DietsRoom::notAvailable));
  add(tr("Try what is suggested first"), QKeySequence(tr("Ctrl+T")), suggestions_,
      [this] { suggestions_->tryOut(0); });
  add(tr("Explore what is chosen"), QKeySequence(tr("Ctrl+E")), this, &DietsRoom::exploreHere);
  add(tr("New version"), QKeySequence::New, version_, &VersionDocument::beginNewVersion);
  add(tr("Print the diet sheet"), QKeySequence::Print, papers_, &DietPapers::print);
  QAction* days = add(tr("Calendar of days that vary"), QKeySequence(tr("Ctrl+D")), this,
                      &DietsRoom::showRotation, QStringLiteral("calendar"));
  for (QAction* action : {days, edits.undo, edits.redo, open, save}) deskPane_->addAction(action);
}

void DietsRoom::setEnergy(EnergyUnit energy) {
  balancePane_->setEnergy(energy);
  emit stateChanged();
}

RoomState DietsRoom::state() const {
  const diet::BalanceProblem& problem = desk_->problem();
  RoomState state = stateOf(collection_);
  state.note = told_.isEmpty() ? solvingText(*desk_) : told_;
  const EnergyUnit energy = balancePane_->ladder().view().energy;
  state.energy = energy;
  state.units = tr("grams as fed · energy in %1 ME, %2")
                    .arg(unitText(unitOf(energy)), energyMethodText(problem.energyMethod));
  if (version_->isOpen() || document_->file().empty()) {
    state.saved = version_->isSaved();
    state.savedText = state.saved ? tr("saved") : tr("saving…");
    // Of a copy of the sample too, which nobody knows for one by its name.
    if (problem.invented && state.sampleText.isEmpty()) state.sampleText = tr("Invented sample");
    return state;
  }
  state.title = document_->title();
  state.file = toText(document_->file().filename());
  state.saved = document_->isSaved();
  state.savedText = state.saved ? tr("saved") : tr("not saved (Ctrl+S)");
  state.sampleText.clear();
  if (problem.invented) state.sampleText = tr("Brackenmere (invented sample)");
  return state;
}

std::vector<FinderHit> DietsRoom::find(const QString& partOfName, int most) const {
  return chooser_->find(partOfName, most);
}

void DietsRoom::goTo(qint64 id) {
  chooser_->goTo(id);
}

bool DietsRoom::hasOwnFile() const {
  return !document_->file().empty() || version_->isOpen() || banner_->isVisibleTo(this);
}

bool DietsRoom::mayLeave() {
  version_->saveNow();
  return document_->mayLeave();
}

void DietsRoom::tell(const QString& what) {
  told_ = what;
  emit stateChanged();
}

void DietsRoom::complain(const QString& what) {
  banner_->setText(what);
  banner_->show();
}

}  // namespace tarebowl::ui
