#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Solves a "tarebowl-problem/1" file by general-purpose means: an independent answer to compare the program with.

    problem_oracle.py PROBLEM.json [--seconds 60]

Continuous problems: linear programmes (HiGHS) and, for the closest diet, the nearest point of a polyhedron, with every
set of used foods tried in turn where there are choices. Whole steps: mixed-integer programmes in which each food's
quadratic is replaced by its chords between neighbouring steps (on the grid the same function), added as they are
needed. Bounds with scatter are second-order cones, cut by tangents until they hold. Whatever a solver says is evaluated
again by page.py; lower bounds are kept beside, so that an answer that was not proved is known as such.
"""
import argparse
import json
import sys

import page
from continuous import solve_continuous
from pieces import Oracle
from whole import solve_whole


def solve(problem, seconds=60.0):
    oracle = Oracle(problem, seconds)
    return solve_whole(oracle) if problem.whole_steps else solve_continuous(oracle)


def best_objective_within(problem, budget, seconds=60.0):
    """(objective, doubt) of a continuous problem, for a shortfall that need not be the page's budget."""
    answer = solve_continuous(Oracle(problem, seconds), budget)
    return answer.objective, answer.doubt


def result_of(problem, answer):
    """As much of "tarebowl-result/1" as the page defines, with the proof beside it."""
    out = {"format": "tarebowl-result/1", "status": answer.status}
    if answer.grams is not None:
        bounds = page.bounds_of(problem)
        grams = [float(x) for x in answer.grams]
        out["grams"] = dict(zip(problem.ids, grams))
        out["shortfall"] = page.elastic_shortfall(bounds, grams)
        out["objective"] = problem.objective_value(grams)
        out["targets"] = [
            {"id": e["id"], "value": e["value"], "coverage": e["coverage"], "sd": e["sd"],
             "state": sorted(e["states"])[0] if e["states"] else None, "shortfall": sum(e["shortfalls"])}
            for e in page.balance(problem, bounds, grams)]
        out["least_shortfall"] = [answer.shortfall_bound, answer.shortfall]
        out["objective_no_better_than"] = answer.objective_bound * problem_sense(problem)
    out["proven"], out["fragile"] = bool(answer.proven), bool(answer.fragile)
    return out


def problem_sense(problem):
    return 1.0 if problem.objective["kind"] == "closest" else problem.sense


def main():
    parser = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    parser.add_argument("problem")
    parser.add_argument("--seconds", type=float, default=60.0)
    arguments = parser.parse_args()
    with open(arguments.problem, encoding="utf-8") as file:
        problem = page.Problem(json.load(file))
    answer = solve(problem, arguments.seconds)
    json.dump(result_of(problem, answer), sys.stdout, indent=2)
    print()
    return 3 if answer.status == "impossible" else 0


if __name__ == "__main__":
    sys.exit(main())
