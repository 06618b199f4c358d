// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/theme_pairs.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace tarebowl::ui {
namespace {

using enum ColorRole;

constexpr std::array kColors{
    ThemeColor{"paper", &Theme::paper, Ground},       ThemeColor{"card", &Theme::card, Ground},
    ThemeColor{"selected", &Theme::selected, Ground}, ThemeColor{"rail", &Theme::rail, Ground},
    ThemeColor{"zone", &Theme::zone, Ground},         ThemeColor{"line", &Theme::line, Rule},
    ThemeColor{"edge", &Theme::edge, Mark},           ThemeColor{"ink", &Theme::ink, Text},
    ThemeColor{"soft", &Theme::soft, Text},           ThemeColor{"onRail", &Theme::onRail, Text},
    ThemeColor{"marker", &Theme::marker, Text},       ThemeColor{"bar", &Theme::bar, Mark},
    ThemeColor{"secondBar", &Theme::secondBar, Mark}, ThemeColor{"met", &Theme::met, Text},
    ThemeColor{"atLimit", &Theme::atLimit, Text},     ThemeColor{"lacking", &Theme::lacking, Text},
    ThemeColor{"over", &Theme::over, Text},           ThemeColor{"unknown", &Theme::unknown, Text},
    ThemeColor{"accent", &Theme::accent, Text},       ThemeColor{"onAccent", &Theme::onAccent, Text},
};
static_assert(sizeof(Theme) == alignof(QColor) + kColors.size() * sizeof(QColor),
              "a colour of the theme is missing here, or is here twice");

const ThemeColor& find(QColor Theme::*color) {
  return *std::ranges::find(kColors, color, &ThemeColor::color);
}

/// What everything stands on that is not named below: the window, a card or field, a row that is chosen.
constexpr std::array<QColor Theme::*, 3> kCommon{&Theme::paper, &Theme::card, &Theme::selected};

/// Colours that stand elsewhere only.
constexpr std::array<QColor Theme::*, 2> kElsewhere{&Theme::onRail, &Theme::onAccent};

struct Standing {
  QColor Theme::*color;
  QColor Theme::*ground;
  ColorRole role;
};
/// Besides the common grounds.
constexpr std::array kFurther{
    Standing{&Theme::onRail, &Theme::rail, Text},      // names of the rooms, and the focus among them
    Standing{&Theme::onAccent, &Theme::accent, Text},  // the one button that matters, text that is marked
    Standing{&Theme::ink, &Theme::zone, Text},         // a cell that is locked
    Standing{&Theme::accent, &Theme::zone, Mark},      // focus on it
    Standing{&Theme::marker, &Theme::zone, Mark},      // the value on its track, what was eaten in a chart
    Standing{&Theme::marker, &Theme::line, Mark},      //
    Standing{&Theme::met, &Theme::zone, Mark},         // edge of the zone
    Standing{&Theme::met, &Theme::line, Mark},         //
    Standing{&Theme::soft, &Theme::zone, Mark},        // hatch of what is unknown, what was offered
    Standing{&Theme::soft, &Theme::line, Mark},        //
    Standing{&Theme::bar, &Theme::line, Mark},         // a share on its track
    Standing{&Theme::lacking, &Theme::zone, Mark},     // a drop in a chart
    Standing{&Theme::unknown, &Theme::zone, Mark},     // days that are missing in a chart
};

/// Of WCAG 2.1's definition of relative luminance.
double linearChannel(double channel) {
  return channel <= 0.03928 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& color) {
  return 0.2126 * linearChannel(color.redF()) + 0.7152 * linearChannel(color.greenF()) +
         0.0722 * linearChannel(color.blueF());
}

}  // namespace

std::span<const ThemeColor> themeColors() {
  return kColors;
}

std::vector<ColorPair> colorPairs() {
  std::vector<ColorPair> pairs;
  for (const ThemeColor& color : kColors) {
    if (color.role != Text && color.role != Mark) continue;
    if (std::ranges::find(kElsewhere, color.color) != kElsewhere.end()) continue;
    for (QColor Theme::*const ground : kCommon) pairs.push_back({&color, &find(ground), color.role});
  }
  for (const Standing& standing : kFurther)
    pairs.push_back({&find(standing.color), &find(standing.ground), standing.role});
  return pairs;
}

double leastContrast(ColorRole role) {
  switch (role) {
    case Text:
      return 4.5;
    case Mark:
      return 3.0;
    default:
      return 1.0;
  }
}

double contrastRatio(const QColor& a, const QColor& b) {
  const double la = luminance(a);
  const double lb = luminance(b);
  return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

}  // namespace tarebowl::ui
