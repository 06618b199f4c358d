// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/text_file.h"

#include "core/exchange/json_document.h"
#include "core/exchange/problem_json.h"

#include <fmt/format.h>

#include <cerrno>
#include <cstring>
#include <fstream>

namespace tarebowl::exchange {

namespace {

namespace fs = std::filesystem;

[[noreturn]] void refuse(const std::string& name, const std::string& found) {
  throw FormatError(name, "", "a readable file, found " + found);
}

}  // namespace

std::string readText(std::istream& stream, const std::string& name) {
  constexpr std::size_t kBlock = 1U << 16U;
  std::string text;
  std::string block(kBlock, '\0');
  while (stream.read(block.data(), static_cast<std::streamsize>(kBlock)) || stream.gcount() > 0) {
    text.append(block, 0, static_cast<std::size_t>(stream.gcount()));
    if (text.size() > kLargestFile) throw FormatError(name, "", "at most 64 MB, found more");
  }
  if (stream.bad()) refuse(name, "an error while reading");
  return text;
}

std::string readText(const fs::path& file) {
  const std::string name = file.string();
  std::error_code error;
  const fs::file_status status = fs::status(file, error);
  if (status.type() == fs::file_type::not_found) refuse(name, "none of this name");
  if (error) refuse(name, "an error: " + error.message());
  if (status.type() == fs::file_type::directory) refuse(name, "a directory");
  std::ifstream stream(file, std::ios::binary);
  if (!stream) refuse(name, fmt::format("one that cannot be opened: {}", std::strerror(errno)));
  return readText(stream, name);
}

}  // namespace tarebowl::exchange
