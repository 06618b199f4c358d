// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/server_command.h"

#include "app/author.h"
#include "app/command_line.h"
#include "app/open_collection.h"
#include "app/options.h"
#include "app/password.h"
#include "app/waiting_commands.h"
#include "core/store/former_collection.h"
#include "core/store/server_address.h"
#include "core/store/server_backup.h"
#include "core/store/server_setup.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

struct PersonWords {
  std::string address{};
  std::string person{};
  std::string role{};
};

void refuseFile(const std::string& address) {
  if (!store::isServerAddress(address))
    throw UsageError(address + ": expected the address of a server, postgresql://PERSON@SERVER/DATABASE");
}

int makeOnServer(const std::string& address, const Streams& streams) {
  refuseFile(address);
  (void)store::Collection::create(address, {whoIsThere(), nowInUtc()}, openingByHand());
  streams.out << fmt::format(
      "{0} is a new, empty collection\nLet people in with: tarebowl server add {0} PERSON ROLE\n", address);
  return kDone;
}

int raiseOnServer(const std::string& address, const Streams& streams) {
  refuseFile(address);
  const bool raised = store::upgradeServer(address, openingByHand());
  streams.out << fmt::format("{} {}\n", address,
                             raised ? "was raised to this program's schema"
                                    : "has this program's schema; what each role may do was said anew");
  return kDone;
}

/// Typed twice: what does not show is easily mistyped.
std::string chosenPassword(const std::string& person) {
  const auto first = typedPassword("A password for " + person);
  if (!first)
    throw UsageError(person +
                     " is new to the server and needs a password: start this at a terminal, where it "
                     "can be typed");
  if (typedPassword("The same again") != first)
    throw UsageError("the two passwords are not the same; nothing was done");
  return *first;
}

int letPersonIn(const PersonWords& words, const Streams& streams) {
  refuseFile(words.address);
  const store::OpenOptions opening = openingByHand();
  std::optional<std::string> password;
  if (!store::isKnown(words.address, opening, words.person)) password = chosenPassword(words.person);
  store::letIn(words.address, opening, words.person, words.role, password);
  streams.out << fmt::format("{} may open the collection as {}\n", words.person, words.role);
  return kDone;
}

struct BackupWords {
  std::string address{};
  std::string file{};
};

int backUp(const BackupWords& words, const Streams& streams) {
  refuseFile(words.address);
  store::dumpServer(words.address, openingByHand(), words.file);
  streams.out << fmt::format("{} is a backup of {}, and was looked through\n", words.file, words.address);
  return kDone;
}

int restoreBackup(const BackupWords& words, const Streams& streams) {
  refuseFile(words.address);
  const std::string former =
      store::restoreServer(words.address, openingByHand(), words.file, {whoIsThere(), nowInUtc()});
  streams.out << fmt::format("{} stands in {}\n", words.file, words.address);
  if (!former.empty())
    streams.out << fmt::format("The former collection was not deleted: it lies in the schema {}\n", former);
  return kDone;
}

int takeRestoreBack(const std::string& address, const Streams& streams) {
  refuseFile(address);
  const store::UndoneRestore undone =
      store::undoRestore(address, openingByHand(), {whoIsThere(), nowInUtc()});
  streams.out << fmt::format("{} is in its place again\n", undone.former);
  if (!undone.aside.empty())
    streams.out << fmt::format("What stood there was not deleted: it lies in the schema {}\n", undone.aside);
  return kDone;
}

CLI::Option* addAddress(CLI::App& command, std::string& address) {
  return command.add_option("ADDRESS", address, "postgresql://PERSON@SERVER/DATABASE")->required();
}

void defineInit(CLI::App& server, Run& chosen) {
  const auto address = std::make_shared<std::string>();
  CLI::App& command =
      *server.add_subcommand("init", "Make an empty collection in a database, with its roles");
  addAddress(command, *address);
  runWhenNamed(command, chosen,
               [address](const Streams& streams) { return makeOnServer(*address, streams); });
}

void defineUpgrade(CLI::App& server, Run& chosen) {
  const auto address = std::make_shared<std::string>();
  CLI::App& command = *server.add_subcommand("upgrade", "Raise a collection that an older Tarebowl made");
  addAddress(command, *address);
  runWhenNamed(command, chosen,
               [address](const Streams& streams) { return raiseOnServer(*address, streams); });
}

void defineAdd(CLI::App& server, Run& chosen) {
  const auto words = std::make_shared<PersonWords>();
  CLI::App& command = *server.add_subcommand("add", "Let a person in, in a role");
  addAddress(command, words->address);
  command
      .add_option("PERSON", words->person, "As the server is to know them; a new one is asked for a password")
      ->required();
  command.add_option("ROLE", words->role, "What they are here")
      ->required()
      ->check(
          CLI::IsMember(std::vector<std::string>(store::kServerRoles.begin(), store::kServerRoles.end())));
  runWhenNamed(command, chosen, [words](const Streams& streams) { return letPersonIn(*words, streams); });
}

void defineBackup(CLI::App& server, Run& chosen) {
  const auto words = std::make_shared<BackupWords>();
  CLI::App& command = *server.add_subcommand("backup", "Write a backup by pg_dump, and look through it");
  addAddress(command, words->address);
  command.add_option("FILE", words->file, "The new file, such as zoo-2026-11-25.dump")->required();
  runWhenNamed(command, chosen, [words](const Streams& streams) { return backUp(*words, streams); });
}

void defineRestore(CLI::App& server, Run& chosen) {
  const auto words = std::make_shared<BackupWords>();
  CLI::App& command = *server.add_subcommand(
      "restore", "Put a backup in the collection's place, by pg_restore; what is there is set aside");
  addAddress(command, words->address);
  command.add_option("FILE", words->file, "As tarebowl server backup wrote it")->required();
  runWhenNamed(command, chosen, [words](const Streams& streams) { return restoreBackup(*words, streams); });
}

void defineUndoRestore(CLI::App& server, Run& chosen) {
  const auto address = std::make_shared<std::string>();
  CLI::App& command = *server.add_subcommand(
      "undo-restore", "Put the collection back that gave way to a backup; what is there is set aside");
  addAddress(command, *address);
  runWhenNamed(command, chosen,
               [address](const Streams& streams) { return takeRestoreBack(*address, streams); });
}

}  // namespace

void defineServer(CLI::App& app, Run& chosen) {
  CLI::App& server =
      *app.add_subcommand("server", "Set up a collection that several desks share on PostgreSQL");
  server.require_subcommand(1);
  defineInit(server, chosen);
  defineUpgrade(server, chosen);
  defineAdd(server, chosen);
  defineBackup(server, chosen);
  defineRestore(server, chosen);
  defineUndoRestore(server, chosen);
  defineWaiting(server, chosen);
}

}  // namespace tarebowl::app
