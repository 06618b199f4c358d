#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Compares the solver's answers on programs from real foods with those of HiGHS (in SciPy) and CVXOPT.

    compare_answers.py build/dev/bin/program_answers KIND [--first 1] [--count 100]

KIND is one of those below. Exit status 0 where all agree, 1 where one does not or where another solver gave up on more
than one in ten, 77 without SciPy, CVXOPT or the table of foods.
"""
import argparse
import json
import subprocess
import sys

try:
    import cvxopt  # noqa: F401
    from scipy.optimize import milp  # noqa: F401  SciPy 1.9 or later
except ImportError:
    print("skipped: python3-cvxopt and python3-scipy (1.9 or later) are not installed")
    sys.exit(77)

import other_answers as others


def budget_of(least):
    return least * (1 + 1e-6) + 1e-9


def differs(what, ours, theirs, relative, absolute=1e-9):
    if abs(ours - theirs) <= relative * abs(theirs) + absolute:
        return []
    return [f"{what}: {ours:.12g} here, {theirs:.12g} there"]


def shortfall_complaints(program, grams, least):
    shortfall = program.shortfall(grams)
    if shortfall > budget_of(least) + 1e-9 + 1e-8 * least:
        return [f"shortfall {shortfall:.12g} is beyond the budget of {least:.12g}"]
    if shortfall < least * (1 - 1e-7) - 2e-9:
        return [f"shortfall {shortfall:.12g} is below the least of the other solver, {least:.12g}"]
    return []


def nearest_hard(program, answer, grams):
    other = others.conic(program, budget=0.0)
    return other and differs("objective", answer["objective"], other[0], 1e-7)


def nearest_priced(program, answer, grams):
    price = 10.0
    other = others.conic(program, price=price)
    return other and differs("price", answer["objective"] + price * answer["shortfall"], other[0], 1e-7)


def nearest_in_two_stages(program, answer, grams):
    least = others.linear(program)
    other = others.conic(program, budget=budget_of(least)) if least is not None else None
    if other is None:
        return None
    return shortfall_complaints(program, grams, least) + differs("objective", answer["objective"], other[0], 2e-7)


def cheapest(program, answer, grams):
    least = others.linear(program) if len(program.elastic) else 0.0
    cost = others.linear(program, budget_of(least)) if least is not None else None
    if cost is None:
        return None
    return shortfall_complaints(program, grams, least) + differs("cost", answer["objective"], cost, 2e-6)


def least_shortfall(program, answer, grams):
    least = others.linear(program)
    return None if least is None else shortfall_complaints(program, grams, least)


def whole_shortfall(program, answer, grams):
    other = others.in_whole_steps(program, cheapest=False)
    return None if other is None else shortfall_complaints(program, grams, program.shortfall(other))


def whole_cheapest(program, answer, grams):
    other = others.in_whole_steps(program, cheapest=True)
    return None if other is None else differs("cost", answer["objective"], program.cost @ other, 1e-9)


def chance_in_two_stages(program, answer, grams):
    """The budget's last digits move the objective a lot, and interior points often give up on so thin a set: the answer is
    held against those at somewhat more and at somewhat less than the budget, as far as there are any."""
    stage_one = others.conic(program)
    if stage_one is None:
        return None
    least = stage_one[0]
    complaints = differs("shortfall", program.shortfall(grams), least, 3e-6, 1e-8)
    nearest = {more: others.conic(program, budget=budget_of(least) + more * least) for more in (-5e-9, 5e-9, 2e-6, 2e-5)}
    tight = nearest[-5e-9]
    if tight is not None and answer["objective"] > tight[0] * (1 + 1e-6) + 1e-8:
        complaints.append(f"objective {answer['objective']:.12g} is above the other solver's {tight[0]:.12g}")
    loose = next((nearest[more] for more in (5e-9, 2e-6, 2e-5) if nearest[more] is not None), None)
    if loose is not None and answer["objective"] < loose[0] * (1 - 1e-7) - 1e-9:
        complaints.append(f"objective {answer['objective']:.12g} is below the other solver's {loose[0]:.12g}")
    return complaints


KINDS = {
    "nearest-hard": nearest_hard,
    "nearest-priced": nearest_priced,
    "nearest-met": nearest_in_two_stages,
    "nearest-unmet": nearest_in_two_stages,
    "cheapest-hard": cheapest,
    "cheapest-unmet": cheapest,
    "shortfall": least_shortfall,
    "whole-shortfall": whole_shortfall,
    "whole-cheapest": whole_cheapest,
    "chance-hard": nearest_hard,
    "chance-unmet": chance_in_two_stages,
}


def complaints_about(kind, line):
    """None where the other solver gave up."""
    program, answer = others.Program(line["program"]), line["answer"]
    if not answer["optimal"]:
        return [f"no answer: {answer['reason']}"]
    grams = others.np.array(answer["grams"])
    complaints = differs("objective as stated", answer["objective"], program.objective(grams), 1e-9)
    complaints += differs("shortfall as stated", answer["shortfall"], program.shortfall(grams), 1e-9)
    if program.broken(grams) > 1e-8:
        complaints.append(f"a hard row or limit is broken by {program.broken(grams):.3g}")
    if answer["gap"] > 0:
        complaints.append(f"a gap of {answer['gap']:.3g} is left")
    further = KINDS[kind](program, answer, grams)
    return complaints or None if further is None else complaints + further


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("program")
    parser.add_argument("kind", choices=KINDS)
    parser.add_argument("--first", type=int, default=1)
    parser.add_argument("--count", type=int, default=100)
    arguments = parser.parse_args()
    command = [arguments.program, arguments.kind, str(arguments.first), str(arguments.count)]
    done = subprocess.run(command, stdout=subprocess.PIPE, text=True)
    if done.returncode:
        return done.returncode
    wrong = silent = 0
    for text in done.stdout.splitlines():
        line = json.loads(text)
        complaints = complaints_about(arguments.kind, line)
        silent += complaints is None
        for complaint in complaints or []:
            print(f"{arguments.kind} {line['seed']}: {complaint}")
        wrong += bool(complaints)
    print(f"{arguments.kind}: {arguments.count - wrong - silent} agree, {wrong} do not, the other solver gave up on {silent}")
    return 1 if wrong or silent * 10 > arguments.count else 0


if __name__ == "__main__":
    sys.exit(main())
