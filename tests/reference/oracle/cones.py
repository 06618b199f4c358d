# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Where to put tangents: an interior-point solution (CVXOPT) of the problem with its cones, good to some eight digits.

Only a guide. The tangents at such a point leave an error of the square of its distance, and continuous.py goes on until
none is left, with or without this guide.
"""
import math

import numpy as np

try:
    import cvxopt
except ImportError:
    cvxopt = None


def guide(oracle, lower, upper, budget=None):
    """Grams near the least shortfall, or near the best objective within the budget; None where it cannot say."""
    if cvxopt is None or all(b.scatter is None for b in oracle.bounds):
        return None
    foods, elastic = oracle.count, oracle.elastic
    width = foods + len(elastic)
    column = {id(b): foods + i for i, b in enumerate(elastic)}
    unit = oracle.unit
    lines, cones = [], []
    for b in oracle.bounds:
        row = np.zeros(width)
        row[:foods] = np.array(b.vector) * unit
        if not b.hard:
            row[column[id(b)]] = -1.0
        if b.scatter is None:
            lines.append((row, -b.constant))
            continue
        spread = np.array(b.scatter) * unit
        used = np.flatnonzero(spread)
        block = np.zeros((1 + len(used), width))
        block[0] = row
        block[1:, used] = -np.diag(spread[used])
        cones.append((block, np.append([-b.constant], np.zeros(len(used)))))
    axes = np.eye(width)
    low = np.append(lower / unit, np.zeros(len(elastic)))
    high = np.append(upper / unit, np.full(len(elastic), np.inf))
    lines += [(-axes[j], -low[j]) for j in range(width)]
    lines += [(axes[j], high[j]) for j in range(width) if high[j] < math.inf]
    weights = np.append(np.zeros(foods), [b.weight for b in elastic])
    if budget is not None and elastic:
        lines.append((weights, budget + 1e-9))
    system = np.vstack([r for r, _ in lines] + [block for block, _ in cones])
    right = np.concatenate([[h for _, h in lines]] + [h for _, h in cones])
    shape = {"l": len(lines), "q": [len(h) for _, h in cones], "s": []}
    quadratic, cost = np.zeros((width, width)), weights
    if budget is not None:
        cost = np.zeros(width)
        if oracle.closest:
            quadratic[:foods, :foods] = 2 * np.eye(foods)
            cost[:foods] = -2 * oracle.reference / unit
        else:
            cost[:foods] = oracle.linear * unit / max(np.abs(oracle.linear * unit).max(), 1e-300)
    return solve_cone(quadratic, cost, system, right, shape, foods, unit, lower, upper)


def solve_cone(quadratic, cost, system, right, shape, foods, unit, lower, upper):
    options = {"show_progress": False, "abstol": 1e-11, "reltol": 1e-10, "feastol": 1e-10, "maxiters": 80}
    m = cvxopt.matrix
    try:
        found = cvxopt.solvers.coneqp(m(quadratic), m(cost), m(system), m(right), shape, options=options)
    except (ArithmeticError, ValueError):
        return None
    if found["x"] is None:
        return None
    grams = np.array(found["x"]).ravel()[:foods] * unit
    return np.clip(grams, lower, upper) if np.all(np.isfinite(grams)) else None
