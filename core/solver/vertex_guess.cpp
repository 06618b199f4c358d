// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/vertex_guess.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace tarebowl::solver {
namespace {

constexpr float kNever = std::numeric_limits<float>::infinity();
constexpr float kStill = 1e-5F;      // an entry of the table that moves nothing
constexpr float kTogether = 1e-6F;   // breakpoints this near each other come together
constexpr float kNoSlope = 1e-5F;    // a slope along an edge that is none, beside the largest price
constexpr float kHard = 100.0F;      // what counts as the price of a row that must hold, beside the largest
constexpr Eigen::Index kVector = 8;  // columns of the table come in whole vectors

using At = VertexGuess::At;

Eigen::Index firstOf(const Eigen::VectorXf& numbers, float wanted) {
  return std::find(numbers.begin(), numbers.end(), wanted) - numbers.begin();
}

}  // namespace

void VertexGuess::reserve(Eigen::Index rows, Eigen::Index columns) {
  rows_ = rows;
  columns_ = columns;
  width_ = (columns + kVector - 1) / kVector * kVector;
  table_.setZero(rows * width_);
  for (Floats* perVariable : {&lower_, &upper_, &price_, &cost_}) perVariable->setZero(rows + columns);
  for (Floats* perColumn : {&gradient_, &falling_, &rising_, &lengths_, &nonbasicValue_, &perColumn_})
    perColumn->setZero(width_);
  for (Floats* perRow : {&value_, &low_, &high_, &slope_, &rate_, &kink_, &perRow_}) perRow->setZero(rows);
  at_.resize(std::size_t(rows + columns));
  basic_.resize(std::size_t(rows));
  nonbasic_.resize(std::size_t(columns));
}

void VertexGuess::setRow(Eigen::Index i, const double* coefficients, double lower, double upper,
                         double price) {
  float* const row = table_.data() + i * width_;
  for (Eigen::Index j = 0; j < columns_; ++j) row[j] = static_cast<float>(coefficients[j]);
  lower_[columns_ + i] = static_cast<float>(lower);
  upper_[columns_ + i] = static_cast<float>(upper);
  price_[columns_ + i] = static_cast<float>(price);
}

void VertexGuess::setColumn(Eigen::Index j, double lower, double upper, double cost, double start) {
  lower_[j] = static_cast<float>(lower);
  upper_[j] = static_cast<float>(upper);
  cost_[j] = static_cast<float>(cost);
  price_[j] = kNever;
  nonbasicValue_[j] = static_cast<float>(std::clamp(start, lower, upper));
}

float VertexGuess::slopeAt(int variable, At piece) const {
  if (piece == At::Below) return cost_[variable] - price_[variable];
  if (piece == At::Above) return cost_[variable] + price_[variable];
  return cost_[variable];
}

float VertexGuess::boundBelow(int variable, At piece) const {
  return piece == At::Below ? -kNever : piece == At::Above ? upper_[variable] : lower_[variable];
}

float VertexGuess::boundAbove(int variable, At piece) const {
  return piece == At::Above ? kNever : piece == At::Below ? lower_[variable] : upper_[variable];
}

/// Where a nonbasic variable stands, and the slopes of its own cost on both sides of there.
void VertexGuess::settle(Eigen::Index column, At at) {
  const int variable = nonbasic_[std::size_t(column)];
  at_[std::size_t(variable)] = at;
  if (at == At::Lower) nonbasicValue_[column] = lower_[variable];
  if (at == At::Upper) nonbasicValue_[column] = upper_[variable];
  falling_[column] = cost_[variable] - (at == At::Lower ? price_[variable] : 0.0F);
  rising_[column] = cost_[variable] + (at == At::Upper ? price_[variable] : 0.0F);
}

/// The piece in which a basic variable lies.
void VertexGuess::setPiece(Eigen::Index row, At at) {
  const int variable = basic_[std::size_t(row)];
  at_[std::size_t(variable)] = at;
  low_[row] = boundBelow(variable, at);
  high_[row] = boundAbove(variable, at);
  slope_[row] = slopeAt(variable, at);
}

At VertexGuess::pieceOf(int variable, float value) const {
  if (value < lower_[variable]) return At::Below;
  return value > upper_[variable] ? At::Above : At::Inside;
}

void VertexGuess::placeRows() {
  most_ = 0.0F;
  for (Eigen::Index i = 0; i < rows_; ++i) {
    if (price_[columns_ + i] < kNever) most_ = std::max(most_, price_[columns_ + i]);
  }
  if (!(most_ > 0)) most_ = 1.0F;
  for (Eigen::Index i = 0; i < rows_; ++i) {
    if (!(price_[columns_ + i] < kNever)) price_[columns_ + i] = kHard * most_;
  }
  for (Eigen::Index j = 0; j < columns_; ++j) {
    nonbasic_[std::size_t(j)] = static_cast<int>(j);
    const float value = nonbasicValue_[j];
    settle(j, value <= lower_[j] ? At::Lower : value >= upper_[j] ? At::Upper : At::Inside);
  }
  gradient_.setZero();
  lengths_.setOnes();
  for (Eigen::Index i = 0; i < rows_; ++i) {
    const auto row = table_.segment(i * width_, width_);
    const Eigen::Index variable = columns_ + i;
    basic_[std::size_t(i)] = static_cast<int>(variable);
    value_[i] = row.dot(nonbasicValue_);
    setPiece(i, pieceOf(static_cast<int>(variable), value_[i]));
    if (slope_[i] != 0.0F) gradient_ += slope_[i] * row;
    lengths_.array() += row.array().square();
  }
}

