// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/diets_room.h"

#include "core/store/food_reading.h"
#include "core/store/group_reading.h"
#include "core/transfer/desk_sheet.h"
#include "ui/collection/collection_state.h"
#include "ui/collection/conflict_text.h"
#include "ui/collection/food_names.h"
#include "ui/collection/food_picker.h"
#include "ui/diets/allowance_bar.h"
#include "ui/diets/approval_form.h"
#include "ui/diets/balance_pane.h"
#include "ui/diets/compare_pane.h"
#include "ui/diets/desk_pane.h"
#include "ui/diets/diet_desk.h"
#include "ui/diets/diet_list.h"
#include "ui/diets/diet_shelf.h"
#include "ui/diets/explore_pane.h"
#include "ui/diets/food_label.h"
#include "ui/diets/ingredient_table.h"
#include "ui/diets/ladder_model.h"
#include "ui/diets/larder.h"
#include "ui/diets/line_pane.h"
#include "ui/diets/problem_document.h"
#include "ui/diets/rules_pane.h"
#include "ui/diets/sheet_export.h"
#include "ui/diets/solving_text.h"
#include "ui/diets/standing_bar.h"
#include "ui/diets/suggestions.h"
#include "ui/diets/target_names.h"
#include "ui/diets/version_bar.h"
#include "ui/diets/why_card.h"
#include "ui/kitchen/swap_entry.h"
#include "ui/kitchen/swap_pane.h"
#include "ui/shared/banner.h"
#include "ui/shared/format.h"
#include "ui/shared/reason_bar.h"
#include "ui/shared/room_actions.h"

#include <QAction>
#include <QLabel>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace tarebowl::ui {
namespace {

/// What the finder's numbers from here on mean: a food of the diet; below, a row of the list.
constexpr qint64 kFirstFood = 1'000'000;

}  // namespace

DietsRoom::DietsRoom(LiveSolver::Function solve, OpenCollection& collection, Dialogs dialogs,
                     VersionDocument::Clock today, QWidget* parent)
    : Room(parent),
      collection_(collection),
      askForSheet_(dialogs.sheetToSave),
      print_(dialogs.printer),
      desk_(new DietDesk(std::move(solve), this)),
      document_(new ProblemDocument(*desk_, std::move(dialogs), this)),
      version_(new VersionDocument(*desk_, collection, std::move(today), this)),
      shelf_(new DietShelf(collection, this)),
      names_(new FoodNames(collection, this)),
      larder_(new Larder(collection, this)),
      suggestions_(new Suggestions(*desk_, *larder_, this)),
      list_(new DietList),
      deskPane_(new DeskPane(*desk_)),
      balancePane_(new BalancePane(*desk_)),
      picker_(new FoodPicker(*names_)),
      allowances_(new AllowanceBar(*names_)),
      reason_(new ReasonBar),
      approval_(new ApprovalForm),
      versionBar_(new VersionBar(*version_, *shelf_, *reason_, *approval_)),
      standing_(new StandingBar(*version_)),
      rules_(new RulesPane(*desk_)),
      compare_(new ComparePane),
      swap_(new SwapPane),
      swapEntry_(new SwapEntry(*desk_, collection, *swap_, this)),
      pages_(new QStackedWidget),
      explore_(new ExplorePane(*desk_)),
      banner_(makeBanner()) {
  build();
  wire();
  wireCollection();
  wireSwap();
  addActions();
}

void DietsRoom::build() {
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
  deskPane_->addBelowTable(*picker_);
  deskPane_->addBelowTable(*allowances_);
  deskPane_->addSheet(tr("Explore"), *explore_);
  deskPane_->addSheet(tr("Structure rules"), *rules_);
  deskPane_->addSheet(tr("Compare"), *compare_);
  auto* panes = new QSplitter(Qt::Horizontal);
  panes->setHandleWidth(1);
  panes->setChildrenCollapsible(false);
  panes->addWidget(list_);
  panes->addWidget(middle);
  panes->addWidget(balancePane_);
  list_->setMinimumWidth(150);
  balancePane_->setMinimumWidth(400);
  panes->setStretchFactor(0, 0);
  panes->setStretchFactor(1, 3);
  panes->setStretchFactor(2, 2);
  panes->setSizes({200, 600, 490});
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(pages_);
  pages_->addWidget(panes);
  pages_->addWidget(swap_);
  setFocusProxy(&deskPane_->table());
}

