// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window.h"

#include "app/solve_command.h"
#include "core/exchange/problem_json.h"
#include "core/store/server_address.h"
#include "core/transfer/sample_place.h"

#ifdef TAREBOWL_HAS_UI
#include "ui/run.h"
#endif

#include <algorithm>
#include <cstdlib>
#include <ostream>
#include <string>

namespace tarebowl::app {

namespace {

bool isSet(const char* variable) {
  const char* value = std::getenv(variable);
  return value != nullptr && *value != '\0';
}

bool hasDisplay() {
#if defined(_WIN32) || defined(__APPLE__)
  return true;
#else
  return isSet("WAYLAND_DISPLAY") || isSet("DISPLAY") || isSet("QT_QPA_PLATFORM");
#endif
}

int show([[maybe_unused]] int argc, [[maybe_unused]] char** argv, [[maybe_unused]] const OpenWindow& what) {
#ifdef TAREBOWL_HAS_UI
  return ui::run(argc, argv, {.file = what.file, .sample = what.sample});
#else
  return kInternalFailure;
#endif
}

}  // namespace

std::optional<std::string_view> windowIsMissing() {
#ifndef TAREBOWL_HAS_UI
  return "this program was built without its window";
#endif
  if (!hasDisplay()) return "there is no display";
  return std::nullopt;
}

std::optional<std::filesystem::path> samplePath() {
  std::filesystem::path file = transfer::sampleFolder() / "tenrec-hedgehog.json";
  std::error_code ignored;
  if (std::filesystem::is_regular_file(file, ignored)) return file;
  return std::nullopt;
}

int openWindow(const OpenWindow& what, int argc, char** argv, const Streams& streams) {
  std::optional<std::filesystem::path> file = what.file;
  const auto reason = windowIsMissing();
  if (!reason) {
    if (file && file->extension() != ".tarebowl" && !store::isServerAddress(*file))
      (void)exchange::readProblem(*file);  // a file that cannot be read is said before any window opens
    return show(argc, argv, what);         // the window itself knows what to open where nothing is named
  }
  if (!file) file = samplePath();
  if (!file) {
    streams.err << "tarebowl: " << *reason << ", and the sample is not installed; name a problem file\n";
    return kUnreadable;
  }
  streams.err << "tarebowl: " << *reason << "; solving " << file->string() << " in the terminal instead\n";
  SolveWords words;
  words.problem.file = file->string();
  words.table = true;
  return solve(words, streams);
}

}  // namespace tarebowl::app
