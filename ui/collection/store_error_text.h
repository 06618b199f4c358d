// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/store_error.h"

#include <QString>

namespace tarebowl::ui {

/// The file and what is the matter with it, in the language of the window; what only the engine or a rule of
/// the collection can say stays in English.
[[nodiscard]] QString storeErrorText(const store::StoreError& error);

}  // namespace tarebowl::ui
