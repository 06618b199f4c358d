// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/active_factor.h"
#include "core/solver/normal_form.h"
#include "core/solver/two_level.h"
#include "core/solver/vertex_guess.h"

#include <vector>

namespace tarebowl::solver {

/// least  1/2 sum_j hessian_j (z_j - centre_j)^2 + sum_i cap_i violation_i(z)   subject to limits of z, with
/// hessian > 0, by the dual active set method of Goldfarb and Idnani (1983), "A numerically stable dual
/// method for solving strictly convex quadratic programs", Math. Programming 27.
///
/// An elastic row is one whose multiplier is capped at its price: at the cap it leaves the active set and
/// keeps pushing with its price. A cap of {price, 0} says "price times infinity": then the answer has the
/// least violation of all and is the nearest among those, in one run. Every step raises the dual value; after
/// bounds moved the multipliers stay valid, and run() goes on from the working set it has.
///
/// In y = sqrt(hessian) z, with normals of length 1, y = y of the centre - sum multiplier sign normal.
/// Constraints are the m rows followed by the n columns. Nothing is allocated after reserve().
class DualActiveSet {
 public:
  enum class Outcome { Optimal, Infeasible, IterationLimit };
  enum class State : char { Inactive, Active, Capped };

  void reserve(Eigen::Index rows, Eigen::Index columns);
  /// Takes the matrix and the curvatures. Centre, limits and caps are to be set after it.
  void assign(const RowMatrix& rows, const Eigen::VectorXd& hessian);
  void setRow(Eigen::Index row, double lower, double upper);
  void setColumn(Eigen::Index column, double lower, double upper);
  void setCentre(Eigen::Index column, double centre);
  /// What a unit of violation costs at most; kWithoutEnd: the row must hold.
  void setCap(Eigen::Index row, TwoLevel cap);

  /// The next run starts with no constraint active.
  void forget();
  [[nodiscard]] bool isNew() const { return isNew_; }
  /// Some multiplier has a part times lambda.
  [[nodiscard]] bool isPriced() const { return hasPriced_; }
  /// From the working set of the last run, or from none.
  Outcome run();
  [[nodiscard]] int iterations() const { return iterations_; }

  [[nodiscard]] const NormalForm& form() const { return form_; }
  [[nodiscard]] State state(Eigen::Index k) const { return set_.state[std::size_t(k)]; }
  /// > 0: it is or was last held at its upper bound.
  [[nodiscard]] double sign(Eigen::Index k) const { return set_.sign[k]; }
  /// z, exactly on the limits that are active.
  void point(Eigen::VectorXd& z) const;
  /// Of a row or column, in terms of z: > 0 where the upper bound pushes.
  [[nodiscard]] TwoLevel multiplier(Eigen::Index k) const;
  /// The last run went on from a guess at the vertex of least violation; whether runs may.
  [[nodiscard]] bool hasJumped() const { return hasJumped_; }
  void mayJump(bool may) { mayJump_ = may; }
  /// Infeasible: the rows that, with the limits, cannot hold together.
  void blockingRows(std::vector<Eigen::Index>& rows) const;

 private:
  friend class ActivePath;

  /// What a run ends with and the next one starts from.
  struct WorkingSet {
    std::vector<Eigen::Index> active;
    std::vector<State> state;
    std::vector<TwoLevel> multiplier;  // in [0, cap]
    std::vector<TwoLevel> cap;
    Eigen::VectorXd sign;
    Eigen::VectorXd below;  // an activity below this is out of place
    Eigen::VectorXd above;
    Eigen::VectorXd at;  // activities of the rows, then y
    ActiveFactor factor;

    void reserve(Eigen::Index rows, Eigen::Index columns);
    void copyTo(WorkingSet& other) const;
  };
  struct Split {
    double squaredLength = 0.0;
    bool isDependent = false;
  };
  struct Block {
    TwoLevel reach = kWithoutEnd;
    Eigen::Index position = -1;
  };

  [[nodiscard]] double limit(Eigen::Index k) const { return set_.sign[k] > 0 ? high_[k] : -low_[k]; }
  [[nodiscard]] const double* y() const { return set_.at.data() + form_.rowCount(); }
  [[nodiscard]] double* y() { return set_.at.data() + form_.rowCount(); }
  void setState(Eigen::Index k, State state);
  void placeLimits(Eigen::Index k);
  /// Products of the signed active normals with a vector, and their sum with factors added to one.
  void activeProducts(const double* with, double* products) const;
  void addActive(const double* factors, double scale, double* to) const;

  [[nodiscard]] bool isHardlyFeasible() const;
  [[nodiscard]] bool jump();
  void takeVertex();
  [[nodiscard]] bool balancePrices();
  [[nodiscard]] Eigen::Index mostViolated();
  [[nodiscard]] bool resolve(Eigen::Index p, bool mayJump = false);
  [[nodiscard]] Split split(Eigen::Index p);
  [[nodiscard]] Block firstBlock(double direction) const;
  void move(Eigen::Index p, double direction, const TwoLevel& step);
  void release(Eigen::Index position, bool atCap);
  void activate(Eigen::Index p, double outsideLength);
  [[nodiscard]] bool isRounding(Eigen::Index p, double direction);
  void settle();
  void settlePrices();
  void clampActive();
  void pointFromMultipliers();
  void rebuildFactor();

  NormalForm form_;
  Eigen::VectorXd centre_;  // of y
  Eigen::VectorXd low_;     // of activities
  Eigen::VectorXd high_;
  Eigen::VectorXd tolerance_;    // relative
  Eigen::VectorXd columnLower_;  // of z, as given
  Eigen::VectorXd columnUpper_;
  WorkingSet set_;
  bool isNew_ = true;  // no run since forget()
  bool factorIsOld_ = false;

  Eigen::VectorXd products_;  // of the constraint being resolved with the active normals
  Eigen::VectorXd turned_;    // the same, by forward()
  Eigen::VectorXd share_;     // what of each active normal makes up its part inside their span
  Eigen::VectorXd scratch_;
  Eigen::VectorXd outside_;  // the activities of its part outside, then that part itself
  Eigen::VectorXd by_;
  int iterations_ = 0;
  int most_ = 0;
  bool hasPriced_ = false;
  bool mayJump_ = true;
  bool wantsJump_ = false;
  bool hasJumped_ = false;
  VertexGuess guess_;
  Eigen::Index blocked_ = -1;
};

}  // namespace tarebowl::solver
