// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/diet_version.h"

#include <QString>

/// The life of a diet's version in words.
namespace tarebowl::ui {

/// "draft", "submitted", "approved", "retired".
[[nodiscard]] QString stateText(diet::VersionState state);
/// The last step: "approved on 2026-09-01 by Keeper A: eaten well; fed from 2026-09-04, phased in over 5
/// days".
[[nodiscard]] QString lifeText(const diet::DietVersion& version);
/// "bowl", "treat", "training reward", "enrichment", "browse".
[[nodiscard]] QString purposeText(diet::Purpose purpose);

}  // namespace tarebowl::ui
