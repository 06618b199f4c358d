#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Writes the balance problems and the larder of the invented Brackenmere Animal Gardens from published tables.

    make_problems.py [--reference FOLDER]    FOLDER holds sr28/, insects.csv, prey.csv and targets.csv
    make_problems.py --check                 exit status 1 if a committed file would change, 77 without the tables

Amounts, body masses, costs and eaten fractions are made up; compositions and targets come from the tables, and say so.
A file's "expected" result is kept as it stands: it is worked out elsewhere (see README.md)."""

import argparse
import json
import os
import pathlib
import sys

from generator import larder as larder_file
from generator import primates, reptiles, small_mammals
from generator.foods import Larder
from generator.problem import text_of
from generator.rules import Rules
from generator.tables import Insects, Prey, Sr28, Targets

HERE = pathlib.Path(__file__).resolve().parent
TABLES_ABSENT = 77  # what a test runner reads as "skipped"

FILES = {
    "larder/larder.json": larder_file.larder,
    "kitchen/raw.json": larder_file.cooked_from,
    "tenrec-hedgehog.json": small_mammals.hedgehog_tenrecs,
    "tenrec-streaked.json": small_mammals.streaked_tenrecs,
    "fox-fennec.json": small_mammals.fennec_foxes,
    "lemur-no-fruit.json": primates.ruffed_lemurs,
    "squirrel-monkeys.json": primates.squirrel_monkeys,
    "dragon-calcium.json": reptiles.bearded_dragons,
}


def main():
    parser = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    parser.add_argument("--reference", type=pathlib.Path, help="folder of the published tables",
                        default=os.environ.get("TAREBOWL_REFERENCE_DIR", HERE.parent.parent / "shared" / "reference"))
    parser.add_argument("--out", type=pathlib.Path, default=HERE, help="folder to write to")
    parser.add_argument("--check", action="store_true", help="write nothing; fail if a file would change")
    arguments = parser.parse_args()

    tables = pathlib.Path(arguments.reference)
    if not (tables / "targets.csv").exists():
        print(f"The published tables are not in {tables}: name their folder with --reference", file=sys.stderr)
        return TABLES_ABSENT
    larder = Larder(Sr28(tables / "sr28"), Insects(tables / "insects.csv"), Prey(tables / "prey.csv"))
    rules = Rules(Targets(tables / "targets.csv"))
    changed = []
    for name, make in FILES.items():
        path = arguments.out / name
        before = path.read_text(encoding="utf-8") if path.exists() else ""
        problem = make(larder, rules)
        expected = json.loads(before).get("expected") if before else None
        text = text_of(problem | ({"expected": expected} if expected else {})) + "\n"
        if text != before:
            changed.append(name)
            if not arguments.check:
                path.write_text(text, encoding="utf-8", newline="\n")
    for name in changed:
        print(f"{'would change' if arguments.check else 'written'}: {name}")
    return 1 if arguments.check and changed else 0


if __name__ == "__main__":
    sys.exit(main())
