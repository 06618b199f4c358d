// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/theme.h"

#include <QApplication>
#include <QStyleFactory>

#include <algorithm>
#include <cmath>

namespace tarebowl::ui {
namespace {

constexpr QColor rgb(unsigned value) {
  return {static_cast<int>((value >> 16U) & 0xFFU), static_cast<int>((value >> 8U) & 0xFFU),
          static_cast<int>(value & 0xFFU)};
}

double linearChannel(double channel) {
  return channel <= 0.03928 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& color) {
  return 0.2126 * linearChannel(color.redF()) + 0.7152 * linearChannel(color.greenF()) +
         0.0722 * linearChannel(color.blueF());
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
      .rail = rgb(0x20403F),
      .onRail = rgb(0xD5DEDA),
      .selected = rgb(0xE6EEF2),
      .zone = rgb(0xCFE6DC),
      .marker = rgb(0x17324D),
      .bar = rgb(0x4F7E9C),
      .secondBar = rgb(0x96783D),
      .met = rgb(0x1C6B50),
      .atLimit = rgb(0x7A5C00),
      .lacking = rgb(0xA8400C),
      .over = rgb(0x6E3592),
      .unknown = rgb(0x646464),
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
      .rail = rgb(0x14201F),
      .onRail = rgb(0xC6D0CC),
      .selected = rgb(0x2C383D),
      .zone = rgb(0x2C5A4A),
      .marker = rgb(0xF3F0E6),
      .bar = rgb(0x6C9DBD),
      .secondBar = rgb(0xC2A76C),
      .met = rgb(0x7FD1AE),
      .atLimit = rgb(0xE3C15A),
      .lacking = rgb(0xFF9E66),
      .over = rgb(0xD3A4F0),
      .unknown = rgb(0xB0B0B0),
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

std::vector<TextPair> textPairs(const Theme& theme) {
  std::vector<TextPair> pairs;
  const std::pair<const char*, QColor> grounds[] = {
      {"paper", theme.paper}, {"card", theme.card}, {"selected", theme.selected}};
  const std::pair<const char*, QColor> texts[] = {
      {"ink", theme.ink},       {"soft", theme.soft}, {"met", theme.met},         {"at limit", theme.atLimit},
      {"short", theme.lacking}, {"over", theme.over}, {"unknown", theme.unknown}, {"accent", theme.accent}};
  for (const auto& [groundName, ground] : grounds)
    for (const auto& [textName, text] : texts)
      pairs.push_back(
          {QString::fromLatin1("%1 on %2").arg(QLatin1String(textName), QLatin1String(groundName)), text,
           ground});
  pairs.push_back({QStringLiteral("rail text on rail"), theme.onRail, theme.rail});
  pairs.push_back({QStringLiteral("text on accent"), theme.onAccent, theme.accent});
  return pairs;
}

double contrastRatio(const QColor& a, const QColor& b) {
  const double la = luminance(a);
  const double lb = luminance(b);
  return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

}  // namespace tarebowl::ui
