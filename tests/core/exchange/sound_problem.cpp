// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/exchange/sound_problem.h"

#include <stdexcept>

namespace tarebowl::exchange {

std::string soundProblemWith(std::string_view piece, std::string_view replacement) {
  std::string text(kSoundProblem);
  const auto place = text.find(piece);
  const bool once = place != std::string::npos && text.find(piece, place + 1) == std::string::npos;
  if (!once) throw std::logic_error("not exactly once in the sound problem: " + std::string(piece));
  return text.replace(place, piece.size(), replacement);
}

}  // namespace tarebowl::exchange
