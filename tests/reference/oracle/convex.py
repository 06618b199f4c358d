# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Small exact tools: linear programmes through HiGHS, and the point of a polyhedron nearest to the origin."""
import numpy as np
from scipy.optimize import LinearConstraint, linprog, milp, nnls

_TIGHT = {"primal_feasibility_tolerance": 1e-10, "dual_feasibility_tolerance": 1e-10}


def linear_programme(cost, rows, right, lower, upper):
    """least cost z with rows z <= right; (status, z, value) with status 'optimal', 'infeasible' or 'unbounded'."""
    bounds = np.column_stack([lower, upper])
    for method in ("highs-ds", "highs-ipm", "highs-ds"):
        options = dict(_TIGHT, presolve=method != "highs-ipm")
        result = linprog(cost, A_ub=rows if len(rows) else None, b_ub=right if len(rows) else None, bounds=bounds,
                         method=method, options=options)
        if result.status in (0, 2, 3):
            return {0: "optimal", 2: "infeasible", 3: "unbounded"}[result.status], result.x, result.fun
    raise ArithmeticError(f"HiGHS: {result.message}")


def integer_programme(cost, rows, right, lower, upper, integral, seconds):
    """The same with whole numbers where integral; (status, z, lower bound), status also 'stopped'."""
    for presolve in (True, False):  # presolve has called programmes infeasible that are not
        result = milp(cost, constraints=[LinearConstraint(rows, -np.inf, right)] if len(rows) else [],
                      bounds=(lower, upper), integrality=integral,
                      options={"mip_rel_gap": 0.0, "time_limit": max(0.05, seconds), "presolve": presolve})
        if result.status != 2:
            break
    if result.status == 0:
        return "optimal", result.x, result.mip_dual_bound if result.mip_dual_bound is not None else result.fun
    if result.status == 2:
        return "infeasible", None, np.inf
    if result.status == 3:
        return "unbounded", None, -np.inf
    bound = getattr(result, "mip_dual_bound", None)
    return "stopped", result.x, -np.inf if bound is None else bound


def nearest_to_origin(rows, right, size):
    """least |u| with rows u >= right, by non-negative least squares (Lawson and Hanson 1974, chapter 23).

    Returns (u, multipliers) with u = rows' multipliers, or None where the rows contradict each other. size: a guess of
    |u|, for scaling. Rows are expected to have norm one. The active set found is solved again on its own, so that what
    is returned satisfies the optimality conditions to rounding.
    """
    count = rows.shape[1]
    if not len(rows) or np.all(right <= 0):
        return np.zeros(count), np.zeros(len(rows))
    system = np.vstack([rows.T, right / size])
    wanted = np.zeros(count + 1)
    wanted[-1] = 1.0
    dual, _ = nnls(system, wanted, maxiter=50 * system.shape[1])
    residual = system @ dual - wanted
    if -residual[-1] < 1e-11:
        return None
    point = residual[:-1] / -residual[-1] * size
    multipliers = dual / -residual[-1] * size
    active = multipliers > 0
    if active.any():
        exact = np.linalg.lstsq(rows[active] @ rows[active].T, right[active], rcond=None)[0]
        polished = rows[active].T @ exact
        worse = (right - rows @ polished).max() > max(1e-12 * size, (right - rows @ point).max())
        if not worse and exact.min() >= -1e-9 * max(1.0, exact.max()):
            point = polished
            multipliers = np.zeros(len(rows))
            multipliers[active] = exact
    if (right - rows @ point).max() > 1e-9 * size:
        raise ArithmeticError("the nearest point does not keep its rows")
    return point, multipliers
