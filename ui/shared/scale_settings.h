// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/scale_line.h"

#include <QString>

#include <optional>

namespace tarebowl::ui {

/// Where a scale is plugged in and how it talks. Eight data bits, no parity, one stop bit (common practice,
/// no source).
struct ScaleSettings {
  QString port{};  ///< "ttyUSB0", "COM3", or a path; empty: there is no scale
  int speed = 9600;
  std::optional<intake::ScaleUnit> unit{};  ///< of a scale that sends none
  bool operator==(const ScaleSettings&) const = default;
};

}  // namespace tarebowl::ui