void DietsRoom::wire() {
  connect(list_, &DietList::chosen, this, &DietsRoom::openListed);
  connect(list_, &DietList::notListed, this, [this](const QString& text) {
    if (!deskPane_->table().goTo(text))
      complain(tr("No diet and no food of this diet is called “%1”.").arg(text));
  });
  connect(list_, &DietList::listed, this, &DietsRoom::openFirstListed);
  connect(document_, &ProblemDocument::fileChanged, this, [this] {
    banner_->hide();
    version_->close();
    showCurrent();
    if (document_->file().parent_path() != folder_) {
      folder_ = document_->file().parent_path();
      list_->listFolder(folder_);
    }
  });
  connect(document_, &ProblemDocument::failed, this, &DietsRoom::complain);
  connect(desk_, &DietDesk::refused, this, &DietsRoom::complain);
  connect(&desk_->undoStack(), &QUndoStack::indexChanged, banner_, &QWidget::hide);
  connect(desk_, &DietDesk::foodsChanged, this, [this] { told_.clear(); });
  connect(deskPane_, &DeskPane::rungChosen, balancePane_, &BalancePane::choose);
  connect(balancePane_, &BalancePane::exploreWanted, this, &DietsRoom::exploreRung);
  connect(&deskPane_->line(), &LinePane::exploreWanted, this, &DietsRoom::exploreFood);
  connect(suggestions_, &Suggestions::changed, this,
          [this] { deskPane_->why().offer(suggestions_->found()); });
  connect(&deskPane_->why(), &WhyCard::tried, suggestions_,
          [this](int suggestion) { suggestions_->tryOut(static_cast<std::size_t>(suggestion)); });
  connect(desk_, &DietDesk::solvingChanged, this, &Room::stateChanged);
  connect(document_, &ProblemDocument::savedChanged, this, &Room::stateChanged);
  connect(document_, &ProblemDocument::fileChanged, this, &Room::stateChanged);
}

void DietsRoom::wireCollection() {
  connect(shelf_, &DietShelf::changed, this, [this] {
    list_->show(*shelf_);
    picker_->setVisible(collection_.file().has_value());
    if (shelf_->isRead()) openFirstDiet();
    showCurrent();
  });
  connect(&collection_, &OpenCollection::opened, this, [this] { wantsFirstDiet_ = true; });
  connect(version_, &VersionDocument::listChanged, shelf_, &DietShelf::read);
  connect(version_, &VersionDocument::opened, this, [this] {
    banner_->hide();
    if (version_->isOpen()) document_->forget();
    compared_.reset();
    compare_->clear();
    showCurrent();
    emit stateChanged();
  });
  connect(version_, &VersionDocument::savedChanged, this, &Room::stateChanged);
  connect(version_, &VersionDocument::told, this, &DietsRoom::complain);
  connect(version_, &VersionDocument::refused, this,
          [this](const Refusal& refusal) { complain(refusalText(refusal)); });
  connect(&collection_, &OpenCollection::busyChanged, this, &Room::stateChanged);
  connect(&collection_, &OpenCollection::foundReadOnly, this, [this] { complain(readOnlyText()); });
  connect(versionBar_, &VersionBar::versionWanted, version_,
          [this](qint64 version) { version_->open(store::VersionId{version}); });
  connect(picker_, &FoodPicker::picked, this, &DietsRoom::addFood);
  connect(picker_, &FoodPicker::notFound, this, [this](const QString& text) {
    complain(tr("No food of this collection is called “%1”. Foods are added in the Foods room.").arg(text));
  });
  picker_->hide();
  allowances_->hide();
  connect(allowances_, &AllowanceBar::wanted, this, &DietsRoom::allow);
  connect(allowances_, &AllowanceBar::refused, this, &DietsRoom::complain);
  connect(desk_, &DietDesk::opened, this, &DietsRoom::showAllowances);
  connect(rules_, &RulesPane::refused, this, &DietsRoom::complain);
  connect(desk_, &DietDesk::reasonWanted, this, [this](const RungRef& rung, const Bounds& bounds) {
    reason_->ask(tr("%1 is a hard rule of the targets (%2). Why may this diet go beyond it?")
                     .arg(rungName(desk_->problem(), rung), boundsText(desk_->problem(), rung)),
                 {}, tr("Loosen"), [this, rung, bounds](const ReasonBar::Answer& answer) {
                   desk_->loosenBounds(rung, bounds, answer.reason);
                 });
  });
  connect(versionBar_, &VersionBar::compareWanted, this, &DietsRoom::compareWith);
  connect(desk_, &DietDesk::settled, this, &DietsRoom::showComparison);
  connect(versionBar_, &VersionBar::sheetWanted, this, &DietsRoom::writeSheet);
}

