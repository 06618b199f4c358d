// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/architecture/file_rules.h"

#include <algorithm>
#include <fstream>
#include <regex>
#include <sstream>
#include <string_view>

namespace tarebowl::architecture {

namespace fs = std::filesystem;

namespace {

bool firstLinesHold(const SourceFile& file, std::size_t count, std::string_view text) {
  const auto end = file.lines.begin() + static_cast<std::ptrdiff_t>(std::min(count, file.lines.size()));
  return std::any_of(file.lines.begin(), end,
                     [&](const std::string& line) { return line.find(text) != std::string::npos; });
}

/// How many names in `code` of a README lead to something beside it or below the top of the house.
std::size_t namedThingsThatExist(const fs::path& house, const fs::path& folder) {
  std::ifstream stream(folder / "README.md", std::ios::binary);
  std::ostringstream text;
  text << stream.rdbuf();
  const std::string readme = text.str();
  static const std::regex kCode("`([A-Za-z0-9_./-]+)`");
  std::size_t found = 0;
  for (std::sregex_iterator match(readme.begin(), readme.end(), kCode), end; match != end; ++match) {
    const std::string name = (*match)[1].str();
    if (fs::exists(folder / name) || fs::exists(house / name)) ++found;
  }
  return found;
}

}  // namespace

std::vector<Finding> checkLicenceHeaders(std::span<const SourceFile> sources) {
  std::vector<Finding> findings;
  for (const SourceFile& file : sources) {
    if (!firstLinesHold(file, 3, "SPDX-FileCopyrightText: ")) {
      findings.push_back({file.path, 0, "no SPDX-FileCopyrightText line"});
    }
    if (!firstLinesHold(file, 3, "SPDX-License-Identifier: GPL-3.0-or-later")) {
      findings.push_back({file.path, 0, "no SPDX-License-Identifier line"});
    }
  }
  return findings;
}

std::vector<Finding> checkLengths(std::span<const SourceFile> sources) {
  std::vector<Finding> findings;
  for (const SourceFile& file : sources) {
    if (!isCpp(file.path) || file.lines.size() <= kLongFile || firstLinesHold(file, 10, "// Long because "))
      continue;
    findings.push_back(
        {file.path, 0, std::to_string(file.lines.size()) + " lines and no reason in its first lines"});
  }
  return findings;
}

std::vector<Finding> checkGuards(std::span<const SourceFile> sources) {
  std::vector<Finding> findings;
  for (const SourceFile& file : sources) {
    const bool header = file.path.ends_with(".h") || file.path.ends_with(".hpp");
    if (header && !firstLinesHold(file, 10, "#pragma once"))
      findings.push_back({file.path, 0, "no #pragma once"});
  }
  return findings;
}

std::vector<Finding> checkReadmes(const fs::path& house) {
  std::vector<Finding> findings;
  for (const std::string& folder : topFolders(house)) {
    const std::string readme = folder + "/README.md";
    if (!fs::exists(house / readme)) {
      findings.push_back({readme, 0, "missing"});
    } else if (namedThingsThatExist(house, house / folder) < 2) {
      findings.push_back({readme, 0, "does not name the first files to read"});
    }
  }
  return findings;
}

}  // namespace tarebowl::architecture
