#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Writes the animals and target profiles of the invented Brackenmere Animal Gardens.

    make_herd.py            writes herd/
    make_herd.py --check    exit status 1 if a committed file would change

The same seed writes the same files; every number is made up."""

import argparse
import csv
import io
import json
import pathlib
import sys

from generator import herd, profiles

FOLDER = pathlib.Path(__file__).resolve().parent / "herd"


def as_json(made):
    return json.dumps(made, indent=2, ensure_ascii=False) + "\n"


def as_csv(rows):
    text = io.StringIO()
    csv.writer(text, lineterminator="\n").writerows(rows)
    return text.getvalue()


def files():
    animals = herd.animals()
    animals["profiles"] = [{"code": code} | ({} if code in profiles.DRAFTS else {"in_force_from": profiles.IN_FORCE_FROM})
                           for code in profiles.profiles()]
    made = {"animals.json": as_json(animals), "masses.csv": as_csv(herd.masses()),
            "conditions.csv": as_csv(herd.conditions())}
    return made | {f"profiles/{code}.json": as_json(profile) for code, profile in profiles.profiles().items()}


def main():
    parser = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    parser.add_argument("--check", action="store_true")
    check = parser.parse_args().check
    differ = False
    for name, text in files().items():
        file = FOLDER / name
        if check:
            if not file.exists() or file.read_text(encoding="utf-8") != text:
                print(f"{file}: would change")
                differ = True
            continue
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text(text, encoding="utf-8")
    return 1 if differ else 0


if __name__ == "__main__":
    sys.exit(main())
