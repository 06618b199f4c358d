// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/choice_search.h"
#include "core/solver/continuous_solver.h"
#include "core/solver/shortfall_vertex.h"

#include <memory>

namespace tarebowl::solver {
namespace {

constexpr double kNoViolation = 1e-11;  // stage 1 values below this are rounding

/// Both stages of a quadratic objective by one solver whose limits are moved from place to place.
class QuadraticAsker {
 public:
  explicit QuadraticAsker(const ScaledProgram& program)
      : program_(program),
        box_{program.lower, program.upper},
        solver_({program.rows, program.rowLower, program.rowUpper, program.price, box_.lower, box_.upper,
                 program.source->centre.cwiseQuotient(program.unit),
                 program.source->curvature.cwiseProduct(program.unit.cwiseAbs2()),
                 program.source->cost.cwiseProduct(program.unit)}),
        vertices_({program.rows, program.rowLower, program.rowUpper, program.price, box_.lower, box_.upper,
                   program.source->centre, program.source->curvature, program.source->cost},
                  program.generous) {}

  ContinuousAnswer ask(Question question, const Box& box, double least) {
    if ((box.lower.array() > box.upper.array()).any()) return ended(Status::Infeasible);
    moveTo(box);
    if (question == Question::LeastViolation) {
      if (const std::optional<ShortfallVertex> vertex = vertices_.solve()) return answer(*vertex);
    }
    Status status = Status::Failed;
    if (question == Question::AllHold) status = solver_.solveAtPrice(kInfinity);
    if (question == Question::LeastViolation) status = solver_.solve(ContinuousSolver::Budget::Exact);
    if (question == Question::WithinBudget) status = solver_.solveWithin(violationBudget(least));
    if (status != Status::Optimal) return ended(status);
    return answer(question);
  }

 private:
  [[nodiscard]] ContinuousAnswer ended(Status status) const {
    ContinuousAnswer answer;
    answer.status = status;
    answer.reason = std::string(solver_.reason());
    return answer;
  }

  [[nodiscard]] ContinuousAnswer answer(const ShortfallVertex& vertex) const {
    ContinuousAnswer answer;
    answer.status = Status::Optimal;
    answer.z = vertex.x;
    answer.rowMultipliers = Eigen::VectorXd::Zero(program_.rows.rows());  // of the objective: not asked for
    answer.violation = elasticViolation(*program_.source, program_.toSource(vertex.x));
    if (answer.violation < kNoViolation) answer.violation = 0.0;
    return answer;
  }

  void moveTo(const Box& box) {
    for (Eigen::Index j = 0; j < box.lower.size(); ++j) {
      if (box.lower[j] == box_.lower[j] && box.upper[j] == box_.upper[j]) continue;
      solver_.setColumnBounds(j, box.lower[j], box.upper[j]);
      box_.lower[j] = box.lower[j];
      box_.upper[j] = box.upper[j];
    }
  }

  [[nodiscard]] ContinuousAnswer answer(Question question) const {
    ContinuousAnswer answer;
    answer.status = Status::Optimal;
    answer.z = solver_.x();
    answer.rowMultipliers = solver_.rowMultipliers();
    answer.violation = question == Question::LeastViolation ? solver_.leastViolation() : solver_.violation();
    if (answer.violation < kNoViolation) answer.violation = 0.0;
    answer.objective = objectiveValue(*program_.source, program_.toSource(answer.z));
    return answer;
  }

  const ScaledProgram& program_;
  Box box_;  ///< that the solver is at
  ContinuousSolver solver_;
  ShortfallVertices vertices_;
};

ContinuousAnswer askLinear(const ScaledProgram& program, Question question, const Box& box, double least) {
  ContinuousAnswer first = leastViolation(program, box);
  if (first.status != Status::Optimal || question == Question::LeastViolation) return first;
  const double allowed = question == Question::AllHold ? 0.0 : least;
  if (first.violation <= violationBudget(allowed)) return leastObjective(program, box, allowed);
  first.status = Status::Infeasible;
  return first;
}

}  // namespace

Asker continuousAsker(const ScaledProgram& program) {
  if ((program.source->curvature.array() > 0).all()) {
    const auto asker = std::make_shared<QuadraticAsker>(program);
    return
        [asker](Question question, const Box& box, double least) { return asker->ask(question, box, least); };
  }
  return [&program](Question question, const Box& box, double least) {
    return askLinear(program, question, box, least);
  };
}

}  // namespace tarebowl::solver
