# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Diets of the invented Brackenmere Animal Gardens and the life of their versions. Every amount, day and decision is made up; the grams
were sought with `tarebowl solve` on the targets of the herd."""

VET, NUTRITIONIST, KEEPER = "Vet", "Nutritionist", "Keeper A"


def line(food, g, max_g=None, **more):
    return {"food": food, "g": g} | ({} if max_g is None else {"max_g": max_g}) | more


def step(to, who, at, reason=""):
    return {"to": to, "who": who, "at": at} | ({"reason": reason} if reason else {})


def approved(submitted, decided, why):
    return {"state": "approved", "steps": [step("submitted", NUTRITIONIST, f"{submitted}T09:00:00Z"),
                                           step("approved", VET, f"{decided}T14:30:00Z", why)]}


def submitted(day, why):
    return {"state": "submitted", "steps": [step("submitted", NUTRITIONIST, f"{day}T09:00:00Z", why)]}


def version(number, profile, lines, life=None, **more):
    made = {"number": number, **(life or {"state": "draft"}), "profile": {"code": f"brackenmere-{profile}", "version": 1},
            "objective": {"kind": "closest"}, "energy_method": "atwater", "whole_steps": True}
    steps = made.pop("steps", [])
    return made | {"lines": lines} | more | ({"steps": steps} if steps else {})


def diet(code, name, group, *versions, note=""):
    return {"format": "tarebowl-diet/1", "code": code, "name": name, "group": group} | ({"note": note} if note else {}) | {
        "invented": True, "versions": list(versions)}


EVENING = {"meal": "evening"}
GREENS = {"rule": "potassium", "min": 4, "reason": "greens bring more potassium than the table of dry feeds knows"}


def tenrecs():
    lines = [line("crickets-adult", 1.0, 4, min_g=1, preparation="live, legs on", **EVENING),
             line("black-soldier-fly-larvae", 0.5, 2, **EVENING), line("cockroach-nymphs", 0.5, 3, **EVENING),
             line("insect-eater-pellet", 2.3, 3, preparation="soaked 10 min", **EVENING),
             line("egg-boiled", 0.5, 2, preparation="chopped", **EVENING),
             line("carrot-boiled", 1.0, 2, preparation="mashed", **EVENING),
             line("limestone", 0.02, 0.2, preparation="dusted on the crickets", **EVENING)]
    return diet("tenrec-evening", "evening bowl", "tenrecs",
                version(1, "tenrec", lines, approved("2026-09-08", "2026-09-11", "the season's need, tried for a week"),
                        fed_from="2026-09-15", phase_in_days=5),
                version(2, "tenrec", [*lines[:1], line("silkworms", 0.5, 2, **EVENING), *lines[2:]], made_from=1,
                        note="silkworms in place of the larvae, which they leave"))


def bats():
    lines = [line("papaya-raw", 58, 120), line("banana-raw", 19, 60), line("sweet-potato-boiled", 20, 40),
             line("carrot-boiled", 5, 30), line("leaf-eater-pellet", 5, 12, preparation="ground, on the fruit"),
             line("kale-raw", 3, 10), line("limestone", 0.06, 0.6, preparation="dusted on the papaya")]
    return diet("bat-evening", "evening fruit", "bats",
                version(1, "fruit-bat", lines, approved("2026-08-20", "2026-08-24", "energy by the nearest bat that was measured"),
                        fed_from="2026-09-01"))


def lemurs():
    lines = [line("leaf-eater-pellet", 32, 60, meal="morning", preparation="soaked"),
             line("endive-raw", 15, 120, meal="morning"), line("kale-raw", 15, 60, meal="morning"),
             line("courgette-raw", 30, 80, meal="noon"), line("bell-pepper-red-raw", 3, 60, meal="noon"),
             line("green-beans-raw", 0, 80, meal="noon"),
             line("carrot-raw", 30, 30, meal="noon"), line("sweet-potato-boiled", 46, 60, meal="evening")]
    winter = [line("leaf-eater-pellet", 34, 60, meal="morning", preparation="soaked"),
              line("endive-raw", 40, 120, min_g=30, meal="morning"), line("kale-raw", 20, 60, min_g=20, meal="morning"),
              line("courgette-raw", 20, 80, meal="noon"), line("bell-pepper-red-raw", 10, 60, meal="noon"),
              line("carrot-raw", 30, 30, meal="noon"), line("sweet-potato-boiled", 43, 60, meal="evening")]
    return diet("lemur-daily", "daily total", "lemurs",
                version(1, "ruffed-lemur", lines, approved("2026-08-17", "2026-08-21", "no fruit, iron below the ceiling"),
                        fed_from="2026-09-01", phase_in_days=14),
                version(2, "ruffed-lemur", winter, submitted("2026-11-20", "more greens for the winter"), made_from=1),
                note="no cultivated fruit by house rule")


def squirrel_monkeys():
    enrichment = {"purpose": "enrichment", "preparation": "in the puzzle feeders"}
    banana = [{"food": "banana-raw", "low_g": 0.5, "high_g": 1.5, "purpose": "training-reward", "note": "on the scale, once a day"}]
    lines = [line("leaf-eater-pellet", 11, 18, preparation="by the piece, scattered"), line("insect-eater-pellet", 4.2, 15),
             line("black-soldier-fly-larvae", 1, 4, **enrichment),
             line("sweet-potato-boiled", 22, 30), line("green-beans-boiled", 5, 20), line("bell-pepper-red-raw", 3, 20),
             line("kale-raw", 2, 10), line("papaya-raw", 6, 15), line("limestone", 0.04, 0.5)]
    others = [line("crickets-adult", 0, 4, **enrichment), line("mealworms", 0, 3, **enrichment), line("silkworms", 0, 4, **enrichment),
              line("carrot-boiled", 0, 20), line("courgette-raw", 0, 20), line("endive-raw", 0, 15), line("dandelion-raw", 0, 10)]
    return diet("monkey-daily", "daily total", "squirrel-monkeys",
                version(1, "squirrel-monkey", lines, approved("2026-08-31", "2026-09-04", "balanced for the colony of twelve"),
                        fed_from="2026-09-07", allowances=banana),
                version(2, "squirrel-monkey", [*lines, *others], approved("2026-11-19", "2026-11-23", "as before, and days may be planned from it: "
                                                                          "what comes on some days only has a line of 0 g"),
                        made_from=1, fed_from="2026-11-30", allowances=banana))


def dragons():
    lines = [line("dandelion-raw", 3, 10), line("endive-raw", 10, 10), line("crickets-adult", 0.4, 3),
             line("black-soldier-fly-larvae", 0.5, 0.5), line("insect-eater-pellet", 0.5, 1),
             line("limestone", 0, 0.1, preparation="dusted on the insects")]
    return diet("dragon-daily", "daily bowl", "dragons",
                version(1, "dragon", lines, approved("2026-08-12", "2026-08-14", "calcium above phosphorus; protein over, and lysine, methionine "
                                                         "and cystine, iron, zinc and manganese short of the general table, are accepted"),
                        fed_from="2026-08-17", changed_bounds=[GREENS]))


def young_dragons():
    lines = [line("crickets-small", 0.5, 3), line("black-soldier-fly-larvae", 0.4, 1), line("dandelion-raw", 1.5, 3),
             line("endive-raw", 1, 3), line("insect-eater-pellet", 0.2, 1), line("limestone", 0, 0.1)]
    return diet("young-dragon-daily", "daily bowl", "young-dragons",
                version(1, "young-dragon", lines, submitted("2026-11-23", "they grow faster than the table expects"),
                        changed_bounds=[GREENS]))


def fennecs():
    lines = [line("chick-day-old", 40, 80, preparation="whole, thawed overnight", **EVENING),
             line("insect-eater-pellet", 19, 25, **EVENING), line("crickets-adult", 3, 10, purpose="enrichment", **EVENING),
             line("carrot-boiled", 9, 20, **EVENING), line("green-beans-boiled", 8, 20, **EVENING),
             line("courgette-raw", 9, 15, **EVENING), line("beetroot-raw", 8, 10, **EVENING)]
    less = [line("chick-day-old", 40, 80, preparation="whole, thawed overnight", **EVENING),
            line("insect-eater-pellet", 18.9, 25, **EVENING), line("carrot-boiled", 8, 20, **EVENING),
            line("green-beans-boiled", 8, 20, **EVENING), line("courgette-raw", 7.3, 15, **EVENING)]
    rewards = [{"food": "mealworms", "low_g": 0.2, "high_g": 0.6, "purpose": "training-reward", "note": "for stepping on the scale"}]
    old = approved("2026-08-05", "2026-08-07", "as before, written down")
    old = {"state": "retired", "steps": [*old["steps"], step("retired", VET, "2026-10-05T08:00:00Z", "the second version is fed")]}
    return diet("fennec-evening", "evening bowl", "fennecs",
                version(1, "fennec", lines, old, fed_from="2026-08-10"),
                version(2, "fennec", less, approved("2026-09-28", "2026-10-01", "less energy: Fennec 2 gains; what reads short is not "
                                                          "known of whole chicks"), made_from=1,
                        fed_from="2026-10-05", phase_in_days=7, allowances=rewards),
                version(3, "fennec", [*less, line("beetroot-raw", 5, 10, **EVENING)], made_from=2, allowances=rewards, note="which vegetables do they leave?"))


def diets():
    return {made["code"]: made for made in (tenrecs(), bats(), lemurs(), squirrel_monkeys(), dragons(), young_dragons(), fennecs())}
