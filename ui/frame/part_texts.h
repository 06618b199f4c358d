// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

struct QMetaObject;

namespace tarebowl::ui {

/// What F1 says of a part of the window (a card, a pane, a table) by its class: what it is for, and where the
/// numbers on it come from. Empty for a part of which nothing is written; those in it are then told by the
/// part that it stands in.
[[nodiscard]] QString partText(const QMetaObject& part);

}  // namespace tarebowl::ui
