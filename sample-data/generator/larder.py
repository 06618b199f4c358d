# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The foods on hand, for remedies: every food of the sample without the limits of any one diet."""

from generator.foods import LIVE, ORDINARY, PELLETS, PREY, RAW

SCALE_STEPS = {"limestone": 0.1}
LIVE_STEP = 0.5
# Per kg as bought; made up, and the same as in the problems.
COSTS = {"mouse-adult": 18.0, "chick-day-old": 6.5, "insect-eater-pellet": 7.0, "egg-boiled": 4.2, "crickets-adult": 38.0,
         "mealworms": 22.0, "carrot-boiled": 1.3, "sweet-potato-boiled": 2.4, "green-beans-boiled": 3.8,
         "courgette-raw": 2.1, "beetroot-raw": 1.6, "limestone": 3.0}


def larder(foods, _rules):
    ids = [*ORDINARY, *LIVE, *PREY, *PELLETS, "limestone"]
    return {"format": "tarebowl-larder/1", "title": "Larder of the Brackenmere Animal Gardens", "invented": True,
            "notes": "Which foods are on hand and what they cost is made up; compositions are those of the published tables that each food "
                     "names, and values of invented products are marked invented.",
            "foods": [foods.food(food_id, **_limits(food_id)) for food_id in ids]}


def cooked_from(foods, _rules):
    return {"format": "tarebowl-larder/1", "title": "What the kitchen of the Brackenmere Animal Gardens cooks", "invented": True,
            "notes": "Raw foods that no diet gives. Compositions are those of the published tables that each food names.",
            "foods": [foods.food(food_id) for food_id in RAW]}


def _limits(food_id):
    limits = {"cost_per_kg": COSTS[food_id]} if food_id in COSTS else {}
    if food_id in LIVE:
        limits["scale_step_g"] = LIVE_STEP
    if food_id in SCALE_STEPS:
        limits["scale_step_g"] = SCALE_STEPS[food_id]
    return limits
