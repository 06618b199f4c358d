# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""What HiGHS (in SciPy) and CVXOPT answer to the questions of a solver::Program."""
import cvxopt
import numpy as np
from scipy.optimize import Bounds, LinearConstraint, linprog, milp

_CONE_OPTIONS = {"show_progress": False, "abstol": 1e-11, "reltol": 1e-10, "feastol": 1e-10, "maxiters": 100}


def _array(values, missing):
    return np.array([missing if v is None else v for v in values], dtype=float)


class Program:
    """The fields of solver::Program; violations are columns of their own, one for each elastic row and side."""

    def __init__(self, fields):
        self.rows = np.array(fields["rows"], dtype=float)
        self.row_lower = _array(fields["row_lower"], -np.inf)
        self.row_upper = _array(fields["row_upper"], np.inf)
        self.price = _array(fields["price"], np.inf)
        self.lower = _array(fields["lower"], 0.0)
        self.upper = _array(fields["upper"], np.inf)
        self.step = _array(fields["step"], 0.0)
        self.centre, self.curvature, self.cost = (_array(fields[k], 0.0) for k in ("centre", "curvature", "cost"))
        self.scatter = np.array(fields["scatter"], dtype=float) if "scatter" in fields else np.zeros_like(self.rows)
        self.elastic = np.flatnonzero(np.isfinite(self.price))
        self.foods = self.rows.shape[1]

    def violations(self, grams):
        spread = np.linalg.norm(self.scatter * grams, axis=1)
        held = self.rows @ grams
        return np.maximum(0.0, np.maximum(self.row_lower - (held - spread), held + spread - self.row_upper))

    def shortfall(self, grams):
        return float(self.price[self.elastic] @ self.violations(grams)[self.elastic])

    def broken(self, grams):
        """The largest violation of what must hold."""
        hard = self.violations(grams)[~np.isfinite(self.price)]
        return max(hard.max(initial=0.0), (self.lower - grams).max(), (grams - self.upper).max())

    def objective(self, grams):
        return float(self.curvature @ (grams - self.centre) ** 2 + self.cost @ grams)

    def lifted(self):
        """(rows, right): rows z <= right over grams and one violation for each elastic row."""
        lift = np.zeros((len(self.rows), len(self.elastic)))
        lift[self.elastic, np.arange(len(self.elastic))] = 1.0
        above, below = np.hstack([self.rows, -lift]), np.hstack([-self.rows, -lift])
        return np.vstack([above, below]), np.concatenate([self.row_upper, -self.row_lower])

    def budget_row(self):
        return np.append(np.zeros(self.foods), self.price[self.elastic])


def _limits(program):
    extra = len(program.elastic)
    return np.append(program.lower, np.zeros(extra)), np.append(program.upper, np.full(extra, np.inf))


def linear(program, budget=None):
    """HiGHS: least shortfall, or least cost within a shortfall of budget."""
    rows, right = program.lifted()
    lower, upper = _limits(program)
    cost = program.budget_row()
    if budget is not None:
        rows, right = np.vstack([rows, cost]), np.append(right, budget)
        cost = np.append(program.cost, np.zeros(len(program.elastic)))
    tight = {"primal_feasibility_tolerance": 1e-10, "dual_feasibility_tolerance": 1e-10}
    found = linprog(cost, A_ub=rows, b_ub=right, bounds=np.column_stack([lower, upper]), method="highs-ds", options=tight)
    return found.fun if found.status == 0 else None


def in_whole_steps(program, cheapest):
    """HiGHS's branch and bound: the grams of least shortfall, or of least cost where all rows are hard."""
    rows, right = program.lifted()
    worth = 1e4  # a row may slip by 1e-6 of what it is worth
    units = np.append(program.step, np.full(len(program.elastic), 1.0 / worth))
    lower, upper = (limit / units for limit in _limits(program))
    cost = program.budget_row()
    if cheapest:
        cost = np.append(program.cost, np.zeros(len(program.elastic)))
    integral = np.append(np.ones(program.foods), np.zeros(len(program.elastic)))
    for presolve in (True, False):  # presolve has called programmes infeasible that are not
        found = milp(cost * units, constraints=LinearConstraint(rows * units * worth, -np.inf, right * worth),
                     bounds=Bounds(lower, upper), integrality=integral,
                     options={"mip_rel_gap": 0.0, "time_limit": 60.0, "presolve": presolve})
        if found.status == 0:
            return np.round(found.x[: program.foods]) * program.step
    return None


def conic(program, price=None, budget=None):
    """CVXOPT's interior point: (value, grams) of the least shortfall (both None), of the nearest diet within a budget, or
    of the nearest diet with the shortfall at a price. Grams are counted in tens."""
    unit = 10.0
    rows, right = program.lifted()
    count = rows.shape[1]
    scale = np.append(np.full(program.foods, unit), np.ones(len(program.elastic)))
    lines, cones = [], []
    for i in range(len(rows)):
        if not np.isfinite(right[i]):
            continue
        spread = program.scatter[i % len(program.rows)] * unit
        used = np.flatnonzero(spread)
        if not len(used):
            lines.append((rows[i] * scale, right[i]))
            continue
        block = np.zeros((1 + len(used), count))
        block[0] = rows[i] * scale
        block[np.arange(1, 1 + len(used)), used] = -spread[used]
        cones.append((block, np.append(right[i], np.zeros(len(used)))))
    lower, upper = (limit / scale for limit in _limits(program))
    axes = np.eye(count)
    lines += [(-axes[j], -lower[j]) for j in range(count)]
    lines += [(axes[j], upper[j]) for j in range(count) if np.isfinite(upper[j])]
    if budget is not None and len(program.elastic):
        lines.append((program.budget_row(), budget))
    quadratic, cost, constant = np.zeros((count, count)), np.zeros(count), 0.0
    if price is None and budget is None:
        cost = program.budget_row()
    else:
        weight = program.curvature * unit**2
        centre = program.centre / unit
        quadratic[: program.foods, : program.foods] = np.diag(2 * weight)
        cost[: program.foods] = -2 * weight * centre
        cost += (price or 0.0) * program.budget_row()
        constant = float(weight @ centre**2)
    system = np.vstack([row for row, _ in lines] + [block for block, _ in cones])
    bound = np.concatenate([[h for _, h in lines]] + [h for _, h in cones])
    shape = {"l": len(lines), "q": [len(h) for _, h in cones], "s": []}
    m = cvxopt.matrix
    try:
        found = cvxopt.solvers.coneqp(m(quadratic), m(cost), m(system), m(bound), shape, options=_CONE_OPTIONS)
    except (ArithmeticError, ValueError):
        return None
    # "unknown": the last digits were not reached; what was is still good where the gap is small
    if found["status"] != "optimal" and not (found["gap"] is not None and found["gap"] < 1e-8):
        return None
    return found["primal objective"] + constant, np.array(found["x"]).ravel()[: program.foods] * unit
