// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/fuzz/read_table.h"

#include <cstddef>
#include <cstdint>
#include <string>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace tarebowl;
  fuzz::readTable(exchange::tableText(std::string(reinterpret_cast<const char*>(data), size), "fuzz"));
  return 0;
}
