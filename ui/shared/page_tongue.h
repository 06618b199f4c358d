// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/page_tongue.h"

namespace tarebowl::ui {

/// Pages speak as the window does.
[[nodiscard]] exchange::PageTongue pageTongue();

}  // namespace tarebowl::ui
