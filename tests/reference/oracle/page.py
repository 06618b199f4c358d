# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The documented meaning of a balance problem, read literally: what a diet holds, and what that is worth.

Written from the page that documents "tarebowl-problem/1" alone, without a look at the program's own code, so that a
misreading in either shows up as a difference. There is no solver here: only definitions, in the page's order.
"""
import math
from statistics import NormalDist

INFINITY = math.inf

# --- Units: each nutrient is stored in one -----------------------------------------------------------------------
_STORED = {
    "g": "WATER PROCNT FAT ASH FIBC FIBTG FIBND FIBAD CHOCDF CHOAVL STARCH SUGAR LYS MET",
    "mg": "CA P MG K NA CL FE ZN CU MN VITC VITE TOCPHA THIA RIBF NIA VITB6A PANTAC OXALAC PHYTAC CHOLE",
    "ug": "SE ID VITA_RAE RETOL CARTB VITD VITK FOL VITB12 BIOT",
    "kcal": "ENERC",
}
STORED_UNIT = {tag: unit for unit, tags in _STORED.items() for tag in tags.split()}
_SYNONYMS = {"TOCPHA": "VITE"}
_MASS_IN_UG = {"g": 1e6, "mg": 1e3, "ug": 1.0}
_KJ_PER_KCAL = 4.184
# 1 IU vitamin A = 0.3 ug retinol, 1 IU vitamin D = 0.025 ug, 1 mg d-alpha-tocopherol = 1.49 IU.
_UG_PER_IU = {"VITA_RAE": 0.3, "RETOL": 0.3, "VITD": 0.025, "VITE": 1000.0 / 1.49}


def canonical(tag):
    return _SYNONYMS.get(tag, tag)


def to_stored_unit(value, unit, tag):
    """value of nutrient tag, stated in unit, in the unit the page stores it in."""
    stored = STORED_UNIT[canonical(tag)]
    if unit in ("µg", "mcg"):
        unit = "ug"
    if unit == stored:
        return value
    if unit == "IU":
        return value * _UG_PER_IU[canonical(tag)] / _MASS_IN_UG[stored]
    if unit == "kJ" and stored == "kcal":
        return value / _KJ_PER_KCAL
    return value * _MASS_IN_UG[unit] / _MASS_IN_UG[stored]


# --- Energy of 100 g as fed --------------------------------------------------------------------------------------
def _carbohydrate(c):
    if "CHOCDF" in c:
        return c["CHOCDF"]
    if any(tag not in c for tag in ("WATER", "PROCNT", "FAT", "ASH")):
        return None
    return 100 - c["WATER"] - c["PROCNT"] - c["FAT"] - c["ASH"]


def _fibre(c):
    return c.get("FIBC", c.get("FIBTG"))


def _sum_product(factors, terms):
    return None if any(t is None for t in terms) else sum(f * t for f, t in zip(factors, terms))


def energy_per_100_g(method, c):
    """kcal of 100 g as fed, None where a term is unknown."""
    if method == "given":
        return c.get("ENERC")
    protein, fat, carbohydrate = c.get("PROCNT"), c.get("FAT"), _carbohydrate(c)
    if method == "atwater":
        return _sum_product((4, 9, 4), (protein, fat, carbohydrate))
    nfe = None if carbohydrate is None else carbohydrate - (_fibre(c) or 0)
    if method == "modified-atwater":
        return _sum_product((3.5, 8.5, 3.5), (protein, fat, nfe))
    if method == "poultry-amen":
        mj_per_kg = _sum_product((0.1551, 0.3431, 0.1669, 0.1301), (protein, fat, c.get("STARCH"), c.get("SUGAR")))
        return None if mj_per_kg is None else mj_per_kg * 1000 / _KJ_PER_KCAL / 10
    if method in ("dog-2006", "cat-2006"):
        return _energy_2006(method, c, protein, fat, nfe)
    raise ValueError(f"energy_method: {method}")


def _energy_2006(method, c, protein, fat, nfe):
    fibre, water = _fibre(c), c.get("WATER")
    if any(t is None for t in (protein, fat, nfe, fibre, water)) or water >= 100:
        return None
    gross = 5.7 * protein + 9.4 * fat + 4.1 * (nfe + fibre)
    fibre_dm = 100 * fibre / (100 - water)
    dog = method == "dog-2006"
    digestible = gross * ((91.2 - 1.43 * fibre_dm) if dog else (87.9 - 0.88 * fibre_dm)) / 100
    return digestible - (1.04 if dog else 0.77) * protein


# --- The problem's numbers ---------------------------------------------------------------------------------------
class Problem:
    """A problem file with its foods' contents per gram as fed, and the sums of the page's "Meaning"."""

    def __init__(self, document):
        self.document = document
        self.foods = document["foods"]
        self.count = len(self.foods)
        self.ids = [food["id"] for food in self.foods]
        self.method = document.get("energy_method", "modified-atwater")
        self.body_mass = document.get("animal", {}).get("body_mass_kg")
        self.eaten = [food.get("eaten_fraction", 1.0) for food in self.foods]
        self.compositions = [{canonical(k): v for k, v in food["per_100_g"].items()} for food in self.foods]
        self.scatter = [{canonical(k): v for k, v in food.get("sd_per_100_g", {}).items()} for food in self.foods]
        self.energies = [energy_per_100_g(self.method, c) for c in self.compositions]
        self.whole_steps = document.get("whole_steps", True)
        self.steps = [food.get("scale_step_g", 1.0) for food in self.foods]
        self.lowest = [food.get("min_g", 0.0) for food in self.foods]
        self.highest = [food.get("max_g", INFINITY) for food in self.foods]
        self.objective = document.get("objective", {"kind": "closest"})
        confidence = document.get("confidence")
        self.z = 0.0 if confidence is None else NormalDist().inv_cdf(confidence)
        self.reference = self._reference()
        floor = 0.05 * sum(self.reference)
        self.distance_unit = [max(x, floor) for x in self.reference]

    # what one gram holds; None where unknown
    def content(self, j, tag):
        tag = canonical(tag)
        value = self.energies[j] if tag == "ENERC" else self.compositions[j].get(tag)
        return None if value is None else value / 100

    def dry_matter(self, j):
        water = self.content(j, "WATER")
        return None if water is None else 1 - water

    def amount_vector(self, tag):
        """N_k is this times x: unknown values add nothing, only what is eaten counts."""
        return [(self.content(j, tag) or 0.0) * self.eaten[j] for j in range(self.count)]

    def basis(self, basis, group=None):
        """B = constant + vector times x, in kg as fed, kg DM, 1000 kcal, animals, kg or kg^0.75."""
        if basis == "day":
            return 1.0, [0.0] * self.count
        if basis == "body-mass":
            return self.body_mass, [0.0] * self.count
        if basis == "metabolic-mass":
            return self.body_mass**0.75, [0.0] * self.count
        one = {
            "as-fed": lambda j: 1.0,
            "dry-matter": self.dry_matter,
            "energy": lambda j: self.content(j, "ENERC"),
        }[basis]
        belongs = lambda j: group is None or self.foods[j].get("group") == group  # noqa: E731
        return 0.0, [(one(j) or 0.0) * self.eaten[j] / 1000 if belongs(j) else 0.0 for j in range(self.count)]

    def _reference(self):
        given = self.document.get("reference") or {}
        grams = [float(given.get(i, 0.0)) for i in self.ids]
        if sum(grams) > 0:
            return grams
        kcal_of_one_gram_each = sum(self.amount_vector("ENERC"))
        for target in self.document.get("targets", []):
            if target["nutrient"] == "ENERC" and target["basis"] == "day":
                bounds = [to_stored_unit(target[k], target["unit"], "ENERC") for k in ("min", "max") if k in target]
                midpoint = sum(bounds) / len(bounds)
                if kcal_of_one_gram_each > 0 and midpoint > 0:
                    return [midpoint / kcal_of_one_gram_each] * self.count
                break
        return [100.0 / self.count] * self.count

    # --- objective -------------------------------------------------------------------------------------------
    def objective_value(self, grams):
        kind = self.objective["kind"]
        if kind == "closest":
            return sum(((x - r) / d) ** 2 for x, r, d in zip(grams, self.reference, self.distance_unit))
        return dot(self.linear_objective(), grams)

    def linear_objective(self):
        """Its value as reported: cost per day, or the nutrient's amount (which 'highest' wants large)."""
        if self.objective["kind"] == "lowest-cost":
            return [food.get("cost_per_kg", 0.0) / 1000 for food in self.foods]
        return self.amount_vector(self.objective["nutrient"])

    @property
    def sense(self):
        return -1.0 if self.objective["kind"] == "highest" else 1.0


