// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/target.h"
#include "ui/shared/theme.h"

#include <QColor>
#include <QString>

namespace tarebowl::ui {

/// Shape and word: "■ seen", "□ worked out", "○ from memory", "◆ house rule", "▲ invented", "? not stated".
[[nodiscard]] QString provenanceText(animal::Provenance provenance);
[[nodiscard]] QColor colorOf(animal::Provenance provenance, const Theme& theme);
/// Where a number comes from. What is from memory never reads like a citation: "not looked up, recalled as:
/// …".
[[nodiscard]] QString sourceText(const animal::TargetOrigin& origin);
/// Of a number that the house sets itself.
[[nodiscard]] animal::TargetOrigin houseOrigin();

}  // namespace tarebowl::ui
