// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shared/state_mark.h"

#include <QMetaType>
#include <QString>

#include <optional>

namespace tarebowl::ui {

/// One rung of the balance ladder, ready to be painted or read aloud. It knows no diet.
struct Rung {
  QString name;         ///< "Calcium", "Ca : P", "Leafy vegetable"
  QString remark;       ///< tells rungs of one name apart: "min", "max"
  QString valueText;    ///< "6.93", "≥ 41", "≈ 0.4", "?"
  QString unit;         ///< "g/kg DM"
  QString description;  ///< the whole rung as a sentence, for tool tips and screen readers
  Mark mark = Mark::Unknown;
  bool hard = false;
  std::optional<double> value;
  std::optional<double> min;
  std::optional<double> max;
  double sd = 0.0;
  double coverage = 1.0;
};

/// Columns of every model that a BalanceLadder shows.
enum RungColumn { RungName, RungValue, RungTrack, RungState, RungColumnCount };
/// Role under which such a model gives the Rung of a row.
inline constexpr int kRungRole = Qt::UserRole + 1;

}  // namespace tarebowl::ui

Q_DECLARE_METATYPE(tarebowl::ui::Rung)
