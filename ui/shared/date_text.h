// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/date.h"

#include <QString>

/// How days are written in the language of the window.
namespace tarebowl::ui {

/// For Qt: "d MMM yyyy".
[[nodiscard]] QString dateFormat();
/// With its time: "d MMM yyyy, HH:mm".
[[nodiscard]] QString momentFormat();
/// "Mon 30 Nov".
[[nodiscard]] QString shortDay(quantity::Date date);
/// A day as a format of Qt's writes it.
[[nodiscard]] QString dateIn(const QString& format, quantity::Date date);

}  // namespace tarebowl::ui