void DietsRoom::wireSwap() {
  const auto backToTheDesk = [this] {
    if (pages_->currentWidget() != swap_) return;
    pages_->setCurrentIndex(0);
    deskPane_->table().setFocus();
  };
  connect(swapEntry_, &SwapEntry::opened, this, [this] {
    pages_->setCurrentWidget(swap_);
    swap_->setFocus();
  });
  connect(swapEntry_, &SwapEntry::told, this, &DietsRoom::tell);
  connect(swap_, &SwapPane::used, this, backToTheDesk);
  connect(swap_, &SwapPane::dismissed, this, backToTheDesk);
  connect(desk_, &DietDesk::opened, this, backToTheDesk);
}

/// What stands on the desk, written or not: a sheet of it, or the problem that the command line solves.
/// What stands on the desk, written or not.
transfer::DeskDiet DietsRoom::asShown() const {
  transfer::DeskDiet shown = *version_->shown();
  if (desk_->isReadOnly()) return shown;
  shown.version.record.version = versionOf(desk_->draft());
  shown.made = diet::versionProblem(shown.version.record.version, desk_->draft().frame->context);
  return shown;
}

void DietsRoom::printSheet() {
  if (!version_->isOpen()) return;
  if (!print_) return writeSheet();
  const exchange::DietSheet sheet = transfer::sheetOf(asShown());
  const QString title = QString::fromStdString(sheet.title);
  if (print_(this, title, [&](QPagedPaintDevice& device) { ui::printSheet(sheet, device); }))
    tell(tr("printed: %1").arg(title));
}

/// A sheet of it, or the problem that the command line solves.
void DietsRoom::writeSheet() {
  if (!version_->isOpen() || !askForSheet_) return;
  const transfer::DeskDiet shown = asShown();
  const std::string name = shown.diet.record.code + "-" + std::to_string(shown.version.record.version.number);
  const auto file = askForSheet_(this, toPath(QString::fromStdString(name + ".pdf")));
  if (!file) return;
  const auto why = file->extension() == ".json" ? saveProblem(*file, problemToSave(desk_->draft()))
                                                : ui::writeSheet(transfer::sheetOf(shown), *file);
  if (why)
    complain(*why);
  else
    tell(tr("written: %1").arg(toText(*file)));
}

void DietsRoom::compareWith(int number) {
  const ShelvedDiet* diet = shelf_->find(version_->shown()->diet.record.code);
  if (diet == nullptr) return;
  const auto other = std::ranges::find(diet->versions, number, &store::VersionLine::number);
  if (other == diet->versions.end()) return;
  collection_.ask([id = other->id, day = version_->today()](
                      store::Collection& collection) { return transfer::readDesk(collection, id, day); },
                  [this](const std::optional<transfer::DeskDiet>& before) {
                    if (!before || !version_->isOpen()) return;
                    compared_ = comparedVersion(*before);
                    showComparison();
                    deskPane_->showSheet(*compare_);
                  });
}