def dot(a, b):
    return math.fsum(p * q for p, q in zip(a, b))


def length(scatter, grams):
    return math.sqrt(math.fsum((s * x) ** 2 for s, x in zip(scatter, grams)))


def at(linear, grams):
    constant, vector = linear
    return constant + dot(vector, grams)


# --- Every bound as one convex function of the grams -----------------------------------------------------------
class Bound:
    """shortfall(x) = max(0, constant + vector x + |scatter x| ) of one bound of a target, ratio or share."""

    def __init__(self, owner, side, constant, vector, scatter=None):
        self.id, self.kind, self.index = owner["id"], owner["kind"], owner["index"]
        self.hard, self.weight, self.side = owner["hard"], owner["weight"], side
        self.constant, self.vector, self.scatter = constant, vector, scatter

    def value(self, grams):
        return self.constant + dot(self.vector, grams) + length(self.scatter or [], grams)

    def shortfall(self, grams):
        return max(0.0, self.value(grams))


def _owner(kind, index, entry):
    return {"id": entry.get("id", f"{kind}[{index}]"), "kind": kind, "index": index, "hard": entry.get("hard", False),
            "weight": entry.get("weight", 1.0)}


def _bound(owner, side, amount, bound, basis, divisor, scatter=None):
    """min: (bound * B - N) / divisor;  max: (N - bound * B) / divisor."""
    sign = 1.0 if side == "min" else -1.0
    constant = sign * (bound * basis[0] - amount[0]) / divisor
    vector = [sign * (bound * b - n) / divisor for b, n in zip(basis[1], amount[1])]
    if scatter is not None:
        scatter = [s / divisor for s in scatter] if any(scatter) else None
    return Bound(owner, side, constant, vector, scatter)