VertexGuess::Edge VertexGuess::steepest() {
  const auto rising = rising_.array() + gradient_.array();
  const auto falling = -(falling_.array() + gradient_.array());
  perColumn_ = rising.min(falling);
  perColumn_ = (perColumn_.array() < -kNoSlope * most_).select(perColumn_, 0.0F);
  perColumn_ = perColumn_.array().square() / lengths_.array();
  const float most = perColumn_.maxCoeff();
  if (!(most > 0)) return {};
  const Eigen::Index j = firstOf(perColumn_, most);
  const float up = rising_[j] + gradient_[j];
  const float down = -(falling_[j] + gradient_[j]);
  return {j, up < down, std::min(up, down)};
}

/// How far along the edge each basic variable comes to the end of its piece.
void VertexGuess::fillKinks(const Edge& edge) {
  const float* const entries = table_.data() + edge.column;
  const float direction = edge.rises ? 1.0F : -1.0F;
  float* __restrict const rate = rate_.data();
  float* __restrict const kink = kink_.data();
  const float* const low = low_.data();
  const float* const high = high_.data();
  const float* const value = value_.data();
  for (Eigen::Index i = 0; i < rows_; ++i) rate[i] = direction * entries[i * width_];
  for (Eigen::Index i = 0; i < rows_; ++i) {
    const float end = rate[i] > 0 ? high[i] : low[i];
    const float distance = (end - value[i]) / rate[i];
    const float ahead = distance > 0 ? distance : 0.0F;
    kink[i] = std::abs(rate[i]) > kStill ? ahead : kNever;
  }
}

void VertexGuess::passRow(Eigen::Index row) {
  const At from = at_[std::size_t(basic_[std::size_t(row)])];
  const bool up = rate_[row] > 0;
  const float before = slope_[row];
  setPiece(row, from == At::Inside ? (up ? At::Above : At::Below) : At::Inside);
  gradient_ += (slope_[row] - before) * table_.segment(row * width_, width_);
  kink_[row] = std::max(0.0F, ((up ? high_[row] : low_[row]) - value_[row]) / rate_[row]);
}

/// The piece that the moving variable enters from where it stands.
At VertexGuess::pieceAhead(At at, bool rises) {
  if (at == At::Lower) return rises ? At::Inside : At::Below;
  if (at == At::Upper) return rises ? At::Above : At::Inside;
  return at;
}

/// How far the moving variable comes within a piece of its own.
float VertexGuess::ownRoom(const Edge& edge, At piece) const {
  const int variable = nonbasic_[std::size_t(edge.column)];
  const float from = nonbasicValue_[edge.column];
  if (edge.rises) return piece == At::Above ? kNever : boundAbove(variable, piece) - from;
  return piece == At::Below ? kNever : from - boundBelow(variable, piece);
}

/// The row that comes to a bound first; of those that come together the one that moves fastest.
Eigen::Index VertexGuess::firstKink(float first) const {
  const float together = first + kTogether * (1.0F + first);
  const float* const kink = kink_.data();
  float fastest = 0.0F;
  Eigen::Index fastestRow = -1;
  for (Eigen::Index i = 0; i < rows_; ++i) {
    if (!(kink[i] <= together) || !(std::abs(rate_[i]) > fastest)) continue;
    fastest = std::abs(rate_[i]);
    fastestRow = i;
  }
  return fastestRow;
}

/// Down one edge to where it no longer goes down. False: it has no end.
bool VertexGuess::follow(const Edge& edge) {
  fillKinks(edge);
  const int variable = nonbasic_[std::size_t(edge.column)];
  float slope = edge.slope;
  At piece = pieceAhead(at_[std::size_t(variable)], edge.rises);
  float room = ownRoom(edge, piece);
  for (;;) {
    const float first = kink_.minCoeff();
    if (room <= first) {
      if (room == kNever) return false;
      const At end = (piece == At::Inside) == edge.rises ? At::Upper : At::Lower;
      slope += price_[variable];
      if (!(slope < 0)) {
        value_ += room * rate_;
        settle(edge.column, end);
        return true;
      }
      piece = pieceAhead(end, edge.rises);
      room = ownRoom(edge, piece);
      continue;
    }
    const Eigen::Index row = firstKink(first);
    if (row < 0) return false;
    slope += std::abs(rate_[row]) * price_[basic_[std::size_t(row)]];
    if (!(slope < 0)) {
      at_[std::size_t(variable)] = piece;
      exchange(row, edge);
      return true;
    }
    passRow(row);
  }
}

