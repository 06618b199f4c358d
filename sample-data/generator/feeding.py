# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""120 days of feeding at the invented Brackenmere Animal Gardens: what was planned, weighed in and left, control pans, and what keepers saw.

Every gram, loss of water and score is made up. Three stories are planted, for tests and for people who look for them:
  1. the fennecs leave their vegetables;
  2. the dragons leave their greens from 7 to 16 August and from 8 to 17 November, and their Ca:P as eaten falls;
  3. the lemurs' faeces are soft a day after broccoli, which is new to them."""

import datetime
import math
import random

from generator import diets, herd
from generator.foods import LIVE, ORDINARY, PELLETS, PREY

SEED = 20261126
LAST = datetime.date(2026, 11, 24)
DAYS = 120
FIRST = LAST - datetime.timedelta(days=DAYS - 1)

KEEPERS = {herd.MAMMAL: ("Keeper A", "Keeper B"), herd.REPTILE: ("Keeper C", "Keeper D")}
STEP = {"lemurs": 1.0}  # the scale; 0.1 g for all others

LEAFY, OTHER, COOKED, ROOT = "leafy vegetable", "other vegetable", "cooked vegetable", "raw root"

# What a class of food loses overnight as a share of its mass, and how that differs from day to day. Pellets draw water.
WATER = {LEAFY: (0.18, 0.05), OTHER: (0.09, 0.03), COOKED: (0.11, 0.03), ROOT: (0.07, 0.02), "fruit": (0.12, 0.04),
         "pellet": (-0.05, 0.03), "insect": (0.06, 0.02), "worm": (0.10, 0.03), "whole prey": (0.06, 0.02), "egg": (0.08, 0.02)}
PAN_SCATTER = 0.015
MISTED = 0.3  # a misted house adds so much, every ninth night

# How much of a food a group eats, where it is not the usual of its class.
USUAL = {LEAFY: 0.88, OTHER: 0.85, COOKED: 0.92, ROOT: 0.85, "fruit": 0.97, "pellet": 0.93, "insect": 0.995, "worm": 0.97,
         "whole prey": 0.985, "egg": 0.96, "supplement": 1.0}
TASTES = {
    "fennecs": {"carrot-boiled": 0.34, "green-beans-boiled": 0.18, "courgette-raw": 0.12, "beetroot-raw": 0.08},
    "tenrecs": {"black-soldier-fly-larvae": 0.55, "carrot-boiled": 0.7},
    "lemurs": {"sweet-potato-boiled": 0.985, "bell-pepper-red-raw": 0.7, "courgette-raw": 0.8},
    "bats": {"kale-raw": 0.35, "carrot-boiled": 0.6},
    "squirrel-monkeys": {"kale-raw": 0.3, "leaf-eater-pellet": 0.82},
}
SCATTER = 0.25  # of the day's appetite, on the log scale

AUGUST = (datetime.date(2026, 8, 7), datetime.date(2026, 8, 16))
NOVEMBER = (datetime.date(2026, 11, 8), datetime.date(2026, 11, 17))
GREENS_LEFT = 0.15

NEW_FOOD = "broccoli-raw"
NEW_FOOD_DAYS = [datetime.date(2026, 10, 19) + datetime.timedelta(days=days) for days in (0, 3, 7, 11, 14, 18, 23, 28, 33)]
SOFT, FORMED = 6, 4

# Fed before any diet was written down, grams per animal.
BEFORE = {
    "dragons": [("dandelion-raw", 6), ("endive-raw", 12), ("crickets-adult", 3)],
    "streaked-tenrecs": [("earthworms", 14), ("crickets-small", 3), ("egg-boiled", 1)],
}
COOL_SEASON_ENDS = datetime.date(2026, 9, 15)
SLIP = ("dragons", datetime.date(2026, 9, 22), "endive-raw", 41.0)  # 4.1 g written down as 41

CLASSES = ({food: row[1] for food, row in (ORDINARY | LIVE).items()} | {food: "whole prey" for food in PREY}
           | {food: "pellet" for food in PELLETS} | {"limestone": "supplement"})


def days():
    return [FIRST + datetime.timedelta(days=number) for number in range(DAYS)]


def animals_on(code, day):
    """How many share the bowl."""
    row = next(group for group in herd.GROUPS if group[0] == code)
    counts = row[5]
    if counts:
        return max((start, animals) for start, animals in counts if start <= day.isoformat())[1]
    arrived = herd.ARRIVALS.get(row[4])
    if arrived and day.isoformat() < arrived:
        return 0
    return sum(animal[0].startswith(row[4] + " ") for animal in herd.ANIMALS)


