// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <string>

namespace tarebowl::ui {

/// When a backup was made (store::Backup::at), as the person's clock says it: "25 Nov 2026, 07:30".
[[nodiscard]] QString backupTimeText(const std::string& at);

}  // namespace tarebowl::ui