def _nonzero(value):
    return value if value != 0 else 1.0


def bounds_of(problem):
    """All bounds, targets first, then ratios, then shares: the page's "Relative shortfall"."""
    out, reference = [], problem.reference
    for index, target in enumerate(problem.document.get("targets", [])):
        owner = _owner("target", index, target)
        amount = (0.0, problem.amount_vector(target["nutrient"]))
        basis = problem.basis(target["basis"])
        at_reference = _nonzero(at(basis, reference))
        scatter = None
        if problem.z:
            scatter = [problem.z * s for s in scatter_vector(problem, target["nutrient"])]
        for side in ("min", "max"):
            if side in target:
                bound = to_stored_unit(target[side], target["unit"], target["nutrient"])
                one_unit = to_stored_unit(1.0, target["unit"], target["nutrient"])
                divisor = (bound if bound != 0 else one_unit) * at_reference
                out.append(_bound(owner, side, amount, bound, basis, divisor, scatter))
    for index, ratio in enumerate(problem.document.get("ratios", [])):
        owner = _owner("ratio", index, ratio)
        amount, to = (0.0, problem.amount_vector(ratio["of"])), (0.0, problem.amount_vector(ratio["to"]))
        at_reference = _nonzero(at(to, reference))
        for side in ("min", "max"):
            if side in ratio:
                out.append(_bound(owner, side, amount, ratio[side], to, _nonzero(ratio[side]) * at_reference))
    for index, share in enumerate(problem.document.get("shares", [])):
        owner = _owner("share", index, share)
        part, whole = problem.basis(share["basis"], share["group"]), problem.basis(share["basis"])
        at_reference = _nonzero(at(whole, reference))
        for side in ("min", "max"):
            if side in share:
                out.append(_bound(owner, side, part, share[side], whole, at_reference))
    return out


def scatter_vector(problem, nutrient):
    tag = canonical(nutrient)
    return [problem.scatter[j].get(tag, 0.0) / 100 * problem.eaten[j] for j in range(problem.count)]


def elastic_shortfall(bounds, grams):
    return math.fsum(b.weight * b.shortfall(grams) for b in bounds if not b.hard)


def hard_shortfall(bounds, grams):
    return max((b.shortfall(grams) for b in bounds if b.hard), default=0.0)


# --- What a diet holds against each target ---------------------------------------------------------------------
def coverage(problem, nutrient, grams):
    known = total = 0.0
    for j, x in enumerate(grams):
        dry = (problem.dry_matter(j) or 0.0) * problem.eaten[j] * x
        total += dry
        if problem.content(j, nutrient) is not None:
            known += dry
    return known / total if total > 0 else None


def state_of(value, low, high, share_known):
    """The states that the page allows: within 1e-6 of a bound either neighbour's word would do only if it is 'at'."""
    if share_known == 0:
        return {"unknown"}
    near = lambda bound: bound is not None and abs(value - bound) <= 1e-6 * abs(bound)  # noqa: E731
    states = {name for name, bound in (("at-min", low), ("at-max", high)) if near(bound)}
    if states:
        return states
    if low is not None and value < low:
        return {"short"}
    return {"over"} if high is not None and value > high else {"met"}


