#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Writes 120 days of feeding of the invented Brackenmere Animal Gardens.

    make_feeding.py            writes feeding/
    make_feeding.py --check    exit status 1 if a committed file would change

The same seed writes the same files; every number is made up."""

import csv
import io
import pathlib
import sys

from generator import feeding

FOLDER = pathlib.Path(__file__).resolve().parent / "feeding"


def as_csv(rows):
    text = io.StringIO()
    csv.writer(text, lineterminator="\n").writerows(rows)
    return text.getvalue()


def main():
    check = "--check" in sys.argv[1:]
    differ = False
    FOLDER.mkdir(exist_ok=True)
    for name, rows in feeding.files().items():
        file = FOLDER / name
        text = as_csv(rows)
        if not check:
            file.write_text(text, encoding="utf-8")
        elif not file.exists() or file.read_text(encoding="utf-8") != text:
            print(f"{file}: would change")
            differ = True
    return 1 if differ else 0


if __name__ == "__main__":
    sys.exit(main())
