// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QPalette>
#include <QString>

class QApplication;

/// The only file that knows a colour; theme_pairs.h says which stands on which.
namespace tarebowl::ui {

struct Theme {
  bool dark = false;
  QColor paper;      ///< ground of the window
  QColor card;       ///< ground of tables, fields and cards
  QColor ink;        ///< text
  QColor soft;       ///< text that steps back: units, headers
  QColor line;       ///< rules, borders of cards, the empty part of a track
  QColor edge;       ///< around what one can type into or press
  QColor rail;       ///< ground of the rail of rooms
  QColor onRail;     ///< text on it
  QColor selected;   ///< ground of the row or switch that is chosen
  QColor zone;       ///< where a target is met
  QColor marker;     ///< where the diet stands
  QColor bar;        ///< bars of shares and contributions
  QColor secondBar;  ///< the other nutrient of a ratio
  QColor met, atLimit, lacking, over, unknown;
  QColor accent;  ///< focus and the one button that matters
  QColor onAccent;
};

[[nodiscard]] const Theme& lightTheme();
[[nodiscard]] const Theme& darkTheme();

/// Light or dark, whichever the palette's window colour is nearer to.
[[nodiscard]] const Theme& themeOf(const QPalette& palette);
/// The theme in force, read from the program's palette. (A widget's own palette is changed by style sheets.)
[[nodiscard]] const Theme& currentTheme();

enum class ThemeChoice { System, Light, Dark };
/// Palette, style and style sheet of the whole program. System follows the palette the desktop gave the
/// program.
void applyTheme(QApplication& application, ThemeChoice choice);

[[nodiscard]] QPalette paletteOf(const Theme& theme);
[[nodiscard]] QString styleSheetOf(const Theme& theme);
/// The same before colours took the place of their names: "@ink", "@paper".
[[nodiscard]] QString styleSheetTemplate();

}  // namespace tarebowl::ui
