// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <memory>
#include <string>
#include <unordered_map>

namespace tarebowl::store {

/// A statement as a server takes it.
struct KnownStatement {
  std::uint64_t number;  ///< no other statement of its connection has it
  std::string text;      ///< with its places as $1, $2 …
  std::size_t runs = 0;
};

/// The statements that one connection to a server was given, and the names under which the server keeps some
/// of them ready. A room asks the same ones again and again: each is put into the server's words once, and
/// told from others by its number.
class KnownStatements {
 public:
  /// common: as Connection::prepare() takes it.
  [[nodiscard]] std::shared_ptr<KnownStatement> of(const std::string& common);

  /// Takes note that it is run once more; whether it was run before and is worth keeping ready.
  bool countRun(KnownStatement& statement) const;
  /// Empty where the server does not keep it ready.
  [[nodiscard]] std::string nameOf(const KnownStatement& statement) const;
  [[nodiscard]] std::string freshName();
  void keepName(std::uint64_t number, std::string name);
  /// The server has forgotten them: the connection is another one.
  void forgetNames();

 private:
  void makeRoom();

  std::unordered_map<std::string, std::shared_ptr<KnownStatement>> known_;  ///< by their common text
  std::unordered_map<std::uint64_t, std::string> names_;                    ///< by their numbers
  std::uint64_t numbers_ = 0;
  std::size_t named_ = 0;
};

}  // namespace tarebowl::store
