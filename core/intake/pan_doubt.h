// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/feeding_records.h"

#include <optional>
#include <span>

namespace tarebowl::intake {

/// Why a control pan is asked about before it is kept. Confirmed, it is kept as it is; one that began empty
/// is not kept.
enum class PanDoubt {
  NothingAtStart,
  NothingLeft,  ///< it says nothing of water: was it emptied, or eaten from?
  GainedMuch,   ///< more than kMuchGained of its mass: rain, mist, or the two weights the wrong way round
  LostMuch,     ///< more than kMuchLost: an animal within reach, or a slip
  TwicePut      ///< there is one of the same food or class in the same place and day: a second one counts too
};
/// House rule, no source: wilting leaves lose a tenth or two overnight.
inline constexpr double kMuchGained = 0.1;
inline constexpr double kMuchLost = 0.5;

/// The first thing that is to be asked. others: of the same day, without this one itself.
[[nodiscard]] std::optional<PanDoubt> doubtAbout(const ControlPan& pan, std::span<const ControlPan> others);

}  // namespace tarebowl::intake
