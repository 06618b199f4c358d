// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/date.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

// What is read as a day exists, and is written as it was read.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace tarebowl::quantity;
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  const auto date = parseDate(text);
  if (date && (!date->ok() || isoDate(*date) != text)) std::abort();
  return 0;
}
