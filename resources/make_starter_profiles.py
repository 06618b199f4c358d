#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Writes data/starter_profiles.json from the table of published targets, which is not part of the repository.

    make_starter_profiles.py [--reference FOLDER]    FOLDER holds targets.csv (default: ../../shared/reference)
    make_starter_profiles.py --check                 exit status 1 if the file would change, 77 without the table

Every row of the table comes out: as a target or a ratio, or as a remark of its profile where it states no amount that a
diet can be held to. What is printed stands beside what it was read as. How words are read: starter_words.py."""

import argparse
import csv
import json
import os
import pathlib
import re
import sys

from starter_words import BASES, LIMITED, NUTRIENTS, RANGES, RATIOS, READING, REMARKS, UNITS, amount, provenance

HERE = pathlib.Path(__file__).resolve().parent
OUTPUT = HERE / "data" / "starter_profiles.json"
TABLE_ABSENT = 77  # what a test runner reads as "skipped"

ABOUT = ("Published nutrient targets as profiles to derive from; the program never edits them. Each rule names its source and whether "
         "the source's text was read (seen), recalled (memory: to be checked before use, no citation) or computed from values that were "
         "read (derived). printed: the row as the table has it. Model species are a starting point. Written by make_starter_profiles.py.")

FRUIT_BATS = {"fruit bat, Pteropus poliocephalus": "grey-headed", "fruit bat, Rousettus aegyptiacus": "egyptian",
              "frugivorous bats": "iron"}
STAGED = {"rabbit_nrc1977"}  # one profile for each life stage


def code_of(row):
    code = row["profile"].replace("_", "-").lower()
    if row["profile"] in STAGED:
        return f"{code}-{row['life_stage']}"
    if row["profile"] == "fruit_bat":
        return f"{code}-{FRUIT_BATS[row['species_proxy']]}"
    return code


def model_of(row):
    """ "dog (omnivore/canid proxy)": who was measured, and for whom it is taken."""
    match = re.fullmatch(r"(.*?) \((.*)\)", row["species_proxy"])
    return (match[1], match[2]) if match else (row["species_proxy"], "")


def words_of(row):
    """Without who did it and whose page it was."""
    words = row["seen_or_memory"].replace("done by me", "done here")
    return re.sub(r", [a-z.]+ User:\w+/\w+", "", words)


def note_of(row, *more):
    assumed = BASES[row["basis"]][3]
    return "; ".join(part for part in (row["note"], READING.get(row["nutrient"], ""), assumed, *more) if part)


def printed_of(row):
    keys = ("nutrient", "min", "max", "unit", "basis", "seen_or_memory", "note")
    printed = {key: row[key] for key in keys if row[key]}
    printed["seen_or_memory"] = words_of(row)
    return printed


def rule_of(row, rule_id, *more):
    rule = {"id": rule_id, "source": row["source"], "provenance": provenance(row["seen_or_memory"]),
            "model_species": row["species_proxy"]}
    note = note_of(row, *more)
    return rule | ({"note": note} if note else {}) | {"printed": printed_of(row)}


def bounds_of(row, factor="1"):
    return {key: amount(row[key], factor) for key in ("min", "max") if row[key]}


def ratio_of(row):
    rule_id, of, to = RATIOS[row["nutrient"]]
    return {"of": of, "to": to} | bounds_of(row) | rule_of(row, rule_id)


def is_limit(row, tagname):
    is_range = row["profile"].startswith("reptile") and tagname in RANGES
    return tagname in LIMITED and not is_range


def targets_of(row):
    """One target; of vitamin A with a maximum two, since that guards against preformed vitamin A alone."""
    tagname, rule_id = NUTRIENTS[row["nutrient"]]
    unit, factor = UNITS[row["unit"]]
    basis = BASES[row["basis"]][0]
    preformed = "retinol" in row["unit"] or row["profile"].startswith("cat")
    if tagname == "VITA_RAE" and preformed:
        tagname = "RETOL"
    more = ["printed as retinol equivalents"] if row["unit"] == "ug RE" else []
    if tagname == "VITE" and "tocopheryl acetate" in row["note"]:
        unit = "IU"
        more = ["1.00 IU per mg of the acetate (USP, from memory)"]
    scale = {"unit": unit, "basis": basis}
    bounds = bounds_of(row, factor)
    if tagname == "VITA_RAE" and "max" in bounds:
        why = "the maximum guards against preformed vitamin A"
        limit = {"nutrient": "RETOL", "max": bounds.pop("max")} | scale | {"safe_upper_limit": True}
        return [{"nutrient": tagname} | bounds | scale | rule_of(row, rule_id, *more),
                limit | rule_of(row, rule_id + "-max", why)]
    safe = {"safe_upper_limit": True} if "max" in bounds and is_limit(row, tagname) else {}
    return [{"nutrient": tagname} | bounds | scale | safe | rule_of(row, rule_id, *more)]


def remark_of(row):
    why = REMARKS.get(row["nutrient"]) or "no amount is printed"
    return {"why": why, "source": row["source"], "provenance": provenance(row["seen_or_memory"]),
            "model_species": row["species_proxy"], "printed": printed_of(row)}


def profile_of(code, rows):
    model, stands_for = model_of(rows[0])
    profile = {"code": code, "version": 1, "name": f"{model[0].upper()}{model[1:]}, {rows[0]['life_stage']}",
               "model_species": model, "why_model": stands_for, "life_stage": rows[0]["life_stage"]}
    for key, place in (("kcal_per_g_dry_matter", 1), ("dry_matter_fraction", 2)):
        stated = {BASES[row["basis"]][place] for row in rows} - {None}
        if len(stated) == 1:
            profile[key] = float(stated.pop())
    if code == "dog-adult-aafco2014-kcal":
        profile["kcal_per_g_dry_matter"] = 4.0  # the density at which its DM twin is stated
    profile |= {"targets": [], "ratios": [], "remarks": []}
    for row in rows:
        if row["nutrient"] in RATIOS:
            profile["ratios"].append(ratio_of(row))
        elif row["nutrient"] in REMARKS or not (row["min"] or row["max"]):
            profile["remarks"].append(remark_of(row))
        else:
            profile["targets"] += targets_of(row)
    ids = [rule["id"] for rule in profile["targets"] + profile["ratios"]]
    assert len(ids) == len(set(ids)), (code, ids)
    return profile


def text_of(profiles):
    """One rule a line, so that a change of the table is seen as one."""
    def line(value):
        return json.dumps(value, ensure_ascii=False)
    blocks = []
    for profile in profiles:
        head = {key: value for key, value in profile.items() if not isinstance(value, list)}
        lists = [f'{line(key)}: [' + ",".join(f"\n      {line(entry)}" for entry in value) + "]"
                 for key, value in profile.items() if isinstance(value, list)]
        blocks.append("    " + line(head)[:-1] + ",\n    " + ",\n    ".join(lists) + "}")
    return (f'{{\n  "format": "tarebowl-profiles/1",\n  "about": {line(ABOUT)},\n  "profiles": [\n' + ",\n".join(blocks)
            + "\n  ]\n}\n")


def main():
    parser = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    default = os.environ.get("TAREBOWL_REFERENCE_DIR") or HERE.parent.parent / "shared" / "reference"
    parser.add_argument("--reference", type=pathlib.Path, default=pathlib.Path(default))
    parser.add_argument("--check", action="store_true")
    options = parser.parse_args()
    table = options.reference / "targets.csv"
    if not table.exists():
        print(f"{table} is not there: nothing to do", file=sys.stderr)
        return TABLE_ABSENT
    with table.open(encoding="utf-8", newline="") as file:
        groups = {}
        for row in csv.DictReader(file):
            groups.setdefault(code_of(row), []).append(row)
    text = text_of([profile_of(code, rows) for code, rows in groups.items()])
    if options.check:
        return 0 if OUTPUT.exists() and OUTPUT.read_text(encoding="utf-8") == text else 1
    OUTPUT.write_text(text, encoding="utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main())
