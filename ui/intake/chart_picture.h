// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>

class QWidget;

namespace tarebowl::ui {

/// A chart under its title on the ground of its card, twice as fine as a screen. One on a tab that was never
/// in sight has no size of its own yet: it is drawn in the other.
[[nodiscard]] QImage pictureOf(const QString& title, QWidget& chart, const QSize& otherwise);

}  // namespace tarebowl::ui
