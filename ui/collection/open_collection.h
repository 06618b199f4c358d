// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/server_address.h"
#include "core/store/server_clock.h"
#include "core/store/touched.h"
#include "core/store/verbs.h"
#include "ui/collection/clerk.h"
#include "ui/collection/kitchen_station.h"

#include <QObject>
#include <QString>

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <set>
#include <utility>
#include <vector>

class QUndoStack;

namespace tarebowl::ui {

class FileWatch;
class ServerNews;

/// A collection by its name, and whether it is the invented sample.
struct CollectionFile {
  QString name{};  ///< "brackenmere"
  std::filesystem::path file{};
  bool invented = false;
  store::PasswordAsker password{};  ///< for who opens it once more on another thread
};

/// Something that writes, done on the clerk's thread.
using CollectionVerb = std::function<store::Written(store::Collection&, const store::Author&)>;

/// A change that a room wants made and can take back.
struct CollectionEdit {
  CollectionVerb verb{};
  /// What else belongs to it, each done after the one before: all of it is written and taken back, or none.
  std::vector<CollectionVerb> further{};
  QString what{};                                     ///< "change Kale", for the undo button
  std::function<void(const store::Written&)> done{};  ///< with what `verb` wrote
  std::function<void()> takenBack{};                  ///< after each undo and redo
};

/// Imports a table again that was imported and taken back, on the clerk's thread: its entry in the change
/// log. Throws where the table is another by now.
using ImportAgain = std::function<std::int64_t(store::Collection&, const store::Author&)>;

/// A table that was imported on another thread.
struct TakenImport {
  std::int64_t change = 0;  ///< its entry in the change log
  QString what{};           ///< "import greens.csv", for the undo button
  ImportAgain again{};
};

/// The collection that the window has open, for all of its rooms: the clerk that reads and writes it and who
/// is at the keyboard. Nothing here waits for the disk.
class OpenCollection : public QObject {
  Q_OBJECT
 public:
  explicit OpenCollection(QObject* parent = nullptr);
  ~OpenCollection() override;

  void open(CollectionFile what, CollectionOpener opener);
  [[nodiscard]] const std::optional<CollectionFile>& file() const { return file_; }
  /// As connecting to opened(); at once, too, where one is open: a room may be built after that.
  template <class Slot>
  void whenOpened(QObject* context, Slot slot) {
    connect(this, &OpenCollection::opened, context, slot);
    if (file_) slot();
  }
  template <class Slot>
  void whenReadOnly(QObject* context, Slot slot) {
    connect(this, &OpenCollection::foundReadOnly, context, slot);
    if (isReadOnly()) slot();
  }
  /// The file or its folder cannot be written: it is shown, and every edit is refused.
  [[nodiscard]] bool isReadOnly() const { return file_ && readOnly_; }
  /// It lies on a server, which does not answer any more: what is shown may be old. It is asked again.
  [[nodiscard]] bool isCutOff() const { return file_ && cutOff_; }
  /// This desk's own copy of a collection on a server; nothing of a file.
  [[nodiscard]] KitchenStation* station() const { return station_.get(); }
  /// It is cut off, and the kitchen goes on from the desk's copy.
  [[nodiscard]] bool isOnCopy() const;
  /// Around which day the copy is taken.
  void setToday(std::function<quantity::Date()> today) { today_ = std::move(today); }
  /// Somebody found out that the server does not answer.
  void missServer();
  /// How far this machine's clock is ahead of the server's, where that is more than clocks drift; else 0.
  [[nodiscard]] std::chrono::seconds clockAhead() const { return clockAhead_; }
  /// What this machine takes for now.
  void setClock(std::function<store::Instant()> clock) { clock_ = std::move(clock); }
  void setPerson(const QString& name) { person_ = name; }
  /// Who does something now, for the log; on a server by the server's clock, which all desks share.
  [[nodiscard]] store::Author author() const;

  [[nodiscard]] bool isBusy() const { return clerk_ && clerk_->isBusy(); }
  [[nodiscard]] bool isIdle() const { return !clerk_ || clerk_->isIdle(); }

  /// As Clerk::ask, while a collection is open.
  template <class Job, class Then>
  void ask(Job job, Then then) {
    if (clerk_) clerk_->ask(std::move(job), std::move(then));
  }
  template <class Job, class Then>
  void askWhenIdle(Job job, Then then) {
    if (clerk_) clerk_->askWhenIdle(std::move(job), std::move(then));
  }
  /// Far away: what a room will show is read before somebody looks, once nothing else is asked. Of a file it
  /// is there at once.
  void readAhead(const QObject* room, const std::function<void()>& read);
  /// As ask, of what the kitchen reads: while the server is away, of the desk's own copy.
  template <class Job, class Then>
  void askForKitchen(Job job, Then then) {
    if (isOnCopy())
      station_->ask(std::move(job), std::move(then));
    else
      ask(std::move(job), std::move(then));
  }
  /// Makes the change and puts the way back on the room's stack. `by` is passed on with written().
  void perform(QUndoStack& wayBack, const QObject* by, CollectionEdit edit);

  /// Puts the way back of a table that was imported on another thread on the room's stack.
  void takeImport(QUndoStack& wayBack, const QObject* by, TakenImport import,
                  std::function<void()> takenBack);

  /// Puts a backup in the place of the collection, after backing up what is there.
  void restore(const std::filesystem::path& backup);

 signals:
  /// What waits for a hand to rest is written now: another collection comes.
  void closing();
  /// Another collection, or none: what was read of the one before no longer holds.
  void opened();
  /// It turned out that it is open for reading only.
  void foundReadOnly();
  /// The server does not answer any more, or answers again.
  void cutOffChanged();
  /// This machine's clock and the server's disagree.
  void clocksDisagreed();
  /// What waits for the server, or the desk's copy, is another.
  void waitingChanged();
  /// A room of this window wrote.
  void written(const QObject* by);
  /// Somebody else wrote, or something was refused: what rooms have read of these parts may be old.
  void outdated(const tarebowl::store::Touched& what = {});
  void refused(const tarebowl::ui::Refusal& refusal);
  /// The collection's rules do not allow what a room wanted: nothing was written, what rooms have read holds.
  void hindered(const tarebowl::ui::Refusal& refusal);
  void busyChanged();

 private:
  void take(const Refusal& refusal);
  void close();
  void begin();
  struct Access {
    bool mayWrite = false;
    std::chrono::seconds clockAhead{0};
  };
  void takeAccess(const Access& access);
  void setUpStation();
  void lookAround();
  void listenToServer();
  void hearOfServer();

  std::optional<CollectionFile> file_;
  bool readOnly_ = false;
  bool isReadAnew_ = false;  ///< rooms read again what a refusal may have made old
  bool cutOff_ = false;
  std::function<store::Instant()> clock_{&std::chrono::system_clock::now};
  std::chrono::seconds clockAhead_{0};
  QString person_;
  FileWatch* watch_;
  std::function<quantity::Date()> today_;
  std::unique_ptr<Clerk> clerk_;
  std::unique_ptr<ServerNews> news_;         ///< of a collection on a server
  std::unique_ptr<KitchenStation> station_;  ///< likewise
  bool hasBegun_ = false;                    ///< it was opened, and it is known whether it may be written
  std::set<int> writers_;                    ///< of whom the server told since the clerk looked
};

}  // namespace tarebowl::ui
