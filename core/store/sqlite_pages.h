// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

/// What lies in the pages of an SQLite file, read without the engine, which stops at the first page that is
/// damaged (Debian's library is built without its recovery extension). By the published format,
/// https://www.sqlite.org/fileformat2.html. Nothing that is read is trusted: what does not hold together is
/// left out and counted.
namespace tarebowl::store {

/// One value of a row; a blob, which no table of a collection has, makes its row unreadable.
using PageValue = std::variant<std::monostate, std::int64_t, double, std::string>;

struct PageRow {
  std::optional<std::int64_t> rowid{};  ///< missing in tables that are kept in the order of their key
  std::vector<PageValue> values{};
};

/// A page of a tree of rows: of a table, or of an index or a clustered table.
struct TreePage {
  bool hasRowids = false;  ///< of a table that is not clustered
  bool isLeaf = true;
  std::vector<std::uint32_t> children{};
  std::vector<PageRow> rows{};
  std::size_t unreadable = 0;  ///< rows or branches that are there and do not hold together
};

/// Number 1 is the first page. For one thread.
class PageFile {
 public:
  /// Throws StoreError where the file cannot be read.
  explicit PageFile(const std::filesystem::path& file);

  [[nodiscard]] std::uint32_t pageCount() const { return pageCount_; }
  /// The schema's version; nothing where the file's first bytes are damaged.
  [[nodiscard]] std::optional<std::uint32_t> statedVersion() const;
  /// Pages that hold nothing any more, as far as their list can be followed.
  [[nodiscard]] std::vector<std::uint32_t> freePages();
  /// Nothing where the page is no page of a tree.
  [[nodiscard]] std::optional<TreePage> treePage(std::uint32_t number);

 private:
  [[nodiscard]] std::optional<std::string> page(std::uint32_t number);
  [[nodiscard]] std::optional<std::string> payload(std::string_view page, std::size_t at, std::uint64_t size,
                                                   std::size_t local);
  void takeCell(const std::string& page, std::size_t at, unsigned kind, TreePage& into, std::size_t& end);

  std::ifstream stream_;
  std::string header_{};  ///< empty where it is damaged
  std::uint32_t pageSize_ = 0;
  std::uint32_t usable_ = 0;
  std::uint32_t pageCount_ = 0;
};

}  // namespace tarebowl::store
