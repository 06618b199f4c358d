#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Makes random balance problems from ordinary foods, the same ones for the same seed.

    random_problems.py --seed 1 --count 5 --into DIRECTORY

Food values are those of data/foods_sr28.csv and, where TAREBOWL_IFCT_CSV names the table, of IFCT 2017; everything else
(targets, limits, steps, scatter, costs) is invented. A hidden diet is drawn first and targets are laid around what it
holds, or deliberately beside it, so that some problems balance and some do not.
"""
import argparse
import csv
import json
import math
import os
import pathlib
import random

import page

HERE = pathlib.Path(__file__).resolve().parent
PROXIMATES = ("WATER", "PROCNT", "FAT", "ASH", "CHOCDF", "FIBTG")
CANDIDATES = ("PROCNT FAT FIBTG CA P MG K NA FE ZN CU MN SE VITC VITA_RAE CARTB VITE VITK THIA RIBF NIA VITB6A FOL "
              "ENERC SUGAR").split()
UNITS = {"g": ("g", "mg"), "mg": ("mg", "g", "ug"), "ug": ("ug", "mg"), "kcal": ("kcal", "kJ")}
BASES = ("as-fed", "dry-matter", "energy", "day", "body-mass", "metabolic-mass")
RATIOS = (("CA", "P"), ("K", "NA"), ("ZN", "CU"), ("PROCNT", "FAT"), ("FE", "ZN"))


def sr28_foods():
    with open(HERE / "data" / "foods_sr28.csv", encoding="utf-8", newline="") as file:
        return [{"id": f"sr-{row['ndb_no']}", "name": row["food"], "group": row["group"],
                 "per_100_g": {k: float(row[k]) for k in page.STORED_UNIT if row.get(k)}}
                for row in csv.DictReader(file)]


def ifct_foods():
    """Raw foods of the Indian table; everything there is in grams per 100 g, 0 meaning not measured as well as none."""
    path = os.environ.get("TAREBOWL_IFCT_CSV", "")
    if not path or not os.path.exists(path):
        return []
    scale = {"WATER": ("water", 1), "PROCNT": ("protcnt", 1), "FAT": ("fatce", 1), "ASH": ("ash", 1),
             "FIBTG": ("fibtg", 1), "CA": ("ca", 1e3), "P": ("p", 1e3), "MG": ("mg", 1e3), "K": ("k", 1e3),
             "NA": ("na", 1e3), "FE": ("fe", 1e3), "ZN": ("zn", 1e3), "CU": ("cu", 1e3), "MN": ("mn", 1e3),
             "SE": ("se", 1e6), "VITC": ("vitc", 1e3)}
    with open(path, encoding="utf-8", newline="") as file:
        rows = csv.reader(file)
        column = {title.split("; ")[-1]: i for i, title in enumerate(next(rows))}
        foods = []
        for row in rows:
            values = {tag: float(row[column[name]] or 0) * factor for tag, (name, factor) in scale.items()}
            known = {tag: value for tag, value in values.items() if value > 0}
            if sum(known.get(t, 0) for t in ("WATER", "PROCNT", "FAT", "ASH")) < 100 and "WATER" in known:
                foods.append({"id": f"ifct-{row[column['code']]}", "name": row[column["name"]],
                              "group": row[column["grup"]].lower(), "per_100_g": known})
        return foods


def digits(value, count=4):
    return float(f"{value:.{count}g}")


class Maker:
    def __init__(self, seed, number, largest_whole=12, foods=None):
        self.random = random.Random(f"tarebowl {seed}/{number}")
        self.number, self.largest_whole = number, largest_whole
        self.table = foods or sr28_foods()

    def chance(self, p):
        return self.random.random() < p

    # --- foods --------------------------------------------------------------------------------------------------
    def pick_foods(self, count, method, unknown):
        foods = []
        for source in self.random.sample(self.table, count):
            contents = dict(source["per_100_g"])
            if method == "poultry-amen" and self.chance(0.7):
                contents.setdefault("STARCH", digits(self.random.uniform(0, 5)))
                contents.setdefault("SUGAR", digits(self.random.uniform(0, 5)))
            if method in ("dog-2006", "cat-2006") or self.chance(0.3):
                fibre = contents.get("FIBTG", 0.0)
                contents["FIBC"] = digits(fibre * self.random.uniform(0.3, 0.9))
                if self.chance(0.5):
                    contents.pop("FIBTG", None)
            for tag in list(contents):
                keep = tag == "FIBC" or tag == "WATER" and self.chance(0.9)
                if not keep and self.chance(unknown):
                    del contents[tag]
            foods.append({"id": source["id"], "name": source["name"], "group": source["group"], "per_100_g": contents})
        return foods

    def steps_for(self, total, count):
        menu = {True: (0.1, 0.1, 0.5, 1), False: (1, 1, 1, 5)}[total < 60]
        if total > 300:
            menu = (1, 5, 5, 50)
        common = self.random.choice(menu)
        return [self.random.choice(menu) if self.chance(0.25) else common for _ in range(count)]

    def limits(self, foods, hidden, must):
        for food, grams in zip(foods, hidden):
            step = food.get("scale_step_g", 1)
            if must or self.chance(0.6):
                food["max_g"] = digits(max(step, grams * self.random.uniform(1.2, 3.5) + step), 3)
            if self.chance(0.1) and grams > 2 * step:
                food["min_g"] = digits(grams * self.random.uniform(0.2, 0.8), 3)

    # --- targets ------------------------------------------------------------------------------------------------
    def band(self, value, shift):
        """min and max around value, or beside it."""
        r = self.random
        if shift:
            value *= r.choice((0.4, 0.6, 0.8, 0.95, 1.05, 1.3, 1.8, 2.5))
        width = r.choice((0.002, 0.02, 0.1, 0.1, 0.3))
        kind = r.choice(("band", "band", "min", "max", "point" if self.chance(0.1) else "band"))
        low, high = digits(value * (1 - width * r.random())), digits(value * (1 + width * r.random()))
        if kind == "point":
            return {"min": digits(value), "max": digits(value)}
        out = {}
        if kind in ("band", "min"):
            out["min"] = min(low, high)
        if kind in ("band", "max"):
            out["max"] = max(low, high)
        return out

    def targets(self, problem, hidden, infeasible, hard):
        r, count = self.random, self.random.randint(2, 12)
        probe = page.Problem(problem)
        nutrients = [n for n in CANDIDATES if sum(probe.amount_vector(n)) > 0]
        wanted = r.sample(nutrients, min(count, len(nutrients)))
        choices = [(n, r.choice(BASES)) for n in wanted]
        if "ENERC" in nutrients and self.chance(0.85):
            choices.insert(0, ("ENERC", "day"))
        out = []
        for index, (nutrient, basis) in enumerate(choices):
            denominator = page.at(probe.basis(basis), hidden)
            amount = page.dot(probe.amount_vector(nutrient), hidden)
            if denominator <= 0 or amount <= 0:
                continue
            stored = page.STORED_UNIT[nutrient]
            unit = r.choice(UNITS[stored]) if self.chance(0.4) else stored
            if nutrient in ("VITA_RAE", "VITE", "VITD") and self.chance(0.3):
                unit = "IU"
            value = amount / denominator / page.to_stored_unit(1.0, unit, nutrient)
            bounds = self.band(value, infeasible and self.chance(0.4))
            name = f"t{index}-{nutrient.lower()}"
            target = {"id": name, "nutrient": nutrient, **bounds, "unit": unit, "basis": basis}
            self.grade(target, hard)
            out.append(target)
        return out

    def grade(self, entry, hard):
        # Whether whole steps can hit a point exactly is number theory, not a diet.
        a_point_on_a_grid = self.number % 2 == 1 and "min" in entry and entry.get("min") == entry.get("max")
        if self.chance(hard) and not a_point_on_a_grid:
            entry["hard"] = True
        if self.chance(0.3):
            entry["weight"] = self.random.choice((0.5, 2, 5, 0.1))

    def ratios(self, problem, hidden, infeasible, hard):
        probe, out = page.Problem(problem), []
        for of, to in self.random.sample(RATIOS, self.random.randint(0, 2)):
            a, b = page.dot(probe.amount_vector(of), hidden), page.dot(probe.amount_vector(to), hidden)
            if a > 0 and b > 0:
                bounds = self.band(a / b, infeasible and self.chance(0.5))
                ratio = {"id": f"r-{of}-{to}".lower(), "of": of, "to": to, **bounds}
                self.grade(ratio, hard)
                out.append(ratio)
        return out

    def shares(self, problem, hidden, infeasible, hard):
        probe, out = page.Problem(problem), []
        groups = sorted({f["group"] for f in problem["foods"]})
        for group in self.random.sample(groups, min(len(groups), self.random.randint(0, 2))):
            basis = self.random.choice(("as-fed", "dry-matter", "energy"))
            whole = page.at(probe.basis(basis), hidden)
            part = page.at(probe.basis(basis, group), hidden)
            if whole > 0 and 0 <= part < 0.95 * whole:
                bounds = self.band(max(part / whole, 0.01), infeasible and self.chance(0.5))
                share = {"id": f"s-{group}".replace(" ", "-"), "group": group, "basis": basis,
                         **{k: min(1.0, v) for k, v in bounds.items()}}
                self.grade(share, hard)
                out.append(share)
        return out

    def choices(self, foods, hidden):
        out, ways = [], 1
        groups = {}
        for j, food in enumerate(foods):
            groups.setdefault(food["group"], []).append(j)
        for group, members in sorted(groups.items()):
            if len(members) < 2 or len(out) == 2 or self.chance(0.4) or len(members) > 7:
                continue
            used = [j for j in members if hidden[j] > 0]
            least = self.random.randint(0, len(used))
            most = self.random.randint(max(1, least), len(members))
            ways *= 2 ** len(members)
            if ways > 600:
                break
            each = max(foods[j].get("scale_step_g", 1) for j in members) * self.random.choice((1, 2))
            out.append({"group": group, "at_least": least, "at_most": most, "min_g_each": digits(each)})
            for j in members:
                foods[j]["max_g"] = digits(max(foods[j].get("max_g", 0), 3 * each, 2 * hidden[j]), 3)
        return out

    # --- the whole ----------------------------------------------------------------------------------------------
    def problem(self):
        r = self.random
        whole = self.number % 2 == 1
        largest = self.largest_whole if whole else 25
        count = r.randint(3 if self.chance(0.2) else min(5, largest), largest)
        method = r.choice(("modified-atwater",) * 5 + ("atwater", "given", "dog-2006", "cat-2006", "poultry-amen"))
        foods = self.pick_foods(count, method, r.choice((0, 0, 0.05, 0.2)))
        total = r.choice((20, 60, 150, 400, 1500))
        for food, step in zip(foods, self.steps_for(total, count)):
            if step != 1 or self.chance(0.5):
                food["scale_step_g"] = step
            if self.chance(0.25):
                food["eaten_fraction"] = r.choice((0.5, 0.8, 0.9, 0.95))
        raw = [r.expovariate(1.0) if self.chance(0.75) else 0.0 for _ in foods]
        raw[0] += 0.1
        hidden = [x * total / sum(raw) for x in raw]
        if whole:
            hidden = [round(x / f.get("scale_step_g", 1)) * f.get("scale_step_g", 1) for x, f in zip(hidden, foods)]
            hidden[0] = hidden[0] or foods[0].get("scale_step_g", 1)
        kind = r.choice(("closest",) * 6 + ("lowest-cost", "lowest-cost", "lowest", "highest"))
        infeasible, hard = self.chance(0.5), r.choice((0, 0, 0.2, 0.5, 1.0))
        problem = {
            "format": "tarebowl-problem/1", "energy_method": method,
            "animal": {"name": "Random animal (invented)", "count": r.choice((1, 1, 6)),
                       "body_mass_kg": digits(total / 1000 * r.uniform(2, 12), 3)},
            "foods": foods, "whole_steps": whole}
        problem["targets"] = self.targets(problem, hidden, infeasible, hard)
        problem["ratios"] = self.ratios(problem, hidden, infeasible, hard)
        problem["shares"] = self.shares(problem, hidden, infeasible, hard)
        self.limits(foods, hidden, kind == "highest")
        problem["choices"] = self.choices(foods, hidden) if self.chance(0.35) else []
        self.set_objective(problem, kind)
        if self.chance(0.5):
            problem["reference"] = {f["id"]: digits(x * r.uniform(0.5, 1.6), 3)
                                    for f, x in zip(foods, hidden) if x > 0 or self.chance(0.4)}
        if self.chance(0.25):
            self.set_confidence(problem)
        if not whole and r.random() < 0.3:
            for food in foods:
                food.pop("scale_step_g", None)
        if whole and self.chance(0.5):
            del problem["whole_steps"]
        if self.chance(0.2):
            self.spoil(problem)
        return {k: v for k, v in problem.items() if v != [] or k in ("targets",)}

    def set_objective(self, problem, kind):
        r = self.random
        if kind == "closest" and self.chance(0.5):
            return
        problem["objective"] = {"kind": kind}
        if kind in ("lowest", "highest"):
            probe = page.Problem(problem)
            known = [n for n in ("FE", "NA", "SUGAR", "CA", "ENERC", "VITC") if sum(probe.amount_vector(n)) > 0]
            problem["objective"]["nutrient"] = r.choice(known)
        for food in problem["foods"]:
            if kind == "lowest-cost" or self.chance(0.1):
                food["cost_per_kg"] = digits(r.uniform(0.5, 30), 3)

    def set_confidence(self, problem):
        problem["confidence"] = self.random.choice((0.8, 0.9, 0.95, 0.99))
        tags = {t["nutrient"] for t in problem["targets"]}
        for target in problem["targets"]:
            if target.get("min") == target.get("max"):  # no diet with any scatter hits a point with any certainty
                del target["max"]
        if not problem["whole_steps"] and self.chance(0.8):
            problem["choices"] = []
        for food in problem["foods"]:
            sd = {}
            for tag in sorted(tags):
                value = food["per_100_g"].get(tag)
                if value and (tag != "ENERC" or problem["energy_method"] == "given") and self.chance(0.7):
                    sd[tag] = digits(value * self.random.uniform(0.02, 0.25), 3)
            if sd:
                food["sd_per_100_g"] = sd

    # --- degenerate on purpose --------------------------------------------------------------------------------
    def spoil(self, problem):
        foods, targets = problem["foods"], problem["targets"]
        way = self.random.choice(("twin", "water", "not-eaten", "contradiction", "hard-contradiction", "fixed",
                                  "none-allowed", "zero-bound", "zero-reference", "no-targets", "twice"))
        if way == "twin":
            foods.append(dict(foods[0], id=foods[0]["id"] + "-again"))
        elif way == "water":
            nothing = dict.fromkeys("PROCNT FAT ASH CHOCDF FIBTG FIBC CA P FE ENERC".split(), 0.0)
            foods.append({"id": "water", "name": "Water", "group": "water", "per_100_g": {"WATER": 100.0, **nothing},
                          "max_g": 50, "scale_step_g": 1, "cost_per_kg": 0})
        elif way == "not-eaten":
            foods[-1]["eaten_fraction"] = 0.0
            foods[-1]["max_g"] = foods[-1].get("max_g", 100)
        elif way in ("contradiction", "hard-contradiction") and targets:
            twin = dict(self.random.choice(targets), id="opposite", hard=way == "hard-contradiction")
            low, high = twin.pop("min", None), twin.pop("max", None)
            if high is not None:
                twin["min"] = digits(1.2 * high)
            else:
                twin["max"] = digits(0.8 * low)
            targets.append(twin)
        elif way == "fixed":
            step = foods[0].get("scale_step_g", 1)
            foods[0]["min_g"] = foods[0]["max_g"] = 3 * step
        elif way == "none-allowed":
            foods[-1]["max_g"] = 0
            foods[-1].pop("min_g", None)
            problem["choices"] = []
        elif way == "zero-bound" and targets:
            tag = self.random.choice(targets)["nutrient"]
            targets.append({"id": "none-of-it", "nutrient": tag, "max": 0, "unit": page.STORED_UNIT[tag],
                            "basis": self.random.choice(("day", "dry-matter"))})
        elif way == "zero-reference":
            problem["reference"] = {food["id"]: 0 for food in foods}
        elif way == "no-targets":
            problem["targets"] = []
        elif way == "twice" and targets:
            targets.append(dict(targets[0], id="again"))


def acceptable(problem):
    """Whether the page allows the file: proximates, carbohydrate, and a food that knows each nutrient asked for."""
    probe = page.Problem(problem)
    for c in probe.compositions:
        if sum(c.get(tag, 0) for tag in ("WATER", "PROCNT", "FAT", "ASH", "CHOCDF")) > 104:
            return False
        carbohydrate = page._carbohydrate(c)
        if carbohydrate is not None and carbohydrate - (page._fibre(c) or 0) < -9:
            return False
    asked = [t["nutrient"] for t in problem["targets"]]
    asked += [r[k] for r in problem.get("ratios", []) for k in ("of", "to")]
    if "nutrient" in problem.get("objective", {}):
        asked.append(problem["objective"]["nutrient"])
    if any(all(probe.content(j, tag) is None for j in range(probe.count)) for tag in asked):
        return False
    if any(e is not None and e < 0 for e in probe.energies) or all(e is None for e in probe.energies):
        return False
    return all(low <= high and math.isfinite(low) for low, high in zip(probe.lowest, probe.highest))


def problems(seed, count, largest_whole=12, first=0):
    """count acceptable problems: (number, document)."""
    foods = sr28_foods() + ifct_foods()[::7]
    number = first
    while count > 0:
        document = Maker(seed, number, largest_whole, foods).problem()
        if acceptable(document):
            yield number, document
            count -= 1
        number += 1


def main():
    parser = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--count", type=int, default=10)
    parser.add_argument("--largest-whole", type=int, default=12)
    parser.add_argument("--into", type=pathlib.Path, default=pathlib.Path("."))
    arguments = parser.parse_args()
    arguments.into.mkdir(parents=True, exist_ok=True)
    for number, document in problems(arguments.seed, arguments.count, arguments.largest_whole):
        path = arguments.into / f"random-{arguments.seed}-{number}.json"
        path.write_text(json.dumps(document, indent=1), encoding="utf-8")


if __name__ == "__main__":
    main()
