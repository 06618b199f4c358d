// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/server/own_server.h"

#include "tests/source_dir.h"

#include <arpa/inet.h>
#include <fmt/format.h>
#include <netinet/in.h>
#include <sys/socket.h>
#include <unistd.h>

#include <cstdlib>
#include <fstream>

namespace tarebowl::store {

namespace fs = std::filesystem;

namespace {

/// A port that nobody uses at this moment.
int freePort() {
  const int socket = ::socket(AF_INET, SOCK_STREAM, 0);
  sockaddr_in here{};
  here.sin_family = AF_INET;
  here.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
  socklen_t size = sizeof here;
  (void)::bind(socket, reinterpret_cast<sockaddr*>(&here), size);
  (void)::getsockname(socket, reinterpret_cast<sockaddr*>(&here), &size);
  ::close(socket);
  return ntohs(here.sin_port);
}

bool testServer(const std::string& settings, const char* verb, const fs::path& note) {
  const std::string command = fmt::format("{} '{}/tests/core/store/test_server' {} '{}' >'{}.log' 2>&1",
                                          settings, TAREBOWL_SOURCE_DIR, verb, note.string(), note.string());
  return std::system(command.c_str()) == 0;
}

}  // namespace

OwnServer::OwnServer(const fs::path& folder, const Peculiar& peculiar) : note_(folder / "server") {
  std::string settings;
  if (!peculiar.certificate.empty()) {
    port_ = freePort();
    settings += fmt::format("TEST_SERVER_PORT={} TEST_SERVER_CERTIFICATE='{}' ", port_,
                            peculiar.certificate.string());
  }
  if (!peculiar.smallDisk.empty()) settings += fmt::format("TEST_SERVER_SMALL_DISK={} ", peculiar.smallDisk);
  runs_ = testServer(settings, "start", note_);
}

OwnServer::~OwnServer() {
  (void)testServer("", "stop", note_);
}

void OwnServer::dieAndComeBack() {
  runs_ = testServer("", "revive", note_);
}

fs::path OwnServer::address() const {
  std::ifstream file(note_);
  std::string address;
  std::getline(file, address);
  return address;
}

fs::path OwnServer::address(const std::string& database) const {
  std::string text = address().string();
  const std::string any = "owner@/postgres";
  return text.replace(text.find(any), any.size(), "owner@/" + database);
}

fs::path OwnServer::overTls(const std::string& host, const std::string& further) const {
  return fmt::format("postgresql://owner@{}:{}/postgres?hostaddr=127.0.0.1{}", host, port_, further);
}

}  // namespace tarebowl::store
