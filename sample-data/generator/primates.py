# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The primates of the invented collection: red ruffed lemurs and squirrel monkeys."""

from . import rules as r
from .problem import problem

ALPHA_TOCOPHERYL_ACETATE = "; stated as 100 mg all-rac-alpha-tocopheryl acetate, 1.00 IU per mg from memory (USP)"


def primate_targets(rules, *names):
    """The general primate allowances by name; vitamin E, stated as the acetate, is put in IU."""
    made = []
    for target_id, nutrient, more in names:
        target = rules.published(target_id, "primate_nrc2003", nutrient, "dry-matter", r.PRIMATE, **more)
        if nutrient == "vitamin_E":
            target |= {"unit": "IU", "source": target["source"] + ALPHA_TOCOPHERYL_ACETATE}
        made.append(target)
    return made


def ruffed_lemurs(larder, rules):
    foods = [
        larder.food("leaf-eater-pellet", max_g=60),
        larder.food("endive-raw", max_g=120), larder.food("kale-raw", max_g=60), larder.food("dandelion-raw", max_g=60),
        larder.food("turnip-greens-raw", max_g=60), larder.food("green-beans-raw", max_g=80),
        larder.food("broccoli-raw", max_g=60, eaten_fraction=0.9), larder.food("courgette-raw", max_g=80),
        larder.food("bell-pepper-red-raw", max_g=60), larder.food("beetroot-raw", max_g=30, eaten_fraction=0.8),
        larder.food("carrot-raw", max_g=30), larder.food("sweet-potato-boiled", max_g=60),
        larder.food("papaya-raw", max_g=60), larder.food("banana-raw", max_g=40),
    ]
    targets = [
        r.energy(3.4, 70, 1.0, 1.3, r.KLEIBER),
        *primate_targets(
            rules, ("protein", "crude_protein", {}), ("fibre-ndf", "NDF", {}), ("calcium", "Ca", {}), ("phosphorus", "P", {}),
            ("magnesium", "Mg", {}), ("potassium", "K", {}), ("sodium", "Na", {}), ("copper", "Cu", {}), ("zinc", "Zn", {}),
            ("manganese", "Mn", {}), ("selenium", "Se", {}), ("vitamin-a", "vitamin_A", {}), ("vitamin-d", "vitamin_D3", {}),
            ("vitamin-e", "vitamin_E", {}), ("vitamin-c", "vitamin_C", {})),
        r.house_rule("iron-limit", "ruffed lemurs store iron, so the 100 mg/kg of the primate table is a ceiling here, not a "
                     "floor", nutrient="FE", max=100, unit="mg", basis="dry-matter"),
        r.house_rule("sugar-limit", "the sugar of cultivated roots counts like that of fruit", nutrient="SUGAR", max=150,
                     unit="g", basis="dry-matter"),
    ]
    return problem(
        "Red ruffed lemurs, no fruit",
        "Family of red ruffed lemurs (Varecia rubra). They store iron: iron is kept as low as the targets allow, and no "
        "cultivated fruit is fed. Papaya and banana stand in the list to show the rule at work. Foods rich in vitamin C "
        "make iron easier to absorb; feed them apart from the iron-richest food. Primates in general are the model.",
        {"name": "Red ruffed lemurs (family of five)", "count": 5, "body_mass_kg": 3.4}, "atwater", foods, targets,
        {"leaf-eater-pellet": 40, "endive-raw": 60, "kale-raw": 20, "green-beans-raw": 50, "courgette-raw": 40,
         "bell-pepper-red-raw": 30, "sweet-potato-boiled": 40, "carrot-raw": 20, "papaya-raw": 40, "banana-raw": 30},
        ratios=[r.house_rule("calcium-to-phosphorus", "calcium at or above phosphorus, at most twice it", of="CA", to="P",
                             min=1, max=2)],
        shares=[r.house_rule("no-fruit", "no cultivated fruit for the lemurs", group="fruit", max=0, basis="dry-matter", hard=True)],
        choices=[{"group": "leafy vegetable", "at_least": 2, "min_g_each": 15},
                 {"group": "raw root", "at_least": 1, "at_most": 1, "min_g_each": 8}],
        objective={"kind": "lowest", "nutrient": "FE"}, whole_steps=True)


def squirrel_monkeys(larder, rules):
    foods = [
        larder.food("leaf-eater-pellet", max_g=15), larder.food("insect-eater-pellet", max_g=15),
        larder.food("crickets-adult", max_g=5, eaten_fraction=0.9), larder.food("mealworms", max_g=3),
        larder.food("black-soldier-fly-larvae", max_g=4, eaten_fraction=0.85), larder.food("egg-boiled", max_g=8),
        larder.food("sweet-potato-boiled", max_g=20), larder.food("carrot-boiled", max_g=15),
        larder.food("green-beans-boiled", max_g=20, eaten_fraction=0.8), larder.food("bell-pepper-red-raw", max_g=20),
        larder.food("broccoli-raw", max_g=15, eaten_fraction=0.7), larder.food("courgette-raw", max_g=15, eaten_fraction=0.7),
        larder.food("kale-raw", max_g=10, eaten_fraction=0.6), larder.food("papaya-raw", max_g=15),
    ]
    targets = [
        r.energy(0.85, 70, 1.3, 1.6, r.KLEIBER),
        *primate_targets(
            rules, ("protein", "crude_protein", {}), ("fibre-ndf", "NDF", {"only": "min"}), ("calcium", "Ca", {}),
            ("phosphorus", "P", {}), ("magnesium", "Mg", {}), ("potassium", "K", {}), ("sodium", "Na", {}), ("iron", "Fe", {}),
            ("copper", "Cu", {"weight": 0.5}), ("zinc", "Zn", {}), ("selenium", "Se", {}), ("vitamin-a", "vitamin_A", {}),
            ("vitamin-d", "vitamin_D3", {}), ("vitamin-c", "vitamin_C", {})),
    ]
    return problem(
        "Squirrel monkeys, daily total",
        "Colony of twelve squirrel monkeys (Saimiri sciureus). New World primates use vitamin D3, not D2; they cannot make "
        "vitamin C. Primates in general are the model species. One food of each structure group is drawn each day; the sum "
        "stays balanced.",
        {"name": "Squirrel monkeys (colony of twelve)", "count": 12, "body_mass_kg": 0.85}, "atwater", foods, targets,
        {"leaf-eater-pellet": 10, "insect-eater-pellet": 8, "crickets-adult": 2, "mealworms": 2, "egg-boiled": 4,
         "sweet-potato-boiled": 12, "green-beans-boiled": 8, "bell-pepper-red-raw": 8, "courgette-raw": 8, "papaya-raw": 10},
        ratios=[r.house_rule("calcium-to-phosphorus", "calcium at or above phosphorus, at most twice it", of="CA", to="P",
                             min=1, max=2)],
        shares=[r.house_rule("little-fruit", "cultivated fruit is a treat", group="fruit", max=0.05, basis="dry-matter", hard=True)],
        choices=[{"group": "insect", "at_least": 1, "at_most": 2, "min_g_each": 1},
                 {"group": "cooked vegetable", "at_least": 2, "at_most": 2, "min_g_each": 5},
                 {"group": "other vegetable", "at_least": 2, "at_most": 3, "min_g_each": 5}],
        objective={"kind": "closest"}, whole_steps=True)
