// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/main_window.h"

#include "core/intake/time_of_sheet.h"
#include "core/store/server_address.h"
#include "ui/animals/animals_room.h"
#include "ui/collection/conflict_text.h"
#include "ui/collection/start_page.h"
#include "ui/diets/diet_shelf.h"
#include "ui/diets/diets_room.h"
#include "ui/foods/foods_room.h"
#include "ui/frame/collection_menu.h"
#include "ui/frame/finder.h"
#include "ui/frame/focus_order.h"
#include "ui/frame/help.h"
#include "ui/frame/help_menu.h"
#include "ui/frame/rail.h"
#include "ui/frame/room_numbers.h"
#include "ui/frame/room_stage.h"
#include "ui/frame/status_line.h"
#include "ui/health/health_room.h"
#include "ui/intake/intake_room.h"
#include "ui/kitchen/kitchen_room.h"
#include "ui/kitchen/scale_bar.h"
#include "ui/shared/days.h"
#include "ui/shared/icons.h"
#include "ui/shared/paths.h"
#include "ui/shared/plain_words.h"
#include "ui/today/today_room.h"

#include <QApplication>
#include <QCloseEvent>
#include <QDropEvent>
#include <QHBoxLayout>
#include <QMimeData>
#include <QShortcut>
#include <QUrl>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace tarebowl::ui {

MainWindow::MainWindow(LiveSolver::Function solve, Dialogs dialogs, Preferences preferences, Clock today,
                       QWidget* parent)
    : QWidget(parent),
      preferences_(std::move(preferences)),
      collection_(new OpenCollection(this)),
      files_(*collection_, dialogs, this),
      damage_(*collection_, dialogs, this),
      rail_(new Rail),
      stage_(new RoomStage),
      status_(new StatusLine),
      finder_(new Finder(this)),
      menu_(new CollectionMenu),
      help_(new Help(*this)),
      today_(new TodayRoom(*collection_, today)),
      foods_(new FoodsRoom(*collection_, files_, dialogs)),
      animals_(new AnimalsRoom(*collection_, today)),
      diets_(new DietsRoom(std::move(solve), *collection_, dialogs, today)),
      kitchen_(new KitchenRoom(*collection_, dialogs, today)),
      intake_(new IntakeRoom(*collection_, dialogs, today)),
      health_(new HealthRoom(*collection_, std::move(dialogs), today)) {
  qApp->installEventFilter(new PlainWords(this));
  setWindowIcon(programIcon());
  addRoom(kTodayNumber, tr("Today"), QStringLiteral("today"), *today_);
  addRoom(kFoodsNumber, tr("Foods"), QStringLiteral("foods"), *foods_);
  addRoom(kAnimalsNumber, tr("Animals"), QStringLiteral("animals"), *animals_);
  addRoom(kDietsNumber, tr("Diets"), QStringLiteral("diets"), *diets_);
  addRoom(kKitchenNumber, tr("Kitchen"), QStringLiteral("kitchen"), *kitchen_);
  addRoom(kIntakeNumber, tr("Intake"), QStringLiteral("intake"), *intake_);
  addRoom(kHealthNumber, tr("Health"), QStringLiteral("health"), *health_);
  wireCollection();
  wireStart();
  wireHelp();
  wireToday();
  build();  // last: Tab goes through the rail, the room and the status line in the order in which they come
            // here
  goToRoom(kTodayNumber);
}

MainWindow::~MainWindow() {
  hide();  // the focus that moves now still finds all of the window
  for (const Place& place : rooms_) place.room->disconnect(this);
}

void MainWindow::build() {
  auto* roomAndStatus = new QVBoxLayout;
  roomAndStatus->setSpacing(0);
  roomAndStatus->addWidget(stage_, 1);
  roomAndStatus->addWidget(status_);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addWidget(rail_);
  layout->addLayout(roomAndStatus, 1);
  resize(1366, 768);
  setAcceptDrops(true);
  status_->setPerson(preferences_.person());
  collection_->setPerson(preferences_.person());
  connect(status_, &StatusLine::personChanged, this, [this](const QString& name) {
    preferences_.setPerson(name);
    collection_->setPerson(name);
  });
  kitchen_->scaleBar().use(preferences_.scale());
  connect(&kitchen_->scaleBar(), &ScaleBar::chosen, this,
          [this](const ScaleSettings& scale) { preferences_.setScale(scale); });
  foods_->desk().setEnergy(preferences_.energy());
  diets_->setEnergy(preferences_.energy());
  connect(status_, &StatusLine::energyChosen, this, [this](EnergyUnit energy) {
    preferences_.setEnergy(energy);
    foods_->desk().setEnergy(energy);
    diets_->setEnergy(energy);
  });
  connect(rail_, &Rail::chosen, this, &MainWindow::goToRoom);
  connect(new QShortcut(QKeySequence(tr("Ctrl+K")), this), &QShortcut::activated, this,
          &MainWindow::openFinder);
  connect(animals_, &AnimalsRoom::dietWanted, this, [this](const QString& group) {
    goToRoom(kDietsNumber);
    diets_->designFor(group);
  });
  connect(finder_, &Finder::chosen, this, [this](Room* room, qint64 id) {
    for (const Place& place : rooms_)
      if (place.room == room) goToRoom(place.number);
    room->goTo(id);
  });
}

