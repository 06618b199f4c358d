// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A server proves who it is: which certificates are taken, and what is said of one that is not.
#include "core/store/collection.h"
#include "tests/core/store/own_folder.h"
#include "tests/core/store/server/own_server.h"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstdlib>

namespace tarebowl::store {
namespace {

namespace fs = std::filesystem;
using testing::AllOf;
using testing::HasSubstr;

void run(const std::string& command) {
  ASSERT_EQ(std::system(fmt::format("{} >/dev/null 2>&1", command).c_str()), 0) << command;
}

/// An authority of the test's own, which signs for servers; with Debian's openssl.
class Authority {
 public:
  Authority(fs::path folder, const std::string& name) : folder_(std::move(folder)), name_(name) {
    fs::create_directories(folder_);
    run(fmt::format("openssl req -x509 {} -keyout '{}' -out '{}' -days 2 -subj '/CN={}'", kNewKey,
                    key().string(), certificate().string(), name_));
  }
  [[nodiscard]] fs::path certificate() const { return folder_ / (name_ + ".crt"); }
  /// Signs for a server; days: how long it is to hold, -1: until yesterday.
  [[nodiscard]] fs::path sign(const std::string& host, int days) const {
    const fs::path made = folder_ / fmt::format("{}-{}.crt", host, days);
    const auto as = [&made](const char* ending) { return fs::path(made).replace_extension(ending).string(); };
    run(fmt::format("openssl req {} -keyout '{}' -out '{}' -subj '/CN={}'", kNewKey, as(".key"), as(".csr"),
                    host));
    run(fmt::format("openssl x509 -req -in '{}' -CA '{}' -CAkey '{}' -CAcreateserial -days {} -out '{}'",
                    as(".csr"), certificate().string(), key().string(), days, made.string()));
    return made;
  }

 private:
  static constexpr const char* kNewKey = "-newkey ec -pkeyopt ec_paramgen_curve:prime256v1 -nodes";
  [[nodiscard]] fs::path key() const { return folder_ / (name_ + ".key"); }

  fs::path folder_;
  std::string name_;
};

class ServerOverTls : public testing::Test {
 protected:
  void start(const fs::path& certificate) {
    server.emplace(folder / "authority", Peculiar{.certificate = certificate});
    ASSERT_TRUE(server->runs());
  }
  [[nodiscard]] fs::path asked(const std::string& host, const fs::path& trusted) const {
    return server->overTls(host, fmt::format("&sslrootcert={}", trusted.string()));
  }
  [[nodiscard]] static StoreError refusalOf(const fs::path& address) {
    const auto error = errorOf([&] { (void)Collection::create(address, kKeeper); });
    EXPECT_TRUE(error) << address;
    return error.value_or(StoreError(StoreErrorCode::Failed, address, ""));
  }

  OwnFolder folder;
  Authority zoo{folder / "authority", "zoo"};
  std::optional<OwnServer> server;
};

TEST_F(ServerOverTls, AServerThatProvesItsNameIsTaken) {
  start(zoo.sign("collections.example", 1));
  const fs::path address = asked("collections.example", zoo.certificate());
  const Collection made = Collection::create(address, kKeeper);
  EXPECT_EQ(Collection::open(address, kNow).schemaVersion(), made.schemaVersion());
}

TEST_F(ServerOverTls, OneThatHasExpiredIsRefusedWithWhatToDo) {
  start(zoo.sign("collections.example", -1));
  const StoreError error = refusalOf(asked("collections.example", zoo.certificate()));
  EXPECT_EQ(error.code(), StoreErrorCode::NoServer);
  EXPECT_THAT(error.what(), AllOf(HasSubstr("has expired"), HasSubstr("this machine's clock"),
                                  HasSubstr("ask whoever runs the server")));
}

TEST_F(ServerOverTls, OneOfAnotherNameIsRefused) {
  start(zoo.sign("elsewhere.example", 1));
  const StoreError error = refusalOf(asked("collections.example", zoo.certificate()));
  EXPECT_EQ(error.code(), StoreErrorCode::NoServer);
  EXPECT_THAT(error.what(), AllOf(HasSubstr("another name"), HasSubstr("elsewhere.example")));
}

TEST_F(ServerOverTls, OneOfAnUnknownAuthorityIsRefused) {
  const Authority stranger(folder / "authority", "stranger");
  start(stranger.sign("collections.example", 1));
  const StoreError error = refusalOf(asked("collections.example", zoo.certificate()));
  EXPECT_EQ(error.code(), StoreErrorCode::NoServer);
  EXPECT_THAT(error.what(), HasSubstr("nobody whom this machine trusts"));
}

TEST_F(ServerOverTls, WithoutAnAuthorityToTrustItIsSaidWhereOneBelongs) {
  start(zoo.sign("collections.example", 1));
  const StoreError error = refusalOf(asked("collections.example", folder / "none.crt"));
  EXPECT_EQ(error.code(), StoreErrorCode::NoServer);
  EXPECT_THAT(error.what(), AllOf(HasSubstr("none.crt"), HasSubstr("is not there")));
}

TEST_F(ServerOverTls, AnUnencryptedWayIsNotTakenWhereTheServerWantsNone) {
  start(zoo.sign("collections.example", 1));
  const StoreError error = refusalOf(server->overTls("collections.example", "&sslmode=disable"));
  EXPECT_EQ(error.code(), StoreErrorCode::NoPermission);
  EXPECT_THAT(error.what(), HasSubstr("no encryption"));
}

}  // namespace
}  // namespace tarebowl::store
