// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sqlite_pages.h"

#include "core/store/sqlite_record.h"
#include "core/store/store_error.h"

#include <algorithm>
#include <bit>

namespace tarebowl::store {

namespace {

namespace fs = std::filesystem;

constexpr std::size_t kHeaderSize = 100;
constexpr std::string_view kMagic{"SQLite format 3\0", 16};
constexpr std::uint32_t kUsualPageSize = 4096;
constexpr std::uint64_t kMostPayload = 100'000'000;  // no text of a collection is longer

// The kinds of pages of trees.
constexpr unsigned kIndexBranch = 2;
constexpr unsigned kTableBranch = 5;
constexpr unsigned kIndexLeaf = 10;
constexpr unsigned kTableLeaf = 13;

bool isBranch(unsigned kind) {
  return kind == kIndexBranch || kind == kTableBranch;
}

/// The page size that the header states; 0 where it states none that there is.
std::uint32_t statedPageSize(std::string_view header) {
  const std::uint32_t stated = bigEndian(header, 16, 2);
  const std::uint32_t size = stated == 1 ? 65536 : stated;
  return size >= 512 && std::has_single_bit(size) ? size : 0;
}

/// How much of a payload stands in the page itself; the rest stands in pages of its own.
std::size_t localSize(std::uint64_t size, std::uint32_t usable, unsigned kind) {
  const std::uint64_t most = kind == kTableLeaf ? usable - 35 : (usable - 12) * 64 / 255 - 23;
  const std::uint64_t least = (usable - 12) * 32 / 255 - 23;
  if (size <= most) return size;
  const std::uint64_t some = least + (size - least) % (usable - 4);
  return some <= most ? some : least;
}

}  // namespace

PageFile::PageFile(const fs::path& file) : stream_(file, std::ios::binary) {
  if (!stream_) throw StoreError(StoreErrorCode::NoPermission, file, "cannot be read");
  std::string header(kHeaderSize, '\0');
  stream_.read(header.data(), kHeaderSize);
  const bool isWhole =
      stream_.gcount() == kHeaderSize && header.starts_with(kMagic) && statedPageSize(header) > 0;
  pageSize_ = isWhole ? statedPageSize(header) : kUsualPageSize;
  usable_ = pageSize_ - (isWhole ? bigEndian(header, 20, 1) : 0);
  if (isWhole) header_ = std::move(header);
  pageCount_ = static_cast<std::uint32_t>(fs::file_size(file) / pageSize_);
}

std::optional<std::uint32_t> PageFile::statedVersion() const {
  if (header_.empty()) return std::nullopt;
  return bigEndian(header_, 60, 4);
}

std::optional<std::string> PageFile::page(std::uint32_t number) {
  if (number == 0 || number > pageCount_) return std::nullopt;
  std::string content(pageSize_, '\0');
  stream_.clear();
  stream_.seekg(static_cast<std::streamoff>(pageSize_) * (number - 1));
  stream_.read(content.data(), static_cast<std::streamsize>(pageSize_));
  if (!stream_) return std::nullopt;
  return content;
}

std::vector<std::uint32_t> PageFile::freePages() {
  std::vector<std::uint32_t> free;
  if (header_.empty()) return free;
  std::uint32_t trunk = bigEndian(header_, 32, 4);
  while (trunk != 0 && free.size() <= pageCount_) {
    const auto content = page(trunk);
    if (!content) break;
    free.push_back(trunk);
    const std::uint32_t leaves = std::min(bigEndian(*content, 4, 4), usable_ / 4 - 2);
    for (std::uint32_t i = 0; i < leaves; ++i) free.push_back(bigEndian(*content, 8 + 4 * std::size_t{i}, 4));
    trunk = bigEndian(*content, 0, 4);
  }
  return free;
}

std::optional<std::string> PageFile::payload(std::string_view content, std::size_t at, std::uint64_t size,
                                             std::size_t local) {
  std::string bytes(content.substr(at, local));
  if (local == size) return bytes;
  std::uint32_t next = bigEndian(content, at + local, 4);
  while (bytes.size() < size) {
    const auto further = page(next);
    if (!further) return std::nullopt;
    bytes.append(*further, 4,
                 static_cast<std::size_t>(std::min<std::uint64_t>(usable_ - 4, size - bytes.size())));
    next = bigEndian(*further, 0, 4);
  }
  return next == 0 ? std::optional(bytes) : std::nullopt;
}

/// A cell that does not hold together is counted; `end` is where it ends in the page.
void PageFile::takeCell(const std::string& content, std::size_t at, unsigned kind, TreePage& into,
                        std::size_t& end) {
  Cursor cursor(std::string_view(content).substr(0, usable_), at);
  if (isBranch(kind)) into.children.push_back(cursor.fixed(4));
  if (kind == kTableBranch) {
    (void)cursor.varint();
    end = cursor.place();
    if (!cursor.isSound()) ++into.unreadable;
    return;
  }
  const std::uint64_t size = cursor.varint();
  PageRow row;
  if (kind == kTableLeaf) row.rowid = static_cast<std::int64_t>(cursor.varint());
  const std::size_t local = size <= kMostPayload ? localSize(size, usable_, kind) : 0;
  end = cursor.place() + local + (local < size ? 4 : 0);
  if (!cursor.isSound() || size > kMostPayload || end > usable_) {
    end = 0;
    ++into.unreadable;
    return;
  }
  const auto bytes = payload(content, cursor.place(), size, local);
  auto values = bytes ? recordIn(*bytes) : std::nullopt;
  if (!values) {
    ++into.unreadable;
    return;
  }
  row.values = std::move(*values);
  into.rows.push_back(std::move(row));
}

std::optional<TreePage> PageFile::treePage(std::uint32_t number) {
  const auto content = page(number);
  if (!content) return std::nullopt;
  const std::size_t start = number == 1 ? kHeaderSize : 0;
  const unsigned kind = bigEndian(*content, start, 1);
  if (!isBranch(kind) && kind != kIndexLeaf && kind != kTableLeaf) return std::nullopt;
  TreePage read{.hasRowids = kind == kTableLeaf || kind == kTableBranch, .isLeaf = !isBranch(kind)};
  const std::size_t cells = bigEndian(*content, start + 3, 2);
  const std::size_t pointers = start + (isBranch(kind) ? 12 : 8);
  if (pointers + 2 * cells > usable_) return std::nullopt;
  std::vector<std::pair<std::size_t, std::size_t>> taken;
  for (std::size_t i = 0; i < cells; ++i) {
    const std::size_t at = bigEndian(*content, pointers + 2 * i, 2);
    std::size_t end = 0;
    if (at >= pointers + 2 * cells && at < usable_) {
      takeCell(*content, at, kind, read, end);
      taken.emplace_back(at, std::max(at, end));
    } else {
      ++read.unreadable;
    }
  }
  std::ranges::sort(taken);
  for (std::size_t i = 1; i < taken.size(); ++i)
    if (taken[i].first < taken[i - 1].second) ++read.unreadable;  // two that lie over each other
  if (isBranch(kind)) read.children.push_back(bigEndian(*content, start + 8, 4));
  return read;
}

}  // namespace tarebowl::store