void MainWindow::wireCollection() {
  rail_->addFoot(menu_);
  connect(menu_, &CollectionMenu::newWanted, this, [this] { files_.createByDialog(); });
  connect(menu_, &CollectionMenu::openWanted, this, [this] { files_.openByDialog(); });
  connect(menu_, &CollectionMenu::serverWanted, this, &MainWindow::openOnServer);
  menu_->setRecent([this] { return preferences_.recentCollections(); });
  connect(menu_, &CollectionMenu::recentWanted, this,
          [this](const QString& file) { files_.open(toPath(file)); });
  connect(menu_, &CollectionMenu::sampleWanted, this, [this] { files_.openSample(); });
  connect(menu_, &CollectionMenu::restoreWanted, this,
          [this](const QString& backup) { collection_->restore(toPath(backup)); });
  connect(menu_, &CollectionMenu::themeWanted, this, [this](ThemeChoice choice) {
    preferences_.setTheme(choice);
    applyTheme(*qApp, choice);
  });
  menu_->setLanguage(preferences_.language());
  connect(menu_, &CollectionMenu::languageWanted, this,
          [this](const QString& code) { preferences_.setLanguage(code); });
  connect(collection_, &OpenCollection::opened, this, [this] {
    menu_->setCollection(collection_->file() ? collection_->file()->file : std::filesystem::path());
    if (collection_->file()) stage_->start().say({});
    showRoom();
  });
  connect(collection_, &OpenCollection::cutOffChanged, this, &MainWindow::showState);
  connect(collection_, &OpenCollection::refused, this,
          [this](const Refusal& refusal) { stage_->start().say(refusalText(refusal)); });
  // Only what could be read is opened again next time.
  connect(&foods_->desk(), &FoodDesk::listChanged, this, [this] {
    if (collection_->file()) preferences_.setLastCollection(collection_->file()->file);
  });
}

void MainWindow::wireStart() {
  connect(&stage_->start(), &StartPage::sampleWanted, this, [this] { files_.openSample(); });
  connect(&stage_->start(), &StartPage::openWanted, this, [this] { files_.openByDialog(); });
  connect(&stage_->start(), &StartPage::serverWanted, this, &MainWindow::openOnServer);
  connect(&stage_->start(), &StartPage::emptyWanted, this, [this] {
    if (files_.createByDialog()) goToRoom(kFoodsNumber);
  });
  connect(&stage_->start(), &StartPage::importWanted, this, [this] {
    goToRoom(kFoodsNumber);
    foods_->importByDialog();
  });
}

void MainWindow::openOnServer() {
  std::vector<std::filesystem::path> remembered = preferences_.recentCollections();
  std::erase_if(remembered,
                [](const std::filesystem::path& place) { return !store::isServerAddress(place); });
  files_.openOnServerByDialog(remembered);
}

void MainWindow::wireHelp() {
  rail_->addFoot(&help_->menu());
  connect(help_, &Help::roomWanted, this, &MainWindow::goToRoom);
  connect(stage_, &RoomStage::roomWanted, this, &MainWindow::goToRoom);
  connect(help_, &Help::sampleWanted, this, [this] { files_.openSample(); });
  connect(&diets_->shelf(), &DietShelf::changed, this, &MainWindow::showRoom);
  connect(&animals_->desk(), &AnimalDesk::listChanged, this, &MainWindow::showRoom);
}

/// Nothing where the room has something to show, or where that is not known yet.
std::optional<EmptyRoom> MainWindow::hintOf(int room) const {
  const DietShelf& shelf = diets_->shelf();
  if (!shelf.isRead() || animals_->desk().isReading() || foods_->desk().isReading()) return std::nullopt;
  return hintFor(room, {.foods = !foods_->desk().foods().empty(),
                        .animals = !animals_->desk().isEmpty(),
                        .diets = !shelf.diets().empty(),
                        .fedDiets = shelf.hasFedDiet()});
}

