// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/lexicographic_simplex.h"

#include <algorithm>
#include <cmath>

// The tableau: how it is set up and changed. The two methods and the reading stand in files of their own.

namespace tarebowl::solver {
namespace {

constexpr double kInOrder = 1e-9;   // a slope this far out of its range is in order
constexpr double kHolds = 1e-11;    // a value this far outside its piece lies in it, relative to 1 + its size
constexpr double kRounding = 1e-9;  // the same for one whose contradiction is let be
constexpr double kNone = 1e-11;     // of the higher level: rounding, beside the terms that made it
constexpr double kPivot = 1e-10;    // no pivot is smaller
constexpr double kLongest = 1e8;    // weight at which all start anew
constexpr TwoLevel kNothing{};

TwoLevel negative(const TwoLevel& a) {
  return {-a.high, -a.low};
}
bool isOutOfOrder(const TwoLevel& slack) {
  return slack.high < -kInOrder || (slack.high <= kInOrder && slack.low < -kInOrder);
}

}  // namespace

void LexicographicSimplex::assign(const RowMatrix& rows, std::vector<Band> bands) {
  rows_ = rows;
  bands_ = std::move(bands);
  const Eigen::Index m = rowCount();
  const Eigen::Index n = columnCount();
  s_.tableau.resize(m, n);
  for (Eigen::VectorXd* const perColumn : {&s_.gradientHigh, &s_.gradientLow, &s_.nonbasicValue})
    perColumn->setZero(n);
  for (Eigen::VectorXd* const perRow : {&s_.basicValue, &s_.weight, &basicRate_}) perRow->setZero(m);
  s_.nonbasic.resize(std::size_t(n));
  s_.basic.resize(std::size_t(m));
  s_.slot.resize(std::size_t(m + n));
  s_.isAtHigh.assign(std::size_t(n), 0);
  s_.piece.assign(std::size_t(m), Piece::Within);
  s_.isLetBe.assign(std::size_t(m + n), 0);
  limit_.resize(std::size_t(n));
  flipped_.resize(std::size_t(n));
  distance_.resize(std::size_t(m));
  reached_.resize(std::size_t(m));
  isNew_ = true;
  isOld_ = false;
}

TwoLevel LexicographicSimplex::slopeIn(const Band& band, Piece piece) {
  return piece == Piece::Within ? band.slope : piece == Piece::Above ? band.price : negative(band.price);
}
double LexicographicSimplex::lowOf(const Band& band, Piece piece) {
  return piece == Piece::Below ? -kInfinity : piece == Piece::Within ? band.low : band.high;
}
double LexicographicSimplex::highOf(const Band& band, Piece piece) {
  return piece == Piece::Below ? band.low : piece == Piece::Within ? band.high : kInfinity;
}

/// The piece beyond the upper (lower) end of one; nothing where no value may lie there.
std::optional<LexicographicSimplex::Piece> LexicographicSimplex::next(const Band& band, Piece piece,
                                                                      bool up) {
  if (piece == (up ? Piece::Above : Piece::Below)) return std::nullopt;
  if (piece == (up ? Piece::Below : Piece::Above)) return Piece::Within;
  if (!band.price.isFinite()) return std::nullopt;
  return up ? Piece::Above : Piece::Below;
}

/// Where a nonbasic variable comes to lie when it starts to move.
LexicographicSimplex::Piece LexicographicSimplex::pieceEntered(Eigen::Index slot, bool up) const {
  const bool isAtHigh = s_.isAtHigh[std::size_t(slot)] != 0;
  if (nonbasicBand(slot).isFixed()) return up ? Piece::Above : Piece::Below;
  if (up) return isAtHigh ? Piece::Above : Piece::Within;
  return isAtHigh ? Piece::Within : Piece::Below;
}

TwoLevel LexicographicSimplex::slack(Eigen::Index slot, bool up) const {
  const TwoLevel gradient{s_.gradientHigh[slot], s_.gradientLow[slot]};
  const Piece piece = pieceEntered(slot, up);
  const Band& band = nonbasicBand(slot);
  if (piece != Piece::Within && !band.price.isFinite()) return kWithoutEnd;
  const TwoLevel slope = slopeIn(band, piece);
  TwoLevel sum = up ? TwoLevel{slope.high + gradient.high, slope.low + gradient.low}
                    : TwoLevel{-slope.high - gradient.high, -slope.low - gradient.low};
  if (std::abs(sum.high) <= kNone * (std::abs(slope.high) + std::abs(gradient.high) + 1.0)) sum.high = 0.0;
  return sum;
}

bool LexicographicSimplex::isInOrder(Eigen::Index slot) const {
  return !isOutOfOrder(slack(slot, true)) && !isOutOfOrder(slack(slot, false));
}

bool LexicographicSimplex::isDualFeasible() const {
  for (Eigen::Index j = 0; j < columnCount(); ++j) {
    if (!isInOrder(j)) return false;
  }
  return true;
}

/// How far a basic variable lies outside its piece, and on which side.
double LexicographicSimplex::excess(Eigen::Index row, bool& up) const {
  const double value = s_.basicValue[row];
  const Piece piece = s_.piece[std::size_t(row)];
  const Band& own = basicBand(row);
  const double above = value - highOf(own, piece);
  const double below = lowOf(own, piece) - value;
  up = above > below;
  const double by = std::max(above, below);
  const bool isLetBe = s_.isLetBe[std::size_t(s_.basic[std::size_t(row)])] != 0;
  return by > (isLetBe ? kRounding : kHolds) * (1.0 + std::abs(value)) ? by : 0.0;
}

bool LexicographicSimplex::isPrimalFeasible() const {
  bool up = false;
  for (Eigen::Index i = 0; i < rowCount(); ++i) {
    if (excess(i, up) > 0.0) return false;
  }
  return true;
}

void LexicographicSimplex::addToGradient(Eigen::Index row, const TwoLevel& change) {
  if (change.low != 0.0) s_.gradientLow += change.low * s_.tableau.row(row).transpose();
  if (change.high == 0.0) return;
  for (Eigen::Index j = 0; j < columnCount(); ++j)
    s_.gradientHigh[j] = cancelled(s_.gradientHigh[j], change.high * s_.tableau(row, j));
}

void LexicographicSimplex::moveNonbasic(Eigen::Index slot, double by) {
  s_.nonbasicValue[slot] += by;
  s_.basicValue += by * s_.tableau.col(slot);
}

void LexicographicSimplex::startFromRows() {
  const auto n = int(columnCount());
  s_.tableau = rows_;
  for (int j = 0; j < n; ++j) {
    s_.nonbasic[std::size_t(j)] = s_.slot[std::size_t(j)] = j;
    const Band& own = bands_[std::size_t(j)];
    s_.isAtHigh[std::size_t(j)] = own.slope < kNothing ? 1 : 0;
  }
  for (int i = 0; i < int(rowCount()); ++i) {
    const int slack = n + i;
    s_.basic[std::size_t(i)] = s_.slot[std::size_t(slack)] = slack;
    s_.piece[std::size_t(i)] = Piece::Within;
  }
  s_.weight.setOnes();
  sinceRebuild_ = 0;
}

/// The tableau anew for the present basis, from the rows: the largest pivots first. Variables that cannot be
/// made nonbasic together stay basic.
void LexicographicSimplex::rebuild() {
  const Eigen::Index n = columnCount();
  std::vector<char> isWanted(std::size_t(n + rowCount()), 0);
  std::vector<char> wasAtHigh(isWanted.size(), 0);
  std::vector<Piece> piece(isWanted.size(), Piece::Within);
  for (Eigen::Index j = 0; j < n; ++j) {
    const auto variable = std::size_t(s_.nonbasic[std::size_t(j)]);
    isWanted[variable] = 1;
    wasAtHigh[variable] = s_.isAtHigh[std::size_t(j)];
  }
  for (std::size_t i = 0; i < s_.basic.size(); ++i) piece[std::size_t(s_.basic[i])] = s_.piece[i];
  startFromRows();
  for (;;) {
    double best = kPivot;
    Eigen::Index row = -1;
    Eigen::Index column = -1;
    for (Eigen::Index i = 0; i < rowCount(); ++i) {
      if (isWanted[std::size_t(s_.basic[std::size_t(i)])] == 0) continue;
      for (Eigen::Index j = 0; j < n; ++j) {
        if (isWanted[std::size_t(s_.nonbasic[std::size_t(j)])] != 0) continue;
        if (std::abs(s_.tableau(i, j)) <= best) continue;
        best = std::abs(s_.tableau(i, j));
        row = i;
        column = j;
      }
    }
    if (row < 0) break;
    pivot(row, column);
  }
  for (Eigen::Index j = 0; j < n; ++j)
    s_.isAtHigh[std::size_t(j)] = wasAtHigh[std::size_t(s_.nonbasic[std::size_t(j)])];
  for (std::size_t i = 0; i < s_.basic.size(); ++i) s_.piece[i] = piece[std::size_t(s_.basic[i])];
}

bool LexicographicSimplex::canBePlaced() const {
  return std::ranges::all_of(s_.nonbasic, [&](int variable) {
    const Band& own = band(variable);
    return own.low > -kInfinity || own.high < kInfinity;
  });
}

void LexicographicSimplex::placeNonbasic(Eigen::Index slot) {
  const Band& own = nonbasicBand(slot);
  char& isAtHigh = s_.isAtHigh[std::size_t(slot)];
  if (isAtHigh != 0 && !(own.high < kInfinity)) isAtHigh = 0;
  if (isAtHigh == 0 && !(own.low > -kInfinity)) isAtHigh = 1;
  s_.nonbasicValue[slot] = isAtHigh != 0 ? own.high : own.low;
}

/// Values and slopes anew, as the bands are now.
void LexicographicSimplex::placeAll() {
  s_.gradientHigh.setZero();
  s_.gradientLow.setZero();
  for (Eigen::Index i = 0; i < rowCount(); ++i) {
    Piece& piece = s_.piece[std::size_t(i)];
    const Band& own = basicBand(i);
    if (piece != Piece::Within && !own.price.isFinite()) piece = Piece::Within;
    if (piece == Piece::Above && !(own.high < kInfinity)) piece = Piece::Within;
    if (piece == Piece::Below && !(own.low > -kInfinity)) piece = Piece::Within;
    addToGradient(i, slopeIn(own, piece));
  }
  for (Eigen::Index j = 0; j < columnCount(); ++j) placeNonbasic(j);
  recomputeValues();
}

/// Moves nonbasic variables to their other bound where their slope asks for it. False: some slope is out of
/// order at either.
bool LexicographicSimplex::flipIntoOrder() {
  for (Eigen::Index j = 0; j < columnCount(); ++j) {
    if (isInOrder(j)) continue;
    const Band& own = nonbasicBand(j);
    if (!(own.low > -kInfinity) || !(own.high < kInfinity)) return false;
    char& isAtHigh = s_.isAtHigh[std::size_t(j)];
    isAtHigh = isAtHigh != 0 ? 0 : 1;
    if (!isInOrder(j)) return false;
    moveNonbasic(j, isAtHigh != 0 ? own.high - own.low : own.low - own.high);
  }
  return true;
}

/// A column that is not in use changes its own column of the tableau alone.
void LexicographicSimplex::writeColumn(Eigen::Index slot) {
  const int column = s_.nonbasic[std::size_t(slot)];
  const Eigen::Index n = columnCount();
  Eigen::VectorXd used = Eigen::VectorXd::Zero(n);  // what the basic columns give way by
  for (Eigen::Index k = 0; k < n; ++k) {
    const int held = s_.nonbasic[std::size_t(k)];
    if (held < n) continue;
    const double coefficient = rows_(held - n, column);
    if (coefficient == 0.0) continue;
    for (Eigen::Index i = 0; i < rowCount(); ++i) {
      if (s_.basic[std::size_t(i)] < n) used[s_.basic[std::size_t(i)]] -= coefficient * s_.tableau(i, k);
    }
  }
  for (Eigen::Index i = 0; i < rowCount(); ++i) {
    const int variable = s_.basic[std::size_t(i)];
    s_.tableau(i, slot) =
        variable < n ? used[variable] : rows_(variable - n, column) + rows_.row(variable - n).dot(used);
  }
}

void LexicographicSimplex::replaceColumn(Eigen::Index column, const Eigen::VectorXd& coefficients,
                                         const Band& band) {
  rows_.col(column) = coefficients;
  bands_[std::size_t(column)] = band;
  const int slot = s_.slot[std::size_t(column)];
  if (isNew_ || slot >= columnCount())
    isOld_ = true;
  else
    writeColumn(slot);
}

void LexicographicSimplex::pivot(Eigen::Index row, Eigen::Index column) {
  const double inverse = 1.0 / s_.tableau(row, column);
  const double ownWeight = s_.weight[row] * inverse * inverse;
  s_.tableau.row(row) *= -inverse;
  s_.tableau(row, column) = inverse;
  for (Eigen::Index i = 0; i < rowCount(); ++i) {
    const double factor = s_.tableau(i, column);
    if (i == row || factor == 0.0) continue;
    s_.tableau(i, column) = 0.0;
    s_.tableau.row(i) += factor * s_.tableau.row(row);
    s_.weight[i] = std::max(s_.weight[i], factor * factor * ownWeight);
  }
  s_.weight[row] = std::max(1.0, ownWeight);
  if (s_.weight[row] > kLongest) s_.weight.setOnes();
  std::swap(s_.basic[std::size_t(row)], s_.nonbasic[std::size_t(column)]);
  s_.slot[std::size_t(s_.basic[std::size_t(row)])] = int(columnCount() + row);
  s_.slot[std::size_t(s_.nonbasic[std::size_t(column)])] = int(column);
  ++sinceRebuild_;
}

/// The variable of slot becomes basic in the piece that it enters; that of row stays at the end of its piece.
void LexicographicSimplex::exchange(Eigen::Index row, Eigen::Index slot, Piece entered, bool leavesUp) {
  const Band& leaving = basicBand(row);
  const Piece left = s_.piece[std::size_t(row)];
  const double at = leavesUp ? highOf(leaving, left) : lowOf(leaving, left);
  const bool isAtHigh = leavesUp ? left == Piece::Within : left == Piece::Above;
  const TwoLevel slope = slopeIn(leaving, left);
  const TwoLevel into = slopeIn(nonbasicBand(slot), entered);
  const double alpha = s_.tableau(row, slot);
  const TwoLevel change{-cancelled(s_.gradientHigh[slot], into.high) / alpha,
                        -(s_.gradientLow[slot] + into.low) / alpha};
  addToGradient(row, change);
  const double move = (at - s_.basicValue[row]) / alpha;
  const double value = s_.nonbasicValue[slot] + move;
  moveNonbasic(slot, move);
  pivot(row, slot);
  s_.basicValue[row] = value;
  s_.piece[std::size_t(row)] = entered;
  s_.nonbasicValue[slot] = at;
  s_.isAtHigh[std::size_t(slot)] = isAtHigh ? 1 : 0;
  s_.gradientHigh[slot] = -cancelled(slope.high, change.high);
  s_.gradientLow[slot] = -(slope.low + change.low);
}

LexicographicSimplex::Outcome LexicographicSimplex::run() {
  constexpr int kRounds = 6;
  iterations_ = 0;
  most_ = int(30 * (rowCount() + columnCount()) + 500);
  isCareful_ = false;
  bool isFresh = isNew_ || isOld_;
  if (isFresh) startFromRows();
  isNew_ = isOld_ = false;
  std::ranges::fill(s_.isLetBe, char(0));
  if (!canBePlaced()) startFromRows();
  for (int round = 0; round < kRounds; ++round) {
    placeAll();
    Outcome outcome = Outcome::Optimal;
    if (!isDualFeasible() && isPrimalFeasible()) {
      outcome = runPrimal();
    } else if (isDualFeasible() || flipIntoOrder()) {
      outcome = runDual();
    } else {
      startFromRows();
      isFresh = true;
      continue;
    }
    // Round and round on one vertex by what is rounding: whether it is an answer is verified by whoever
    // asked.
    if (outcome == Outcome::IterationLimit) return isPrimalFeasible() ? Outcome::Optimal : outcome;
    const bool wasFresh = isFresh && sinceRebuild_ == 0;
    if (outcome == Outcome::Optimal) {
      bringBack();
      placeAll();  // what was added up step by step, anew
      if (isPrimalFeasible() && isDualFeasible()) return outcome;
    } else if (wasFresh) {
      return outcome;
    }
    rebuild();
    sinceRebuild_ = 0;
    isFresh = true;
    if (outcome != Outcome::Optimal && round + 2 >= kRounds) return outcome;
  }
  return Outcome::IterationLimit;
}

void LexicographicSimplex::refresh() {
  constexpr int kRebuildAfter = 50;
  if (sinceRebuild_ > kRebuildAfter) {
    rebuild();
    sinceRebuild_ = 0;
  }
  placeAll();
}

}  // namespace tarebowl::solver