def in_force(code, day):
    """The diet's code and version that is fed on a day, and its lines; without a version, as before."""
    diet = next((made for made in diets.diets().values() if made["group"] == code), None)
    versions = [] if diet is None else diet["versions"]
    fed = [version for version in versions if version.get("fed_from", "9999") <= day.isoformat()]
    if fed:
        newest = max(fed, key=lambda version: version["fed_from"])
        return f"{diet['code']}/{newest['number']}", newest["lines"]
    if code in BEFORE:
        return "", [{"food": food, "g": grams} for food, grams in BEFORE[code]]
    return "", versions[0]["lines"]


def bowls_on(code, day):
    """(diet, meal, purpose, lines), a bowl for each meal and purpose."""
    fed_by, lines = in_force(code, day)
    bowls = {}
    for line in lines:
        bowls.setdefault((fed_by, line.get("meal", ""), line.get("purpose", "")), []).append((line["food"], line["g"]))
    if code == "lemurs" and day in NEW_FOOD_DAYS:
        bowls[("", "noon", "enrichment")] = [(NEW_FOOD, 12)]
    return [(*key, foods) for key, foods in bowls.items()]


def rounded(grams, step):
    return round(round(grams / step) * step, 3)


def eaten_share(code, food, day, appetite, rng):
    usual = TASTES.get(code, {}).get(food, USUAL[CLASSES[food]])
    if code == "tenrecs" and day < COOL_SEASON_ENDS:
        usual *= 0.75
    if code == "dragons" and CLASSES[food] == LEAFY and any(first <= day <= last for first, last in (AUGUST, NOVEMBER)):
        usual = GREENS_LEFT
    if usual >= 1.0:
        return 1.0
    # What remains falls with the day's appetite and with chance, as a hungry group empties its bowl.
    remains = math.exp(math.log(1.0 - usual) * appetite * math.exp(rng.gauss(0.0, SCATTER)))
    return 1.0 - remains


class Water:
    """What each class of food loses in a place on a day."""

    def __init__(self, rng):
        self.rng = rng
        self.nights = {}

    def loss(self, place, food_class, day):
        key = (place, food_class, day)
        if key not in self.nights:
            mean, sd = WATER.get(food_class, (0.0, 0.0))
            misted = place == herd.REPTILE and (day - FIRST).days % 9 == 4
            self.nights[key] = self.rng.gauss(mean, sd) - (MISTED if misted else 0.0)
        return self.nights[key]

    def of_one(self, place, food_class, day):
        return self.loss(place, food_class, day) + self.rng.gauss(0.0, PAN_SCATTER)


def section_of(code):
    return next(group[3] for group in herd.GROUPS if group[0] == code)


def keeper_on(code, day):
    pair = KEEPERS[section_of(code)]
    return pair[day.toordinal() % 7 < 3]


TITLES = ("date", "bowl", "meal", "purpose", "diet", "animals", "item", "food", "planned_g", "weighed_g", "left", "left_g", "lost_g", "by")


