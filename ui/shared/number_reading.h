// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLocale>
#include <QString>

#include <optional>

namespace tarebowl::ui {

/// A number of the person's locale, or with a point; nothing for anything else or below zero.
[[nodiscard]] std::optional<double> readNumber(const QString& text, const QLocale& locale = QLocale());

}  // namespace tarebowl::ui
