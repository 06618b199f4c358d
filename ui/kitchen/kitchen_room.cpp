// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/kitchen_room.h"

#include "ui/collection/collection_state.h"
#include "ui/collection/conflict_text.h"
#include "ui/kitchen/bowl_list.h"
#include "ui/kitchen/bowl_pane.h"
#include "ui/kitchen/kitchen_swap.h"
#include "ui/kitchen/kitchen_text.h"
#include "ui/kitchen/leftover_pane.h"
#include "ui/kitchen/pan_pane.h"
#include "ui/kitchen/scale_bar.h"
#include "ui/kitchen/sheet_side.h"
#include "ui/kitchen/swap_pane.h"
#include "ui/kitchen/tolerance_form.h"
#include "ui/kitchen/weigh_pane.h"
#include "ui/shared/banner.h"
#include "ui/shared/days.h"
#include "ui/shared/folding_panes.h"
#include "ui/shared/paths.h"
#include "ui/shared/reason_bar.h"
#include "ui/shared/room_actions.h"
#include "ui/shared/segmented_switch.h"

#include <QAction>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <utility>

namespace tarebowl::ui {
namespace {

constexpr int kListWidth = 276;
constexpr int kSideWidth = 262;
constexpr int kSheetWidth = 720;

}  // namespace

KitchenRoom::KitchenRoom(OpenCollection& collection, Dialogs dialogs, KitchenDesk::Clock today,
                         QWidget* parent)
    : Room(parent),
      collection_(collection),
      dialogs_(std::move(dialogs)),
      desk_(new KitchenDesk(collection, std::move(today), this)),
      reason_(new ReasonBar),
      list_(new BowlList(*desk_)),
      bowl_(new BowlPane(*desk_)),
      weigh_(new WeighPane(*desk_, *reason_)),
      leftover_(new LeftoverPane(*desk_, *reason_)),
      onScale_(new QStackedWidget),
      task_(new SegmentedSwitch(tr("What is weighed"), {tr("Weigh in"), tr("Leftovers")})),
      side_(new SheetSide(*desk_)),
      scale_(new ScaleBar),
      swap_(new SwapPane),
      swapOfLine_(new KitchenSwap(*desk_, *swap_, this)),
      pans_(new PanPane(*desk_)),
      tolerance_(new ToleranceForm(*desk_)),
      middle_(new QStackedWidget),
      banner_(makeBanner()),
      buttons_(new QWidget) {
  build();
  wire();
  wireSwap();
  wirePans();
  addActions();
}

void KitchenRoom::build() {
  list_->setFixedWidth(kListWidth);
  auto* weighing = new QWidget;
  auto* bowl = new QVBoxLayout(weighing);
  bowl->setContentsMargins(0, 0, 0, 0);
  bowl->setSpacing(10);
  bowl->addWidget(bowl_, 1);
  bowl->addWidget(reason_);
  bowl->addWidget(tolerance_);
  onScale_->addWidget(weigh_);
  onScale_->addWidget(leftover_);
  bowl->addWidget(onScale_);
  bowl->addWidget(scale_);
  middle_->addWidget(weighing);
  middle_->addWidget(swap_);
  middle_->addWidget(pans_);
  auto* left = new QWidget;
  auto* middle = new QVBoxLayout(left);
  middle->setContentsMargins(0, 0, 0, 0);
  middle->setSpacing(10);
  middle->addWidget(banner_);
  middle->addWidget(middle_, 1);
  auto* pans = new QPushButton(tr("Control pans  (P)"));
  pans->setToolTip(tr("Put out now, or come back"));
  connect(pans, &QPushButton::clicked, this, &KitchenRoom::openPans);
  list_->addAtTop(pans);
  list_->addAtTop(task_);
  auto* right = new QWidget;
  right->setMinimumWidth(kSideWidth);
  auto* sideOf = new QVBoxLayout(right);
  sideOf->setContentsMargins(0, 0, 0, 0);
  sideOf->addWidget(buttons_);
  sideOf->addWidget(side_, 1);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 0, 12, 10);
  layout->setSpacing(12);
  layout->addWidget(list_);
  auto* page = new FoldingPanes;
  page->setHandleWidth(12);
  page->addWidget(left);
  page->addWidget(right);
  page->setStretchFactor(0, 1);
  page->setStretchFactor(1, 0);
  page->setWidths({kSheetWidth, kSideWidth});
  auto* below = new QVBoxLayout;
  below->setContentsMargins(0, 12, 0, 0);
  below->addWidget(page);
  layout->addLayout(below, 1);
  showTask();
}

