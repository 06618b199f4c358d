// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/server/slow_way.h"

#include <poll.h>
#include <sys/socket.h>
#include <sys/un.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cstdlib>
#include <cstring>
#include <deque>
#include <regex>
#include <string_view>
#include <system_error>
#include <utility>

namespace tarebowl::store {

namespace fs = std::filesystem;

namespace {

using namespace std::chrono_literals;
using Clock = std::chrono::steady_clock;
constexpr const char* kSocket = ".s.PGSQL.5432";

sockaddr_un placeOf(const fs::path& socket) {
  sockaddr_un place{};
  place.sun_family = AF_UNIX;
  socket.string().copy(place.sun_path, sizeof place.sun_path - 1);
  return place;
}

const sockaddr* asAny(const sockaddr_un& place) {
  return reinterpret_cast<const sockaddr*>(&place);
}

/// Where "host=" of the address says, with its slashes.
std::string folderIn(const std::string& address) {
  std::smatch found;
  std::regex_search(address, found, std::regex("host=([^&]*)"));
  return std::regex_replace(found[1].str(), std::regex("%2F"), "/");
}

fs::path ownFolder() {
  std::string name = (fs::temp_directory_path() / "tarebowl-way.XXXXXX").string();
  return ::mkdtemp(name.data()) != nullptr ? fs::path(name) : fs::path();
}

struct Late {
  Clock::time_point due;
  std::vector<char> bytes;
};

bool sendAll(int to, const std::vector<char>& bytes) {
  for (std::size_t sent = 0; sent < bytes.size();) {
    const ssize_t count = ::send(to, bytes.data() + sent, bytes.size() - sent, MSG_NOSIGNAL);
    if (count <= 0) return false;
    sent += static_cast<std::size_t>(count);
  }
  return true;
}

/// Nothing: they have gone.
std::vector<char> receive(int from) {
  std::vector<char> bytes(65536);
  const ssize_t count = ::recv(from, bytes.data(), bytes.size(), 0);
  bytes.resize(count > 0 ? static_cast<std::size_t>(count) : 0);
  return bytes;
}

/// A COMMIT alone, as a simple query (https://www.postgresql.org/docs/current/protocol-message-formats.html).
bool isCommit(const std::vector<char>& asked) {
  constexpr std::string_view kCommit(
      "Q\0\0\0\x0b"
      "COMMIT\0",
      12);
  return std::string_view(asked.data(), asked.size()) == kCommit;
}

}  // namespace

SlowWay::SlowWay(const fs::path& server, std::chrono::milliseconds latency)
    : folder_(ownFolder()),
      server_(fs::path(folderIn(server.string())) / kSocket),
      latency_(latency),
      listening_(::socket(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0)) {
  const std::string own = std::regex_replace(folder_.string(), std::regex("/"), "%2F");
  address_ = std::regex_replace(server.string(), std::regex("host=[^&]*"), "host=" + own);
  const sockaddr_un place = placeOf(folder_ / kSocket);
  (void)::bind(listening_, asAny(place), sizeof place);
  (void)::listen(listening_, 128);
  accepting_ = std::thread([this] { accept(); });
}

SlowWay::~SlowWay() {
  ::shutdown(listening_, SHUT_RDWR);
  accepting_.join();
  breakOff();
  carriers_.clear();  // which waits for them
  ::close(listening_);
  std::error_code ignored;
  fs::remove_all(folder_, ignored);
}

void SlowWay::breakOff() {
  broken_ = true;
  const std::lock_guard lock(mutex_);
  for (const int end : open_) ::shutdown(end, SHUT_RDWR);
}

void SlowWay::accept() {
  for (;;) {
    const int near = ::accept4(listening_, nullptr, nullptr, SOCK_CLOEXEC);
    if (near < 0) return;
    if (broken_) {
      ::close(near);
      continue;
    }
    const int far = ::socket(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0);
    const sockaddr_un place = placeOf(server_);
    (void)::connect(far, asAny(place), sizeof place);
    const std::lock_guard lock(mutex_);
    open_.insert(open_.end(), {near, far});
    std::erase_if(carriers_, [](const auto& one) { return one.wait_for(0s) == std::future_status::ready; });
    carriers_.push_back(std::async(std::launch::async, [this, near, far, isCounted = countsNew_.load()] {
      carry(near, far, isCounted);
    }));
  }
}

/// Whoever asks again after an answer arrived has waited for it.
void SlowWay::carry(int near, int far, bool isCounted) {
  std::deque<Late> late;
  bool hasAnswered = true;
  for (;;) {
    std::array<pollfd, 2> ends{{{near, POLLIN, 0}, {far, POLLIN, 0}}};
    const auto wait =
        late.empty()
            ? std::chrono::milliseconds(-1)
            : std::max(std::chrono::milliseconds(0),
                       std::chrono::ceil<std::chrono::milliseconds>(late.front().due - Clock::now()));
    ::poll(ends.data(), ends.size(), static_cast<int>(wait.count()));
    if (ends[0].revents != 0) {
      const auto asked = receive(near);
      if (asked.empty() || !sendAll(far, asked)) break;
      if (!isCommit(asked) && std::exchange(hasAnswered, false) && isCounted) ++trips_;
    }
    if (ends[1].revents != 0) {
      auto answered = receive(far);
      if (answered.empty()) break;
      late.push_back({Clock::now() + latency_, std::move(answered)});
    }
    for (; !late.empty() && late.front().due <= Clock::now(); late.pop_front()) {
      if (!sendAll(near, late.front().bytes)) return closeBoth(near, far);
      hasAnswered = true;
    }
  }
  closeBoth(near, far);
}

void SlowWay::closeBoth(int near, int far) {
  const std::lock_guard lock(mutex_);
  std::erase_if(open_, [=](int end) { return end == near || end == far; });
  ::close(near);
  ::close(far);
}

}  // namespace tarebowl::store
