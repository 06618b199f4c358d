// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/scale_stream.h"

#include <algorithm>
#include <utility>
#include <variant>

namespace tarebowl::intake {
namespace {

/// No scale's line is longer; more means that its end was lost or the port's speed is wrong.
constexpr std::size_t kLongestLine = 64;
/// So many lines show how a scale shapes them; so many in a row that are shaped otherwise show that it has
/// changed (another unit was chosen on it).
constexpr std::size_t kLinesToLearn = 4;
constexpr int kMisfitsToRelearn = 4;

/// Ends a line, or marks begin and end of it on some scales.
bool endsLine(char c) {
  return c == '\r' || c == '\n' || c == '\x02' || c == '\x03';
}

bool statesUnit(const ScaleStream::Sample& sample) {
  return sample.read.unit.has_value();
}

ScaleShape::SaysUnit unitRule(const std::deque<ScaleStream::Sample>& samples) {
  if (std::ranges::none_of(samples, statesUnit)) return ScaleShape::SaysUnit::Never;
  return std::ranges::all_of(samples, statesUnit) ? ScaleShape::SaysUnit::Always
                                                  : ScaleShape::SaysUnit::WhenSteady;
}

/// Of the lines with a unit where there are any; nothing where they differ.
std::optional<std::size_t> commonLength(const std::deque<ScaleStream::Sample>& samples) {
  const bool anyUnit = std::ranges::any_of(samples, statesUnit);
  std::optional<std::size_t> length;
  for (const ScaleStream::Sample& sample : samples) {
    if (anyUnit && !statesUnit(sample)) continue;
    if (length && *length != sample.length) return std::nullopt;
    length = sample.length;
  }
  return length;
}

}  // namespace

ScaleStream::ScaleStream(std::optional<ScaleUnit> unit) : unit_(unit) {}

std::vector<ScaleEvent> ScaleStream::take(std::string_view bytes) {
  std::vector<ScaleEvent> events;
  for (const char byte : bytes) {
    if (endsLine(byte)) {
      if (!skipping_ && pending_.find_first_not_of(' ') != std::string::npos)
        events.push_back(understand(pending_));
      skipping_ = false;
      pending_.clear();
      continue;
    }
    if (skipping_) continue;
    pending_ += byte;
    if (pending_.size() <= kLongestLine) continue;
    events.push_back(heldBack(pending_, ScaleFault::Garbled));
    pending_.clear();
    skipping_ = true;
  }
  return events;
}

std::optional<ScaleEvent> ScaleStream::quiet() {
  auto event = std::exchange(unsettled_, std::nullopt);
  if (event) event->settled = true;
  return event;
}

ScaleEvent ScaleStream::heldBack(const std::string& line, ScaleFault fault) {
  last_.reset();
  unsettled_.reset();
  return {.line = line, .mass = {}, .settled = false, .fault = fault};
}

ScaleEvent ScaleStream::understand(const std::string& line) {
  const auto reading = readScaleLine(line);
  if (const auto* fault = std::get_if<ScaleFault>(&reading)) return heldBack(line, *fault);
  const ScaleLine read = std::get<ScaleLine>(reading);
  if (shape_ && !fits(line, read)) {
    if (++misfits_ < kMisfitsToRelearn) return heldBack(line, ScaleFault::Garbled);
    shape_.reset();
    samples_.clear();
  }
  misfits_ = 0;
  learn(line, read);
  // A unit that is missing on a scale that says it at rest is not guessed: the pan moves.
  const auto unit = read.unit ? read.unit : unit_;
  const bool moving = !read.unit && shape_ && shape_->saysUnit == ScaleShape::SaysUnit::WhenSteady;
  if (moving || !unit) return heldBack(line, ScaleFault::NoUnit);
  ScaleEvent event{.line = line, .mass = toGrams(read.number, *unit), .settled = settles(read), .fault = {}};
  last_ = read;
  unsettled_.reset();
  if (!event.settled && read.steady.value_or(true)) unsettled_ = event;
  return event;
}

bool ScaleStream::settles(const ScaleLine& read) const {
  if (read.steady) return *read.steady;
  return last_ && last_->number == read.number && last_->unit == read.unit;
}

void ScaleStream::learn(const std::string& line, const ScaleLine& read) {
  if (shape_) return;
  samples_.push_back({line.size(), read});
  if (samples_.size() < kLinesToLearn) return;
  const int decimals = samples_.front().read.decimals;
  const bool sameDecimals =
      std::ranges::all_of(samples_, [&](const Sample& sample) { return sample.read.decimals == decimals; });
  if (!sameDecimals) {  // a byte was lost among them, or another unit chosen
    samples_.pop_front();
    return;
  }
  shape_ = ScaleShape{.length = commonLength(samples_), .saysUnit = unitRule(samples_), .decimals = decimals};
}

bool ScaleStream::fits(const std::string& line, const ScaleLine& read) {
  if (shape_->decimals != read.decimals) return false;
  using SaysUnit = ScaleShape::SaysUnit;
  if (!read.unit && shape_->saysUnit != SaysUnit::Never) {
    shape_->saysUnit = SaysUnit::WhenSteady;  // the first lines were all of a pan at rest
    return true;
  }
  if (read.unit && shape_->saysUnit == SaysUnit::Never) {
    shape_->saysUnit = SaysUnit::WhenSteady;  // they were all of a moving pan
    shape_->length = line.size();
  }
  return !shape_->length || *shape_->length == line.size();
}

}  // namespace tarebowl::intake