def chance_of(problem, target, grams, amount, basis):
    sd = length(scatter_vector(problem, target["nutrient"]), grams)
    low = to_stored_unit(target["min"], target["unit"], target["nutrient"]) * basis if "min" in target else -INFINITY
    high = to_stored_unit(target["max"], target["unit"], target["nutrient"]) * basis if "max" in target else INFINITY
    if sd == 0:
        return None
    normal = NormalDist(amount, sd)
    above = 1.0 if math.isinf(high) else normal.cdf(high)
    return above - (0.0 if math.isinf(low) else normal.cdf(low))


def balance(problem, bounds, grams):
    """One entry per target, ratio and share, with what the page asks of the result."""
    missed = {}
    for b in bounds:
        missed.setdefault((b.kind, b.index), []).append(b.shortfall(grams))
    entries = []
    for index, target in enumerate(problem.document.get("targets", [])):
        amount, basis = dot(problem.amount_vector(target["nutrient"]), grams), at(problem.basis(target["basis"]), grams)
        unit = to_stored_unit(1.0, target["unit"], target["nutrient"])
        sd = length(scatter_vector(problem, target["nutrient"]), grams)
        share = coverage(problem, target["nutrient"], grams)
        value = amount / basis / unit if basis > 0 else None
        entries.append({
            "id": target["id"], "kind": "target", "nutrient": target["nutrient"], "value": value, "coverage": share,
            "shortfalls": missed[("target", index)], "sd": sd / basis / unit if basis > 0 else None,
            "states": None if value is None else state_of(value, target.get("min"), target.get("max"), share),
            "chance": chance_of(problem, target, grams, amount, basis),
        })
    for index, ratio in enumerate(problem.document.get("ratios", [])):
        of, to = dot(problem.amount_vector(ratio["of"]), grams), dot(problem.amount_vector(ratio["to"]), grams)
        entries.append(_simple(ratio, "ratio", index, of / to if to > 0 else None, missed))
    for index, share in enumerate(problem.document.get("shares", [])):
        part = at(problem.basis(share["basis"], share["group"]), grams)
        whole = at(problem.basis(share["basis"]), grams)
        entries.append(_simple(share, "share", index, part / whole if whole > 0 else None, missed))
    return entries


def _simple(entry, kind, index, value, missed):
    states = None if value is None else state_of(value, entry.get("min"), entry.get("max"), None)
    return {"id": entry.get("id"), "kind": kind, "value": value, "coverage": None, "sd": None, "states": states,
            "chance": None, "shortfalls": missed[(kind, index)]}


# --- What every diet must keep -------------------------------------------------------------------------------
def broken_rules(problem, bounds, grams, tolerance=1e-9):
    """Sentences, one per limit, grid, choice or hard rule that these grams do not keep."""
    out = []
    for j, x in enumerate(grams):
        slack = tolerance * max(1.0, abs(x))
        if x < problem.lowest[j] - slack or x > problem.highest[j] + slack or x < -slack:
            out.append(f"{problem.ids[j]}: {x!r} g is outside {problem.lowest[j]} to {problem.highest[j]}")
        if problem.whole_steps and abs(x / problem.steps[j] - round(x / problem.steps[j])) > 1e-7:
            out.append(f"{problem.ids[j]}: {x!r} g is no whole number of steps of {problem.steps[j]} g")
    for choice in problem.document.get("choices", []):
        least = choice.get("min_g_each", 0.0)
        used = 0
        for j, food in enumerate(problem.foods):
            if food.get("group") == choice["group"] and grams[j] > tolerance:
                used += 1
                if grams[j] < least - tolerance * max(1.0, least):
                    out.append(f"{problem.ids[j]}: {grams[j]!r} g is neither 0 nor at least {least}")
        # Where nothing is asked of each, 0 g may stand for a food in use.
        too_few = used < choice.get("at_least", 0) and (least > 0 or problem.whole_steps)
        if too_few or used > choice.get("at_most", INFINITY):
            out.append(f"choice {choice['group']}: {used} foods in use")
    for b in bounds:
        if b.hard and b.shortfall(grams) > tolerance:
            out.append(f"hard {b.kind} {b.id} ({b.side}) is missed by {b.shortfall(grams):.3g}")
    return out
