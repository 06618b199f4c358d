// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/solving_text.h"

#include "core/diet/verification.h"
#include "ui/diets/diet_desk.h"
#include "ui/shared/format.h"

#include <QCoreApplication>

namespace tarebowl::ui {
namespace {

struct Solving {
  Q_DECLARE_TR_FUNCTIONS(Solving)
};

QString solvedText(const diet::BalanceProblem& problem, const diet::DietSolution& solution) {
  const QString how = problem.wholeSteps ? Solving::tr("solved in whole scale steps") : Solving::tr("solved");
  const QString time = duration(solution.solveTime.count());
  if (solution.provenGap <= 0.0) return Solving::tr("%1, proved best · %2").arg(how, time);
  return Solving::tr("%1, best found in %2; the gap to the best possible is at most %3")
      .arg(how, time, percent(solution.provenGap));
}

}  // namespace

QString solvingText(const DietDesk& desk) {
  if (desk.isEmpty()) return {};
  if (desk.isReadOnly()) return Solving::tr("to read: the grams as they were written");
  if (desk.wouldMove()) return Solving::tr("as it was written: the solver would now give other grams");
  if (desk.isHolding()) return Solving::tr("held: only the balance is recomputed");
  if (!desk.solution()) return Solving::tr("solving…");
  if (desk.isSolving()) return Solving::tr("a good bowl is shown, looking for a better one…");
  const diet::DietSolution& solution = *desk.solution();
  switch (solution.status) {
    case diet::DietStatus::Balanced:
    case diet::DietStatus::Compromise:
      return solvedText(desk.problem(), solution);
    case diet::DietStatus::Impossible:
      return Solving::tr("no bowl keeps the hard rules");
    case diet::DietStatus::Unbounded:
      return Solving::tr("nothing limits what is sought");
    case diet::DietStatus::Stopped:
      return Solving::tr("no answer in time");
    case diet::DietStatus::Failed:
      if (!diet::foodsWithoutPrice(desk.problem()).empty()) return Solving::tr("a price is missing");
      break;
  }
  return Solving::tr("the answer did not pass its check");
}

QString energyMethodText(food::EnergyMethod method) {
  switch (method) {
    case food::EnergyMethod::Given:
      return Solving::tr("as given");
    case food::EnergyMethod::Atwater:
      return Solving::tr("Atwater");
    case food::EnergyMethod::ModifiedAtwater:
      return Solving::tr("modified Atwater");
    case food::EnergyMethod::Dog2006:
      return Solving::tr("NRC 2006, dog");
    case food::EnergyMethod::Cat2006:
      return Solving::tr("NRC 2006, cat");
    case food::EnergyMethod::PoultryAmen:
      return Solving::tr("poultry AMEn");
  }
  return {};
}

}  // namespace tarebowl::ui
