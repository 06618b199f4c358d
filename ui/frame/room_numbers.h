// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace tarebowl::ui {

/// Places on the rail: Ctrl and the number go there.
inline constexpr int kTodayNumber = 1;
inline constexpr int kFoodsNumber = 2;
inline constexpr int kAnimalsNumber = 3;
inline constexpr int kDietsNumber = 4;
inline constexpr int kKitchenNumber = 5;
inline constexpr int kIntakeNumber = 6;
inline constexpr int kHealthNumber = 7;

}  // namespace tarebowl::ui
