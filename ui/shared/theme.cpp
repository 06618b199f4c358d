// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/theme.h"

#include <QApplication>
#include <QStyleFactory>

namespace tarebowl::ui {
namespace {

constexpr QColor rgb(unsigned value) {
  return {static_cast<int>((value >> 16U) & 0xFFU), static_cast<int>((value >> 8U) & 0xFFU),
          static_cast<int>(value & 0xFFU)};
}

}  // namespace

const Theme& lightTheme() {
  static const Theme theme{
      .dark = false,
      .paper = rgb(0xF7F5EF),
      .card = rgb(0xFFFFFF),
      .ink = rgb(0x1D2B2E),
      .soft = rgb(0x566567),
      .line = rgb(0xDDD9CE),
      .edge = rgb(0x7C8079),
      .rail = rgb(0x20403F),
      .onRail = rgb(0xD5DEDA),
      .selected = rgb(0xE6EEF2),
      .zone = rgb(0xCFE6DC),
      .marker = rgb(0x17324D),
      .bar = rgb(0x4F7E9C),
      .secondBar = rgb(0x96783D),
      .met = rgb(0x0E5B42),
      .atLimit = rgb(0x826300),
      .lacking = rgb(0x872C00),
      .over = rgb(0x6E3592),
      .unknown = rgb(0x686868),
      .accent = rgb(0x1F5F8B),
      .onAccent = rgb(0xFFFFFF),
  };
  return theme;
}

const Theme& darkTheme() {
  static const Theme theme{
      .dark = true,
      .paper = rgb(0x1B2123),
      .card = rgb(0x232B2D),
      .ink = rgb(0xE8ECEA),
      .soft = rgb(0xA4B0B0),
      .line = rgb(0x364043),
      .edge = rgb(0x7A888A),
      .rail = rgb(0x14201F),
      .onRail = rgb(0xC6D0CC),
      .selected = rgb(0x2C383D),
      .zone = rgb(0x2C5A4A),
      .marker = rgb(0xF3F0E6),
      .bar = rgb(0x6C9DBD),
      .secondBar = rgb(0xC2A76C),
      .met = rgb(0x86DDB8),
      .atLimit = rgb(0xEBD07A),
      .lacking = rgb(0xFF9455),
      .over = rgb(0xD3A4F0),
      .unknown = rgb(0xA3A3A3),
      .accent = rgb(0x7FBCE6),
      .onAccent = rgb(0x14201F),
  };
  return theme;
}

const Theme& themeOf(const QPalette& palette) {
  return palette.color(QPalette::Window).lightnessF() < 0.5F ? darkTheme() : lightTheme();
}

const Theme& currentTheme() {
  return themeOf(QGuiApplication::palette());
}

void applyTheme(QApplication& application, ThemeChoice choice) {
  const bool dark =
      choice == ThemeChoice::Dark || (choice == ThemeChoice::System && themeOf(QPalette()).dark);
  const Theme& theme = dark ? darkTheme() : lightTheme();
  QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
  QApplication::setPalette(paletteOf(theme));
  application.setStyleSheet(styleSheetOf(theme));
}

QPalette paletteOf(const Theme& theme) {
  QPalette palette;
  palette.setColor(QPalette::Window, theme.paper);
  palette.setColor(QPalette::WindowText, theme.ink);
  palette.setColor(QPalette::Base, theme.card);
  palette.setColor(QPalette::AlternateBase, theme.paper);
  palette.setColor(QPalette::Text, theme.ink);
  palette.setColor(QPalette::PlaceholderText, theme.soft);
  palette.setColor(QPalette::Button, theme.card);
  palette.setColor(QPalette::ButtonText, theme.ink);
  palette.setColor(QPalette::BrightText, theme.lacking);
  palette.setColor(QPalette::Highlight, theme.accent);
  palette.setColor(QPalette::HighlightedText, theme.onAccent);
  palette.setColor(QPalette::Link, theme.accent);
  palette.setColor(QPalette::ToolTipBase, theme.card);
  palette.setColor(QPalette::ToolTipText, theme.ink);
  palette.setColor(QPalette::Mid, theme.line);
  palette.setColor(QPalette::Light, theme.card);
  palette.setColor(QPalette::Dark, theme.line);
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
    palette.setColor(QPalette::Disabled, role, theme.soft);
  return palette;
}

}  // namespace tarebowl::ui
