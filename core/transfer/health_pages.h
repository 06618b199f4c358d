// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/health_page.h"
#include "core/transfer/health_period.h"

namespace tarebowl::transfer {

/// A period and what was worked out from it, as they leave the program.
[[nodiscard]] exchange::CalciumPage calciumPage(const HealthPeriod& period, health::CalciumReview review);
[[nodiscard]] exchange::LookBackPage lookBackPage(const HealthPeriod& period, health::SignKind kind,
                                                  health::LookBack lookBack,
                                                  const health::LookBackRule& rule);

}  // namespace tarebowl::transfer
