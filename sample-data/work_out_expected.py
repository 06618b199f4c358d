#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Writes the "expected" result into problem files, worked out by the independent reading of the problem format in
tests/reference/oracle (Python with SciPy), not by Tarebowl.

    work_out_expected.py FILE...            writes
    work_out_expected.py --check FILE...    only compares: exit status 1 if a result would change"""

import argparse
import json
import pathlib
import sys

from generator.problem import text_of

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parent.parent / "tests" / "reference" / "oracle"))
import page  # noqa: E402
import problem_oracle  # noqa: E402


def expected_of(problem):
    read = page.Problem(problem)
    answer = problem_oracle.solve(read, seconds=900.0)
    assert answer.proven, "no proven answer within the time"
    result = problem_oracle.result_of(read, answer)
    if answer.grams is None:
        return {"status": result["status"]}
    grams = {food: float(f"{mass:.9g}") for food, mass in result["grams"].items() if mass > 1e-9}
    return {"status": result["status"], "shortfall": float(f"{result['shortfall']:.12g}"),
            "objective": float(f"{result['objective']:.12g}"), "grams": grams}


def main():
    parser = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    parser.add_argument("files", nargs="+", type=pathlib.Path)
    parser.add_argument("--check", action="store_true", help="write nothing; fail if a result would change")
    arguments = parser.parse_args()
    changed = 0
    for path in arguments.files:
        problem = json.loads(path.read_text(encoding="utf-8"))
        expected = expected_of(problem)
        changed += expected != problem.get("expected")
        print(f"{path.name}: {json.dumps(expected)}")
        if not arguments.check:
            path.write_text(text_of(problem | {"expected": expected}) + "\n", encoding="utf-8", newline="\n")
    return 1 if arguments.check and changed else 0


if __name__ == "__main__":
    sys.exit(main())
