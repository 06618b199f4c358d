// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/cone_newton.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::solver {
namespace {

constexpr int kMostRounds = 60;
constexpr int kPatience = 4;        // rounds without gain once it is good enough
constexpr int kStalled = 3;         // rounds without gain after which caution replaces speed
constexpr double kDone = 1e-12;     // nothing is left to be gained
constexpr double kVerified = 1e-9;  // largest relative error of the optimality conditions that is accepted
constexpr double kFirstDamping = 1e-2;
constexpr double kLeastDamping = 1e-9;
constexpr double kShortest = 1e-3;  // of a step

ConePoint ended(Status status, std::string reason) {
  ConePoint point;
  point.status = status;
  point.reason = std::move(reason);
  return point;
}

}  // namespace

ConeNewton::ConeNewton(const ConeRows& rows, const Box& box, const SmoothObjective& objective,
                       std::function<bool()> isOver)
    : rows_(rows),
      box_(box),
      objective_(objective),
      isOver_(std::move(isOver)),
      face_(rows, box, objective),
      isCurved_((objective.hessian.array() > 0).all()) {
  set_.reserve(rows.program().rows.rows(), rows.program().rows.cols());
}

double ConeNewton::merit(const Eigen::VectorXd& price, const Eigen::VectorXd& z) const {
  double sum = objective_.value(z);
  for (Eigen::Index i = 0; i < price.size(); ++i) {
    sum += (price[i] < kInfinity ? price[i] : hardPrice_) * rows_.violation(i, z);
  }
  return sum;
}

/// From now on no step may lose anything, and steps are held back.
void ConeNewton::goDown() {
  recent_.erase(recent_.begin(), recent_.end() - 1);
  damping_ = std::max(damping_, kFirstDamping);
}

void ConeNewton::remember(double merit) {
  recent_.push_back(merit);
  if (recent_.size() > 3) recent_.erase(recent_.begin());
}

bool ConeNewton::model(const Eigen::VectorXd& price, ConePoint& point, Eigen::VectorXd& to) {
  const ScaledProgram& program = rows_.program();
  const Eigen::VectorXd gradient = objective_.gradient(point.z);
  point.error = face_.judge(price, point);
  Eigen::VectorXd hessian = objective_.hessian;
  rows_.addDiagonalCurvature(point.z, point.multipliers, hessian);
  const double typical = std::max(gradient.cwiseAbs().maxCoeff(), 1.0);
  hessian.array() += damping_ * typical;
  hessian = hessian.cwiseMax(kLeastDamping * typical);
  set_.assign(face_.tangents(), hessian);
  for (Eigen::Index i = 0; i < price.size(); ++i) {
    set_.setRow(i, program.rowLower[i], program.rowUpper[i]);
    set_.setCap(i, price[i] < kInfinity ? TwoLevel{0.0, price[i]} : kWithoutEnd);
  }
  for (Eigen::Index j = 0; j < to.size(); ++j) {
    set_.setColumn(j, box_.lower[j], box_.upper[j]);
    set_.setCentre(j, point.z[j] - gradient[j] / hessian[j]);
  }
  set_.forget();
  if (set_.run() == DualActiveSet::Outcome::Infeasible) return false;
  set_.point(to);
  to = to.cwiseMax(box_.lower).cwiseMin(box_.upper);
  for (Eigen::Index i = 0; i < price.size(); ++i) {
    point.multipliers[i] = set_.multiplier(i).low;
    if (!(price[i] < kInfinity)) hardPrice_ = std::max(hardPrice_, 2.0 * std::abs(point.multipliers[i]));
  }
  return true;
}

/// Towards the model's answer as far as that is no loss; the whole way most of the time.
ConePoint ConeNewton::along(const Eigen::VectorXd& price, const ConePoint& point, const Eigen::VectorXd& to) {
  if (recent_.empty()) recent_.push_back(merit(price, point.z));
  const double ceiling = *std::max_element(recent_.begin(), recent_.end());
  const double most = ceiling + 1e-13 * (1 + std::abs(ceiling));
  ConePoint next = point;
  next.z = to;
  double length = 1.0;
  while (length > kShortest && merit(price, next.z) > most) {
    length *= 0.5;
    next.z = point.z + length * (to - point.z);
  }
  if (!isCurved_ || damping_ > 0)
    damping_ = std::clamp(length < 1.0 ? 4.0 * damping_ : 0.2 * damping_, 1e-6, 1e3);
  if (isCurved_ && length < 0.3) damping_ = std::max(damping_, kFirstDamping);
  return next;
}

ConePoint ConeNewton::minimise(const Eigen::VectorXd& price, const ConePoint& start) {
  ConePoint point = start;
  if (point.z.size() == 0) point.z = objective_.centre;
  point.z = point.z.cwiseMax(box_.lower).cwiseMin(box_.upper);
  if (point.multipliers.size() == 0) point.multipliers.setZero(price.size());
  point.multipliers = point.multipliers.cwiseMax(-price).cwiseMin(price);
  point.error = face_.judge(price, point);
  if (start.multipliers.size() > 0) face_.polish(price, point);
  ConePoint best = point;
  damping_ = isCurved_ ? 0.0 : kFirstDamping;
  recent_.clear();
  int gained = 0;
  for (int round = 1; round <= kMostRounds && best.error > kDone; ++round) {
    if (best.error <= kVerified && round - gained > kPatience) break;
    if (isOver_()) return ended(Status::Stopped, "time");
    Eigen::VectorXd to(point.z.size());
    if (!model(price, point, to)) return ended(Status::Infeasible, "");
    const bool isStalled = round - gained > kStalled;
    if (isStalled) goDown();
    point = along(price, point, to);
    point.error = face_.judge(price, point);
    ConePoint polished = point;
    face_.polish(price, polished);
    if (polished.error < 0.5 * best.error) gained = round;
    if (polished.error < best.error) best = polished;
    if (!isStalled) point = std::move(polished);
    remember(merit(price, point.z));
  }
  best.status = best.error <= kVerified ? Status::Optimal : Status::Failed;
  if (best.status == Status::Failed) best.reason = "chance rows: not verified";
  return best;
}

}  // namespace tarebowl::solver
