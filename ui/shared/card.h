// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

class QVBoxLayout;

namespace tarebowl::ui {

/// A card with a soft heading; content goes into its layout.
[[nodiscard]] QVBoxLayout* layOutCard(QFrame& card, const QString& heading);

}  // namespace tarebowl::ui
