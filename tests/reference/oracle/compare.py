#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Runs the program on random problems and compares each result with the independent reading of the problem format.

    compare.py build/dev/bin/tarebowl [--count 150] [--seed 1] [--largest-whole 10] [--conflicts] [--keep DIRECTORY]
    compare.py build/dev/bin/tarebowl --problem FILE …

Exit status 0 where all agree, 1 where one does not (its problem, result and the reasons are kept), 77 without SciPy.
"""
import argparse
import collections
import json
import pathlib
import subprocess
import sys
import tempfile
import time

try:
    import scipy.optimize

    scipy.optimize.milp  # SciPy 1.9 or later
except (ImportError, AttributeError):
    print("skipped: python3-scipy (1.9 or later) is not installed")
    sys.exit(77)

import page
import problem_oracle
import random_problems
from judge import judge, judge_conflict


MOST_UNPROVED = 0.25  # of the conflicts named, those whose proof ran out of time
PATIENCE = 30  # seconds the program may take for one problem: under the sanitizers it is ten times slower


def run_program(program, path, seconds):
    started = time.monotonic()
    done = subprocess.run([program, "solve", "--seconds", str(PATIENCE), str(path)], capture_output=True, text=True, timeout=seconds)
    result = json.loads(done.stdout) if done.returncode in (0, 3) else {"status": f"error: {done.stderr.strip()}"}
    return result, done.returncode, time.monotonic() - started


def independent_answer(document, seconds):
    try:
        return problem_oracle.solve(page.Problem(document), seconds), ""
    except (ArithmeticError, NotImplementedError, RuntimeError) as problem:
        return None, f"the independent answer could not say: {problem}"


def how_sure(answer):
    if answer is None:
        return "could not say"
    if answer.fragile:
        return "hair's breadth"
    return "proved" if answer.proven else "bounds only"


def one(arguments, name, document, path, counts):
    try:
        result, exit_status, took = run_program(arguments.program, path, 4 * PATIENCE)
    except (subprocess.TimeoutExpired, json.JSONDecodeError) as problem:
        return [f"the program: {problem!r}"], [], None
    answer, could_not = independent_answer(document, arguments.seconds)
    verdict = judge(document, result, exit_status, answer)
    if arguments.conflicts and exit_status in (0, 3):
        verdict.wrong += judge_conflict(document, result, arguments.seconds)
        counts["conflicts named"] += bool(result.get("conflict"))
        counts["conflicts not proved smallest"] += not result.get("conflict_is_smallest", True)
    kind = "whole" if document.get("whole_steps", True) else "continuous"
    kind += " with a chance" if "confidence" in document else ""
    sure = how_sure(answer)
    counts[f"{kind}, {result.get('status').split(':')[0]}, {sure}"] += 1
    counts["reported with a gap"] += result.get("proven_gap", 0) > 0
    if arguments.verbose or took > 5:
        print(f"{name}: {len(document['foods'])} foods, {kind}, {result.get('status')}, {took:.2f} s, "
              f"gap {result.get('proven_gap')}", flush=True)
    for note in verdict.notes + ([could_not] if could_not else []):
        counts[f"{kind}, with a note"] += 1
        print(f"{name} ({kind}): note: {note}", flush=True)
    return verdict.wrong, verdict.oracle_wrong, result


def keep(directory, name, document, result, wrong, oracle_wrong):
    directory.mkdir(parents=True, exist_ok=True)
    (directory / f"{name}.json").write_text(json.dumps(document, indent=1), encoding="utf-8")
    (directory / f"{name}.result.json").write_text(json.dumps(result, indent=1), encoding="utf-8")
    lines = [f"The program is wrong: {w}" for w in wrong]
    lines += [f"The independent answer is wrong: {w}" for w in oracle_wrong]
    (directory / f"{name}.txt").write_text("\n".join(lines) + "\n", encoding="utf-8")


def named_problems(arguments):
    if arguments.problem:
        for path in arguments.problem:
            yield path.stem, json.loads(path.read_text(encoding="utf-8"))
        return
    for number, document in random_problems.problems(arguments.seed, arguments.count, arguments.largest_whole):
        yield f"random-{arguments.seed}-{number}", document


def main():
    parser = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    parser.add_argument("program")
    parser.add_argument("--count", type=int, default=150)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--largest-whole", type=int, default=10, help="foods in a problem of whole steps")
    parser.add_argument("--seconds", type=float, default=10.0, help="for the independent answer to one problem")
    parser.add_argument("--conflicts", action="store_true", help="check the named conflicts too")
    parser.add_argument("--keep", type=pathlib.Path, default=pathlib.Path("mismatch"))
    parser.add_argument("--problem", type=pathlib.Path, nargs="+")
    parser.add_argument("--verbose", action="store_true")
    arguments = parser.parse_args()
    counts, failures = collections.Counter(), 0
    with tempfile.TemporaryDirectory() as scratch:
        for name, document in named_problems(arguments):
            path = pathlib.Path(scratch) / f"{name}.json"
            path.write_text(json.dumps(document), encoding="utf-8")
            wrong, oracle_wrong, result = one(arguments, name, document, path, counts)
            if wrong or oracle_wrong:
                failures += 1
                keep(arguments.keep, name, document, result, wrong, oracle_wrong)
                for line in wrong + oracle_wrong:
                    print(f"{name}: MISMATCH: {line[:600]}", flush=True)
    for key, number in sorted(counts.items()):
        print(f"{number:6d}  {key}")
    if counts["conflicts not proved smallest"] > MOST_UNPROVED * counts["conflicts named"]:
        failures += 1
        print("MISMATCH: too many conflicts were not proved smallest")
    print(f"{failures} mismatches" + (f", kept in {arguments.keep}" if failures else ""))
    return 1 if failures else 0


if __name__ == "__main__":
    sys.exit(main())
