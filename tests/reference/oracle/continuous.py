# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Any grams: linear programmes, and the nearest point of a polyhedron; each way to keep the choices in turn."""
import itertools
import math

import numpy as np

import page
from cones import guide
from convex import linear_programme, nearest_to_origin
from pieces import Answer


def used_sets(problem, limit=5000):
    """Every way to keep the choices, as lower and upper limits of the grams."""
    groups = {}
    for choice in problem.document.get("choices", []):
        g = groups.setdefault(choice["group"], [0, math.inf, 0.0])
        g[0] = max(g[0], choice.get("at_least", 0))
        g[1] = min(g[1], choice.get("at_most", math.inf))
        g[2] = max(g[2], choice.get("min_g_each", 0.0))
    per_group = []
    for group, (least, most, each) in groups.items():
        members = [j for j, f in enumerate(problem.foods) if f.get("group") == group]
        most = min(most, len(members))
        sizes = range(least, most + 1) if each > 0 else [most]
        per_group.append([(members, set(s), each) for k in sizes for s in itertools.combinations(members, k)])
    if math.prod(len(p) for p in per_group) > limit:
        raise NotImplementedError("too many ways to choose")
    for ways in itertools.product(*per_group):
        lower, upper = np.array(problem.lowest, float), np.array(problem.highest, float)
        for members, used, each in ways:
            for j in members:
                if j in used:
                    lower[j] = max(lower[j], each)
                else:
                    upper[j] = 0.0
        if np.all(lower <= upper):
            yield lower, upper


def solve_continuous(oracle, budget=None):
    """budget: how much shortfall stage 2 may have, where it is not the page's."""
    answer = Answer()
    ways = []
    for lower, upper in used_sets(oracle.problem):
        found = least_shortfall(oracle, lower, upper)
        if found is None:
            answer.fragile |= nearly_feasible(oracle, lower, upper)
            continue
        ways.append((found[1], lower, upper, found[0]))
        answer.shortfall_bound = min(answer.shortfall_bound, found[2])
        answer.shortfall = min(answer.shortfall, found[1])
    if not ways:
        return answer
    answer.status = "balanced" if answer.shortfall <= 1e-9 else "compromise"
    answer.fragile = 1e-10 < answer.shortfall < 1e-8
    best, budget = math.inf, answer.budget if budget is None else budget
    for shortfall, lower, upper, start in ways:
        if shortfall > budget:
            continue
        if oracle.closest:
            found = closest_diet(oracle, lower, upper, budget, start)
        else:
            found = best_linear(oracle, lower, upper, budget)
        if found is None:  # not a hair's breadth of room: the diet of stage 1, unproved
            answer.proven, found = False, (start, 0.0)
        if oracle.objective(found[0]) < best:
            best, answer.grams, answer.budget_price = oracle.objective(found[0]), found[0], found[1]
            answer.doubt = found[1] * (1e-10 + abs(answer.shortfall - answer.shortfall_bound) + 1e-8 * answer.budget)
    answer.objective = answer.objective_bound = best
    return answer


def least_shortfall(oracle, lower, upper):
    """(grams, V, lower bound of V) of the least shortfall between these limits; None where the hard rules fail."""
    scale, best = oracle.unit, None
    elastic = len(oracle.elastic)
    low = np.concatenate([lower / scale, np.zeros(elastic)])
    high = np.concatenate([upper / scale, np.full(elastic, np.inf)])
    hint = guide(oracle, lower, upper)
    if hint is not None:
        oracle.forget()
        oracle.refine(hint, -math.inf)
        if page.hard_shortfall(oracle.bounds, hint) <= 1e-10:
            best = (hint, oracle.value(hint), 0.0)
    middle = hint
    for _ in range(400):
        rows, right = oracle.programme(scale, 1.0)
        status, z, bound = linear_programme(oracle.shortfall_cost(), rows, right, low, high)
        if status == "infeasible":
            return best
        grams = np.clip(z[: oracle.count] * scale, lower, upper)
        value = oracle.value(grams)
        hard = page.hard_shortfall(oracle.bounds, grams)
        if hard <= 1e-9 and (best is None or value < best[1]):
            best = (grams, value, bound)
        best = best and (best[0], best[1], max(bound, best[2]))
        if not oracle.refine(grams) or (best and best[1] - best[2] <= 1e-11 + 1e-10 * best[1]):
            break
        middle = grams if middle is None else 0.5 * (grams + middle)
        oracle.refine(middle, 0.0)  # tangents away from the programme's corner settle sooner
    if best is None:
        raise ArithmeticError("the hard rules hold for HiGHS but not for the page")
    return best[0], best[1], max(0.0, best[2])


