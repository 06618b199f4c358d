# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Whole scale steps: mixed-integer programmes over numbers of steps, with chords in place of parabolas."""
import math

import numpy as np

import page
from convex import integer_programme
from pieces import ROW, TERM, Answer


def solve_whole(oracle):
    grid = Grid(oracle)
    answer = Answer()
    if np.any(grid.low > grid.high):
        return answer
    best = grid.least_shortfall(answer)
    if best is None:
        return answer
    answer.status = "balanced" if answer.shortfall <= 1e-9 else "compromise"
    answer.fragile |= 1e-9 < answer.shortfall < 1e-8
    grid.best_objective(answer, best)
    return answer


class Grid:
    """The numbers of steps of each food, and which foods are in use where a choice asks."""

    def __init__(self, oracle):
        problem = oracle.problem
        self.oracle, self.problem = oracle, problem
        self.step = np.array(problem.steps, float)
        self.low = np.ceil(np.array(problem.lowest) / self.step - 1e-9)
        self.high = np.floor(np.array(problem.highest) / self.step + 1e-9)
        self.members = sorted({j for c in problem.document.get("choices", []) for j, f in enumerate(problem.foods)
                               if f.get("group") == c["group"]})

    def grams(self, steps):
        return np.round(steps) * self.step

    # columns: steps | shortfalls | distances (closest only) | used
    def columns(self, distances):
        o = self.oracle
        extra = (o.count if distances else 0) + len(self.members)
        low = np.concatenate([self.low, np.zeros(len(o.elastic) + extra)])
        high = np.concatenate([self.high, np.full(len(o.elastic) + extra, np.inf)])
        integral = np.zeros(len(low))
        integral[: o.count] = 1
        if self.members:
            high[-len(self.members):] = 1
            integral[-len(self.members):] = 1
        return extra, low, high, integral

    def choice_rows(self, width):
        rows, right = [], []
        column = {j: width - len(self.members) + i for i, j in enumerate(self.members)}
        for j in self.members:
            # Without a limit of its own no diet gives more than this; checked where it is used.
            most = self.high[j] if math.isfinite(self.high[j]) else math.ceil(self.unlimited() / self.step[j])
            row = np.zeros(width)
            row[j], row[column[j]] = 1.0, -most
            rows.append(row)
            right.append(0.0)
        for choice in self.problem.document.get("choices", []):
            members = [j for j, f in enumerate(self.problem.foods) if f.get("group") == choice["group"]]
            for j in members:
                least = max(1.0, math.ceil(choice.get("min_g_each", 0.0) / self.step[j] - 1e-9))
                row = np.zeros(width)
                row[j], row[column[j]] = -1.0, least
                rows.append(row)
                right.append(0.0)
            for sign, bound in ((-1.0, choice.get("at_least", 0)), (1.0, choice.get("at_most", len(members)))):
                row = np.zeros(width)
                row[[column[j] for j in members]] = sign
                rows.append(row)
                right.append(sign * bound)
        return np.array(rows).reshape(-1, width), np.array(right)

    def unlimited(self):
        return 20.0 * sum(self.problem.reference) + 1000.0

    def run(self, cost, budget, distances, chords):
        o = self.oracle
        extra, low, high, integral = self.columns(distances)
        rows, right = o.programme(self.step, ROW, budget, extra)
        choice_rows, choice_right = self.choice_rows(len(low))
        rows, right = np.vstack([rows, choice_rows]), np.concatenate([right, choice_right])
        if distances:
            first = o.count + len(o.elastic)
            lines = np.zeros((len(chords), len(low)))
            level = np.zeros(len(chords))
            for number, (j, slope, constant) in enumerate(chords):
                lines[number, j], lines[number, first + j] = slope * TERM, -1.0
                level[number] = -constant * TERM
            rows, right = np.vstack([rows, lines]), np.concatenate([right, level])
        return integer_programme(cost, rows, right, low, high, integral, o.left())

    # --- stage 1 ---------------------------------------------------------------------------------------------
    def least_shortfall(self, answer):
        o, best = self.oracle, None
        answer.shortfall_bound = 0.0
        for _ in range(300):
            extra = len(self.members)
            status, z, bound = self.run(o.shortfall_cost(extra), None, False, [])
            if status == "infeasible":
                if best is not None:
                    answer.proven = False
                return best
            answer.shortfall_bound = max(answer.shortfall_bound, bound / ROW)
            if z is None:
                break
            grams = self.grams(z[: o.count])
            hard = page.hard_shortfall(o.bounds, grams)
            if hard <= 1e-9 and o.value(grams) < answer.shortfall:
                best, answer.shortfall = grams, o.value(grams)
            if not o.refine(grams):
                answer.fragile |= hard > 1e-9
                break
            if answer.shortfall - answer.shortfall_bound <= 1e-10:
                break
        answer.proven = answer.shortfall - answer.shortfall_bound <= 1e-9 + 1e-8 * answer.shortfall
        if best is None:
            answer.proven, answer.status = False, "unknown"
        return best

    # --- stage 2 ---------------------------------------------------------------------------------------------
    def best_objective(self, answer, start):
        o = self.oracle
        distances = o.closest
        chords, known = [], set()
        if distances:
            for j in range(o.count):
                for k in self.first_chords(j, start[j]):
                    self.chord(chords, known, j, k)
            cost = np.concatenate([np.zeros(o.count + len(o.elastic)), np.ones(o.count), np.zeros(len(self.members))])
            worth = TERM
        else:
            linear = o.linear * self.step
            worth = ROW / max(np.abs(linear * np.maximum(1.0, o.reference / self.step)).max(), 1e-300)
            cost = np.concatenate([linear * worth, np.zeros(len(o.elastic) + len(self.members))])
        best, answer.grams, limit, bound = o.objective(start), start, answer.budget, -math.inf
        for _ in range(300):
            if distances:
                self.tighten(best)
            status, z, low = self.run(cost, limit, distances, chords)
            bound = max(bound, low / worth) if status != "infeasible" else max(bound, best)
            if status == "infeasible" or z is None:
                break
            grams = self.grams(z[: o.count])
            value = o.value(grams)
            kept = value <= answer.budget * (1 + 1e-12) and page.hard_shortfall(o.bounds, grams) <= 1e-9
            if kept and o.objective(grams) < best:
                best, answer.grams = o.objective(grams), grams
            again = o.refine(grams)
            if distances:
                for j in range(o.count):
                    again |= self.chord(chords, known, j, int(round(grams[j] / self.step[j])))
                    again |= self.chord(chords, known, j, int(round(grams[j] / self.step[j])) - 1)
            if not kept and not again:  # HiGHS let a row slip: ask a little less of the budget
                limit -= max(1e-10, value - answer.budget)
                answer.fragile, again = True, limit > 0
            if not again or best - bound <= 1e-9 * max(1e-3, abs(best)):
                break
        answer.objective, answer.objective_bound = best, min(bound, best)
        answer.proven &= best - bound <= 1e-7 * max(1e-3, abs(best))

    def first_chords(self, j, steps_of_start):
        centre = int(round(self.problem.reference[j] / self.step[j]))
        start = int(round(steps_of_start / self.step[j]))
        near = {c + k for c in (centre, start) for k in range(-3, 4)}
        wide = {centre + s * 2**k for s in (-1, 1) for k in range(2, 12)}
        top = self.high[j] if math.isfinite(self.high[j]) else math.inf
        return sorted(k for k in near | wide if self.low[j] - 1 <= k <= top)

    def parabola(self, j, k):
        return ((k * self.step[j] - self.problem.reference[j]) / self.problem.distance_unit[j]) ** 2

    def chord(self, chords, known, j, k):
        """The straight line through steps k and k+1; says whether it is new."""
        if (j, k) in known:
            return False
        known.add((j, k))
        slope = self.parabola(j, k + 1) - self.parabola(j, k)
        chords.append((j, slope, self.parabola(j, k) - slope * k))
        return True

    def tighten(self, best):
        """No food of a better diet is further from the reference than the whole of the best one known."""
        reach = np.sqrt(max(best, 0.0)) * (1 + 1e-9) + 1e-9
        unit, base = self.oracle.unit, self.oracle.reference
        self.low = np.maximum(self.low, np.ceil((base - reach * unit) / self.step - 1e-6))
        self.high = np.minimum(self.high, np.floor((base + reach * unit) / self.step + 1e-6))
