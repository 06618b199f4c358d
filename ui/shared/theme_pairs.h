// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shared/theme.h"

#include <span>
#include <vector>

/// Which colour of the theme stands on which, and how far it must stand out there.
namespace tarebowl::ui {

/// What a colour is for.
enum class ColorRole {
  Ground,  ///< something else stands on it
  Rule,    ///< divides or decorates, and says nothing that is not said beside it
  Text,    ///< letters of any size, and marks
  Mark     ///< marks, lines and edges that say something: a state, a value, where one can type or press
};

struct ThemeColor {
  const char* name;  ///< as the style sheet calls it
  QColor Theme::*color;
  ColorRole role;
};
/// All colours of a theme: one that is added to Theme does not compile until it is here.
[[nodiscard]] std::span<const ThemeColor> themeColors();

/// A colour in sight on another.
struct ColorPair {
  const ThemeColor* color;
  const ThemeColor* ground;
  ColorRole role;  ///< Text or Mark: a colour of text may be no more than a mark on some ground
};
/// Every one that the window paints.
[[nodiscard]] std::vector<ColorPair> colorPairs();

/// WCAG 2.1, AA: 4.5 for text (1.4.3), 3 for what a graphic or the edge of a control says (1.4.11), 1 where
/// nothing is asked.
[[nodiscard]] double leastContrast(ColorRole role);

/// (lighter + 0.05) / (darker + 0.05) of the relative luminances, 1 … 21: "contrast ratio" and "relative
/// luminance" of WCAG 2.1, https://www.w3.org/TR/WCAG21/#dfn-contrast-ratio
[[nodiscard]] double contrastRatio(const QColor& a, const QColor& b);

}  // namespace tarebowl::ui
