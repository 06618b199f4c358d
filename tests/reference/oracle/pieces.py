# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""A problem as programmes see it: bounds as the highest of straight pieces, and what is known of the answer."""
import math
import time

import numpy as np

import page

ROW = 1e4  # rows of integer programmes are worth this much more, since HiGHS lets a row slip by 1e-6
TERM = 1e3  # the same for chords


class Answer:
    """What is known of a problem: the best grams found, and how low shortfall and objective could still be."""

    def __init__(self):
        self.status = "impossible"
        self.grams = None
        self.shortfall = self.shortfall_bound = math.inf  # V*: best found, and no lower than
        self.objective = math.nan  # at the best grams within the budget
        self.objective_bound = math.nan  # no better than
        self.budget_price = 0.0  # change of the objective per unit of the budget, continuous only
        self.doubt = 0.0  # by which the objective may be off, since the least shortfall is known to some ten digits
        self.proven = True
        self.fragile = False  # the hard rules hold or fail by less than solvers can tell

    @property
    def budget(self):
        return self.shortfall * (1 + 1e-6) + 1e-9


class Oracle:
    def __init__(self, problem, seconds=60.0):
        self.problem, self.deadline = problem, time.monotonic() + seconds
        self.bounds = page.bounds_of(problem)
        self.elastic = [b for b in self.bounds if not b.hard]
        self.hard = [b for b in self.bounds if b.hard]
        self.count = problem.count
        self.reference = np.array(problem.reference)
        self.unit = np.array(problem.distance_unit)
        self.closest = problem.objective["kind"] == "closest"
        self.linear = None if self.closest else problem.sense * np.array(problem.linear_objective())
        # A bound is the highest of its pieces (vector, constant); one piece says it all where there is no scatter.
        self.pieces = {id(b): [] for b in self.bounds}
        for b in self.bounds:
            self.add_piece(b, self.reference)

    def left(self):
        return self.deadline - time.monotonic()

    # --- pieces ----------------------------------------------------------------------------------------------
    def tangent(self, bound, grams):
        vector = np.array(bound.vector)
        if bound.scatter is not None:
            spread = np.array(bound.scatter) * grams
            length = np.linalg.norm(spread)
            if length > 0:
                vector = vector + np.array(bound.scatter) * spread / length
        return vector, bound.constant

    def add_piece(self, bound, grams):
        self.pieces[id(bound)].append(self.tangent(bound, grams))

    def height(self, bound, grams):
        return max(v @ grams + c for v, c in self.pieces[id(bound)])

    def refine(self, grams, tolerance=1e-11):
        """Adds tangents where the pieces lie under the bound; says whether there were any."""
        found = False
        for b in self.bounds:
            if b.scatter is not None and b.value(grams) > max(0.0, self.height(b, grams)) + tolerance:
                self.add_piece(b, grams)
                found = True
        return found

    def forget(self):
        """Keeps the first piece of each bound and the latest few."""
        for b in self.bounds:
            self.pieces[id(b)][1:-8] = []

    def value(self, grams):
        return page.elastic_shortfall(self.bounds, grams)

    def objective(self, grams):
        """To be made small; 'highest' is negative here."""
        return self.problem.objective_value(grams) * (1.0 if self.closest else self.problem.sense)

    # --- one programme, continuous or whole, over columns [foods | shortfalls | distances | used] ------------------
    def programme(self, scale, row, budget=None, extra=0):
        """Rows z <= right for the pieces; foods in units of scale grams, shortfalls in units of 1/row."""
        width = self.count + len(self.elastic) + extra
        rows, right = [], []
        for number, b in enumerate(self.elastic):
            for vector, constant in self.pieces[id(b)]:
                line = np.zeros(width)
                line[: self.count] = vector * scale * row
                line[self.count + number] = -1.0
                rows.append(line)
                right.append(-constant * row)
        for b in self.hard:
            for vector, constant in self.pieces[id(b)]:
                line = np.zeros(width)
                line[: self.count] = vector * scale * row
                rows.append(line)
                right.append(-constant * row)
        if budget is not None and self.elastic:
            line = np.zeros(width)
            line[self.count : self.count + len(self.elastic)] = [b.weight for b in self.elastic]
            rows.append(line)
            right.append(budget * row)
        return np.array(rows).reshape(-1, width), np.array(right)

    def shortfall_cost(self, extra=0):
        return np.concatenate([np.zeros(self.count), [b.weight for b in self.elastic], np.zeros(extra)])
