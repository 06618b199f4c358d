// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QValueAxis;

namespace tarebowl::ui {

/// Lets an axis reach at least from low to high (above it), in at most so many steps of 1, 2 or 5 times a
/// power of ten; its labels have the decimals of a step, so that each says the number at which it stands.
void setRoundRange(QValueAxis& axis, double low, double high, int mostSteps = 5);

}  // namespace tarebowl::ui
