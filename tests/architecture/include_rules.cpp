// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/architecture/include_rules.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <filesystem>
#include <optional>
#include <regex>
#include <string>
#include <string_view>

namespace tarebowl::architecture {

namespace {

struct Room {
  std::string_view folder;
  int distance;  ///< from app: a room includes only rooms farther away, and itself
};

constexpr std::array<Room, 11> kTrade = {{{"app/", 0},
                                          {"ui/", 1},
                                          {"core/transfer/", 2},
                                          {"core/store/", 3},
                                          {"core/exchange/", 3},
                                          {"core/health/", 4},
                                          {"core/intake/", 5},
                                          {"core/diet/", 6},
                                          {"core/animal/", 7},
                                          {"core/food/", 8},
                                          {"core/quantity/", 9}}};
constexpr std::string_view kSolver = "core/solver/";
constexpr std::string_view kDiet = "core/diet/";
constexpr std::string_view kResources = "resources/";
constexpr std::string_view kTests = "tests/";

std::optional<Room> roomOf(std::string_view path) {
  const auto found =
      std::ranges::find_if(kTrade, [&](const Room& room) { return path.starts_with(room.folder); });
  if (found == kTrade.end()) return std::nullopt;
  return *found;
}

bool isOurs(std::string_view path) {
  constexpr std::array<std::string_view, 5> kTops = {"app/", "core/", "ui/", kResources, kTests};
  return std::ranges::any_of(kTops, [&](std::string_view top) { return path.starts_with(top); });
}

/// <QString>, <QtCharts/QChart>, <qglobal.h> …
bool isQt(std::string_view included) {
  if (included.starts_with("Qt")) return true;
  if (included.size() < 2) return false;
  if (included[0] == 'Q') return std::isupper(static_cast<unsigned char>(included[1])) != 0;
  return included[0] == 'q' && included.ends_with(".h") && included.find('/') == std::string_view::npos;
}

bool isKnownPath(std::span<const SourceFile> sources, const std::string& path) {
  return std::ranges::any_of(sources, [&](const SourceFile& file) { return file.path == path; });
}

/// The path from the top of the house that an include line means: beside the file where it says so or is
/// there.
std::string resolve(std::span<const SourceFile> sources, const std::string& from,
                    const std::string& included) {
  const auto beside =
      (std::filesystem::path(from).parent_path() / included).lexically_normal().generic_string();
  return included.starts_with('.') || isKnownPath(sources, beside) ? beside : included;
}

/// Why `from` may not include `to`, both ours; nothing if it may.
std::optional<std::string> objection(std::string_view from, std::string_view to) {
  if (from.starts_with(kTests)) return std::nullopt;
  if (to.starts_with(kTests)) return "a test is included outside the tests";
  if (from.starts_with(kResources)) {
    if (to.starts_with(kResources)) return std::nullopt;
    return "resources include nothing of the house";
  }
  if (to.starts_with(kResources)) return std::nullopt;
  if (from.starts_with(kSolver)) {
    if (to.starts_with(kSolver)) return std::nullopt;
    return "the solver knows nothing of the trade";
  }
  if (to.starts_with(kSolver)) {
    if (from.starts_with(kDiet)) return std::nullopt;
    return "only diet speaks to the solver";
  }
  const auto source = roomOf(from);
  const auto target = roomOf(to);
  if (!source || !target) return "a room the direction of dependence does not know";
  if (source->folder == target->folder || source->distance < target->distance) return std::nullopt;
  return "the arrow from " + std::string(source->folder) + " to " + std::string(target->folder) +
         " runs back";
}

std::optional<std::string> includedBy(const std::string& line) {
  static const std::regex kInclude(R"(^\s*#\s*include\s*[<"]([^>"]+)[>"])");
  std::smatch match;
  if (!std::regex_search(line, match, kInclude)) return std::nullopt;
  return match[1].str();
}

}  // namespace

std::vector<Finding> checkIncludes(std::span<const SourceFile> sources) {
  std::vector<Finding> findings;
  for (const SourceFile& file : sources) {
    if (!isCpp(file.path)) continue;
    for (std::size_t i = 0; i < file.lines.size(); ++i) {
      const auto included = includedBy(file.lines[i]);
      if (!included) continue;
      if (file.path.starts_with("core/") && isQt(*included)) {
        findings.push_back({file.path, i + 1, "Qt in core: " + *included});
        continue;
      }
      const std::string target = resolve(sources, file.path, *included);
      if (!isOurs(target)) continue;
      if (const auto why = objection(file.path, target))
        findings.push_back({file.path, i + 1, *why + ": " + target});
    }
  }
  return findings;
}

}  // namespace tarebowl::architecture
