// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/scale_line.h"
#include "core/quantity/quantity.h"

#include <cstddef>
#include <deque>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace tarebowl::intake {

/// What all lines of a scale have in common; learned from its first lines.
struct ScaleShape {
  enum class SaysUnit { Always, WhenSteady, Never };
  std::optional<std::size_t> length{};  ///< characters, where all lines that state a unit have as many
  SaysUnit saysUnit = SaysUnit::Always;
  int decimals = 0;
  bool operator==(const ScaleShape&) const = default;
};

/// One line, understood or not.
struct ScaleEvent {
  std::string line{};
  std::optional<quantity::Grams> mass{};
  bool settled = false;  ///< it may be taken as the weight
  std::optional<ScaleFault> fault{};
};

/// Makes weights of the bytes of a scale. It learns how the scale's lines are shaped and holds back a line
/// that is shaped otherwise, since a lost byte makes another number. A weight is settled when the scale says
/// that its pan is at rest or, where it does not say, when two lines in a row agree or nothing follows
/// (quiet()).
class ScaleStream {
 public:
  /// A line that its shape is learned from.
  struct Sample {
    std::size_t length = 0;
    ScaleLine read{};
  };

  /// unit: of a scale that never says one.
  explicit ScaleStream(std::optional<ScaleUnit> unit = std::nullopt);

  /// Bytes as they came, in whatever pieces; the whole lines in them.
  [[nodiscard]] std::vector<ScaleEvent> take(std::string_view bytes);
  /// To be called when the scale has been silent for a second: it sends a line only when its key is pressed,
  /// and the line stands.
  [[nodiscard]] std::optional<ScaleEvent> quiet();
  /// Nothing until it is known.
  [[nodiscard]] const std::optional<ScaleShape>& shape() const { return shape_; }

 private:
  [[nodiscard]] ScaleEvent understand(const std::string& line);
  [[nodiscard]] ScaleEvent heldBack(const std::string& line, ScaleFault fault);
  void learn(const std::string& line, const ScaleLine& read);
  [[nodiscard]] bool fits(const std::string& line, const ScaleLine& read);
  [[nodiscard]] bool settles(const ScaleLine& read) const;

  std::optional<ScaleUnit> unit_;
  std::optional<ScaleShape> shape_{};
  std::deque<Sample> samples_{};
  int misfits_ = 0;
  std::string pending_{};
  bool skipping_ = false;  ///< within a line that is too long
  std::optional<ScaleLine> last_{};
  std::optional<ScaleEvent> unsettled_{};
};

}  // namespace tarebowl::intake
