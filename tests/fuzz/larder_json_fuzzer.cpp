// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/larder_json.h"
#include "core/exchange/problem_json.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

// One line that says what is wrong, or foods.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace tarebowl::exchange;
  try {
    (void)parseLarder({reinterpret_cast<const char*>(data), size}, "fuzz");
  } catch (const FormatError& error) {
    if (std::string_view(error.what()).find('\n') != std::string_view::npos) std::abort();
  }
  return 0;
}
