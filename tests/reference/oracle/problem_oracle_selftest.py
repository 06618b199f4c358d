#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Is the independent reading itself right? Hand arithmetic, every point of small grids, and a second solver."""
import copy
import itertools
import math
import random
import sys
import unittest

try:
    import numpy as np

    import cones
    import page
    import random_problems
    from continuous import used_sets
    from pieces import Oracle
    from problem_oracle import solve
except ImportError as missing:
    print(f"skipped: {missing} (python3-scipy 1.9 or later is wanted)")
    sys.exit(77)

EXAMPLE = {"WATER": 8, "PROCNT": 26, "FAT": 15, "FIBC": 3, "ASH": 7}  # NFE = 100 - 26 - 15 - 3 - 8 - 7 = 41


def small_problem(**more):
    """Two foods, one target; numbers that can be worked out in the head."""
    leaf = {"WATER": 90, "CA": 200, "P": 50, "ENERC": 30}
    seed = {"WATER": 10, "P": 400, "ENERC": 500}
    foods = [{"id": "leaf", "name": "Leaf", "group": "green", "per_100_g": leaf},
             {"id": "seed", "name": "Seed", "group": "dry", "per_100_g": seed}]
    return page.Problem({"format": "tarebowl-problem/1", "energy_method": "given", "foods": foods, **more})


class HandArithmetic(unittest.TestCase):
    def test_energy_of_the_worked_example(self):
        # National Research Council 2006 and modified Atwater, percentages as fed; see the notes beside the C++ tests.
        for method, kcal_per_kg in (("modified-atwater", 3620.0), ("atwater", 10 * (4 * 26 + 9 * 15 + 4 * 44)),
                                    ("dog-2006", 3793.37548), ("cat-2006", 3792.82922)):
            self.assertAlmostEqual(10 * page.energy_per_100_g(method, EXAMPLE), kcal_per_kg, delta=1e-5)

    def test_poultry_energy(self):
        food = {"PROCNT": 17, "FAT": 4, "STARCH": 40, "SUGAR": 4}  # 11.2055 MJ/kg = 2678.179 kcal/kg
        self.assertAlmostEqual(10 * page.energy_per_100_g("poultry-amen", food), 2678.179, delta=1e-3)

    def test_energy_with_a_term_unknown_is_unknown(self):
        for missing in ("WATER", "PROCNT", "FAT", "ASH"):
            food = {k: v for k, v in EXAMPLE.items() if k != missing}
            self.assertIsNone(page.energy_per_100_g("modified-atwater", food))

    def test_units(self):
        self.assertEqual(page.to_stored_unit(1, "g", "CA"), 1000)
        self.assertAlmostEqual(page.to_stored_unit(418.4, "kJ", "ENERC"), 100)
        self.assertAlmostEqual(page.to_stored_unit(40, "IU", "VITD"), 1)
        self.assertAlmostEqual(page.to_stored_unit(1.49, "IU", "TOCPHA"), 1)

    def test_reference_without_one_meets_the_energy_midpoint_in_equal_grams(self):
        energy = {"id": "e", "nutrient": "ENERC", "min": 90, "max": 122, "unit": "kcal", "basis": "day"}
        # One gram of each holds 5.3 kcal; 106 kcal need 20 g of each.
        self.assertEqual([round(x, 9) for x in small_problem(targets=[energy]).reference], [20.0, 20.0])
        self.assertEqual(small_problem(targets=[]).reference, [50.0, 50.0])
        self.assertEqual(small_problem(targets=[], reference={"leaf": 0}).reference, [50.0, 50.0])

    def test_shortfall_on_dry_matter(self):
        calcium = {"id": "ca", "nutrient": "CA", "min": 5, "max": 12, "unit": "g", "basis": "dry-matter"}
        problem = small_problem(targets=[calcium], reference={"leaf": 100, "seed": 100})
        low, high = page.bounds_of(problem)
        # 50 g of each: 5 g + 45 g DM = 0.05 kg, wanted 250 mg, there are 100 mg; B at the reference 0.1 kg: 150 / 500.
        self.assertAlmostEqual(low.shortfall([50, 50]), 0.3)
        # Leaf alone, 100 g: 0.01 kg DM, at most 120 mg, there are 200: 80 / (12000 * 0.1).
        self.assertAlmostEqual(high.shortfall([100, 0]), 80 / 1200)

    def test_share_excess_counts_in_share_points_of_the_reference(self):
        share = {"id": "g", "group": "green", "max": 0.1, "basis": "dry-matter"}
        problem = small_problem(targets=[], shares=[share], reference={"leaf": 100, "seed": 100})
        # 5 of 50 g DM is 0.1: met. 10 of 10 g: excess 0.9 points times 10/100.
        self.assertAlmostEqual(page.bounds_of(problem)[0].shortfall([50, 50]), 0)
        self.assertAlmostEqual(page.bounds_of(problem)[0].shortfall([100, 0]), 0.09)

    def test_coverage_is_the_known_share_of_eaten_dry_matter(self):
        self.assertAlmostEqual(page.coverage(small_problem(), "CA", [50, 50]), 0.1)

    def test_cheapest_pair_by_hand(self):
        # 100 mg Ca from leaf at least: 50 g. 400 mg P at least: 25 mg there, 375 mg from 93.75 g seed, or 94 g.
        targets = [{"id": "ca", "nutrient": "CA", "min": 100, "unit": "mg", "basis": "day"},
                   {"id": "p", "nutrient": "P", "min": 400, "unit": "mg", "basis": "day"}]
        for whole, seed in ((False, 93.75), (True, 94.0)):
            problem = small_problem(targets=targets, whole_steps=whole, objective={"kind": "lowest-cost"})
            for food, cost in zip(problem.foods, (4, 1)):
                food["cost_per_kg"] = cost
            answer = solve(problem)
            np.testing.assert_allclose(answer.grams, [50, seed], rtol=1e-6)
            self.assertEqual(answer.status, "balanced")


