# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The animals of the invented Brackenmere Animal Gardens: who lives there, in which group, and what they weighed.

Every name, day, mass and score is made up. Body masses agree with those of the problem files."""

import datetime
import random

SEED = 20261125
FIRST_WEIGHING = datetime.date(2026, 8, 3)
WEEKS = 17

MAMMAL, REPTILE = "Small Mammals", "Reptiles and Bats"

SPECIES = [
    ("lesser-hedgehog-tenrec", "Lesser hedgehog tenrec", "Echinops telfairi", "insectivore", ["mammal", "tenrec"],
     "Cools down and eats little for weeks in the cool season."),
    ("lowland-streaked-tenrec", "Lowland streaked tenrec", "Hemicentetes semispinosus", "insectivore", ["mammal", "tenrec"],
     "New to the collection; lives on earthworms."),
    ("fennec-fox", "Fennec fox", "Vulpes zerda", "omnivore", ["mammal", "carnivore", "canid"], ""),
    ("red-ruffed-lemur", "Red ruffed lemur", "Varecia rubra", "frugivore", ["mammal", "primate", "lemur"],
     "Stores iron; no cultivated fruit by house rule."),
    ("squirrel-monkey", "Common squirrel monkey", "Saimiri sciureus", "omnivore",
     ["mammal", "primate", "new-world-primate"], "Needs vitamin D3 rather than D2, and vitamin C."),
    ("rodrigues-fruit-bat", "Rodrigues fruit bat", "Pteropus rodricensis", "frugivore", ["mammal", "bat", "fruit-bat"],
     "No table of its requirements has been published."),
    ("bearded-dragon", "Central bearded dragon", "Pogona vitticeps", "omnivore", ["reptile", "lizard"], ""),
]

# code, species, sex, born, kg on the first day, grams gained a week, how it is weighed
ANIMALS = [
    ("Tenrec 1", "lesser-hedgehog-tenrec", "female", "2023-01-14", 0.139, 0.0, "scale"),
    ("Tenrec 2", "lesser-hedgehog-tenrec", "female", "2023-01-14", 0.133, 0.0, "scale"),
    ("Tenrec 3", "lesser-hedgehog-tenrec", "male", "2022-12-30", 0.148, 0.0, "scale"),
    ("Streaked tenrec 1", "lowland-streaked-tenrec", "female", "2025-02-20", 0.155, 0.0, "scale"),
    ("Streaked tenrec 2", "lowland-streaked-tenrec", "male", "2025-03-02", 0.165, 0.0, "scale"),
    ("Fennec 1", "fennec-fox", "female", "2021-04-11", 1.22, 0.0, "trained-on-scale"),
    ("Fennec 2", "fennec-fox", "male", "2021-04-11", 1.36, 1.5, "trained-on-scale"),
    ("Fennec 3", "fennec-fox", "female", "2022-05-03", 1.30, 0.0, "trained-on-scale"),
    ("Lemur 1", "red-ruffed-lemur", "female", "2014-05-19", 3.62, 0.0, "trained-on-scale"),
    ("Lemur 2", "red-ruffed-lemur", "male", "2015-04-28", 3.48, 0.0, "trained-on-scale"),
    ("Lemur 3", "red-ruffed-lemur", "female", "2020-05-07", 3.41, 0.0, "trained-on-scale"),
    ("Lemur 4", "red-ruffed-lemur", "male", "2022-05-22", 3.35, 0.0, "trained-on-scale"),
    ("Lemur 5", "red-ruffed-lemur", "female", "2024-05-02", 2.98, 8.0, "trained-on-scale"),
    ("Bat 1", "rodrigues-fruit-bat", "male", "2017-10-10", 0.292, 0.0, "carried"),
    ("Bat 2", "rodrigues-fruit-bat", "male", "2018-11-02", 0.301, 0.0, "carried"),
    ("Bat 3", "rodrigues-fruit-bat", "male", "2018-12-15", 0.284, 0.0, "carried"),
    ("Bat 4", "rodrigues-fruit-bat", "male", "2019-10-21", 0.275, 0.0, "carried"),
    ("Bat 5", "rodrigues-fruit-bat", "male", "2020-11-30", 0.281, 0.0, "carried"),
    ("Bat 6", "rodrigues-fruit-bat", "male", "2021-10-05", 0.270, 0.0, "carried"),
    ("Dragon 1", "bearded-dragon", "female", "2021-06-08", 0.372, 0.0, "scale"),
    ("Dragon 2", "bearded-dragon", "male", "2020-07-15", 0.389, 0.0, "scale"),
]
ESTIMATED_BIRTHS = {"Bat 1", "Dragon 2"}
STAGES = {"Lemur 5": [("2024-05-02", "unweaned"), ("2024-09-15", "growing"), ("2026-11-01", "adult")]}

# code, name, species, section, members by the first word of their name, count where they are not told apart, profile
GROUPS = [
    ("tenrecs", "Lesser hedgehog tenrecs (trio)", "lesser-hedgehog-tenrec", MAMMAL, "Tenrec", None, "brackenmere-tenrec"),
    ("streaked-tenrecs", "Lowland streaked tenrecs (pair)", "lowland-streaked-tenrec", MAMMAL, "Streaked", None,
     "brackenmere-streaked-tenrec"),
    ("fennecs", "Fennec foxes (three)", "fennec-fox", MAMMAL, "Fennec", None, "brackenmere-fennec"),
    ("lemurs", "Red ruffed lemurs (family of five)", "red-ruffed-lemur", MAMMAL, "Lemur", None,
     "brackenmere-ruffed-lemur"),
    ("squirrel-monkeys", "Squirrel monkeys (colony of twelve)", "squirrel-monkey", MAMMAL, None,
     [("2026-01-01", 11), ("2026-05-18", 12)], "brackenmere-squirrel-monkey"),
    ("bats", "Rodrigues fruit bats (six)", "rodrigues-fruit-bat", REPTILE, "Bat", None, "brackenmere-fruit-bat"),
    ("dragons", "Bearded dragons (pair)", "bearded-dragon", REPTILE, "Dragon", None, "brackenmere-dragon"),
    ("young-dragons", "Bearded dragons, young (seven)", "bearded-dragon", REPTILE, None, [("2026-06-20", 7)],
     "brackenmere-young-dragon"),
]
ARRIVALS = {"Streaked": "2026-10-26"}
GROUP_MASSES = [("squirrel-monkeys", 0.85, 0.0, "trained-on-scale"), ("young-dragons", 0.018, 2.6, "scale")]

KLEIBER = ("placental mammals", "resting", 70.0, 0.75, "Small Animal Clinical Nutrition, 5th ed., p. 61")
FRUIT_BAT = ("grey-headed flying fox", "maintenance", 667.0 / 4.184, 0.75,
             "Steller 1986, Australian Journal of Zoology 34:339-349, abstract")
REPTILES = ("reptiles", "resting", 10.0, 0.75, "teaching table of metabolic constants")
HOUSE = "House choice of the invented collection"

# group, from, allometry, factors (kind, words, low, high)
PLANS = [
    ("tenrecs", "2026-01-01", KLEIBER, [("house", "tenrecs spend little", 0.8, 1.05)]),
    ("tenrecs", "2026-05-15", KLEIBER, [("house", "tenrecs spend little", 0.8, 1.05), ("season", "cool season", 0.8, 0.9)]),
    ("tenrecs", "2026-09-15", KLEIBER, [("house", "tenrecs spend little", 0.8, 1.05)]),
    ("streaked-tenrecs", "2026-10-26", KLEIBER, [("house", "tenrecs spend little", 0.75, 1.05)]),
    ("fennecs", "2026-01-01", KLEIBER, [("maintenance", "maintenance", 1.3, 1.6)]),
    ("lemurs", "2026-01-01", KLEIBER, [("maintenance", "maintenance", 1.0, 1.3)]),
    ("squirrel-monkeys", "2026-01-01", KLEIBER, [("maintenance", "maintenance", 1.3, 1.6)]),
    ("bats", "2026-01-01", FRUIT_BAT, []),
    ("dragons", "2026-01-01", REPTILES, [("house", "at preferred body temperature", 1.4, 2.2)]),
    ("young-dragons", "2026-06-20", REPTILES, [("life-stage", "growth", 2.0, 3.0)]),
]

# animal, day, score on the nine-point scale
CONDITIONS = [
    ("Tenrec 1", "2026-09-07", 5), ("Tenrec 2", "2026-09-07", 5), ("Tenrec 3", "2026-09-07", 6),
    ("Fennec 1", "2026-09-14", 5), ("Fennec 2", "2026-09-14", 6), ("Fennec 2", "2026-11-16", 7), ("Fennec 3", "2026-09-14", 5),
    ("Lemur 1", "2026-10-05", 6), ("Lemur 2", "2026-10-05", 5), ("Lemur 3", "2026-10-05", 5), ("Lemur 4", "2026-10-05", 5),
    ("Lemur 5", "2026-10-05", 4),
    ("Bat 1", "2026-10-12", 5), ("Bat 4", "2026-10-12", 4),
    ("Dragon 1", "2026-09-21", 5), ("Dragon 2", "2026-09-21", 6),
]

SCATTER = {"scale": 0.012, "trained-on-scale": 0.008, "carried": 0.015}


def group_of(animal):
    return next(group for group in GROUPS if group[4] and animal[0].startswith(group[4] + " "))


def individual(animal):
    code, species, sex, born = animal[:4]
    made = {"code": code, "species": species, "sex": sex, "born": born}
    if code in ESTIMATED_BIRTHS:
        made["birth_estimated"] = True
    if arrived := ARRIVALS.get(code.split()[0]):
        made["arrived"] = arrived
    if stages := STAGES.get(code):
        made["stages"] = [{"from": day, "stage": stage} for day, stage in stages]
    return made


def group(row):
    code, name, species, section, _, counts, profile = row
    made = {"code": code, "name": name, "species": species, "section": section, "profile": profile}
    if counts:
        made["counts"] = [{"from": day, "animals": animals} for day, animals in counts]
    return made


def plan(row):
    code, day, (animals, level, coefficient, exponent, source), factors = row
    return {"group": code, "from": day, "animals": animals, "level": level, "kcal_at_1_kg": round(coefficient, 4),
            "exponent": exponent, "follows_temperature": animals == "reptiles", "source": source, "provenance": "seen",
            "factors": [{"kind": kind, "words": words, "low": low, "high": high, "source": HOUSE, "provenance": "house-rule"}
                        for kind, words, low, high in factors]}


def animals():
    return {
        "format": "tarebowl-herd/1",
        "title": "The animals of Brackenmere Animal Gardens",
        "notes": "An invented collection: every animal, day, mass and score in it is made up.",
        "invented": True,
        "species": [{"code": code, "name": name, "scientific_name": scientific, "feeding_type": feeding, "taxa": taxa,
                     **({"note": note} if note else {})} for code, name, scientific, feeding, taxa, note in SPECIES],
        "individuals": [individual(animal) for animal in ANIMALS],
        "groups": [group(row) for row in GROUPS],
        "memberships": [{"group": group_of(animal)[0], "individual": animal[0],
                         "from": ARRIVALS.get(animal[0].split()[0], "2026-01-01")} for animal in ANIMALS],
        "energy_plans": [plan(row) for row in PLANS],
    }


def masses():
    """Weekly weighings with scatter, and one slip: grams typed as kilograms, set aside with its reason."""
    rng = random.Random(SEED)
    rows = [("individual", "group", "date", "mass_kg", "method", "note", "excluded")]
    subjects = [(animal[0], "", *animal[4:], ARRIVALS.get(animal[0].split()[0])) for animal in ANIMALS]
    subjects += [("", code, *rest, None) for code, *rest in GROUP_MASSES]
    for individual_code, group_code, mass, gain, method, arrived in subjects:
        for week in range(WEEKS):
            day = FIRST_WEIGHING + datetime.timedelta(weeks=week)
            if arrived and day < datetime.date.fromisoformat(arrived):
                continue
            expected = mass + gain * week / 1000.0
            weighed = round(expected * rng.gauss(1.0, SCATTER[method]), 4 if expected < 0.1 else 3)
            slip = individual_code == "Tenrec 2" and week == 9
            rows.append((individual_code, group_code, day.isoformat(), f"{round(weighed * 1000)}" if slip else f"{weighed:g}",
                         method, "", "grams typed as kilograms" if slip else ""))
    return rows


def conditions():
    rows = [("individual", "group", "date", "scale", "score", "note")]
    rows += [(animal, "", day, "condition-9", str(score), "") for animal, day, score in CONDITIONS]
    return rows
