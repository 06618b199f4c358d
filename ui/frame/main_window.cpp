// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/main_window.h"

#include "core/store/server_address.h"
#include "ui/animals/animals_room.h"
#include "ui/collection/conflict_text.h"
#include "ui/collection/start_page.h"
#include "ui/collection/waiting_bar.h"
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
#include "ui/frame/rooms.h"
#include "ui/frame/status_line.h"
#include "ui/health/health_room.h"
#include "ui/intake/intake_room.h"
#include "ui/kitchen/kitchen_room.h"
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
namespace {

/// What was read last is on the screen by then.
constexpr int kPaintedMs = 20;

}  // namespace

MainWindow::MainWindow(LiveSolver::Function solve, Dialogs dialogs, Preferences preferences, Clock today,
                       QWidget* parent)
    : QWidget(parent),
      preferences_(std::move(preferences)),
      collection_(new OpenCollection(this)),
      files_(*collection_, dialogs, this),
      damage_(*collection_, dialogs, this),
      rooms_(std::make_unique<Rooms>(RoomParts{.collection = *collection_,
                                               .files = files_,
                                               .preferences = preferences_,
                                               .solve = std::move(solve),
                                               .dialogs = std::move(dialogs),
                                               .today = std::move(today)})),
      number_(kTodayNumber) {
  qApp->installEventFilter(new PlainWords(this));
  setWindowIcon(programIcon());
  resize(1366, 768);
  setAcceptDrops(true);
  collection_->setPerson(preferences_.person());
}

MainWindow::~MainWindow() {
  hide();  // the focus that moves now still finds all of the window
  rooms_->disconnect(this);
  rooms_.reset();
}

AnimalsRoom& MainWindow::animals() const {
  return rooms_->animals();
}
FoodsRoom& MainWindow::foods() const {
  return rooms_->foods();
}
DietsRoom& MainWindow::diets() const {
  return rooms_->diets();
}
KitchenRoom& MainWindow::kitchen() const {
  return rooms_->kitchen();
}
IntakeRoom& MainWindow::intake() const {
  return rooms_->intake();
}
HealthRoom& MainWindow::health() const {
  return rooms_->health();
}
TodayRoom& MainWindow::today() const {
  return rooms_->today();
}

Finder& MainWindow::finder() {
  build();
  return *finder_;
}
Help& MainWindow::help() {
  build();
  return *help_;
}

void MainWindow::build() {
  if (rail_ != nullptr) return;
  rail_ = new Rail;
  stage_ = new RoomStage;
  status_ = new StatusLine;
  finder_ = new Finder(this);
  menu_ = new CollectionMenu;
  help_ = new Help(*this);
  layOut();
  wireRooms();
  wireMenu();
  wireHelp();
  wireStatus();
  wireCollection();
  rail_->setCurrent(number_);
}

void MainWindow::layOut() {
  column_ = new QVBoxLayout;
  column_->setSpacing(0);
  column_->addWidget(stage_, 1);
  column_->addWidget(status_);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addWidget(rail_);
  layout->addLayout(column_, 1);
}

void MainWindow::wireStatus() {
  status_->setPerson(preferences_.person());
  connect(status_, &StatusLine::personChanged, this, [this](const QString& name) {
    preferences_.setPerson(name);
    collection_->setPerson(name);
  });
  connect(status_, &StatusLine::energyChosen, rooms_.get(), &Rooms::setEnergy);
}

void MainWindow::wireRooms() {
  connect(stage_, &RoomStage::roomWanted, this, &MainWindow::goToRoom);
  connect(stage_, &RoomStage::startBuilt, this, [this](const StartPage* start) { wireStart(*start); });
  for (const RoomPlace& place : rooms_->places()) rail_->addRoom(place.number, place.name, place.iconName);
  connect(rail_, &Rail::chosen, this, &MainWindow::goToRoom);
  for (Room* room : rooms_->allBuilt()) stage_->addRoom(*room);
  connect(rooms_.get(), &Rooms::built, stage_,
          [this](int /*number*/, Room* room) { stage_->addRoom(*room); });
  connect(new QShortcut(QKeySequence(tr("Ctrl+K")), this), &QShortcut::activated, this,
          &MainWindow::openFinder);
  connect(finder_, &Finder::chosen, this, [this](Room* room, qint64 id) {
    for (const RoomPlace& place : rooms_->places())
      if (&rooms_->at(place.number) == room) goToRoom(place.number);
    room->goTo(id);
  });
  connect(rooms_.get(), &Rooms::stateChanged, this, [this](int number) {
    if (number == number_) showRoom();
  });
  connect(rooms_.get(), &Rooms::contentsChanged, this, &MainWindow::showRoom);
  connect(rooms_.get(), &Rooms::roomWanted, this, &MainWindow::goToRoom);
  rest_.setSingleShot(true);
  rest_.setInterval(kPaintedMs);
  connect(&rest_, &QTimer::timeout, this, &MainWindow::buildRest);
  connect(collection_, &OpenCollection::busyChanged, &rest_, qOverload<>(&QTimer::start));
}

