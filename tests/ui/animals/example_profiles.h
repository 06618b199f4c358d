// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/target_profile.h"

#include <vector>

namespace tarebowl::ui {

/// An invented parent and the child that derives from it:
///  parent 1   calcium 8 to 20 g/kg DM, protein at least 300 g/kg DM (from memory), iron at most 0.2 g/kg DM,
///             a safe upper limit; fruit at most 10 % of DM
///  child 1    calcium 10 to 20 g/kg DM in place of it; no seed mix
[[nodiscard]] animal::TargetProfile exampleParent();
[[nodiscard]] animal::TargetProfile exampleChild();
[[nodiscard]] animal::ResolvedProfile resolvedChild();

}  // namespace tarebowl::ui
