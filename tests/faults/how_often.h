// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace tarebowl::faults {

/// How often a test does its harm: as often as the environment variable says, or `inShort` times where it
/// says nothing (DEVELOPERS.md, "Faults").
[[nodiscard]] int howOften(const char* variable, int inShort);

/// Deaths of a writer: TAREBOWL_KILLS.
[[nodiscard]] int deaths(int inShort);

}  // namespace tarebowl::faults
