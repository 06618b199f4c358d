// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/collection/asking_server.h"

#include <arpa/inet.h>
#include <netinet/in.h>
#include <sys/socket.h>
#include <unistd.h>

#include <array>
#include <cstdint>
#include <cstring>
#include <string>
#include <string_view>
#include <vector>

namespace tarebowl::ui {
namespace {

using namespace std::string_view_literals;

// From PostgreSQL's description of its protocol ("Message Formats").
constexpr std::uint32_t kAsksForTls = 80877103;
constexpr std::uint32_t kAsksForGss = 80877104;
constexpr std::string_view kPasswordPlease = "R\0\0\0\x08\0\0\0\x03"sv;
constexpr std::string_view kNotThatOne = "SFATAL\0C28P01\0Mnot that password\0\0"sv;

std::uint32_t numberAt(const char* bytes) {
  std::uint32_t number = 0;
  std::memcpy(&number, bytes, sizeof number);
  return ntohl(number);
}

bool read(int from, std::vector<char>& bytes) {
  return ::recv(from, bytes.data(), bytes.size(), MSG_WAITALL) == static_cast<ssize_t>(bytes.size());
}

/// A message: what kind it is, and then how long.
bool readWhole(int from) {
  std::vector<char> head(5);
  if (!read(from, head)) return false;
  std::vector<char> rest(numberAt(head.data() + 1) - 4);
  return read(from, rest);
}

void send(int to, std::string_view bytes) {
  (void)::send(to, bytes.data(), bytes.size(), MSG_NOSIGNAL);
}

/// What somebody begins with; false where they have gone.
bool letBegin(int with) {
  for (;;) {
    std::vector<char> head(8);
    if (!read(with, head)) return false;
    const std::uint32_t wanted = numberAt(head.data() + 4);
    if (wanted != kAsksForTls && wanted != kAsksForGss) {
      std::vector<char> rest(numberAt(head.data()) - head.size());
      return read(with, rest);
    }
    send(with, "N");
  }
}

void talk(int with) {
  if (letBegin(with)) {
    send(with, kPasswordPlease);
    if (readWhole(with)) {
      const std::uint32_t length = htonl(static_cast<std::uint32_t>(kNotThatOne.size() + 4));
      std::array<char, sizeof length> written{};
      std::memcpy(written.data(), &length, sizeof length);
      send(with, "E");
      send(with, {written.data(), written.size()});
      send(with, kNotThatOne);
    }
  }
  ::close(with);
}

}  // namespace

AskingServer::AskingServer() : listening_(::socket(AF_INET, SOCK_STREAM, 0)) {
  sockaddr_in here{};
  here.sin_family = AF_INET;
  here.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
  socklen_t size = sizeof here;
  (void)::bind(listening_, reinterpret_cast<sockaddr*>(&here), size);
  (void)::getsockname(listening_, reinterpret_cast<sockaddr*>(&here), &size);
  (void)::listen(listening_, 8);
  port_ = ntohs(here.sin_port);
  thread_ = std::thread([listening = listening_] {
    for (;;) {
      const int with = ::accept(listening, nullptr, nullptr);
      if (with < 0) return;
      talk(with);
    }
  });
}

AskingServer::~AskingServer() {
  ::shutdown(listening_, SHUT_RDWR);
  thread_.join();
  ::close(listening_);
}

std::filesystem::path AskingServer::address() const {
  return "postgresql://ann@127.0.0.1:" + std::to_string(port_) + "/zoo";
}

}  // namespace tarebowl::ui
