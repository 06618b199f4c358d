// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation.h"

namespace tarebowl::app {

/// The exit status of a command that planned days.
[[nodiscard]] int exitStatusOf(diet::RotationStatus status);

}  // namespace tarebowl::app
