// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/animal_page.h"

#include <QString>

#include <optional>
#include <vector>

namespace tarebowl::ui {

enum class ReadingTrust { Counts, Doubtful, LeftOut };

struct MassPoint {
  quantity::Date on{};
  double mass = 0.0;  ///< in the unit of the chart
  ReadingTrust trust = ReadingTrust::Counts;
};

struct MassLine {
  QString name{};
  std::vector<MassPoint> points{};
};

struct ConditionPoint {
  quantity::Date on{};
  double score = 0.0;
};

/// All that a mass chart shows, without knowing an animal.
struct MassChartState {
  QString unit{};  ///< "g" or "kg"
  std::vector<MassLine> lines{};
  QString scale{};  ///< name of the condition scale; empty where nothing was scored
  double scaleLow = 0.0;
  double scaleHigh = 0.0;
  double scaleIdeal = 0.0;
  std::vector<ConditionPoint> scores{};
  QString spoken{};  ///< the whole as words, for screen readers
};

enum class MassView { EachAnimal, Mean };

/// Doubtful readings far outside what counts do not stretch the axis: they stand at its edge.
[[nodiscard]] MassChartState massChartState(const AnimalPage& page, MassView view);

/// The span of the masses that count, with room around it; nothing where none counts.
struct MassSpan {
  double low = 0.0;
  double high = 0.0;
};
[[nodiscard]] std::optional<MassSpan> spanOf(const MassChartState& state);

}  // namespace tarebowl::ui