void MainWindow::wireToday() {
  const auto showKitchen = [this](KitchenDesk::Task task) {
    return [this, task](const QString& section, int day) {
      goToRoom(kKitchenNumber);
      kitchen_->showSheet(section, intake::dayOfNumber(day), task);
    };
  };
  connect(today_, &TodayRoom::kitchenWanted, this, showKitchen(KitchenDesk::Task::WeighIn));
  connect(today_, &TodayRoom::leftoversWanted, this, showKitchen(KitchenDesk::Task::Leftovers));
  connect(today_, &TodayRoom::pansWanted, this, [this](const QString& section, int day) {
    goToRoom(kKitchenNumber);
    kitchen_->showPans(section, intake::dayOfNumber(day));
  });
  connect(today_, &TodayRoom::observationWanted, this, [this] {
    goToRoom(kHealthNumber);
    health_->writeDown();
  });
  connect(today_, &TodayRoom::dietWanted, this, [this](const QString& name) {
    goToRoom(kDietsNumber);
    const std::vector<FinderHit> hits = diets_->find(name, 1);
    if (!hits.empty()) diets_->goTo(hits.front().id);
  });
}

void MainWindow::addRoom(int number, const QString& name, const QString& iconName, Room& room) {
  rail_->addRoom(number, name, iconName);
  stage_->addRoom(room);
  rooms_.push_back({number, name, &room});
  connect(&room, &Room::stateChanged, this, [this, &room] {
    if (number_ != 0 && &room == &current()) showRoom();
  });
}

Room& MainWindow::current() const {
  return *std::find_if(rooms_.begin(), rooms_.end(), [this](const Place& place) {
            return place.number == number_;
          })->room;
}

void MainWindow::goToRoom(int number) {
  for (const Place& place : rooms_) {
    if (place.number != number) continue;
    number_ = number;
    rail_->setCurrent(number);
    showRoom();
    stage_->currentWidget()->setFocus();
  }
}

void MainWindow::showRoom() {
  Room& room = current();
  const bool isOpen = collection_->file() || room.hasOwnFile();
  if (!isOpen)
    stage_->showStart();
  else if (const auto empty = room.hasOwnFile() ? std::nullopt : hintOf(number_))
    stage_->showHint(*empty);
  else
    stage_->showRoom(room);
  showState();
}

void MainWindow::openFinder() {
  std::vector<Finder::Place> places;
  for (const Place& place : rooms_) places.push_back({place.name, place.room});
  std::stable_partition(places.begin(), places.end(),
                        [this](const Finder::Place& place) { return place.where == &current(); });
  finder_->open(std::move(places));
}

void MainWindow::open(const std::optional<std::filesystem::path>& file) {
  const bool isCollection = file && (file->extension() == ".tarebowl" || store::isServerAddress(*file));
  if (isCollection) {
    files_.open(*file);
  } else if (const auto recent = preferences_.recentCollections(); !recent.empty()) {
    files_.open(recent.front());
  }
  if (file && !isCollection) {
    diets_->openFile(*file);
    goToRoom(kDietsNumber);
  } else {
    const auto seat = preferences_.seat();
    goToRoom(seat ? seat->room : kTodayNumber);
  }
}

bool MainWindow::takeItsPlace() {
  const auto seat = preferences_.seat();
  return seat && restoreGeometry(seat->geometry);
}

void MainWindow::take(const std::filesystem::path& dropped) {
  if (dropped.extension() == ".tarebowl") {
    goToRoom(kFoodsNumber);
    files_.open(dropped);
  } else if (dropped.extension() == ".json") {
    goToRoom(kDietsNumber);
    diets_->openFile(dropped);
  } else {
    goToRoom(kFoodsNumber);
    foods_->importTable(dropped);
  }
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  const QList<QUrl> urls = event->mimeData()->urls();
  if (urls.size() == 1 && urls.front().isLocalFile()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
  const QList<QUrl> urls = event->mimeData()->urls();
  if (urls.size() != 1 || !urls.front().isLocalFile()) return;
  event->acceptProposedAction();
  // A dialog may follow; the program that the file comes from must not wait for it.
  QMetaObject::invokeMethod(
      this, [this, file = toPath(urls.front().toLocalFile())] { take(file); }, Qt::QueuedConnection);
}

void MainWindow::showState() {
  const RoomState state = current().state();
  status_->show(state);
  setWindowTitle(state.file.isEmpty() ? tr("Tarebowl")
                                      : tr("%1 (%2) – Tarebowl").arg(state.title, state.file));
}

bool MainWindow::focusNextPrevChild(bool next) {
  return moveFocus(*this, next);
}

void MainWindow::setVisible(bool visible) {
  if (visible) sheet_.putOn();  // before anything is laid out
  QWidget::setVisible(visible);
}

void MainWindow::closeEvent(QCloseEvent* event) {
  event->setAccepted(
      std::all_of(rooms_.begin(), rooms_.end(), [](const Place& place) { return place.room->mayLeave(); }));
  if (event->isAccepted()) preferences_.setSeat({.geometry = saveGeometry(), .room = number_});
}

}  // namespace tarebowl::ui
