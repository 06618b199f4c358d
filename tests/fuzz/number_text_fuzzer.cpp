// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/number_text.h"
#include "core/exchange/title_meaning.h"

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

// A cell is a finite amount of 0 or more, nothing, or refused; a unit that is read is written as what it is.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace tarebowl::exchange;
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  for (const DecimalMark mark : {DecimalMark::Point, DecimalMark::Comma}) {
    const NumberReading reading = readNumber(text, mark);
    const auto* number = std::get_if<NumberText>(&reading);
    if (number == nullptr) continue;
    if (!std::isfinite(number->amount) || number->amount < 0.0) std::abort();
    if (number->sd && (!std::isfinite(*number->sd) || *number->sd < 0.0)) std::abort();
  }
  DecimalMarkEvidence evidence;
  evidence.look(text, 1);
  (void)evidence.mark();
  (void)meaningOf(text);
  if (const auto unit = parseUnitText(text); unit && !parseUnitText(unitText(*unit))) std::abort();
  return 0;
}