def literal_shortfall(problem, grams):
    """Sum of weight times s, written out once more from the sentences of the page, without page.Bound."""
    document, total = problem.document, 0.0
    eaten = [problem.eaten[j] * grams[j] for j in range(problem.count)]
    eaten0 = [problem.eaten[j] * problem.reference[j] for j in range(problem.count)]

    def amount(tag, e):
        return sum((problem.content(j, tag) or 0.0) * e[j] for j in range(problem.count))

    def whole(basis, e, group=None):
        chosen = [j for j in range(problem.count) if group in (None, problem.foods[j].get("group"))]
        mass = document.get("animal", {}).get("body_mass_kg")
        if basis in ("day", "body-mass", "metabolic-mass"):
            return {"day": 1.0, "body-mass": mass, "metabolic-mass": mass and mass**0.75}[basis]
        per_gram = {"as-fed": lambda j: 1.0, "energy": lambda j: problem.content(j, "ENERC") or 0.0,
                    "dry-matter": lambda j: problem.dry_matter(j) or 0.0}[basis]
        return sum(per_gram(j) * e[j] for j in chosen) / 1000

    for t in document.get("targets", []):
        factor = page.to_stored_unit(1.0, t["unit"], t["nutrient"])
        sd = math.sqrt(sum(((problem.foods[j].get("sd_per_100_g", {}).get(t["nutrient"], 0)) / 100 * eaten[j]) ** 2
                           for j in range(problem.count)))
        n, b, b0 = amount(t["nutrient"], eaten), whole(t["basis"], eaten), whole(t["basis"], eaten0) or 1.0
        shortfall = 0.0
        if "min" in t:
            m = t["min"] * factor
            shortfall += max(0.0, m * b - (n - problem.z * sd)) / ((m or factor) * b0)
        if "max" in t:
            m = t["max"] * factor
            shortfall += max(0.0, (n + problem.z * sd) - m * b) / ((m or factor) * b0)
        total += 0.0 if t.get("hard") else t.get("weight", 1.0) * shortfall
    for r in document.get("ratios", []):
        of, to, to0 = amount(r["of"], eaten), amount(r["to"], eaten), amount(r["to"], eaten0) or 1.0
        shortfall = max(0.0, r.get("min", 0) * to - of) / ((r.get("min") or 1) * to0)
        if "max" in r:
            shortfall += max(0.0, of - r["max"] * to) / ((r["max"] or 1) * to0)
        total += 0.0 if r.get("hard") else r.get("weight", 1.0) * shortfall
    for s in document.get("shares", []):
        part, b, b0 = whole(s["basis"], eaten, s["group"]), whole(s["basis"], eaten), whole(s["basis"], eaten0) or 1.0
        if b > 0:
            points = max(0.0, s.get("min", 0) - part / b, part / b - s.get("max", 1))
            total += 0.0 if s.get("hard") else s.get("weight", 1.0) * points * b / b0
    return total