void KitchenRoom::addActions() {
  auto* actions = new RoomActions(*this);
  QAction* sheet = actions->add(tr("Sheet…"), QKeySequence::Print);
  QAction* labels = actions->add(tr("Labels…"), QKeySequence(tr("Ctrl+L")));
  QAction* rule = actions->add(tr("± Rule…"), QKeySequence(tr("Ctrl+T")));
  sheet->setToolTip(tr("The sheet of this section and day, as a page to print or to keep"));
  labels->setToolTip(tr("A label for each bowl, to print"));
  rule->setToolTip(tr("How far a weight may lie from the plan"));
  auto* row = new QHBoxLayout(buttons_);
  row->setContentsMargins(0, 0, 0, 0);
  row->addStretch(1);
  for (QAction* action : {sheet, labels, rule}) {
    auto* button = new QPushButton(action->text());
    button->setToolTip(
        tr("%1 (%2)").arg(action->toolTip(), action->shortcut().toString(QKeySequence::NativeText)));
    connect(button, &QPushButton::clicked, action, &QAction::trigger);
    row->addWidget(button);
  }
  connect(sheet, &QAction::triggered, this, [this] { write(KitchenPage::Sheet); });
  connect(labels, &QAction::triggered, this, [this] { write(KitchenPage::Labels); });
  connect(rule, &QAction::triggered, this, [this] {
    middle_->setCurrentIndex(0);
    tolerance_->open();
  });
}

void KitchenRoom::wire() {
  connect(desk_, &KitchenDesk::opened, this, [this] {
    if (collection_.file()) banner_->hide();
    reason_->dismiss();
    note_.clear();
  });
  connect(scale_, &ScaleBar::weightRead, this, [this](double grams) { takeWeight(quantity::Grams(grams)); });
  connect(desk_, &KitchenDesk::placeChanged, this, [this] { reason_->dismiss(); });
  connect(desk_, &KitchenDesk::taskChanged, this, &KitchenRoom::showTask);
  connect(task_, &SegmentedSwitch::chosen, this, [this](int task) {
    desk_->setTask(static_cast<KitchenDesk::Task>(task));
    focusProxy()->setFocus();
  });
  connect(desk_, &KitchenDesk::sheetChanged, this, &Room::stateChanged);
  connect(&collection_, &OpenCollection::busyChanged, this, &Room::stateChanged);
  collection_.whenReadOnly(this, [this] {
    complain(readOnlyText());
    desk_->refresh();
  });
  connect(&collection_, &OpenCollection::refused, this, [this](const Refusal& refusal) {
    if (!refusal.isServerAway || !collection_.station()) complain(refusalText(refusal));
  });
  connect(&collection_, &OpenCollection::cutOffChanged, banner_, &QWidget::hide);
  connect(desk_, &KitchenDesk::waitsForServer, this, &KitchenRoom::sayWhatWaits);
  connect(desk_, &KitchenDesk::dayNotOnCopy, this, [this] {
    const auto& copy = collection_.station()->copy();
    complain(tr("This desk's copy of the collection holds the days from %1 to %2: another day waits for the "
                "server.")
                 .arg(dateText(copy->from), dateText(copy->until)));
  });
}

void KitchenRoom::sayWhatWaits() {
  complain(tr(
      "Swaps, control pans, lots and the rule of weighing wait for the server. Weights and leftovers go on: "
      "they are kept on this desk and sent when the server is back."));
}

void KitchenRoom::complain(const QString& text) {
  banner_->setText(text);
  banner_->show();
}

void KitchenRoom::write(KitchenPage page) {
  if (!desk_->sheet() || !dialogs_.sheetToSave) return;
  const QString name = QStringLiteral("%1 %2%3.pdf")
                           .arg(QString::fromStdString(desk_->sheet()->sheet.section),
                                QString::fromStdString(quantity::isoDate(desk_->day())),
                                page == KitchenPage::Labels ? tr(" labels") : QString());
  const auto file = dialogs_.sheetToSave(this, toPath(name));
  if (!file) return;
  if (const auto why = writeKitchenPage(*desk_->sheet(), page, *file)) return complain(*why);
  note_ = tr("%1 is written").arg(toText(file->filename()));
  emit stateChanged();
}

void KitchenRoom::wireSwap() {
  const auto backToTheBowl = [this] {
    middle_->setCurrentIndex(0);
    weigh_->field().setFocus();
  };
  connect(weigh_, &WeighPane::notAvailable, this, [this] {
    if (collection_.isOnCopy()) return sayWhatWaits();
    swapOfLine_->notAvailable();
  });
  connect(swapOfLine_, &KitchenSwap::opened, this, [this] {
    middle_->setCurrentWidget(swap_);
    swap_->setFocus();
  });
  connect(swapOfLine_, &KitchenSwap::taken, this, [this, backToTheBowl](const QString& what) {
    note_ = what;
    backToTheBowl();
    emit stateChanged();
  });
  connect(swap_, &SwapPane::dismissed, this, backToTheBowl);
  connect(desk_, &KitchenDesk::opened, this, [this] { middle_->setCurrentIndex(0); });
}

