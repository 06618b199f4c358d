# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The Small Mammals section of the invented collection: tenrecs, foxes, lemurs, squirrel monkeys."""

from . import rules as r
from .problem import problem



def hedgehog_tenrecs(larder, rules):
    dog = rules.family("dog_adult_aafco2014_kcal", "energy", r.DOG)
    foods = [
        larder.food("crickets-adult", max_g=4, scale_step_g=0.1, eaten_fraction=0.95),
        larder.food("black-soldier-fly-larvae", max_g=2, scale_step_g=0.1),
        larder.food("mealworms", max_g=1.5, scale_step_g=0.1),
        larder.food("cockroach-nymphs", max_g=3, scale_step_g=0.1, eaten_fraction=0.9),
        larder.food("waxworms", max_g=0.5, scale_step_g=0.1),
        larder.food("silkworms", max_g=2, scale_step_g=0.1),
        larder.food("insect-eater-pellet", max_g=3, scale_step_g=0.1, eaten_fraction=0.9),
        larder.food("egg-boiled", max_g=2, scale_step_g=0.1),
        larder.food("carrot-boiled", max_g=2, scale_step_g=0.1, eaten_fraction=0.8),
        larder.food("courgette-raw", max_g=1, scale_step_g=0.1, eaten_fraction=0.5),
        larder.food("limestone", max_g=0.2, scale_step_g=0.05, eaten_fraction=0.6),
    ]
    targets = [
        r.energy(0.14, 70, 0.8, 1.05, r.KLEIBER),
        rules.published("protein", "hedgehog", "crude_protein", "dry-matter", r.HEDGEHOG),
        rules.published("fat", "hedgehog", "crude_fat", "dry-matter", r.HEDGEHOG),
        r.house_rule("fat-limit", "the same page allows up to 30 % before hibernation; this trio runs to fat",
                     nutrient="FAT", max=250, unit="g", basis="dry-matter"),
        dog("calcium", "Ca", weight=2), dog("phosphorus", "P"), dog("potassium", "K"), dog("sodium", "Na"),
        dog("magnesium", "Mg"), dog("iron", "Fe"), dog("copper", "Cu"), dog("zinc", "Zn"), dog("manganese", "Mn"),
        dog("selenium", "Se", only="min"), r.safe_limit(dog("selenium-limit", "Se", only="max")),
        dog("vitamin-d", "vitamin_D", only="min"), r.safe_limit(dog("vitamin-d-limit", "vitamin_D", only="max")),
        dog("vitamin-e", "vitamin_E"),
    ]
    return problem(
        "Lesser hedgehog tenrecs, evening bowl",
        "Trio of lesser hedgehog tenrecs (Echinops telfairi). No requirements are published for tenrecs: hedgehogs stand in "
        "for protein and fat, the domestic dog for minerals and vitamins. Some insectivores need less energy than 70 "
        "kcal/kg^0.75; follow body mass. Vitamins of most insects are unknown here, so those rungs read 'at least'.",
        {"name": "Lesser hedgehog tenrecs (trio)", "count": 3, "body_mass_kg": 0.14}, "given", foods, targets,
        {"crickets-adult": 3.5, "mealworms": 1.5, "waxworms": 0.5, "insect-eater-pellet": 1.0, "egg-boiled": 1.0,
         "carrot-boiled": 1.0, "black-soldier-fly-larvae": 0.5, "cockroach-nymphs": 1.0},
        ratios=[rules.published_ratio("calcium-to-phosphorus", "CA", "P", "dog_adult_aafco2014", "Ca_P_ratio", r.DOG)],
        choices=[{"group": "insect", "at_least": 3, "min_g_each": 0.5}],
        objective={"kind": "closest"}, whole_steps=True)


