// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/date.h"

#include <QDate>
#include <QString>

namespace tarebowl::ui {

[[nodiscard]] quantity::Date today();
[[nodiscard]] QDate toQDate(quantity::Date date);
[[nodiscard]] quantity::Date toDate(QDate date);
/// "3 Oct 2026".
[[nodiscard]] QString dateText(quantity::Date date);

}  // namespace tarebowl::ui
