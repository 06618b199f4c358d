// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/zip_member.h"

#include "core/exchange/problem_json.h"

#include <minizip/unzip.h>

#include <algorithm>

namespace tarebowl::exchange {

struct ZipMember::Archive {
  explicit Archive(const std::filesystem::path& file) : handle(unzOpen64(file.string().c_str())) {}
  Archive(const Archive&) = delete;
  Archive& operator=(const Archive&) = delete;
  ~Archive() {
    if (handle != nullptr) unzClose(handle);
  }

  [[nodiscard]] bool holds(const std::string& member) const {
    constexpr int kCaseInsensitive = 2;
    return handle != nullptr && unzLocateFile(handle, member.c_str(), kCaseInsensitive) == UNZ_OK;
  }

  unzFile handle;
};

ZipMember::ZipMember(const std::filesystem::path& archive, const std::string& member)
    : name_(archive.string()), archive_(std::make_unique<Archive>(archive)) {
  if (archive_->handle == nullptr)
    throw FormatError(name_, "", "a spreadsheet (XLSX), found a damaged archive");
  unz_file_info64 info{};
  const bool open =
      archive_->holds(member) &&
      unzGetCurrentFileInfo64(archive_->handle, &info, nullptr, 0, nullptr, 0, nullptr, 0) == UNZ_OK &&
      unzOpenCurrentFile(archive_->handle) == UNZ_OK;
  if (!open) throw FormatError(name_, member, "a part of a spreadsheet (XLSX), found none that can be read");
  size_ = info.uncompressed_size;
}

ZipMember::~ZipMember() = default;

std::string_view ZipMember::read() {
  // Small: a few bytes of a sheet may make a row of sixteen thousand empty cells.
  constexpr std::size_t kPiece = std::size_t{1} << 13U;
  piece_.resize(kPiece);
  const int count = unzReadCurrentFile(archive_->handle, piece_.data(), static_cast<unsigned>(kPiece));
  // At the end the checksum is compared.
  const bool damaged = count < 0 || (count == 0 && unzCloseCurrentFile(archive_->handle) == UNZ_CRCERROR);
  if (damaged) throw FormatError(name_, "", "a spreadsheet (XLSX), found a damaged archive");
  done_ += static_cast<std::uint64_t>(count);
  return std::string_view(piece_).substr(0, static_cast<std::size_t>(count));
}

double ZipMember::progress() const {
  return size_ == 0 ? 1.0 : std::min(1.0, static_cast<double>(done_) / static_cast<double>(size_));
}

bool ZipMember::exists(const std::filesystem::path& archive, const std::string& member) {
  return Archive(archive).holds(member);
}

}  // namespace tarebowl::exchange
