// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLocale>
#include <QString>

#include <cstdint>

/// Numbers of which the writer knows how many digits they have; `format.h` has those that find theirs.
namespace tarebowl::ui {

/// With so many digits after the mark, and nothing that sets thousands apart.
[[nodiscard]] QString decimal(double value, int decimals, const QLocale& locale = QLocale());
/// How many there are of something.
[[nodiscard]] QString countText(std::int64_t many, const QLocale& locale = QLocale());

}  // namespace tarebowl::ui