class Day:
    """One group on one day."""

    def __init__(self, code, day, water, rng):
        self.code, self.day, self.water, self.rng = code, day, water, rng
        self.step = STEP.get(code, 0.1)
        self.place = section_of(code)
        self.appetite = math.exp(rng.gauss(0.0, SCATTER))
        self.rows, self.remainders = [], []

    def feed(self):
        number = 0
        for fed_by, meal, purpose, foods in bowls_on(self.code, self.day):
            items = [(food, rounded(grams * animals_on(self.code, self.day), self.step)) for food, grams in foods]
            items = [(food, planned) for food, planned in items if planned > 0]
            if items:
                number += 1
                self.bowl(number, (meal, purpose, fed_by), items)
        return self

    def bowl(self, number, kind, items):
        weighed_later = self.rng.random() > 0.03
        mixed = self.code == "squirrel-monkeys" and not kind[1] and self.rng.random() < 0.4
        found = [self.item(food, planned) for food, planned in items]
        left = [max(0.0, remains) for _, remains, _ in found]
        together = rounded(sum(left), self.step)
        mixed = mixed and together > 0
        for place, ((food, planned), (offered, _, lost)) in enumerate(zip(items, found)):
            words = ("not-weighed", "", "") if not weighed_later else self.words(left[place], lost, together if mixed else None, sum(left))
            words = self.slip(food, words)
            self.rows.append((self.day.isoformat(), number, *kind, animals_on(self.code, self.day), place + 1, food, f"{planned:g}",
                              f"{offered:g}", *words, keeper_on(self.code, self.day)))
        if mixed and weighed_later:
            self.remainders.append((self.day.isoformat(), self.code, number, f"{together:g}", keeper_on(self.code, self.day)))

    def item(self, food, planned):
        """Weighed in, what a scale would find of it in the morning, what was spilled or stolen."""
        exact = CLASSES[food] in ("supplement", "whole prey")
        offered = planned if exact else rounded(planned * self.rng.gauss(1.0, 0.006), self.step)
        lost = 0.0
        if self.code in ("squirrel-monkeys", "lemurs") and self.rng.random() < 0.012:
            lost = rounded(offered * self.rng.uniform(0.1, 0.3), self.step)
        share = eaten_share(self.code, food, self.day, self.appetite, self.rng)
        dried = 1.0 - self.water.of_one(self.place, CLASSES[food], self.day)
        return offered, (offered - lost) * (1.0 - share) * dried, lost

    def words(self, left, lost, together, everything):
        if together is not None:
            seen = left / everything * self.rng.gauss(1.0, 0.15)  # by eye
            return "estimated", f"{rounded(together * max(0.0, seen), self.step):g}", ""
        found = rounded(left, self.step)
        if lost > 0:
            return ("spilled" if self.code == "squirrel-monkeys" else "stolen"), f"{found:g}", f"{lost:g}"
        return ("weighed", f"{found:g}", "") if found > 0 else ("all-eaten", "", "")

    def slip(self, food, words):
        code, day, slipped, grams = SLIP
        return ("weighed", f"{grams:g}", "") if (self.code, self.day, food) == (code, day, slipped) else words


def pans(water, rng):
    rows = [("date", "place", "food", "food_class", "start_g", "end_g", "by")]
    wanted = {herd.MAMMAL: [("courgette-raw", OTHER), ("", COOKED), ("kale-raw", LEAFY), ("", "pellet"), ("", "fruit"), ("", ROOT),
                            ("", "insect"), ("", "whole prey"), ("", "egg"), ("", "worm")],
              herd.REPTILE: [("dandelion-raw", LEAFY), ("endive-raw", LEAFY), ("", "fruit"), ("", COOKED), ("", "pellet"),
                             ("", "insect")]}
    for day in days():
        for place, foods in wanted.items():
            if rng.random() < 0.12:
                continue  # nobody had the time
            for food, food_class in foods:
                if rng.random() < 0.15:
                    continue
                start = rounded(rng.uniform(20, 60), 0.1)
                end = rounded(start * (1.0 - water.of_one(place, food_class, day)), 0.1)
                keeper = KEEPERS[place][day.toordinal() % 7 < 3]
                rows.append((day.isoformat(), place, food, "" if food else food_class, f"{start:g}", f"{end:g}", keeper))
    return rows


def observations(rng):
    """Faeces of the lemurs every day, of others once a week; on a scale of 1 (hard) to 7 (liquid) on which 4 is formed."""
    rows = [("date", "time", "group", "kind", "scale", "score", "note", "by")]
    for day in days():
        for row in herd.GROUPS:
            code = row[0]
            if animals_on(code, day) == 0 or (code != "lemurs" and day.weekday() != 0):
                continue
            after_new = code == "lemurs" and day - datetime.timedelta(days=1) in NEW_FOOD_DAYS
            soft = rng.random() < (0.8 if after_new else 0.03)
            score = SOFT if soft else rng.choice((FORMED - 1, FORMED, FORMED, FORMED, FORMED + 1))
            rows.append((day.isoformat(), f"08:{rng.randrange(5, 55):02d}", code, "faeces", "faeces-7", score, "soft" if soft else "",
                         keeper_on(code, day)))
    return rows


def files():
    """Rows of each file by its name."""
    water = Water(random.Random(f"{SEED} water"))
    made, remainders = {}, [("date", "group", "bowl", "left_g", "by")]
    for row in herd.GROUPS:
        code = row[0]
        rng = random.Random(f"{SEED} {code}")
        rows = [TITLES]
        for day in days():
            if animals_on(code, day) > 0:
                fed = Day(code, day, water, rng).feed()
                rows += fed.rows
                remainders += fed.remainders
        made[f"{code}.csv"] = rows
    made["pans.csv"] = pans(water, random.Random(f"{SEED} pans"))
    return made | {"remainders.csv": remainders, "observations.csv": observations(random.Random(f"{SEED} observations"))}
