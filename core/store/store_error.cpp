// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/store_error.h"

#include <algorithm>
#include <utility>

namespace tarebowl::store {

namespace {

/// A line break in a file name must not break the promise of one line.
std::string onOneLine(std::string text) {
  std::replace_if(
      text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; },
      ' ');
  return text;
}

std::string sentence(const std::filesystem::path& file, const std::string& detail,
                     const std::optional<std::filesystem::path>& backup) {
  std::string text = file.string() + ": " + detail;
  if (backup) text += "; a backup lies in " + backup->string();
  return onOneLine(std::move(text));
}

}  // namespace

StoreError::StoreError(StoreErrorCode code, std::filesystem::path file, std::string detail,
                       std::optional<std::filesystem::path> backup)
    : std::runtime_error(sentence(file, detail, backup)),
      code_(code),
      file_(std::move(file)),
      detail_(std::move(detail)),
      backup_(std::move(backup)) {}

ConflictError::ConflictError(std::filesystem::path file, std::string what, std::string mine,
                             std::string theirs)
    : StoreError(StoreErrorCode::Conflict, std::move(file),
                 std::move(what) + (theirs.empty() ? " was removed" : " was changed") +
                     " elsewhere since it was read; nothing was written"),
      mine_(std::move(mine)),
      theirs_(std::move(theirs)) {}

}  // namespace tarebowl::store