def streaked_tenrecs(larder, rules):
    cat = rules.family("cat_adult_nrc2006", "energy", r.CAT)
    # Half a gram is about one worm: a first design is not finer than what it is made of.
    foods = [
        larder.food("earthworms", max_g=20, scale_step_g=0.5, eaten_fraction=0.95),
        larder.food("crickets-small", max_g=5, scale_step_g=0.5, eaten_fraction=0.85),
        larder.food("crickets-adult", max_g=3, scale_step_g=0.5, eaten_fraction=0.6),
        larder.food("cockroach-nymphs", max_g=3, scale_step_g=0.5, eaten_fraction=0.8),
        larder.food("silkworms", max_g=1.5, scale_step_g=0.5),
        larder.food("waxworms", max_g=1, scale_step_g=0.5),
        larder.food("mealworms", max_g=1.5, scale_step_g=0.5),
        larder.food("egg-boiled", max_g=2, scale_step_g=0.5),
        larder.food("insect-eater-pellet", max_g=0.5, scale_step_g=0.5, eaten_fraction=0.5),
    ]
    targets = [
        r.energy(0.16, 70, 0.75, 1.05, r.KLEIBER) | {"hard": True},
        cat("protein", "crude_protein"),
        cat("fat", "crude_fat"),
        cat("calcium", "Ca", weight=3),
        r.house_rule("phosphorus-limit", "spare the kidneys of a species new to the collection", nutrient="P", max=2.6,
                     unit="g", basis="energy"),
        cat("phosphorus", "P"), cat("potassium", "K"), cat("sodium", "Na"), cat("magnesium", "Mg"), cat("iron", "Fe"),
        r.house_rule("iron-limit", "earthworms carry soil, and iron stores are unknown in tenrecs", nutrient="FE", max=60,
                     unit="mg", basis="energy"),
        cat("copper", "Cu"), cat("zinc", "Zn"), cat("selenium", "Se"),
        cat("vitamin-a", "vitamin_A"), cat("vitamin-d", "vitamin_D3"),
    ]
    return problem(
        "Lowland streaked tenrecs, first design",
        "Lowland streaked tenrecs (Hemicentetes semispinosus), a species new to the collection; its diet is still to be "
        "designed. No requirements are published: the domestic cat stands in as a strict carnivore, and its values here are "
        "recalled, not read. Worms and soft insects alone leave calcium short of phosphorus.",
        {"name": "Lowland streaked tenrecs (pair)", "count": 2, "body_mass_kg": 0.16}, "modified-atwater", foods, targets,
        {"earthworms": 12.0, "crickets-small": 3.0, "silkworms": 1.0, "waxworms": 0.5, "egg-boiled": 0.5},
        ratios=[rules.published_ratio("calcium-to-phosphorus", "CA", "P", "insectivore_carnivore_min", "Ca_P_ratio",
                                      "insect-eating amphibians and reptiles, goal for prey")],
        shares=[r.house_rule("worms", "worms stay the base of the bowl", group="worm", min=0.3, basis="dry-matter")],
        objective={"kind": "closest"}, whole_steps=True)


def fennec_foxes(larder, rules):
    dog = rules.family("dog_adult_aafco2014_kcal", "energy", r.DOG)
    foods = [
        larder.food("mouse-adult", max_g=54, cost_per_kg=18.0),
        larder.food("chick-day-old", max_g=80, cost_per_kg=6.5, eaten_fraction=0.95),
        larder.food("insect-eater-pellet", max_g=25, cost_per_kg=7.0),
        larder.food("egg-boiled", max_g=50, scale_step_g=50, cost_per_kg=4.2),
        larder.food("crickets-adult", max_g=10, cost_per_kg=38.0, eaten_fraction=0.9),
        larder.food("mealworms", max_g=6, cost_per_kg=22.0),
        larder.food("carrot-boiled", max_g=20, cost_per_kg=1.3, eaten_fraction=0.6),
        larder.food("sweet-potato-boiled", max_g=20, cost_per_kg=2.4, eaten_fraction=0.8),
        larder.food("green-beans-boiled", max_g=20, cost_per_kg=3.8, eaten_fraction=0.5),
        larder.food("courgette-raw", max_g=15, cost_per_kg=2.1, eaten_fraction=0.4),
        larder.food("beetroot-raw", max_g=10, cost_per_kg=1.6, eaten_fraction=0.5),
        larder.food("limestone", max_g=0.5, scale_step_g=0.1, cost_per_kg=3.0, eaten_fraction=0.8),
    ]
    targets = [
        r.energy(1.3, 70, 1.3, 1.6, r.KLEIBER),
        dog("protein", "crude_protein"), dog("fat", "crude_fat"),
        r.house_rule("fat-limit", "three foxes that sit more than they run", nutrient="FAT", max=50, unit="g", basis="energy"),
        dog("calcium", "Ca"), dog("phosphorus", "P"), dog("potassium", "K"), dog("sodium", "Na"), dog("magnesium", "Mg"),
        dog("iron", "Fe"), dog("copper", "Cu"), dog("zinc", "Zn"), dog("manganese", "Mn"),
        dog("vitamin-a", "vitamin_A", only="min"), r.safe_limit(dog("vitamin-a-limit", "vitamin_A", only="max")),
        dog("vitamin-d", "vitamin_D", only="min"), r.safe_limit(dog("vitamin-d-limit", "vitamin_D", only="max")),
    ]
    return problem(
        "Fennec foxes, evening bowl",
        "Three fennec foxes (Vulpes zerda); the domestic dog is the model species. A mouse and a chick go in whole. Trace "
        "elements and vitamins of whole prey are unknown in the table used, so those rungs read 'at least'. Costs are made up.",
        {"name": "Fennec foxes (three)", "count": 3, "body_mass_kg": 1.3}, "atwater", foods, targets,
        {"mouse-adult": 27, "chick-day-old": 40, "insect-eater-pellet": 5, "carrot-boiled": 15, "sweet-potato-boiled": 10,
         "mealworms": 3},
        ratios=[rules.published_ratio("calcium-to-phosphorus", "CA", "P", "dog_adult_aafco2014", "Ca_P_ratio", r.DOG)],
        choices=[{"group": "cooked vegetable", "at_least": 2, "at_most": 2, "min_g_each": 8},
                 {"group": "whole prey", "at_least": 1, "min_g_each": 27}],
        objective={"kind": "lowest-cost"}, whole_steps=True)