void KitchenRoom::wirePans() {
  connect(leftover_, &LeftoverPane::pansWanted, this, &KitchenRoom::openPans);
  connect(weigh_, &WeighPane::pansWanted, this, &KitchenRoom::openPans);
  connect(desk_, &KitchenDesk::sheetChanged, this, [this] {
    if (pansSought_ && desk_->sheet() && isOn(*pansSought_)) openPans();
  });
  connect(pans_, &PanPane::dismissed, this, [this] {
    middle_->setCurrentIndex(0);
    focusProxy()->setFocus();
  });
  connect(desk_, &KitchenDesk::taskChanged, this, [this] { middle_->setCurrentIndex(0); });
}

/// Pans may be weighed on a day on which no bowl came back: then the field that knows their letter is shut.
void KitchenRoom::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_P && event->modifiers() == Qt::NoModifier && middle_->currentIndex() == 0)
    return openPans();
  Room::keyPressEvent(event);
}

void KitchenRoom::showEvent(QShowEvent* event) {
  Room::showEvent(event);
  desk_->setInSight(true);
}

void KitchenRoom::hideEvent(QHideEvent* event) {
  Room::hideEvent(event);
  desk_->setInSight(false);
}

void KitchenRoom::showTask() {
  const bool weighsIn = desk_->task() == KitchenDesk::Task::WeighIn;
  task_->setCurrent(weighsIn ? 0 : 1);
  onScale_->setCurrentIndex(weighsIn ? 0 : 1);
  setFocusProxy(weighsIn ? &weigh_->field() : &leftover_->field());
}

void KitchenRoom::takeWeight(quantity::Grams actual) {
  if (middle_->currentWidget() == pans_)
    pans_->takeWeight(actual);
  else if (desk_->task() == KitchenDesk::Task::WeighIn)
    weigh_->takeWeight(actual);
  else
    leftover_->takeWeight(actual);
}

bool KitchenRoom::isSwapping() const {
  return middle_->currentWidget() == swap_;
}

void KitchenRoom::showSheet(const QString& section, quantity::Date day, KitchenDesk::Task task) {
  pansSought_.reset();
  desk_->setTask(task);
  desk_->showDay(day);
  desk_->showSection(section);
}

void KitchenRoom::showPans(const QString& section, quantity::Date day) {
  showSheet(section, day, KitchenDesk::Task::Leftovers);
  pansSought_ = SheetSought{section.toStdString(), day};
  if (desk_->sheet() && !desk_->isReading() && isOn(*pansSought_)) openPans();
}

bool KitchenRoom::isOn(const SheetSought& sought) const {
  return desk_->sheet()->sheet.section == sought.section && desk_->day() == sought.day;
}

void KitchenRoom::openPans() {
  pansSought_.reset();
  middle_->setCurrentWidget(pans_);
  pans_->begin();
}

RoomState KitchenRoom::state() const {
  RoomState state = stateOf(collection_);
  state.units = tr("g as fed, of the whole bowl");
  const bool isUnnamed = collection_.file() && collection_.author().who.empty();
  state.note = desk_->isReading() ? tr("reading the sheet…")
               : note_.isEmpty() && isUnnamed
                   ? tr("weights stand without a name until you say who you are, at the right")
                   : note_;
  return state;
}

std::vector<FinderHit> KitchenRoom::find(const QString& partOfName, int most) const {
  std::vector<FinderHit> hits;
  if (partOfName.trimmed().isEmpty() || !desk_->sheet()) return hits;
  const auto& bowls = desk_->sheet()->sheet.bowls;
  for (std::size_t bowl = 0; bowl < bowls.size() && hits.size() < static_cast<std::size_t>(most); ++bowl) {
    const QString label = QString::fromStdString(bowls[bowl].bowl.label);
    if (label.contains(partOfName.trimmed(), Qt::CaseInsensitive))
      hits.push_back({label, soFarText(weighedSoFar(bowls[bowl])), static_cast<qint64>(bowl)});
  }
  return hits;
}

void KitchenRoom::goTo(qint64 id) {
  if (!desk_->sheet()) return;
  for (const SheetLine& line : linesToWeigh(desk_->sheet()->sheet))
    if (static_cast<qint64>(line.bowl) == id) {
      desk_->goTo(line);
      setFocus();
      return;
    }
}

}  // namespace tarebowl::ui