def nearly_feasible(oracle, lower, upper):
    """Whether the hard rules fail by less than 1e-8 of each target: no solver should be blamed for that."""
    width = oracle.count + 1
    rows, right = [], []
    for b in oracle.hard:
        for vector, constant in oracle.pieces[id(b)]:
            rows.append(np.append(vector * oracle.unit, -1.0))
            right.append(-constant)
    low, high = np.append(lower / oracle.unit, 0.0), np.append(upper / oracle.unit, np.inf)
    cost = np.zeros(width)
    cost[-1] = 1.0
    status, _, least = linear_programme(cost, np.array(rows).reshape(-1, width), np.array(right), low, high)
    return status == "optimal" and least < 1e-8


def best_linear(oracle, lower, upper, budget):
    """(grams, price of the budget) of the least linear objective within the budget."""
    scale, elastic = oracle.unit, len(oracle.elastic)
    low = np.concatenate([lower / scale, np.zeros(elastic)])
    high = np.concatenate([upper / scale, np.full(elastic, np.inf)])
    cost = np.concatenate([oracle.linear * scale, np.zeros(elastic)])
    size = max(np.abs(cost).max(), 1e-300)
    values = []
    hint = guide(oracle, lower, upper, budget)
    if hint is not None:
        oracle.refine(hint, -math.inf)
    for slack in (0.0, 1e-6):  # the second only prices the budget
        for _ in range(400):
            rows, right = oracle.programme(scale, 1.0, budget + slack)
            status, z, _ = linear_programme(cost / size, rows, right, low, high)
            if status != "optimal":
                raise ArithmeticError(f"the objective is {status}")
            grams = np.clip(z[: oracle.count] * scale, lower, upper)
            if not oracle.refine(grams):
                break
        values.append((oracle.objective(grams), grams))
    return values[0][1], max(0.0, (values[0][0] - values[1][0]) / 1e-6)


def closest_diet(oracle, lower, upper, budget, start):
    """(grams, price of the budget) of the diet nearest to the reference within the budget, in u = (x - x0) / d."""
    base, unit = oracle.reference, oracle.unit
    rows, right, costs = [], [], []

    def demand(vector, constant, limit, of_budget=False):
        """vector x + constant <= limit"""
        row = -vector * unit
        norm = np.linalg.norm(row)
        if norm > 0:
            rows.append(row / norm)
            right.append((vector @ base + constant - limit) / norm)
            costs.append(1.0 / norm if of_budget else 0.0)

    for j in range(oracle.count):
        axis = np.eye(oracle.count)[j]
        demand(-axis, lower[j], 0.0)
        if upper[j] < math.inf:
            demand(axis, -upper[j], 0.0)
    hint = guide(oracle, lower, upper, budget)
    if hint is not None:
        oracle.refine(hint, -math.inf)
    for b in oracle.hard:
        for vector, constant in oracle.pieces[id(b)]:
            demand(vector, constant, 0.0)
    for b in oracle.elastic:
        for vector, constant in oracle.pieces[id(b)]:
            demand(b.weight * vector, b.weight * constant, budget, True)

    def demand_budget(grams):
        tangents = [(b.weight, *oracle.tangent(b, grams)) for b in oracle.elastic if b.shortfall(grams) > 0]
        if tangents:
            demand(sum(w * v for w, v, _ in tangents), sum(w * c for w, _, c in tangents), budget, True)

    if hint is not None:
        demand_budget(hint)
    demand_budget(start)
    size = max(1.0, np.linalg.norm((start - base) / unit))
    for turn in range(300):
        found = nearest_to_origin(np.array(rows), np.array(right), size)
        if found is None:
            return None
        grams = np.clip(base + unit * found[0], lower, upper)
        price = 2.0 * float(np.array(costs) @ found[1])
        over = oracle.value(grams) - budget
        hard = [b for b in oracle.hard if b.scatter is not None and b.value(grams) > 1e-11]
        slack = 1.0 if turn < 60 else 100.0
        if over <= slack * (1e-12 + 1e-10 * budget) and not hard:
            break
        for b in hard:
            demand(*oracle.tangent(b, grams), 0.0)
        if over > 0:
            demand_budget(grams)
    else:
        raise ArithmeticError("the closest diet does not settle")
    return grams, price