/// One at a time, so that a hand never waits for more than that, and after what the room in sight reads.
void MainWindow::buildRest() {
  if (!isVisible() || collection_->isBusy()) return;
  if (rooms_->buildNext())
    rest_.start();
  else
    collection_->disconnect(&rest_);
}

void MainWindow::wireMenu() {
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
}

void MainWindow::wireCollection() {
  collection_->whenOpened(this, [this] {
    menu_->setCollection(collection_->file() ? collection_->file()->file : std::filesystem::path());
    if (collection_->file()) stage_->say({});
    if (collection_->file() && store::isServerAddress(collection_->file()->file)) tellWhatWaits();
    showRoom();
  });
  connect(collection_, &OpenCollection::cutOffChanged, this, &MainWindow::showState);
  connect(collection_, &OpenCollection::waitingChanged, this, &MainWindow::showState);
  connect(collection_, &OpenCollection::refused, this,
          [this](const Refusal& refusal) { stage_->say(refusalText(refusal)); });
}

void MainWindow::wireStart(const StartPage& start) {
  connect(&start, &StartPage::sampleWanted, this, [this] { files_.openSample(); });
  connect(&start, &StartPage::openWanted, this, [this] { files_.openByDialog(); });
  connect(&start, &StartPage::serverWanted, this, &MainWindow::openOnServer);
  connect(&start, &StartPage::emptyWanted, this, [this] {
    if (files_.createByDialog()) goToRoom(kFoodsNumber);
  });
  connect(&start, &StartPage::importWanted, this, [this] {
    goToRoom(kFoodsNumber);
    foods().importByDialog();
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
  connect(help_, &Help::sampleWanted, this, [this] { files_.openSample(); });
}

/// A file has nothing that waits for it.
void MainWindow::tellWhatWaits() {
  if (waiting_ != nullptr) return;
  waiting_ = new WaitingBar(*collection_);
  column_->insertWidget(column_->indexOf(status_), waiting_);
}

Room& MainWindow::current() {
  return rooms_->at(number_);
}

void MainWindow::goToRoom(int number) {
  if (!rooms_->has(number)) return;
  build();
  number_ = number;
  rail_->setCurrent(number);
  showRoom();
  stage_->currentWidget()->setFocus();
}

void MainWindow::showRoom() {
  isInRoom_ = true;
  Room& room = current();
  const bool isOpen = collection_->file() || room.hasOwnFile();
  if (!isOpen)
    stage_->showStart();
  else if (const auto empty = room.hasOwnFile() ? std::nullopt : rooms_->hintOf(number_))
    stage_->showHint(*empty);
  else
    stage_->showRoom(room);
  showState();
}

void MainWindow::openFinder() {
  std::vector<Finder::Place> places;
  for (const RoomPlace& place : rooms_->places()) places.push_back({place.name, &rooms_->at(place.number)});
  std::stable_partition(places.begin(), places.end(),
                        [this](const Finder::Place& place) { return place.where == &current(); });
  finder_->open(std::move(places));
}

void MainWindow::open(const std::optional<std::filesystem::path>& file) {
  const bool isCollection = file && (file->extension() == ".tarebowl" || store::isServerAddress(*file));
  const bool isProblem = file && !isCollection;
  const auto seat = preferences_.seat();
  // Before anything is opened: the room that is shown then is the one that is wanted, and no other is built.
  number_ = isProblem ? kDietsNumber : (seat && rooms_->has(seat->room) ? seat->room : kTodayNumber);
  if (isCollection) {
    files_.open(*file);
  } else if (const auto recent = preferences_.recentCollections(); !recent.empty()) {
    files_.open(recent.front());
  }
  if (isProblem)
    diets().openFile(*file);
  else if (collection_->file())
    (void)current();  // what it shows is read while the window around it is built
  goToRoom(number_);
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
    diets().openFile(dropped);
  } else {
    goToRoom(kFoodsNumber);
    foods().importTable(dropped);
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
  return moveFocus(*this, {rail_, stage_, waiting_, status_}, next);
}

void MainWindow::setVisible(bool visible) {
  if (visible && !isInRoom_) goToRoom(number_);
  if (visible) sheet_.putOn();  // before anything is laid out
  QWidget::setVisible(visible);
  if (visible) rest_.start();
}

bool MainWindow::isWhole() const {
  return rooms_->areAllBuilt();
}

void MainWindow::closeEvent(QCloseEvent* event) {
  event->setAccepted(rooms_->mayLeave());
  if (event->isAccepted()) preferences_.setSeat({.geometry = saveGeometry(), .room = number_});
}

}  // namespace tarebowl::ui
