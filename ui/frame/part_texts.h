// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <span>
#include <string_view>

struct QMetaObject;

namespace tarebowl::ui {

/// What F1 says of a part of the window (a card, a pane, a table): what it is for, and where the numbers on
/// it come from.
struct PartText {
  std::string_view part;  ///< its class
  const char* text;       ///< to be translated, context "PartTexts"
};

/// By the room that the parts stand in; each in a file of its own.
[[nodiscard]] std::span<const PartText> foodsTexts();
[[nodiscard]] std::span<const PartText> animalsTexts();
[[nodiscard]] std::span<const PartText> dietsTexts();
[[nodiscard]] std::span<const PartText> keepersTexts();  ///< Kitchen, Intake and Health
[[nodiscard]] std::span<const PartText> frameTexts();

/// Empty for a part of which nothing is written; controls in it are then told by the part that it stands in.
[[nodiscard]] QString partText(const QMetaObject& part);

}  // namespace tarebowl::ui
