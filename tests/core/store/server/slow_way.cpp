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
#include <system_error>
#include <utility>

namespace tarebowl::store {

namespace fs = std::filesystem;

namespace {

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

}  // namespace

SlowWay::SlowWay(const fs::path& server, std::chrono::milliseconds latency)
    : folder_(ownFolder()),
      server_(fs::path(folderIn(server.string())) / kSocket),
      latency_(latency),
      listening_(::socket(AF_UNIX, SOCK_STREAM, 0)) {
  const std::string own = std::regex_replace(folder_.string(), std::regex("/"), "%2F");
  address_ = std::regex_replace(server.string(), std::regex("host=[^&]*"), "host=" + own);
  const sockaddr_un place = placeOf(folder_ / kSocket);
  (void)::bind(listening_, asAny(place), sizeof place);
  (void)::listen(listening_, 8);
  accepting_ = std::thread([this] { accept(); });
}

SlowWay::~SlowWay() {
  ::shutdown(listening_, SHUT_RDWR);
  accepting_.join();
  for (const int end : open_) ::shutdown(end, SHUT_RDWR);
  for (std::thread& carrier : carriers_) carrier.join();
  for (const int end : open_) ::close(end);
  ::close(listening_);
  std::error_code ignored;
  fs::remove_all(folder_, ignored);
}

void SlowWay::accept() {
  for (;;) {
    const int near = ::accept(listening_, nullptr, nullptr);
    if (near < 0) return;
    const int far = ::socket(AF_UNIX, SOCK_STREAM, 0);
    const sockaddr_un place = placeOf(server_);
    (void)::connect(far, asAny(place), sizeof place);
    const std::lock_guard lock(mutex_);
    open_.insert(open_.end(), {near, far});
    carriers_.emplace_back([this, near, far] { carry(near, far); });
  }
}

/// Whoever asks again after an answer arrived has waited for it.
void SlowWay::carry(int near, int far) {
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
      if (std::exchange(hasAnswered, false)) ++trips_;
    }
    if (ends[1].revents != 0) {
      auto answered = receive(far);
      if (answered.empty()) break;
      late.push_back({Clock::now() + latency_, std::move(answered)});
    }
    for (; !late.empty() && late.front().due <= Clock::now(); late.pop_front()) {
      if (!sendAll(near, late.front().bytes)) return;
      hasAnswered = true;
    }
  }
  ::shutdown(near, SHUT_RDWR);
  ::shutdown(far, SHUT_RDWR);
}

}  // namespace tarebowl::store
