// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/reference/sample_files.h"

#include "tests/source_dir.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cctype>
#include <fstream>

namespace tarebowl::reference {

namespace fs = std::filesystem;

namespace {
const fs::path kFolder = fs::path(TAREBOWL_SOURCE_DIR) / "sample-data";
}

std::vector<std::string> sampleNames() {
  std::vector<std::string> names;
  for (const fs::directory_entry& entry : fs::directory_iterator(kFolder)) {
    if (entry.path().extension() == ".json") names.push_back(entry.path().filename().string());
  }
  std::ranges::sort(names);
  return names;
}

fs::path samplePath(const std::string& name) {
  return kFolder / name;
}

nlohmann::json readSampleJson(const std::string& name) {
  std::ifstream stream(samplePath(name), std::ios::binary);
  return nlohmann::json::parse(stream);
}

std::string testNameOf(const std::string& name) {
  std::string made;
  bool capital = true;
  for (const char letter : fs::path(name).stem().string()) {
    const auto code = static_cast<unsigned char>(letter);
    if (std::isalnum(code) != 0) made += static_cast<char>(capital ? std::toupper(code) : code);
    capital = std::isalnum(code) == 0;
  }
  return made;
}

}  // namespace tarebowl::reference
