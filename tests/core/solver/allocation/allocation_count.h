// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace tarebowl::testing {

/// How often memory was asked for since the program started, by new or by malloc (as Eigen does). The linker
/// puts the count in the way of malloc: --wrap in the CMakeLists of core's tests.
[[nodiscard]] long allocationCount();

}  // namespace tarebowl::testing