class AgainstASecondSolution(unittest.TestCase):
    def test_bounds_are_the_sentences_of_the_page(self):
        generator = random.Random(7)
        for _, document in random_problems.problems(11, 60):
            problem = page.Problem(document)
            for _ in range(3):
                grams = [generator.uniform(0, 60) for _ in problem.foods]
                expected = literal_shortfall(problem, grams)
                total = page.elastic_shortfall(page.bounds_of(problem), grams)
                self.assertAlmostEqual(total, expected, delta=1e-9 * (1 + expected))

    def test_whole_steps_against_every_point_of_small_grids(self):
        checked = {"balanced": 0, "compromise": 0, "impossible": 0}
        for _, document in random_problems.problems(5, 320, largest_whole=3):
            if not document.get("whole_steps", True):
                continue
            document = copy.deepcopy(document)
            for food in document["foods"]:
                food.setdefault("max_g", max(food.get("min_g", 0), 11 * food.get("scale_step_g", 1)))
            problem = page.Problem(document)
            if math.prod(h / s + 1 for h, s in zip(problem.highest, problem.steps)) < 4000:
                self.check_grid(problem, checked)
        self.assertGreater(min(checked.values()), 4, checked)

    def check_grid(self, problem, checked):
        bounds = page.bounds_of(problem)
        axes = [np.arange(0, h + 1e-9, s) for h, s in zip(problem.highest, problem.steps)]
        allowed = [g for g in itertools.product(*axes) if not page.broken_rules(problem, bounds, g)]
        answer = solve(problem, 60)
        if not allowed:
            self.assertEqual(answer.status, "impossible")
            checked["impossible"] += 1
            return
        values = [page.elastic_shortfall(bounds, g) for g in allowed]
        least = min(values)
        best = min(problem.objective_value(g) * (1 if problem.objective["kind"] == "closest" else problem.sense)
                   for g, v in zip(allowed, values) if v <= least * (1 + 1e-6) + 1e-9)
        self.assertEqual(answer.status, "balanced" if least <= 1e-9 else "compromise")
        self.assertAlmostEqual(answer.shortfall, least, delta=1e-12 + 1e-9 * least)
        self.assertAlmostEqual(answer.objective, best, delta=1e-9 + 1e-9 * abs(best))
        self.assertTrue(answer.proven)
        checked[answer.status] += 1

    @unittest.skipIf(cones.cvxopt is None, "python3-cvxopt is not installed")
    def test_continuous_against_an_interior_point_solver(self):
        checked = 0
        for _, document in random_problems.problems(9, 80):
            problem = page.Problem(dict(document, whole_steps=False, choices=[]))
            answer = solve(problem)
            if answer.status == "impossible" or answer.shortfall < 1e-4:
                continue
            oracle = Oracle(problem)
            lower, upper = next(used_sets(problem))
            for bound in oracle.bounds:  # a cone of no width where there is no scatter
                bound.scatter = bound.scatter or [0.0] * problem.count
            grams = cones.guide(oracle, lower, upper)
            if grams is not None and page.hard_shortfall(oracle.bounds, grams) < 1e-7:
                self.assertAlmostEqual(oracle.value(grams), answer.shortfall, delta=1e-6 * answer.shortfall + 1e-7)
                checked += 1
        self.assertGreater(checked, 15)

    def test_no_small_move_within_the_budget_comes_closer(self):
        generator = np.random.default_rng(3)
        for _, document in random_problems.problems(13, 30):
            problem = page.Problem(dict(document, whole_steps=False, choices=[], objective={"kind": "closest"}))
            bounds, answer = page.bounds_of(problem), solve(problem)
            if answer.grams is None or not answer.proven:
                continue
            self.assertEqual(page.broken_rules(problem, bounds, list(answer.grams), 1e-8), [])
            for size in (1e-4, 1e-2, 1.0):
                for _ in range(60):
                    move = generator.normal(size=problem.count) * size * (generator.random(problem.count) < 0.4)
                    grams = np.clip(answer.grams + move, problem.lowest, problem.highest)
                    allowed = page.elastic_shortfall(bounds, grams) <= answer.budget
                    if allowed and page.hard_shortfall(bounds, grams) == 0:
                        least = answer.objective * (1 - 1e-7) - answer.doubt - 1e-9
                        self.assertGreaterEqual(problem.objective_value(grams), least)


if __name__ == "__main__":
    unittest.main()
