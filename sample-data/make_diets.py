#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Writes the diets of the invented Brackenmere Animal Gardens.

    make_diets.py            writes diets/
    make_diets.py --check    exit status 1 if a committed file would change"""

import json
import pathlib
import sys

from generator import diets

FOLDER = pathlib.Path(__file__).resolve().parent / "diets"


def main():
    check = "--check" in sys.argv[1:]
    differ = False
    FOLDER.mkdir(exist_ok=True)
    for code, made in diets.diets().items():
        file = FOLDER / f"{code}.json"
        text = json.dumps(made, indent=2, ensure_ascii=False) + "\n"
        if not check:
            file.write_text(text, encoding="utf-8")
        elif not file.exists() or file.read_text(encoding="utf-8") != text:
            print(f"{file}: would change")
            differ = True
    return 1 if differ else 0


if __name__ == "__main__":
    sys.exit(main())
