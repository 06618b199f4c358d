// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/column_mapping.h"
#include "core/exchange/problem_json.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>

// Whatever the bytes are: one line that says what is wrong, or a mapping that survives writing.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace tarebowl::exchange;
  try {
    const TableMapping mapping = parseMapping({reinterpret_cast<const char*>(data), size}, "fuzz");
    if (!(parseMapping(writeMapping(mapping), "written") == mapping)) std::abort();
  } catch (const FormatError& error) {
    if (std::string(error.what()).find('\n') != std::string::npos) std::abort();
  }
  return 0;
}