/// The moving variable becomes basic in the piece it has come to; the one of the row stays at its bound.
void VertexGuess::exchange(Eigen::Index row, const Edge& edge) {
  const Eigen::Index j = edge.column;
  const int entering = nonbasic_[std::size_t(j)];
  const At piece = at_[std::size_t(entering)];
  const bool up = rate_[row] > 0;
  const At left = (at_[std::size_t(basic_[std::size_t(row)])] == At::Inside) == up ? At::Upper : At::Lower;
  const float distance = kink_[row];
  value_ += distance * rate_;
  const float value = nonbasicValue_[j] + (edge.rises ? distance : -distance);
  const auto tableRow = table_.segment(row * width_, width_);
  const float factor = (slopeAt(entering, piece) + gradient_[j]) / tableRow[j];
  const float slope = slope_[row];
  gradient_ -= factor * tableRow;
  pivot(row, j);
  std::swap(basic_[std::size_t(row)], nonbasic_[std::size_t(j)]);
  value_[row] = value;
  setPiece(row, piece);
  gradient_[j] = factor - slope;
  settle(j, left);
}

/// Adds multiples of a row to the others, as many columns at a time as stay in registers together with the
/// squares of their lengths.
template <int kVectors>
void VertexGuess::addToOthers(Eigen::Index row, Eigen::Index from) {
  using Vector = Eigen::Array<float, kVector, 1>;
  using Stored = Eigen::Map<Vector>;
  float* const table = table_.data() + from;
  std::array<Vector, kVectors> own;
  std::array<Vector, kVectors> squares;
  for (int v = 0; v < kVectors; ++v) {
    own[std::size_t(v)] = Stored(table + row * width_ + v * kVector);
    squares[std::size_t(v)] = 1.0F + own[std::size_t(v)].square();
  }
  for (Eigen::Index i = 0; i < rows_; ++i) {
    if (i == row) continue;
    float* const other = table + i * width_;
    for (int v = 0; v < kVectors; ++v) {
      Stored stored(other + v * kVector);
      const Vector entries = stored + perRow_[i] * own[std::size_t(v)];
      stored = entries;
      squares[std::size_t(v)] += entries.square();
    }
  }
  for (int v = 0; v < kVectors; ++v) Stored(lengths_.data() + from + v * kVector) = squares[std::size_t(v)];
}

void VertexGuess::pivot(Eigen::Index row, Eigen::Index column) {
  auto own = table_.segment(row * width_, width_);
  const float inverse = 1.0F / own[column];
  for (Eigen::Index i = 0; i < rows_; ++i) {
    float& entry = table_[i * width_ + column];
    perRow_[i] = entry;
    entry = 0.0F;
  }
  own *= -inverse;
  own[column] = inverse;
  Eigen::Index from = 0;
  for (; from + 4 * kVector <= width_; from += 4 * kVector) addToOthers<4>(row, from);
  for (; from + 2 * kVector <= width_; from += 2 * kVector) addToOthers<2>(row, from);
  for (; from < width_; from += kVector) addToOthers<1>(row, from);
}

bool VertexGuess::stepDown() {
  const int most = 4 * static_cast<int>(rows_ + columns_);
  for (steps_ = 0; steps_ < most; ++steps_) {
    const Edge edge = steepest();
    if (edge.column < 0) return true;
    if (!follow(edge)) return false;
  }
  return false;
}

bool VertexGuess::run() {
  placeRows();
  return stepDown();
}

void VertexGuess::moveColumn(Eigen::Index j, double lower, double upper) {
  lower_[j] = static_cast<float>(lower);
  upper_[j] = static_cast<float>(upper);
}

/// What is held at a limit that moved goes with it; the pieces of the others follow from their values.
void VertexGuess::placeAgain() {
  price_.head(columns_).setConstant(kHard * most_);
  for (Eigen::Index j = 0; j < columns_; ++j) {
    const int variable = nonbasic_[std::size_t(j)];
    const float before = nonbasicValue_[j];
    const At piece = pieceOf(variable, before);
    At at = at_[std::size_t(variable)];
    if (at == At::Inside && piece != At::Inside) at = piece == At::Below ? At::Lower : At::Upper;
    settle(j, at);
    const float by = nonbasicValue_[j] - before;
    if (by == 0.0F) continue;
    for (Eigen::Index i = 0; i < rows_; ++i) value_[i] += by * table_[i * width_ + j];
  }
  gradient_.setZero();
  for (Eigen::Index i = 0; i < rows_; ++i) {
    setPiece(i, pieceOf(basic_[std::size_t(i)], value_[i]));
    if (slope_[i] != 0.0F) gradient_ += slope_[i] * table_.segment(i * width_, width_);
  }
}

bool VertexGuess::runOn() {
  placeAgain();
  if (!stepDown()) return false;
  return std::none_of(at_.begin(), at_.begin() + columns_,
                      [](At at) { return at == At::Below || at == At::Above; });
}

}  // namespace tarebowl::solver
