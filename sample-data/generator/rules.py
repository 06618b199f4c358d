# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Targets and rules of the sample diets: published ones from the table, the collection's own marked as house rules."""

from .tables import tidy

KLEIBER = "Small Animal Clinical Nutrition, 5th ed., p. 61"
REPTILES = "teaching table; reptiles at their preferred body temperature"

DOG = "domestic dog (Canis familiaris), adult maintenance"
CAT = "domestic cat (Felis catus), adult maintenance"
PRIMATE = "non-human primates in general, after weaning"
HEDGEHOG = "hedgehogs (Erinaceidae), maintenance"
OMNIVOROUS_REPTILE = "omnivorous reptiles in general, maintenance"


class Rules:
    def __init__(self, targets):
        self.targets = targets

    def published(self, target_id, profile, nutrient, basis, model_species, only=None, **more):
        """A published target; only='min' keeps that bound. A bound the row lacks is a mistake, not a default."""
        target = {"id": target_id, **self.targets.target(profile, nutrient, basis), "model_species": model_species}
        if only:
            dropped = {"min": "max", "max": "min"}[only]
            target.pop(dropped, None)
            assert only in target, (profile, nutrient, only)
        return target | more

    def family(self, profile, basis, model_species):
        """The same profile, basis and model species for many targets: family(...)(id, nutrient)."""
        return lambda target_id, nutrient, **more: self.published(target_id, profile, nutrient, basis, model_species, **more)

    def published_ratio(self, ratio_id, of, to, profile, nutrient, model_species, **more):
        row = self.targets.row(profile, nutrient)
        bounds = {key: float(row[key]) for key in ("min", "max") if row[key]}
        return {"id": ratio_id, "of": of, "to": to, **bounds, "source": row["source"],
                "provenance": self.targets.provenance(row), "model_species": model_species} | more


def safe_limit(target):
    """The published maximum of a vitamin or trace element, held as a hard rule."""
    return target | {"hard": True}


def house_rule(target_id, why, **target):
    return {"id": target_id, **target, "source": f"House rule of the invented collection: {why}", "provenance": "house-rule"}


def energy(body_mass_kg, constant, low, high, constant_source):
    """Energy per animal and day: constant times body mass^0.75, times a range the house chose."""
    basal = constant * body_mass_kg ** 0.75
    why = f"{low:g} to {high:g} times {constant:g} kcal/kg^0.75 (constant: {constant_source}), body mass {body_mass_kg:g} kg"
    return house_rule("energy", why, nutrient="ENERC", min=tidy(round(basal * low, 1)), max=tidy(round(basal * high, 1)),
                      unit="kcal", basis="day")
