# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Does a result of the program agree with the page, and with the independent answer?

Grams that keep every rule prove what can be reached, whoever found them; so each complaint says which side is shown to
be wrong, and only "could not say" is left to neither.
"""
import copy

import page
import problem_oracle

RULES = 1e-9  # by which a hard rule may be missed, relative, or a limit in grams


class Verdict:
    def __init__(self):
        self.wrong = []  # the program differs from the page
        self.oracle_wrong = []  # the program shows that the independent answer was not the best
        self.notes = []

    @property
    def agreed(self):
        return not self.wrong and not self.oracle_wrong


def close(a, b, relative=1e-9, absolute=1e-12):
    if a is None or b is None:
        return a is b
    return abs(a - b) <= absolute + relative * max(abs(a), abs(b))


def judge(document, result, exit_status, answer):
    """answer: of problem_oracle.solve, or None where it could not say."""
    problem, verdict = page.Problem(document), Verdict()
    bounds = page.bounds_of(problem)
    status = result.get("status")
    expected_exit = {"balanced": 0, "compromise": 0, "impossible": 3}.get(status)
    if expected_exit is None or exit_status != expected_exit:
        verdict.wrong.append(f"status {status!r} with exit status {exit_status}")
        return verdict
    if status == "impossible":
        if answer is not None and answer.grams is not None:
            broken = page.broken_rules(problem, bounds, list(answer.grams), RULES)
            if not answer.fragile and not broken:
                verdict.wrong.append(f"impossible, but these grams keep all rules: {list(answer.grams)}")
        return verdict
    if set(result["grams"]) != set(problem.ids):
        verdict.wrong.append("grams do not name each food once")
        return verdict
    grams = [result["grams"][i] for i in problem.ids]
    verdict.wrong += page.broken_rules(problem, bounds, grams, RULES)
    own_numbers(problem, bounds, grams, result, verdict)
    if not verdict.wrong and answer is not None:
        against_answer(problem, bounds, grams, result, answer, verdict)
    return verdict


def own_numbers(problem, bounds, grams, result, verdict):
    """What the result says of its own grams, worked out again."""
    value, objective = page.elastic_shortfall(bounds, grams), problem.objective_value(grams)
    if not close(result["shortfall"], value, 1e-9, 1e-11):
        verdict.wrong.append(f"shortfall {result['shortfall']!r}, the grams give {value!r}")
    if not close(result["objective"], objective, 1e-9, 1e-11):
        verdict.wrong.append(f"objective {result['objective']!r}, the grams give {objective!r}")
    if result["status"] == "balanced" and value > 1e-8 or result["status"] == "compromise" and value < 1e-10:
        verdict.wrong.append(f"{result['status']} with a shortfall of {value!r}")
    reported = {}
    for entry in result["targets"]:
        reported.setdefault(entry["id"], []).append(entry)
    for wanted in page.balance(problem, bounds, grams):
        found = reported.get(wanted["id"], [])
        if not found:
            verdict.wrong.append(f"{wanted['kind']} {wanted['id']} is not in the result")
            continue
        one_line(problem, wanted, found.pop(0), grams, verdict)


def holds_unweighed_unknown(problem, nutrient, grams):
    """Whether the bowl has a food of unknown content that no coverage counts: its dry matter is none or unknown."""
    return any(x > 0 and problem.eaten[j] > 0 and not problem.dry_matter(j) and problem.content(j, nutrient) is None
               for j, x in enumerate(grams))


def one_line(problem, wanted, entry, grams, verdict):
    def complain(key, should):
        verdict.wrong.append(f"{wanted['kind']} {wanted['id']}: {key} {entry.get(key)!r}, should be {should!r}")

    if not close(entry.get("value"), wanted["value"], 1e-9, 1e-12):
        complain("value", wanted["value"])
    total = sum(wanted["shortfalls"])
    if not close(entry["shortfall"], total, 1e-8, 1e-11):
        complain("shortfall", total)
    if wanted["coverage"] is not None and not close(entry["coverage"], wanted["coverage"], 1e-9):
        complain("coverage", wanted["coverage"])
    if wanted["coverage"] is not None and entry["at_least"] != (wanted["coverage"] < 1 - 1e-12):
        # The page says "coverage < 1", and why: "unknown values could only add to it", which holds here too.
        if not holds_unweighed_unknown(problem, wanted["nutrient"], grams):
            complain("at_least", wanted["coverage"] < 1)
    if wanted["sd"] is not None and not close(entry["sd"], wanted["sd"], 1e-9):
        complain("sd", wanted["sd"])
    if wanted["chance"] is not None and not close(entry.get("chance"), wanted["chance"], 1e-6, 1e-9):
        complain("chance", wanted["chance"])
    states = wanted["states"]
    if states is not None and sum(grams) > 1e-9:  # of an empty bowl, only rounding would be judged
        if wanted["coverage"] is None and entry["coverage"] == 0:  # the page defines coverage of targets only
            states = states | {"unknown"}
        if total <= 1e-9:  # a basis of next to nothing hides any miss
            states = states | {"met"}
        if problem.z and wanted["sd"]:
            states = states | guarded_states(wanted, entry, problem.z)
        if entry["state"] not in states:
            complain("state", sorted(states))


def guarded_states(wanted, entry, z):
    """With a chance asked for, a bound is reached or missed by the mean less or more z standard deviations; the page
    leaves open which of the two values a state speaks of."""
    states = set()
    for side, sign, at, missed in (("min", -1.0, "at-min", "short"), ("max", 1.0, "at-max", "over")):
        if entry.get(side) is not None:
            guarded = wanted["value"] + sign * z * wanted["sd"]
            if abs(guarded - entry[side]) <= 1e-6 * abs(entry[side]):
                states.add(at)
            elif sign * (guarded - entry[side]) > 0:
                states.add(missed)
    return states


def against_answer(problem, bounds, grams, result, answer, verdict):
    gap = result.get("proven_gap", 0.0)
    value = page.elastic_shortfall(bounds, grams)
    if answer.grams is None:
        if answer.status == "impossible" and not answer.fragile:
            verdict.oracle_wrong.append("impossible, but the program's grams keep all rules")
        return
    if answer.fragile:
        verdict.notes.append("a hair's breadth case")
        return
    if value < answer.shortfall_bound * (1 - 1e-7) - 1e-9:
        verdict.oracle_wrong.append(f"least shortfall {answer.shortfall_bound!r}, the program reaches {value!r}")
        return
    allowed = answer.budget * (1 + 1e-7) + 1e-9
    if value > allowed:
        if value * (1 - gap) > allowed:
            verdict.wrong.append(f"shortfall {value!r} (gap {gap!r}), but {answer.shortfall!r} can be reached: "
                                 f"{list(answer.grams)}")
        else:
            verdict.notes.append(f"shortfall not proved: {value!r}, {answer.shortfall!r} can be reached")
        return
    sense = 1.0 if problem.objective["kind"] == "closest" else problem.sense
    ours = sense * problem.objective_value(grams)
    slack = 1e-6 * max(abs(ours), abs(answer.objective)) + 1e-9 + answer.doubt
    if ours < answer.objective_bound - slack:
        if value > answer.budget:  # paid for with the last digits of the budget
            over = value - answer.budget
            verdict.notes.append(f"objective {ours!r} below {answer.objective_bound!r}, {over:.1e} over the budget")
        else:
            verdict.oracle_wrong.append(f"objective {answer.objective_bound!r} at best, the program reaches {ours!r}")
    elif ours > answer.objective + slack:
        worse_than(problem, answer, ours, value, gap, slack, verdict)


def worse_than(problem, answer, ours, value, gap, slack, verdict):
    reached = f"{answer.objective!r} can be reached within {answer.budget!r}"
    if gap > 0 and ours - gap * abs(ours) <= answer.objective + slack:
        verdict.notes.append(f"objective not proved: {ours!r} (gap {gap!r}), {reached}")
        return
    if not problem.whole_steps and value < answer.budget:
        # Best of all diets of no more shortfall than its own: it only left some of the budget unused.
        own, unused = best_within(problem, max(value, answer.shortfall) + 1e-12), answer.budget - value
        if own is None or ours <= own[0] + own[1] + slack:
            said = "leaves" if own is not None else "may only leave"
            verdict.notes.append(f"objective {ours!r} {said} {unused:.2g} of the budget unused: {reached}")
            return
    verdict.wrong.append(f"objective {ours!r} (gap {gap!r}), but {reached}: {list(answer.grams)}")


def best_within(problem, budget):
    try:
        return problem_oracle.best_objective_within(problem, budget)
    except (ArithmeticError, NotImplementedError, RuntimeError):
        return None


# --- the conflict named by the result -----------------------------------------------------------------------------
def kept_only(document, ids):
    """The problem in which these rules are hard and there are no others."""
    chosen = copy.deepcopy(document)
    chosen["objective"], chosen["reference"] = {"kind": "closest"}, document.get("reference")
    for key in ("targets", "ratios", "shares"):
        chosen[key] = [dict(e, hard=True) for e in document.get(key, []) if e.get("id") in ids]
    chosen["choices"] = [c for c in document.get("choices", []) if f"choice:{c['group']}" in ids]
    return chosen


def can_hold(document, ids, seconds):
    """True, False, or None where it could not say."""
    full = page.Problem(document)
    problem = page.Problem(dict(kept_only(document, ids), reference=dict(zip(full.ids, full.reference))))
    try:
        answer = problem_oracle.solve(problem, seconds)
    except (ArithmeticError, NotImplementedError):
        return None
    if answer.fragile or answer.status == "unknown":
        return None
    return answer.status != "impossible"


def judge_conflict(document, result, seconds=10.0):
    """Complaints: the ids named must not be able to hold together, and all but any one of them must,
    unless the result says that this is not proved."""
    ids, out = list(result.get("conflict", [])), []
    if result["status"] == "balanced":
        return [f"balanced, but a conflict is named: {ids}"] if ids else []
    if not ids:
        return ["no conflict is named"]
    if can_hold(document, set(ids), seconds) is True:
        out.append(f"these can hold together: {ids}")
    if not result.get("conflict_is_smallest", True):  # it says itself that time ran out
        return out
    for one in ids:
        if can_hold(document, set(ids) - {one}, seconds) is False:
            out.append(f"the conflict {ids} is not smallest: without {one} it still cannot hold")
    return out
