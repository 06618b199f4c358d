// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/cone_search.h"

#include "core/solver/cone_tangents.h"
#include "core/solver/continuous_solver.h"
#include "core/solver/whole_steps.h"

#include <algorithm>

namespace tarebowl::solver {
namespace {

using Clock = std::chrono::steady_clock;

constexpr std::size_t kFirstMissed = 8;  // points that a search may be too kind to before it starts again
constexpr std::size_t kMostTangents = 400;
constexpr double kTouching = 1e-9;  // a tangent as good as this needs no other beside it

class ConeSearch {
 public:
  ConeSearch(const Program& program, const Limits& limits)
      : program_(program), limits_(limits), tangents_(program) {}

  void touch(const Eigen::VectorXd& x) { tangents_.touch(x); }

  /// One stage's question, with tangents added and kept until it is answered or time runs out.
  SearchResult ask(const Stage& stage, SearchStart start, Clock::time_point deadline) {
    std::int64_t nodes = 0;
    std::size_t most = kFirstMissed;
    for (;;) {
      const Program relaxation = tangents_.relaxation();
      ScaledProgram scaled(relaxation);
      scaled.judge = &program_;
      Limits left = limits_;
      left.nodes = std::max<std::int64_t>(1, limits_.nodes - nodes);
      start.mostMissed = tangents_.size() < kMostTangents ? most : std::numeric_limits<std::size_t>::max();
      SearchResult result = search(scaled, stage, start, left, deadline);
      nodes += result.nodes;
      result.nodes = nodes;
      if (result.closed || !result.hasManyMissed || nodes >= limits_.nodes) return result;
      for (const Eigen::VectorXd& point : result.missed) tangents_.touchBeyond(point, kTouching);
      start.incumbent = std::move(result.best);
      most *= 2;
    }
  }

 private:
  const Program& program_;
  const Limits& limits_;
  ConeTangents tangents_;
};

}  // namespace

Solution solveConesInWholeSteps(const Program& program, const Solution& smooth, const Limits& limits,
                                Clock::time_point deadline) {
  ConeSearch cones(program, limits);
  const bool isKnown = smooth.status == Status::Optimal;
  cones.touch(isKnown ? smooth.x : program.centre);
  const Program relaxation = ConeTangents(program).relaxation();
  ScaledProgram scaled(relaxation);  // for its scale: tangents do not change that
  scaled.judge = &program;
  if (scaled.isEmptyBox()) {
    Solution solution;
    solution.status = Status::Infeasible;
    return solution;
  }
  const StageSearch look = [&](const Stage& stage, SearchStart start, Clock::time_point until) {
    return cones.ask(stage, std::move(start), until);
  };
  const bool relaxationHolds = isKnown && smooth.violation <= violationBudget(0.0);
  Solution solution = bothStagesOnGrid(scaled, relaxationHolds, look, deadline);
  if (isKnown && solution.status == Status::Optimal) solution.multipliers = smooth.multipliers;
  return solution;
}

}  // namespace tarebowl::solver
