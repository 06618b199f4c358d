// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/rotation_view.h"

#include <QString>
#include <QStringList>

#include <string>

/// A rotation in words.
namespace tarebowl::ui {

/// "Monday 30 November".
[[nodiscard]] QString longDay(quantity::Date day);
/// "30 Nov to 6 Dec 2026".
[[nodiscard]] QString periodText(quantity::Date from, quantity::Date until);

/// "Every target of the 7 days holds, and each day's own zones." or what does not, and how far from the best
/// that could be.
[[nodiscard]] QStringList rotationSentences(const RotationView& view);
/// Who planned it and when, and which days were fed.
[[nodiscard]] QString madeText(const RotationView& view);

/// What a day lacks of its own zones, and whether the period makes it up: a sentence for each target.
[[nodiscard]] QStringList daySentences(const RotationView& view, int day);
/// How many of a day's own zones are missed.
[[nodiscard]] int zonesMissed(const RotationView& view, int day);

/// Why there is no plan, and what could be done.
[[nodiscard]] QString noPlanText(const diet::RotationPlan& plan);

}  // namespace tarebowl::ui
