// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/shortfall_vertex.h"

#include "core/solver/power_of_two.h"

#include <algorithm>

namespace tarebowl::solver {
namespace {

using At = VertexGuess::At;

constexpr double kVerified = 1e-9;       // largest relative error of an answer that is returned
constexpr double kNoMultiplier = 1e-12;  // beside the largest one
constexpr int kMostGuesses = 50;         // from one table, which gathers rounding

double largestLimit(const ContinuousProgram& program, std::span<const char> far) {
  double largest = 0.0;
  for (Eigen::Index j = 0; j < program.upper.size(); ++j) {
    const bool isFar = !far.empty() && far[std::size_t(j)] != 0;
    largest = std::max({largest, program.lower[j], isFar ? 0.0 : program.upper[j]});
  }
  return largest > 0 ? largest : 1.0;
}

}  // namespace

ShortfallVertices::ShortfallVertices(const ContinuousProgram& program, std::span<const char> far)
    : program_(program),
      unit_(powerOfTwoNear(largestLimit(program, far) / 8)),
      scale_(program.rows.rows()),
      amount_(Eigen::VectorXd::Constant(program.rows.cols(), unit_)),
      none_(Eigen::VectorXd::Zero(program.rows.cols())) {
  guess_.reserve(program.rows.rows(), program.rows.cols());
  check_.reserve(program.rows.rows(), program.rows.cols());
}

std::optional<ShortfallVertex> ShortfallVertices::solve() {
  if (program_.rows.cols() == 0 || (program_.lower.array() > program_.upper.array()).any() ||
      (program_.rowLower.array() > program_.rowUpper.array()).any())
    return std::nullopt;
  ShortfallVertex answer;
  const bool wasWarm = guesses_ > 0;
  for (int round = wasWarm ? 0 : 1; round < 2; ++round) {
    if (guess() && take() && work(answer) && isVerified(answer)) return answer;
    guesses_ = 0;
  }
  return std::nullopt;
}

bool ShortfallVertices::guess() {
  if (guesses_ == 0 || guesses_ > kMostGuesses) return guessAnew();
  ++guesses_;
  for (Eigen::Index j = 0; j < none_.size(); ++j)
    guess_.moveColumn(j, program_.lower[j] / unit_, program_.upper[j] / unit_);
  return guess_.runOn();
}

bool ShortfallVertices::guessAnew() {
  Eigen::VectorXd row(none_.size());
  for (Eigen::Index i = 0; i < program_.rows.rows(); ++i) {
    scale_[i] = 1.0 / powerOfTwoNear(unit_ * program_.rows.row(i).cwiseAbs().maxCoeff());
    row = (unit_ * scale_[i]) * program_.rows.row(i).transpose();
    guess_.setRow(i, row.data(), program_.rowLower[i] * scale_[i], program_.rowUpper[i] * scale_[i],
                  program_.price[i] / scale_[i]);
  }
  for (Eigen::Index j = 0; j < none_.size(); ++j)
    guess_.setColumn(j, program_.lower[j] / unit_, program_.upper[j] / unit_, 0.0, 0.0);
  guesses_ = 1;
  return guess_.run();
}

/// Which constraints meet. False: a row that must hold is missed, or they do not meet in a point.
bool ShortfallVertices::take() {
  const Eigen::Index m = program_.rows.rows();
  used_.clear();
  held_.clear();
  x_.setZero(none_.size());
  multipliers_.setZero(m);
  bound_.setZero(m);
  for (Eigen::Index j = 0; j < x_.size(); ++j) {
    if (guess_.column(j) == At::Inside) used_.push_back(j);
    x_[j] = guess_.column(j) == At::Upper ? program_.upper[j] : program_.lower[j];
  }
  for (Eigen::Index i = 0; i < m; ++i) {
    const At at = guess_.row(i);
    if (at == At::Inside) continue;
    if (at == At::Lower || at == At::Upper) {
      held_.push_back(i);
      bound_[i] = at == At::Upper ? program_.rowUpper[i] : program_.rowLower[i];
      continue;
    }
    if (!(program_.price[i] < kInfinity)) return false;
    multipliers_[i] = at == At::Above ? program_.price[i] : -program_.price[i];
  }
  return used_.size() == held_.size();
}

bool ShortfallVertices::work(ShortfallVertex& answer) {
  if (!used_.empty()) {
    Eigen::MatrixXd corner = program_.rows(held_, used_);
    for (std::size_t k = 0; k < held_.size(); ++k) corner.row(Eigen::Index(k)) *= scale_[held_[k]];
    const Eigen::PartialPivLU<Eigen::MatrixXd> factor(corner);
    for (int round = 0; round < 2; ++round) correct(factor);
  }
  answer.x = x_.cwiseMax(program_.lower).cwiseMin(program_.upper);
  answer.multipliers = multipliers_;
  return answer.x.allFinite() && answer.multipliers.allFinite();
}

/// What is still missing of the bounds that are held, and of the balance of the columns in use.
void ShortfallVertices::correct(const Eigen::PartialPivLU<Eigen::MatrixXd>& factor) {
  Eigen::VectorXd missing(Eigen::Index(used_.size()));
  const Eigen::VectorXd activity = program_.rows * x_;
  const Eigen::VectorXd pushed = program_.rows.transpose() * multipliers_;
  for (std::size_t k = 0; k < held_.size(); ++k)
    missing[Eigen::Index(k)] = scale_[held_[k]] * (bound_[held_[k]] - activity[held_[k]]);
  const Eigen::VectorXd move = factor.solve(missing);
  for (std::size_t k = 0; k < used_.size(); ++k) missing[Eigen::Index(k)] = -pushed[used_[k]];
  const Eigen::VectorXd change = factor.transpose().solve(missing);
  for (std::size_t k = 0; k < used_.size(); ++k) {
    x_[used_[k]] += move[Eigen::Index(k)];
    multipliers_[held_[k]] += scale_[held_[k]] * change[Eigen::Index(k)];
  }
}

bool ShortfallVertices::isVerified(const ShortfallVertex& answer) {
  const PricedRows priced{
      program_.rows, program_.rowLower, program_.rowUpper, program_.price, program_.lower, program_.upper,
      1.0,           &amount_};
  check_.measure(program_.rows, answer.x);
  return check_.error(priced, none_, none_, answer.x, answer.multipliers, kNoMultiplier) <= kVerified;
}

std::optional<ShortfallVertex> shortfallVertex(const ContinuousProgram& program, std::span<const char> far) {
  return ShortfallVertices(program, far).solve();
}

}  // namespace tarebowl::solver
