// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/date.h"

#include <string_view>

namespace tarebowl::animal {

/// A day that exists, as a test writes it: "2026-03-01".
inline quantity::Date day(std::string_view iso) {
  return quantity::parseDate(iso).value();
}

}  // namespace tarebowl::animal
