#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Works out the "expected" result of problem files, independently of Tarebowl: a literal reading of the problem format,
handed to the mixed-integer solver HiGHS (through SciPy: package python3-scipy).

    work_out_expected.py FILE...            writes "expected" into each file
    work_out_expected.py --check FILE...    only compares

Grams are whole scale steps, so the squared distance of the objective "closest" is a sum of functions on a grid: the chords
between neighbouring steps describe it exactly, and the whole problem is linear in integers."""

import argparse
import json
import pathlib
import sys

import numpy
from scipy.optimize import Bounds, LinearConstraint, milp

from generator.problem import text_of

GRAMS = ["WATER", "PROCNT", "FAT", "ASH", "FIBC", "FIBTG", "FIBND", "FIBAD", "CHOCDF", "STARCH", "SUGAR", "LYS", "MET", "CYS"]
MICROGRAMS = ["SE", "ID", "VITA_RAE", "RETOL", "CARTB", "VITD", "VITK", "FOL", "VITB12"]
PER_GRAM = {"g": 1.0, "mg": 1e3, "ug": 1e6}
IU = {"VITA_RAE": 0.3, "VITD": 0.025, "VITE": 1 / 1.49}  # in the tagname's unit: ug retinol, ug D3, mg d-alpha-tocopherol


def own_unit(tag):
    return "g" if tag in GRAMS else "ug" if tag in MICROGRAMS else "mg"


def in_own_unit(unit, tag):
    if unit == "IU":
        return IU[tag]
    if tag == "ENERC":
        return {"kcal": 1.0, "kJ": 1 / 4.184}[unit]
    return PER_GRAM[own_unit(tag)] / PER_GRAM[unit]


def energy_per_100_g(values, method):
    if method == "given":
        return values.get("ENERC")
    carbohydrate = values.get("CHOCDF")
    if carbohydrate is None:
        carbohydrate = 100 - values["WATER"] - values["PROCNT"] - values["FAT"] - values["ASH"]
    if method == "atwater":
        return 4 * values["PROCNT"] + 9 * values["FAT"] + 4 * carbohydrate
    if method == "modified-atwater":
        nfe = carbohydrate - values.get("FIBC", values.get("FIBTG", 0.0))
        return 3.5 * values["PROCNT"] + 8.5 * values["FAT"] + 3.5 * nfe
    raise ValueError(f"no sample file uses the energy method {method}")


class Reading:
    """The problem as rows: coefficients on grams offered, a constant, the divisor of the relative shortfall."""

    def __init__(self, problem):
        self.problem, self.foods = problem, problem["foods"]
        self.eaten = self.of_foods("eaten_fraction", 1.0)
        self.step = self.of_foods("scale_step_g", 1.0)
        self.most = self.of_foods("max_g", numpy.inf)
        self.reference = numpy.array([problem["reference"].get(food["id"], 0.0) for food in self.foods])
        assert all(food.get("min_g", 0) == 0 for food in self.foods) and numpy.isfinite(self.most).all()
        assert problem["whole_steps"] and "confidence" not in problem and self.reference.sum() > 0
        self.rows = [*self.target_rows(), *self.ratio_rows(), *self.share_rows()]

    def of_foods(self, key, default):
        return numpy.array([food.get(key, default) for food in self.foods], dtype=float)

    def supply(self, tag):
        """Amount eaten per gram offered; unknown adds nothing."""
        if tag == "ENERC":
            per_100 = [energy_per_100_g(food["per_100_g"], self.problem["energy_method"]) for food in self.foods]
        else:
            per_100 = [food["per_100_g"].get(tag) for food in self.foods]
        return numpy.array([0.0 if value is None else value / 100 for value in per_100]) * self.eaten

    def basis(self, name):
        nothing, mass = numpy.zeros(len(self.foods)), self.problem["animal"]["body_mass_kg"]
        dry = numpy.array([(100 - food["per_100_g"]["WATER"]) / 100 for food in self.foods]) * self.eaten
        return {"as-fed": (self.eaten / 1000, 0.0), "dry-matter": (dry / 1000, 0.0),
                "energy": (self.supply("ENERC") / 1000, 0.0), "day": (nothing, 1.0), "body-mass": (nothing, mass),
                "metabolic-mass": (nothing, mass ** 0.75)}[name]

    def bounds(self, rule):
        return [(sign, rule[key]) for key, sign in (("min", -1.0), ("max", 1.0)) if key in rule]

    def row(self, rule, coefficients, constant, divisor):
        return (coefficients, constant, divisor, rule.get("hard", False), rule.get("weight", 1.0))

    def target_rows(self):
        for target in self.problem["targets"]:
            supply, (basis, fixed) = self.supply(target["nutrient"]), self.basis(target["basis"])
            at_reference = basis @ self.reference + fixed or 1.0
            for sign, bound in self.bounds(target):
                amount = bound * in_own_unit(target["unit"], target["nutrient"])
                yield self.row(target, sign * (supply - amount * basis), -sign * amount * fixed, (amount or 1.0) * at_reference)

    def ratio_rows(self):
        for ratio in self.problem.get("ratios", []):
            of, to = self.supply(ratio["of"]), self.supply(ratio["to"])
            for sign, bound in self.bounds(ratio):
                yield self.row(ratio, sign * (of - bound * to), 0.0, (bound or 1.0) * (to @ self.reference or 1.0))

    def share_rows(self):
        for share in self.problem.get("shares", []):
            basis, _ = self.basis(share["basis"])
            group = numpy.array([food["group"] == share["group"] for food in self.foods])
            for sign, bound in self.bounds(share):
                yield self.row(share, sign * basis * (group - bound), 0.0, basis @ self.reference or 1.0)

    def shortfall(self, grams):
        """Sum of weight times relative shortfall; infinite where a hard rule is broken."""
        total = 0.0
        for coefficients, constant, divisor, hard, weight in self.rows:
            miss = max(0.0, (coefficients @ grams + constant) / divisor)
            total += numpy.inf if hard and miss > 1e-9 else 0.0 if hard else weight * miss
        return total

    def distance_parts(self, grams):
        return ((grams - self.reference) / numpy.maximum(self.reference, 0.05 * self.reference.sum())) ** 2

    def linear_objective(self):
        kind = self.problem["objective"]["kind"]
        if kind == "lowest-cost":
            return self.of_foods("cost_per_kg", 0.0) / 1000
        return self.supply(self.problem["objective"]["nutrient"]) * {"lowest": 1.0, "highest": -1.0}[kind]

    def objective(self, grams):
        if self.problem["objective"]["kind"] == "closest":
            return self.distance_parts(grams).sum()
        return abs(self.linear_objective() @ grams)


class Program:
    """Columns: steps of each food, a slack a row, a cost a food, "is in the bowl" a food."""

    def __init__(self, reading):
        self.reading, self.n, self.m = reading, len(reading.foods), len(reading.rows)
        self.width = self.n + self.m + self.n + self.n
        self.most_steps = numpy.floor(reading.most / reading.step + 1e-9)
        self.lines, self.low, self.high = [], [], []
        self.tightened = numpy.zeros(self.m)
        self.add_choices()
        self.fixed_lines = len(self.lines)

    def add(self, entries, low, high):
        line = numpy.zeros(self.width)
        for column, value in entries:
            line[column] += value
        self.lines.append(line), self.low.append(low), self.high.append(high)

    def in_bowl(self, j):
        return self.n + self.m + self.n + j

    def add_choices(self):
        for choice in self.reading.problem.get("choices", []):
            members = [j for j, food in enumerate(self.reading.foods) if food["group"] == choice["group"]]
            for j in members:
                step = self.reading.step[j]
                self.add([(j, step), (self.in_bowl(j), -self.reading.most[j])], -numpy.inf, 0.0)
                self.add([(j, step), (self.in_bowl(j), -max(choice.get("min_g_each", 0.0), step))], 0.0, numpy.inf)
            self.add([(self.in_bowl(j), 1.0) for j in members], choice.get("at_least", 0), choice.get("at_most", numpy.inf))

    def add_rows(self):
        for i, (coefficients, constant, divisor, hard, _) in enumerate(self.reading.rows):
            entries = list(enumerate(coefficients * self.reading.step / divisor))
            self.add(entries if hard else [*entries, (self.n + i, -1.0)], -numpy.inf, -constant / divisor - self.tightened[i])

    def add_chords(self):
        """cost_j is above every chord of the squared distance between neighbouring steps."""
        for j in range(self.n):
            at = numpy.arange(self.most_steps[j] + 1)
            parts = [self.reading.distance_parts(numpy.where(numpy.arange(self.n) == j, k * self.reading.step[j],
                                                             self.reading.reference))[j] for k in at]
            for k in range(len(at) - 1):
                slope = parts[k + 1] - parts[k]
                self.add([(j, slope), (self.n + self.m + j, -1.0)], -numpy.inf, slope * k - parts[k])

    def solve(self, cost, limit=None):
        """Least cost; limit = (a row of columns, its largest value)."""
        del self.lines[self.fixed_lines:], self.low[self.fixed_lines:], self.high[self.fixed_lines:]
        self.add_rows()
        if limit is not None:
            self.add(list(enumerate(limit[0])), -numpy.inf, limit[1])
            if self.reading.problem["objective"]["kind"] == "closest":
                self.add_chords()
        upper = numpy.concatenate([self.most_steps, numpy.full(self.m + self.n, numpy.inf), numpy.ones(self.n)])
        integer = numpy.concatenate([numpy.ones(self.n), numpy.zeros(self.m + self.n), numpy.ones(self.n)])
        answer = milp(cost, constraints=LinearConstraint(numpy.array(self.lines), self.low, self.high),
                      bounds=Bounds(numpy.zeros(self.width), upper), integrality=integer,
                      options={"mip_rel_gap": 0.0, "time_limit": 900.0})
        assert answer.status == 0, answer.message
        return numpy.round(answer.x[:self.n]) * self.reading.step

    def shortfall_cost(self):
        cost = numpy.zeros(self.width)
        for i, row in enumerate(self.reading.rows):
            cost[self.n + i] = 0.0 if row[3] else row[4]
        return cost

    def objective_cost(self):
        cost = numpy.zeros(self.width)
        if self.reading.problem["objective"]["kind"] == "closest":
            cost[self.n + self.m:self.n + self.m + self.n] = 1.0
        else:
            cost[:self.n] = self.reading.linear_objective() * self.reading.step
        return cost

    def tighten(self, grams):
        """HiGHS holds a row to 1e-6; the format holds it to 1e-9: where a row was overstepped, ask for a little more."""
        for i, (coefficients, constant, divisor, _, _) in enumerate(self.reading.rows):
            over = (coefficients @ grams + constant) / divisor
            if 1e-9 < over < 1e-5:
                self.tightened[i] += over + 1e-7


def expected_of(problem):
    reading = Reading(problem)
    program = Program(reading)
    least = reading.shortfall(program.solve(program.shortfall_cost()))
    while not numpy.isfinite(least) or 0 < least < 1e-5:
        program.tighten(program.solve(program.shortfall_cost()))
        least = reading.shortfall(program.solve(program.shortfall_cost()))
    allowed = least * (1 + 1e-6) + 1e-9
    grams = program.solve(program.objective_cost(), (program.shortfall_cost(), allowed))
    while reading.shortfall(grams) > allowed * (1 + 1e-9):
        program.tighten(grams)
        grams = program.solve(program.objective_cost(), (program.shortfall_cost(), allowed))
    shortfall = reading.shortfall(grams)
    return {"status": "balanced" if shortfall <= 1e-9 else "compromise", "shortfall": float(f"{shortfall:.12g}"),
            "objective": float(f"{reading.objective(grams):.12g}"),
            "grams": {food["id"]: float(f"{mass:.9g}") for food, mass in zip(reading.foods, grams) if mass > 0}}


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
        print(f"{path.name}: {expected}")
        if not arguments.check:
            path.write_text(text_of(problem | {"expected": expected}) + "\n", encoding="utf-8", newline="\n")
    return 1 if arguments.check and changed else 0


if __name__ == "__main__":
    sys.exit(main())
