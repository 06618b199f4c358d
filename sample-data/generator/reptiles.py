# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The Reptiles and Bats section of the invented collection: the bearded dragons."""

from . import rules as r
from .problem import problem


def bearded_dragons(larder, rules):
    reptile = rules.family("reptile_omnivorous", "dry-matter", r.OMNIVOROUS_REPTILE)
    foods = [
        larder.food("dandelion-raw", max_g=10, scale_step_g=0.5), larder.food("endive-raw", max_g=10, scale_step_g=0.5),
        larder.food("turnip-greens-raw", max_g=8, scale_step_g=0.5, eaten_fraction=0.9),
        larder.food("kale-raw", max_g=5, scale_step_g=0.5),
        larder.food("butternut-squash-raw", max_g=8, scale_step_g=0.5), larder.food("courgette-raw", max_g=5, scale_step_g=0.5),
        larder.food("bell-pepper-red-raw", max_g=4, scale_step_g=0.5),
        larder.food("green-beans-raw", max_g=4, scale_step_g=0.5, eaten_fraction=0.7),
        larder.food("crickets-adult", max_g=3, scale_step_g=0.1, eaten_fraction=0.9),
        larder.food("black-soldier-fly-larvae", max_g=0.5, scale_step_g=0.1),
        larder.food("silkworms", max_g=3, scale_step_g=0.1), larder.food("cockroach-nymphs", max_g=2, scale_step_g=0.1),
        larder.food("insect-eater-pellet", max_g=1, scale_step_g=0.1, eaten_fraction=0.8),
        larder.food("limestone", max_g=0.1, scale_step_g=0.02, eaten_fraction=0.5),
    ]
    targets = [
        r.energy(0.38, 10, 1.4, 2.2, r.REPTILES),
        reptile("protein", "crude_protein"), reptile("calcium", "Ca", weight=2), reptile("phosphorus", "P"),
        reptile("potassium", "K", only="min"), reptile("sodium", "Na"), reptile("magnesium", "Mg"),
        reptile("selenium", "Se"), reptile("vitamin-a", "vitamin_A"), reptile("vitamin-d", "vitamin_D3", only="min"),
        r.safe_limit(reptile("vitamin-d-limit", "vitamin_D3", only="max")),
    ]
    return problem(
        "Bearded dragons, calcium",
        "Two adult bearded dragons (Pogona vitticeps). Crickets carry far more phosphorus than calcium; greens, black soldier "
        "fly larvae and limestone dust bring it back, and half of the dust falls off before it is eaten (made up). The "
        "vitamin D of live insects is unknown; what the lamps give is not counted. Omnivorous reptiles in general are the model.",
        {"name": "Bearded dragons (pair)", "count": 2, "body_mass_kg": 0.38}, "modified-atwater", foods, targets,
        {"dandelion-raw": 2, "endive-raw": 3, "butternut-squash-raw": 5, "courgette-raw": 2, "crickets-adult": 1.8,
         "silkworms": 1, "insect-eater-pellet": 0.3},
        ratios=[rules.published_ratio("calcium-to-phosphorus", "CA", "P", "reptile_CaP", "Ca_P_ratio", "reptiles in general")],
        choices=[{"group": "leafy vegetable", "at_least": 2, "at_most": 3, "min_g_each": 1},
                 {"group": "insect", "at_least": 1, "at_most": 3, "min_g_each": 0.3}],
        objective={"kind": "closest"}, whole_steps=True)
