// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/open_collection.h"

#include "core/store/backup.h"
#include "ui/collection/change_command.h"
#include "ui/collection/file_watch.h"
#include "ui/collection/kitchen_station.h"
#include "ui/collection/server_news.h"
#include "ui/shared/days.h"

#include <QDateTime>
#include <QPointer>
#include <QUndoStack>

#include <iterator>
#include <utility>
#include <vector>

namespace tarebowl::ui {
namespace {

/// What verbs wrote, or why the rules do not allow it.
struct Tried {
  std::vector<store::Written> changes{};  ///< empty where it was refused
  Refusal refusal{};
};

/// Empty for an address that cannot be read, which is refused when it is opened.
std::filesystem::path ownStation(const std::filesystem::path& address) {
  try {
    return store::stationFile(store::stationFolder(), address);
  } catch (const store::StoreError&) {
    return {};
  }
}

Tried triedBy(const std::vector<CollectionVerb>& verbs, store::Collection& collection,
              const store::Author& author) {
  try {
    return {.changes = doAll(verbs, collection, author)};
  } catch (const store::StoreError& error) {
    if (error.code() != store::StoreErrorCode::Refused) throw;
    return {.refusal = refusalOf(error)};
  }
}

}  // namespace

OpenCollection::OpenCollection(QObject* parent)
    : QObject(parent), watch_(new FileWatch(this)), today_(&ui::today) {
  connect(this, &OpenCollection::opened, watch_, [this] {
    if (file_ && !store::isServerAddress(file_->file))
      watch_->watch(file_->file);
    else
      watch_->stop();  // a server tells by itself
  });
  connect(watch_, &FileWatch::stirred, this, [this] {
    if (!isIdle()) return watch_->tellAgain();
    lookAround();
  });
}

OpenCollection::~OpenCollection() {
  news_.reset();
  station_.reset();
  clerk_.reset();
}

void OpenCollection::lookAround() {
  if (!file_ || !clerk_) return;
  clerk_->askWhenIdle(
      [writers = std::exchange(writers_, {})](store::Collection& collection) {
        return collection.changesElsewhere(std::vector<int>(writers.begin(), writers.end()));
      },
      [this](const std::optional<store::Touched>& touched) {
        if (!touched) return;
        using enum store::Part;
        if (station_)
          station_->sendLater(touched->any({Foods, Animals, Targets, Diets}) ? store::CopyExtent::All
                                                                             : store::CopyExtent::Kitchen);
        emit outdated(*touched);
      });
}

/// On a connection of its own: that of the clerk is its thread's.
void OpenCollection::listenToServer() {
  news_ = std::make_unique<ServerNews>(file_->file, file_->password);
  connect(news_.get(), &ServerNews::written, this, [this](int writer) {
    writers_.insert(writer);
    watch_->tellAgain();
  });
  connect(news_.get(), &ServerNews::listeningChanged, this, &OpenCollection::hearOfServer);
}

void OpenCollection::hearOfServer() {
  constexpr int kSomebody = 0;  // nobody told of what was written meanwhile, if anything
  if (std::exchange(cutOff_, !news_->isListening())) writers_.insert(kSomebody);
  if (!cutOff_) {
    if (!hasBegun_) begin();  // it could not be opened until now
    if (station_) station_->send(author());
    watch_->tellAgain();
  }
  emit cutOffChanged();
}

bool OpenCollection::isOnCopy() const {
  return isCutOff() && station_ && station_->copy();
}

void OpenCollection::missServer() {
  if (!file_ || !store::isServerAddress(file_->file)) return;
  const bool wasCutOff = std::exchange(cutOff_, true);
  if (wasCutOff && news_) return;
  listenToServer();  // anew: the old one may not have noticed yet
  emit cutOffChanged();
}

/// Where this desk was open before, it can go on from its copy before the server has answered.
void OpenCollection::setUpStation() {
  const std::filesystem::path file = ownStation(file_->file);
  station_ = std::make_unique<KitchenStation>(
      KitchenStation::Place{.address = file_->file, .file = file, .password = file_->password},
      [this] { return today_(); }, author());
  connect(station_.get(), &KitchenStation::changed, this, &OpenCollection::waitingChanged);
  connect(station_.get(), &KitchenStation::refused, this, &OpenCollection::refused);
  connect(station_.get(), &KitchenStation::sent, this,
          [this] { emit outdated(store::Touched(std::set{store::Part::Kitchen})); });
}

store::Author OpenCollection::author() const {
  const auto now = std::chrono::system_clock::to_time_t(clock_() - clockAhead_);
  return {.who = person_.toStdString(),
          .at = QDateTime::fromSecsSinceEpoch(now, Qt::UTC).toString(Qt::ISODate).toStdString()};
}

void OpenCollection::open(CollectionFile what, CollectionOpener opener) {
  emit closing();
  file_ = std::move(what);
  readOnly_ = false;
  cutOff_ = false;
  clockAhead_ = {};
  news_.reset();
  station_.reset();
  hasBegun_ = false;
  writers_.clear();
  if (store::isServerAddress(file_->file)) {
    const std::filesystem::path own = ownStation(file_->file);
    std::error_code ignored;
    if (!own.empty() && std::filesystem::exists(own, ignored)) setUpStation();
  }
  clerk_ = std::make_unique<Clerk>(std::move(opener));
  isReadAnew_ = false;
  connect(clerk_.get(), &Clerk::busyChanged, this, [this] {
    isReadAnew_ = isReadAnew_ && isBusy();
    emit busyChanged();
  });
  connect(clerk_.get(), &Clerk::refused, this, &OpenCollection::take);
  begin();
  emit opened();
}

void OpenCollection::begin() {
  clerk_->ask(
      [clock = clock_](store::Collection& collection) {
        (void)collection.changesElsewhere();  // from here on
        return Access{collection.mayWrite(), store::aheadOfServer(collection, clock)};
      },
      [this](const Access& access) { takeAccess(access); });
}

void OpenCollection::takeAccess(const Access& access) {
  if (!file_ || std::exchange(hasBegun_, true)) return;
  readOnly_ = !access.mayWrite;
  if (std::chrono::abs(access.clockAhead) > store::kClocksAgree) {
    clockAhead_ = access.clockAhead;
    emit clocksDisagreed();
  }
  if (store::isServerAddress(file_->file)) {
    if (access.mayWrite && !station_) setUpStation();
    if (news_)
      emit outdated();  // what rooms asked for while it could not be opened
    else
      listenToServer();
  }
  if (readOnly_) return emit foundReadOnly();
  clerk_->askWhenIdle(
      [file = file_->file, at = author().at](store::Collection& /*collection*/) {
        return store::makeDailyBackup(file, at).has_value();
      },
      [](bool /*made*/) {});
}

void OpenCollection::take(const Refusal& refusal) {
  emit refused(refusal);
  if (refusal.cannotOpen && refusal.isServerAway && station_) return missServer();  // its copy is at hand
  if (refusal.isDamaged && !refusal.cannotOpen) emit closing();
  if (refusal.cannotOpen || refusal.isDamaged) return close();
  if (news_) watch_->tellAgain();  // the clerk's connection may have been lost, and is taken up again
  // What cannot be read now cannot be read again at once: rooms that read anew do so once, not for ever.
  if (isReadAnew_) return;
  isReadAnew_ = true;
  emit outdated();
}

/// Nothing is read of it or written to it any more.
void OpenCollection::close() {
  if (!file_) return;
  file_.reset();
  news_.reset();
  station_.reset();
  emit opened();
}

void OpenCollection::readAhead(const QObject* room, const std::function<void()>& read) {
  if (!file_ || !store::isServerAddress(file_->file)) return;
  askWhenIdle([](store::Collection& /*collection*/) { return true; },
              [room = QPointer<const QObject>(room), read](bool /*isIdle*/) {
                if (room) read();
              });
}

void OpenCollection::perform(QUndoStack& wayBack, const QObject* by, CollectionEdit edit) {
  std::vector<CollectionVerb> verbs{std::move(edit.verb)};
  verbs.insert(verbs.end(), std::move_iterator(edit.further.begin()), std::move_iterator(edit.further.end()));
  ask([verbs = std::move(verbs),
       author = author()](store::Collection& collection) { return triedBy(verbs, collection, author); },
      [this, stack = QPointer(&wayBack), by, what = edit.what, done = edit.done,
       takenBack = edit.takenBack](const Tried& tried) {
        if (tried.changes.empty()) return emit hindered(tried.refusal);
        if (!stack) return;
        stack->push(new ChangeCommand(*this, by, numbersOf(tried.changes), what, takenBack));
        if (done) done(tried.changes.front());
        emit written(by);
      });
}

void OpenCollection::takeImport(QUndoStack& wayBack, const QObject* by, TakenImport import,
                                std::function<void()> takenBack) {
  wayBack.push(new ImportCommand(*this, by, std::move(import), std::move(takenBack)));
  emit written(by);
}

void OpenCollection::restore(const std::filesystem::path& backup) {
  if (!file_) return;
  emit closing();
  ask([file = file_->file, backup,
       author = author()](store::Collection& /*collection*/) { return store::restore(file, backup, author); },
      [this](const std::filesystem::path& /*before*/) {
        emit opened();  // no step of any room's way back leads there
      });
}

}  // namespace tarebowl::ui
