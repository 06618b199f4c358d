// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/fuzz/read_table.h"

#include <cstddef>
#include <cstdint>

// The archive itself, byte by byte.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  tarebowl::fuzz::readSpreadsheet({data, size});
  return 0;
}
