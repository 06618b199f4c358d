// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/how_often.h"

#include <cstdlib>
#include <stdexcept>
#include <string>

namespace tarebowl::faults {

int howOften(const char* variable, int inShort) {
  const char* const said = std::getenv(variable);
  if (said == nullptr) return inShort;
  const int count = std::atoi(said);
  if (count <= 0) throw std::runtime_error(std::string(variable) + " must be a number above 0");
  return count;
}

int deaths(int inShort) {
  return howOften("TAREBOWL_KILLS", inShort);
}

}  // namespace tarebowl::faults
