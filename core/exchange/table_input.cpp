// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/table_input.h"

#include "core/exchange/problem_json.h"
#include "core/exchange/sheet_reader.h"

#include <cerrno>
#include <cstring>
#include <fstream>
#include <sstream>
#include <utility>

namespace tarebowl::exchange {

namespace {

namespace fs = std::filesystem;

/// A spreadsheet is a ZIP archive, whatever its name.
bool isArchive(const fs::path& file) {
  std::ifstream stream(file, std::ios::binary);
  std::string head(4, '\0');
  stream.read(head.data(), 4);
  return stream.gcount() == 4 && head == "PK\x03\x04";
}

}  // namespace

TableInput tableFile(const fs::path& file) {
  const std::string name = file.string();
  std::error_code error;
  const auto status = fs::status(file, error);
  const auto refuse = [&](const std::string& found) {
    throw FormatError(name, "", "a readable table, found " + found);
  };
  if (status.type() == fs::file_type::not_found) refuse("no file of this name");
  if (error) refuse("an error: " + error.message());
  if (status.type() == fs::file_type::directory) refuse("a directory");
  if (!std::ifstream(file, std::ios::binary))
    refuse(std::string("one that cannot be opened: ") + std::strerror(errno));
  TableInput input;
  input.name = name;
  input.folder = file.parent_path();
  input.open = [file] { return std::make_unique<std::ifstream>(file, std::ios::binary); };
  const auto size = fs::file_size(file, error);
  if (!error) input.size = size;
  if (isArchive(file)) input.spreadsheet = file;
  return input;
}

TableInput tableText(std::string text, std::string name) {
  TableInput input;
  input.name = std::move(name);
  input.size = text.size();
  input.open = [shared = std::make_shared<const std::string>(std::move(text))] {
    return std::make_unique<std::istringstream>(*shared);
  };
  return input;
}

std::unique_ptr<TableReader> openTable(const TableInput& input, const TextTableForm& form) {
  if (!input.spreadsheet.empty()) return openSheet(input.spreadsheet);
  return std::make_unique<TextTableReader>(input.open(), input.name, form, input.size);
}

}  // namespace tarebowl::exchange
