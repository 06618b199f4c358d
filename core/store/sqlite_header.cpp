// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sqlite_header.h"

#include "core/store/sqlite_file.h"
#include "core/store/store_error.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <span>
#include <string_view>

namespace tarebowl::store {

namespace {

namespace fs = std::filesystem;

constexpr std::size_t kHeaderSize = 100;
constexpr std::string_view kMagic{"SQLite format 3\0", 16};
using Header = std::array<char, kHeaderSize>;

/// Big-endian, as the file format writes it.
std::uint32_t number(const Header& header, std::size_t offset, std::size_t width = 4) {
  std::uint32_t value = 0;
  for (std::size_t i = 0; i < width; ++i)
    value = (value << 8U) | static_cast<unsigned char>(header.at(offset + i));
  return value;
}

void refuseWhatIsNoFile(const fs::path& file) {
  std::error_code error;
  const fs::file_status status = fs::status(file, error);
  if (status.type() == fs::file_type::not_found)
    throw StoreError(StoreErrorCode::NotFound, file, "there is no such file");
  if (error) throw StoreError(StoreErrorCode::NoPermission, file, "cannot be looked at: " + error.message());
  if (status.type() == fs::file_type::directory)
    throw StoreError(StoreErrorCode::NotAFile, file, "is a folder, not a collection");
  if (status.type() != fs::file_type::regular)
    throw StoreError(StoreErrorCode::NotAFile, file, "is no regular file");
}

Header readHeader(const fs::path& file) {
  const SqliteFile bytes(file);
  Header header{};
  const auto count = static_cast<std::size_t>(std::min<std::uint64_t>(bytes.size(), kHeaderSize));
  bytes.read(0, std::span(header).first(count));
  if (count == 0) throw StoreError(StoreErrorCode::NotACollection, file, "is empty");
  const std::string_view found(header.data(), std::min(count, kMagic.size()));
  if (found != kMagic.substr(0, found.size()) || count < kMagic.size())
    throw StoreError(StoreErrorCode::NotACollection, file, "is no collection of Tarebowl");
  if (count < kHeaderSize)
    throw StoreError(StoreErrorCode::Damaged, file, "is damaged: it ends in its header");
  return header;
}

/// The number of pages in the header is right where the last writer says so; a log may hold newer pages.
void refuseTruncated(const fs::path& file, const Header& header) {
  const std::uint32_t stated = number(header, 16, 2);
  const std::uintmax_t pageSize = stated == 1 ? 65536 : stated;
  const bool countIsValid = number(header, 24) == number(header, 92);
  const std::uintmax_t expected = pageSize * number(header, 28);
  const std::uintmax_t size = fs::file_size(file);
  if (!countIsValid || hasOpenLog(file) || size >= expected) return;
  throw StoreError(StoreErrorCode::Damaged, file,
                   fmt::format("is damaged: {} bytes long where its header says {}", size, expected));
}

}  // namespace

void refuseWhatIsNoCollection(const fs::path& file, int newestVersion) {
  refuseWhatIsNoFile(file);
  const Header header = readHeader(file);
  if (number(header, 68) != kApplicationId)
    throw StoreError(StoreErrorCode::NotACollection, file, "is a database of another program");
  const std::uint32_t version = number(header, 60);
  if (version > static_cast<std::uint32_t>(newestVersion)) {
    throw StoreError(
        StoreErrorCode::TooNew, file,
        fmt::format("was written by a newer Tarebowl (schema {}, this program knows {}); nothing "
                    "was changed",
                    version, newestVersion));
  }
  refuseTruncated(file, header);
}

bool hasOpenLog(const fs::path& file) {
  std::error_code error;
  const std::uintmax_t size = fs::file_size(file.string() + "-wal", error);
  return !error && size > 0;
}

}  // namespace tarebowl::store
