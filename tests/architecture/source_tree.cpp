// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/architecture/source_tree.h"

#include <algorithm>
#include <array>
#include <fstream>
#include <sstream>
#include <string_view>

namespace tarebowl::architecture {

namespace fs = std::filesystem;

namespace {

constexpr std::array<std::string_view, 3> kWritten = {".py", ".sh", ".cmake"};
constexpr std::array<std::string_view, 2> kNamed = {"CMakeLists.txt", "run"};

bool isSource(const fs::path& file) {
  const std::string extension = file.extension().string();
  const std::string name = file.filename().string();
  return isCpp(name) || std::ranges::find(kWritten, extension) != kWritten.end() ||
         std::ranges::find(kNamed, name) != kNamed.end();
}

}  // namespace

bool isCpp(const std::string& path) {
  const std::string extension = fs::path(path).extension().string();
  return extension == ".h" || extension == ".hpp" || extension == ".cpp";
}

std::string describe(const std::vector<Finding>& findings) {
  std::ostringstream text;
  for (const Finding& finding : findings) {
    text << finding.path;
    if (finding.line > 0) text << ':' << finding.line;
    text << ": " << finding.what << '\n';
  }
  return text.str();
}

std::vector<std::string> splitLines(const std::string& text) {
  std::vector<std::string> lines;
  std::istringstream stream(text);
  for (std::string line; std::getline(stream, line);) {
    if (!line.empty() && line.back() == '\r') line.pop_back();
    lines.push_back(std::move(line));
  }
  return lines;
}

std::vector<std::string> topFolders(const fs::path& house) {
  std::vector<std::string> folders;
  for (const fs::directory_entry& entry : fs::directory_iterator(house)) {
    const std::string name = entry.path().filename().string();
    if (entry.is_directory() && !name.starts_with('.') && !name.starts_with("build")) folders.push_back(name);
  }
  std::ranges::sort(folders);
  return folders;
}

std::vector<SourceFile> readSources(const fs::path& house) {
  std::vector<SourceFile> sources;
  for (const std::string& folder : topFolders(house)) {
    for (const fs::directory_entry& entry : fs::recursive_directory_iterator(house / folder)) {
      if (!entry.is_regular_file() || !isSource(entry.path())) continue;
      std::ifstream stream(entry.path(), std::ios::binary);
      std::ostringstream text;
      text << stream.rdbuf();
      sources.push_back({entry.path().lexically_relative(house).generic_string(), splitLines(text.str())});
    }
  }
  std::ranges::sort(sources, {}, &SourceFile::path);
  return sources;
}

}  // namespace tarebowl::architecture
