// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/scale_stream.h"

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

// Whatever a port sends, an event is a finite weight or a fault, and only a weight settles.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace tarebowl::intake;
  ScaleStream stream(size % 2 == 0 ? std::optional(ScaleUnit::Gram) : std::nullopt);
  for (const ScaleEvent& event : stream.take({reinterpret_cast<const char*>(data), size})) {
    if (event.mass.has_value() == event.fault.has_value()) std::abort();
    if (event.mass && !std::isfinite(event.mass->value())) std::abort();
    if (event.settled && !event.mass) std::abort();
  }
  if (const auto alone = stream.quiet(); alone && !alone->mass) std::abort();
  return 0;
}
