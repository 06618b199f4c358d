// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/server_watch.h"

#include "core/store/store_error.h"

#include <fcntl.h>
#include <libpq-fe.h>
#include <poll.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <optional>
#include <string>
#include <thread>
#include <utility>

namespace tarebowl::store {

namespace {

using std::chrono::milliseconds;

using Link = std::unique_ptr<PGconn, decltype(&PQfinish)>;

constexpr milliseconds kFirstRest{500};
constexpr milliseconds kLongestRest{60'000};
constexpr milliseconds kPatience{10'000};  // until the server has let the watch in
constexpr milliseconds kForEver{-1};

void stayQuiet(void* /*unused*/, const char* /*notice*/) {}

/// Wakes a thread that sleeps in poll().
class Bell {
 public:
  Bell() { (void)::pipe2(ends_.data(), O_CLOEXEC | O_NONBLOCK); }
  ~Bell() {
    for (const int end : ends_) ::close(end);
  }
  Bell(const Bell&) = delete;
  Bell& operator=(const Bell&) = delete;
  void ring() const { (void)!::write(ends_[1], "!", 1); }
  [[nodiscard]] int heardAt() const { return ends_[0]; }

 private:
  std::array<int, 2> ends_{-1, -1};
};

}  // namespace

class ServerWatch::Inner {
 public:
  Inner(std::filesystem::path address, PasswordAsker password, Tell tell)
      : address_(std::move(address)),
        password_(std::move(password)),
        tell_(std::move(tell)),
        thread_([this] { work(); }) {}
  ~Inner() {
    bell_.ring();
    thread_.join();
  }
  Inner(const Inner&) = delete;
  Inner& operator=(const Inner&) = delete;

 private:
  enum class Slept { Woken, TimeOver, Ended };

  /// Until the socket (none: -1) is ready, the time is over, or the watch ends.
  [[nodiscard]] Slept sleep(int socket, short until, milliseconds most) {
    std::array<pollfd, 2> on{{{bell_.heardAt(), POLLIN, 0}, {socket, until, 0}}};
    const int ready = ::poll(on.data(), on.size(), static_cast<int>(most.count()));
    if (on[0].revents != 0) return Slept::Ended;
    return ready == 0 ? Slept::TimeOver : Slept::Woken;
  }

  void work() {
    milliseconds rest = kFirstRest;
    bool isTold = false;
    for (;;) {
      if (Link link = connected(); link) {
        rest = kFirstRest;
        isTold = false;
        tell_(News::Listening, 0);
        if (!listen(*link)) return;
      } else if (hasEnded()) {
        return;
      }
      if (!std::exchange(isTold, true)) tell_(News::Lost, 0);
      if (sleep(-1, 0, rest) == Slept::Ended) return;
      rest = std::min(rest * 2, kLongestRest);
    }
  }

  [[nodiscard]] bool hasEnded() { return sleep(-1, 0, milliseconds(0)) == Slept::Ended; }

  /// A link that listens; nothing where none came about.
  [[nodiscard]] Link connected() {
    Link link = begun(std::nullopt);
    if (link && PQconnectionNeedsPassword(link.get()) != 0 && password_)
      if (const auto password = password_(address_)) link = begun(password);
    if (!link || PQstatus(link.get()) != CONNECTION_OK || !hasAsked(*link)) return {nullptr, &PQfinish};
    return link;
  }

  [[nodiscard]] Link begun(const std::optional<std::string>& password) {
    Link link(nullptr, &PQfinish);
    try {
      link.reset(PQconnectStart(connectionWords(address_, password).c_str()));
    } catch (const StoreError&) {
      return link;
    }
    if (!link) return link;
    PQsetNoticeProcessor(link.get(), &stayQuiet, nullptr);
    PostgresPollingStatusType next = PGRES_POLLING_WRITING;
    while (PQstatus(link.get()) != CONNECTION_BAD && next != PGRES_POLLING_OK &&
           next != PGRES_POLLING_FAILED) {
      const short until = next == PGRES_POLLING_READING ? POLLIN : POLLOUT;
      if (sleep(PQsocket(link.get()), until, kPatience) != Slept::Woken) return {nullptr, &PQfinish};
      next = PQconnectPoll(link.get());
    }
    return link;
  }

  [[nodiscard]] bool hasAsked(PGconn& link) {
    if (PQsendQuery(&link, "LISTEN tarebowl_written") == 0) return false;
    while (PQisBusy(&link) != 0) {
      if (sleep(PQsocket(&link), POLLIN, kPatience) != Slept::Woken) return false;
      if (PQconsumeInput(&link) == 0) return false;
    }
    bool isDone = true;
    while (PGresult* result = PQgetResult(&link)) {
      isDone = isDone && PQresultStatus(result) == PGRES_COMMAND_OK;
      PQclear(result);
    }
    return isDone;
  }

  /// True once the link is lost, false once the watch ends.
  [[nodiscard]] bool listen(PGconn& link) {
    for (;;) {
      while (const std::unique_ptr<PGnotify, decltype(&PQfreemem)> note{PQnotifies(&link), &PQfreemem})
        tell_(News::Written, note->be_pid);
      if (sleep(PQsocket(&link), POLLIN, kForEver) == Slept::Ended) return false;
      if (PQconsumeInput(&link) == 0 || PQstatus(&link) != CONNECTION_OK) return true;
    }
  }

  std::filesystem::path address_;
  PasswordAsker password_;
  Tell tell_;
  Bell bell_;
  std::thread thread_;  // last: it uses all of the above
};

ServerWatch::ServerWatch(std::filesystem::path address, PasswordAsker password, Tell tell)
    : inner_(std::make_unique<Inner>(std::move(address), std::move(password), std::move(tell))) {}

ServerWatch::~ServerWatch() = default;

}  // namespace tarebowl::store
