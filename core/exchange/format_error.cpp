// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/problem_json.h"

#include <algorithm>
#include <utility>

namespace tarebowl::exchange {

namespace {

/// A line break in a file name or a key must not break the promise of one line.
std::string onOneLine(std::string text) {
  std::replace_if(
      text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; },
      ' ');
  return text;
}

std::string sentence(const std::string& file, const std::string& keyPath, const std::string& expected) {
  return onOneLine(file + (keyPath.empty() ? "" : ": " + keyPath) + ": expected " + expected);
}

}  // namespace

FormatError::FormatError(std::string file, std::string keyPath, std::string expected)
    : std::runtime_error(sentence(file, keyPath, expected)),
      file_(std::move(file)),
      keyPath_(std::move(keyPath)),
      expected_(std::move(expected)) {}

}  // namespace tarebowl::exchange