/// The older one first. Follows the desk.
void DietsRoom::showComparison() {
  if (!compared_ || !version_->isOpen()) return;
  const ComparedVersion onDesk = comparedVersion(desk_->draft());
  const bool inOrder = compared_->version.number <= onDesk.version.number;
  compare_->show(inOrder ? *compared_ : onDesk, inOrder ? onDesk : *compared_);
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

void DietsRoom::openFirstDiet() {
  if (!std::exchange(wantsFirstDiet_, false) || version_->isOpen() || !document_->isSaved() ||
      (!desk_->isEmpty() && !document_->file().empty()))
    return;
  for (const ShelvedDiet& diet : shelf_->diets())
    if (const auto first = diet.toOpen()) return version_->open(*first);
}

void DietsRoom::openListed(DietListEntry::Kind kind, const QString& key) {
  switch (kind) {
    case DietListEntry::Kind::File:
      document_->open(toPath(key));
      return showCurrent();
    case DietListEntry::Kind::NoDietYet:
      return designFor(key);
    case DietListEntry::Kind::Diet:
      if (!document_->mayLeave()) return showCurrent();
      if (const ShelvedDiet* diet = shelf_->find(key.toStdString()))
        if (const auto version = diet->toOpen()) version_->open(*version);
      return;
    case DietListEntry::Kind::Heading:
      return;
  }
}

void DietsRoom::showCurrent() {
  if (version_->isOpen())
    list_->setCurrent(DietListEntry::Kind::Diet, QString::fromStdString(version_->shown()->diet.record.code));
  else
    list_->setCurrent(DietListEntry::Kind::File, toText(document_->file()));
}

void DietsRoom::designFor(const QString& groupCode) {
  if (!document_->mayLeave()) return;
  collection_.ask(
      [code = groupCode.toStdString(), day = version_->today()](store::Collection& collection) {
        return store::knowGroup(collection, code, day);
      },
      [this](const std::optional<store::KnownGroup>& group) {
        if (!group) return complain(tr("This group is no longer in the collection."));
        diet::NamedDiet diet{
            .code = shelf_->freeCode(group->group.record.code),
            .name = tr("%1, daily diet").arg(QString::fromStdString(group->group.record.name)).toStdString(),
            .group = group->group.record.code,
            .invented = group->group.record.invented};
        diet::DietVersion first;
        if (group->version)
          first.profile = {group->version->record.profile.code, group->version->record.profile.version};
        version_->design(diet, first);
        picker_->setFocus();
      });
}

void DietsRoom::addFood(const QString& code) {
  if (!version_->isOpen() && document_->file().empty() && desk_->isEmpty())
    return complain(tr("Choose a diet at the left first, or design one for a group."));
  collection_.ask([code = code.toStdString()](
                      store::Collection& collection) { return store::dietFood(collection, code); },
                  [this](const std::optional<diet::DietFood>& food) {
                    if (!food) return complain(tr("This food is no longer in the collection."));
                    desk_->addFood(*food);
                  });
}

void DietsRoom::allow(const diet::Allowance& allowance) {
  collection_.ask(
      [code = allowance.food](store::Collection& collection) { return store::dietFood(collection, code); },
      [this, allowance](const std::optional<diet::DietFood>& food) {
        if (!food) return complain(tr("This food is no longer in the collection."));
        desk_->allow(*food, allowance);
      });
}

/// Only a version of the collection can say what is given unweighed; a problem file cannot.
void DietsRoom::showAllowances() {
  allowances_->setVisible(desk_->draft().frame != nullptr && !desk_->isReadOnly());
}

void DietsRoom::openFolder(const std::filesystem::path& folder) {
  folder_ = folder;
  list_->listFolder(folder);
}

void DietsRoom::openFile(const std::filesystem::path& file) {
  if (!document_->open(file)) openFolder(file.parent_path());
}

void DietsRoom::openFirstListed() {
  if (!desk_->isEmpty()) return;
  for (int row = 0; row < list_->model().rowCount(); ++row) {
    const QModelIndex index = list_->model().index(row);
    const bool isFile =
        index.data(DietListModel::KindRole).toInt() == static_cast<int>(DietListEntry::Kind::File);
    if (!isFile || !index.data(DietListModel::ReadableRole).toBool()) continue;
    document_->open(toPath(index.data(DietListModel::KeyRole).toString()));
    return;
  }
}

void DietsRoom::addActions() {
  auto* actions = new RoomActions(*this);
  const RoomActions::UndoRedo edits = actions->addUndoRedo(desk_->undoStack());
  QAction* open = actions->add(tr("Open"), QKeySequence::Open, QStringLiteral("open"));
  QAction* save = actions->add(tr("Save"), QKeySequence::Save, QStringLiteral("save"));
  QAction* saveAs = actions->add(tr("Save as"), QKeySequence(tr("Ctrl+Shift+S")));
  connect(open, &QAction::triggered, document_, &ProblemDocument::openByDialog);
  // A diet of the collection is on the disk as soon as a hand rests; what leaves it is a page or a problem
  // file.
  connect(save, &QAction::triggered, this, [this] {
    if (version_->isOpen())
      version_->saveNow();
    else
      document_->save();
  });
  connect(saveAs, &QAction::triggered, this, [this] {
    if (version_->isOpen())
      writeSheet();
    else
      document_->saveAs();
  });
  QAction* insert = actions->add(tr("Add a food"), QKeySequence(tr("Ctrl+I")));
  QAction* gone = actions->add(tr("Not available…"), QKeySequence(tr("Ctrl+Shift+N")));
  deskPane_->table().QWidget::addAction(gone);
  connect(gone, &QAction::triggered, this, [this] {
    const QModelIndex line = deskPane_->table().currentIndex();
    if (!line.isValid()) return complain(tr("Put the hand on the food that is not available first."));
    swapEntry_->notAvailable(static_cast<std::size_t>(line.row()));
  });
  QAction* trial = actions->add(tr("Try what is suggested first"), QKeySequence(tr("Ctrl+T")));
  connect(trial, &QAction::triggered, suggestions_, [this] { suggestions_->tryOut(0); });
  QAction* explore = actions->add(tr("Explore what is chosen"), QKeySequence(tr("Ctrl+E")));
  connect(explore, &QAction::triggered, this, &DietsRoom::exploreHere);
  QAction* next = actions->add(tr("New version"), QKeySequence::New);
  QAction* sheet = actions->add(tr("Print the diet sheet"), QKeySequence::Print);
  connect(insert, &QAction::triggered, picker_, qOverload<>(&QWidget::setFocus));
  connect(next, &QAction::triggered, version_, &VersionDocument::beginNewVersion);
  connect(sheet, &QAction::triggered, this, &DietsRoom::printSheet);
  for (QAction* action : {edits.undo, edits.redo, open, save}) deskPane_->addAction(action);
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
  std::vector<FinderHit> hits;
  if (partOfName.isEmpty()) return hits;
  const auto add = [&](const QString& name, const QString& remark, qint64 id) {
    if (static_cast<int>(hits.size()) < most && name.contains(partOfName, Qt::CaseInsensitive))
      hits.push_back({name, remark, id});
  };
  for (int row = 0; row < list_->model().rowCount(); ++row)
    add(list_->model().index(row).data().toString(), tr("diet"), row);
  const diet::BalanceProblem& problem = desk_->problem();
  for (std::size_t i = 0; i < problem.foods.size(); ++i) {
    const FoodLabel label = foodLabel(problem.foods[i]);
    add(label.name, tr("in this diet"), kFirstFood + static_cast<qint64>(i));
  }
  return hits;
}

void DietsRoom::goTo(qint64 id) {
  if (id >= kFirstFood) return deskPane_->table().goToFood(static_cast<int>(id - kFirstFood));
  const QModelIndex index = list_->model().index(static_cast<int>(id));
  if (!index.isValid()) return;
  openListed(static_cast<DietListEntry::Kind>(index.data(DietListModel::KindRole).toInt()),
             index.data(DietListModel::KeyRole).toString());
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
