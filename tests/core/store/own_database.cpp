// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/own_database.h"

#include <fmt/format.h>
#include <libpq-fe.h>

#include <cstdlib>
#include <fstream>
#include <functional>
#include <memory>
#include <stdexcept>

namespace tarebowl::store {

namespace {

namespace fs = std::filesystem;

constexpr const char* kOwnerAndAny = "owner@/postgres";

/// As test_server noted it: postgresql://owner@/postgres?host=…
std::string noted() {
  const char* const note = std::getenv("TAREBOWL_TEST_SERVER");
  std::ifstream file(note == nullptr ? "" : note);
  std::string address;
  if (!std::getline(file, address))
    throw std::runtime_error(
        "the tests' server is not running: tests/core/store/test_server start NOTE, and "
        "TAREBOWL_TEST_SERVER=NOTE");
  return address;
}

std::string addressWith(const std::string& person, const std::string& database) {
  std::string address = noted();
  return address.replace(address.find(kOwnerAndAny), std::string(kOwnerAndAny).size(),
                         person + "@/" + database);
}

}  // namespace

std::string refusedTo(const fs::path& address, const std::string& password, const std::string& statements) {
  std::string words = address.string();
  if (!password.empty()) words += "&password=" + password;
  const std::unique_ptr<PGconn, decltype(&PQfinish)> connection(PQconnectdb(words.c_str()), &PQfinish);
  PQsetNoticeProcessor(
      connection.get(), [](void*, const char*) {}, nullptr);
  if (PQstatus(connection.get()) != CONNECTION_OK) return PQerrorMessage(connection.get());
  const std::unique_ptr<PGresult, decltype(&PQclear)> result(PQexec(connection.get(), statements.c_str()),
                                                             &PQclear);
  return PQresultErrorMessage(result.get());
}

bool testsAreOnServer() {
  return std::getenv("TAREBOWL_TEST_SERVER") != nullptr;
}

OwnDatabase::OwnDatabase(const std::string& name)
    : name_(fmt::format("test_{:016x}", std::hash<std::string>{}(name))),
      address_(addressWith("owner", name_)) {
  for (const std::string& statement : {fmt::format("DROP DATABASE IF EXISTS {} WITH (FORCE)", name_),
                                       fmt::format("CREATE DATABASE {} TEMPLATE template0", name_)})
    if (const std::string why = refusedTo(noted(), "", statement); !why.empty())
      throw std::runtime_error(why);
}

OwnDatabase::~OwnDatabase() {
  (void)refusedTo(noted(), "", fmt::format("DROP DATABASE IF EXISTS {} WITH (FORCE)", name_));
}

fs::path OwnDatabase::addressOf(const std::string& person) const {
  return addressWith(person, name_);
}

void OwnDatabase::run(const std::string& statements) const {
  if (const std::string why = refusedTo(address_, "", statements); !why.empty())
    throw std::runtime_error(why);
}

}  // namespace tarebowl::store
