// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/exchange/zip_archive.h"
#include "tests/fuzz/read_table.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace {

/// "== name" begins a member of the archive, up to the next such line.
std::vector<std::pair<std::string, std::string>> membersIn(std::string_view text) {
  std::vector<std::pair<std::string, std::string>> members;
  while (!text.empty()) {
    const std::size_t end = text.find('\n');
    const std::string_view line = text.substr(0, end);
    text = end == std::string_view::npos ? std::string_view() : text.substr(end + 1);
    if (line.starts_with("== ") && line.size() < 200)
      members.emplace_back(std::string(line.substr(3)), std::string());
    else if (!members.empty())
      members.back().second.append(line).append("\n");
  }
  return members;
}

}  // namespace

// What stands in the archive, always with the right checksums: XML of the workbook, its texts, styles and
// sheet.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace tarebowl;
  const auto members = membersIn({reinterpret_cast<const char*>(data), size});
  if (members.empty() || members.size() > 20) return 0;
  fuzz::readSpreadsheet(exchange::archiveOf(members));
  return 0;
}
