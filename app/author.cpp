// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/author.h"

#include <fmt/chrono.h>

#include <chrono>
#include <cstdlib>

namespace tarebowl::app {

std::string nowInUtc() {
  const auto now = std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
  return fmt::format("{:%Y-%m-%dT%H:%M:%SZ}", fmt::gmtime(std::chrono::system_clock::to_time_t(now)));
}

quantity::Date today() {
  return std::chrono::floor<std::chrono::days>(std::chrono::system_clock::now());
}

std::string whoIsThere() {
  for (const char* variable : {"USER", "LOGNAME", "USERNAME"})
    if (const char* name = std::getenv(variable); name != nullptr && *name != '\0') return name;
  return "command line";
}

}  // namespace tarebowl::app
