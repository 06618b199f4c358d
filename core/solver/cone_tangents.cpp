// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/cone_tangents.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::solver {
namespace {

constexpr int kIdleRounds = 6;

}  // namespace

ConeTangents::ConeTangents(const Program& program) : program_(program), n_(program.variableCount()) {
  for (Eigen::Index i = 0; i < program.rowCount(); ++i) {
    if (program.scatter->row(i).cwiseAbs().maxCoeff() <= 0) {
      plain_.push_back(i);
      continue;
    }
    // Both bounds of a row share one violation, the larger of the two.
    const Eigen::Index column = program.price[i] < kInfinity ? n_ + violationCount() : -1;
    if (column >= 0) {
      violationRow_.push_back(i);
      const double size = program.rows.row(i).cwiseAbs().maxCoeff();
      violationUnit_.push_back(size > 0 ? size : 1.0);
    }
    if (program.rowUpper[i] < kInfinity) cones_.push_back({i, 1.0, program.rowUpper[i], column});
    if (program.rowLower[i] > -kInfinity) cones_.push_back({i, -1.0, -program.rowLower[i], column});
  }
}

void ConeTangents::addTangent(std::size_t cone, const Eigen::VectorXd& x) {
  const Eigen::Index row = cones_[cone].row;
  const Eigen::VectorXd scatter = program_.scatter->row(row).transpose();
  const double spread = scatter.cwiseProduct(x).norm();
  Eigen::VectorXd coefficients = cones_[cone].sign * program_.rows.row(row).transpose();
  if (spread > 0) coefficients += scatter.cwiseProduct(scatter).cwiseProduct(x) / spread;
  tangents_.push_back({cone, std::move(coefficients)});
}

void ConeTangents::touch(const Eigen::VectorXd& x) {
  for (std::size_t c = 0; c < cones_.size(); ++c) addTangent(c, x);
}

double ConeTangents::activity(const Cone& cone, const Eigen::VectorXd& x) const {
  const double spread = program_.scatter->row(cone.row).transpose().cwiseProduct(x).norm();
  return cone.sign * program_.rows.row(cone.row).dot(x) + spread;
}

double ConeTangents::violationOf(const Cone& cone, const Eigen::VectorXd& extended) const {
  if (cone.column < 0) return 0.0;
  return violationUnit_[std::size_t(cone.column - n_)] * extended[cone.column];
}

Eigen::Index ConeTangents::touchBeyond(const Eigen::VectorXd& x, double tolerance) {
  std::vector<double> highest(cones_.size(), -kInfinity);
  for (const Tangent& tangent : tangents_)
    highest[tangent.cone] = std::max(highest[tangent.cone], tangent.coefficients.dot(x));
  Eigen::Index added = 0;
  for (std::size_t c = 0; c < cones_.size(); ++c) {
    const double at = activity(cones_[c], x);
    // a cone that x keeps with room needs no tangent there
    if (at <= cones_[c].limit || at - highest[c] <= tolerance * (1.0 + std::abs(at))) continue;
    addTangent(c, x);
    ++added;
  }
  return added;
}

Eigen::Index ConeTangents::touchPassed(const Eigen::VectorXd& extended, double tolerance) {
  const Eigen::VectorXd x = extended.head(n_);
  Eigen::Index added = 0;
  for (std::size_t c = 0; c < cones_.size(); ++c) {
    const Cone& cone = cones_[c];
    if (activity(cone, x) - cone.limit - violationOf(cone, extended) <= tolerance) continue;
    addTangent(c, x);
    ++added;
  }
  return added;
}

void ConeTangents::dropIdle(const Eigen::VectorXd& extended, double slack) {
  for (Tangent& tangent : tangents_) {
    const Cone& cone = cones_[tangent.cone];
    const double room =
        cone.limit + violationOf(cone, extended) - tangent.coefficients.dot(extended.head(n_));
    tangent.idle = room > slack ? tangent.idle + 1 : 0;
  }
  std::erase_if(tangents_, [](const Tangent& tangent) { return tangent.idle > kIdleRounds; });
}

Eigen::VectorXd ConeTangents::extend(const Eigen::VectorXd& own, double value) const {
  Eigen::VectorXd all(n_ + violationCount());
  all << own, Eigen::VectorXd::Constant(violationCount(), value);
  return all;
}

Program ConeTangents::relaxation(const Proximal& proximal) const {
  const Eigen::Index n = n_ + violationCount();
  const Eigen::Index m = Eigen::Index(plain_.size()) + violationCount() + Eigen::Index(tangents_.size());
  Program program;
  program.rows.setZero(m, n);
  program.rowLower.setConstant(m, -kInfinity);
  program.rowUpper.setConstant(m, kInfinity);
  program.price.setConstant(m, kInfinity);
  program.lower = extend(program_.lower, 0.0);
  program.upper = extend(program_.upper, kInfinity);
  program.step = extend(program_.step, 0.0);
  program.cost = extend(program_.cost, 0.0);
  program.centre = extend(program_.centre, 0.0);
  program.centre.tail(violationCount()) = proximal.centre;
  program.curvature = extend(program_.curvature, proximal.curvature);
  program.choices = program_.choices;
  Eigen::Index at = 0;
  for (const Eigen::Index i : plain_) {
    program.rows.row(at).head(n_) = program_.rows.row(i);
    program.rowLower[at] = program_.rowLower[i];
    program.rowUpper[at] = program_.rowUpper[i];
    program.price[at++] = program_.price[i];
  }
  for (Eigen::Index v = 0; v < violationCount(); ++v) {
    program.rows(at, n_ + v) = violationUnit_[std::size_t(v)];
    program.rowUpper[at] = 0.0;
    program.price[at++] = program_.price[violationRow_[std::size_t(v)]];
  }
  for (const Tangent& tangent : tangents_) {
    const Cone& cone = cones_[tangent.cone];
    program.rows.row(at).head(n_) = tangent.coefficients.transpose();
    if (cone.column >= 0) program.rows(at, cone.column) = -violationUnit_[std::size_t(cone.column - n_)];
    program.rowUpper[at++] = cone.limit;
  }
  return program;
}

Eigen::VectorXd ConeTangents::sourceMultipliers(const Eigen::VectorXd& multipliers) const {
  Eigen::VectorXd all = Eigen::VectorXd::Zero(program_.rowCount());
  Eigen::Index at = 0;
  for (const Eigen::Index i : plain_) {
    if (at < multipliers.size()) all[i] = multipliers[at++];
  }
  at += violationCount();
  for (const Tangent& tangent : tangents_) {
    const Cone& cone = cones_[tangent.cone];
    if (at < multipliers.size()) all[cone.row] += cone.sign * multipliers[at++];
  }
  return all;
}

}  // namespace tarebowl::solver
