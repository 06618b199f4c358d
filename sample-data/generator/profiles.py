# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Target profiles of the invented collection: each derives from a published starter profile of a model species and states only
what the house decided otherwise. Nothing here is a published value: what is published stands in the starter."""


def house(rule_id, why, **rule):
    return {"id": rule_id, **rule, "source": f"House rule of the invented collection: {why}", "provenance": "house-rule"}


CALCIUM_TO_PHOSPHORUS = house("ca-p", "calcium at or above phosphorus, at most twice it", of="CA", to="P", min=1, max=2)
NOT_ANALYSED = "no food of the house has been analysed for it"


def not_analysed(*ids):
    return [{"id": rule_id, "reason": NOT_ANALYSED} for rule_id in ids]


def profile(code, name, parent, model, why, stage="adult maintenance", **rules):
    made = {"format": "tarebowl-profile/1", "code": code, "version": 1, "name": name}
    if parent:
        made["parent"] = {"code": parent, "version": 1}
    return made | {"model_species": model, "why_model": why, "life_stage": stage, "note": "Invented collection.",
                   "invented": True} | rules


def profiles():
    return {made["code"]: made for made in (
        profile("brackenmere-tenrec", "Lesser hedgehog tenrec, adult", "dog-adult-aafco2014-kcal",
                "domestic dog", "Nothing was measured of tenrecs; an omnivorous carnivore stands in until something is.",
                targets=[house("fat-limit", "tenrecs grow fat", nutrient="FAT", max=62.5, unit="g", basis="energy")],
                ratios=[CALCIUM_TO_PHOSPHORUS],
                choices=[{"group": "insect", "at_least": 3, "min_g_each": 0.5}]),
        profile("brackenmere-streaked-tenrec", "Lowland streaked tenrec, still to be designed", "cat-adult-nrc2006",
                "domestic cat", "A strict carnivore stands in for an eater of earthworms; not approved yet.",
                targets=[house("iron-limit", "earthworms bring soil, and soil brings iron", nutrient="FE", max=60, unit="mg",
                               basis="energy")],
                ratios=[house("ca-p", "goal for prey", of="CA", to="P", min=1)],
                shares=[house("worms", "worms stay the base of the bowl", group="worm", min=0.3, basis="dry-matter")]),
        profile("brackenmere-fennec", "Fennec fox, adult", "dog-adult-aafco2014-kcal",
                "domestic dog", "Both are omnivorous canids; the fox is a tenth of the mass.",
                targets=[house("fat-limit", "foxes in human care grow fat", nutrient="FAT", max=50, unit="g", basis="energy")],
                ratios=[CALCIUM_TO_PHOSPHORUS],
                choices=[{"group": "cooked vegetable", "at_least": 2, "at_most": 2, "min_g_each": 8},
                         {"group": "whole prey", "at_least": 1, "min_g_each": 27}],
                exclusions=[house("no-grapes", "no grapes or raisins for canids", group="grape",
                                  reason="grapes and raisins are dangerous to canids")]),
        profile("brackenmere-ruffed-lemur", "Red ruffed lemur, low iron, no cultivated fruit", "primate-nrc2003",
                "nonhuman primates", "No requirements of lemurs were measured; the general table of primates is the nearest.",
                targets=[house("iron", "ruffed lemurs store iron, so the 100 mg/kg of the table is a ceiling here, not a floor",
                               nutrient="FE", max=100, unit="mg", basis="dry-matter", safe_upper_limit=True),
                         house("sugar-limit", "the sugar of cultivated roots counts like that of fruit", nutrient="SUGAR",
                               max=150, unit="g", basis="dry-matter")],
                ratios=[CALCIUM_TO_PHOSPHORUS],
                choices=[{"group": "leafy vegetable", "at_least": 2, "min_g_each": 15},
                         {"group": "raw root", "at_least": 1, "at_most": 1, "min_g_each": 8}],
                exclusions=[house("no-fruit", "no cultivated fruit for the lemurs", group="fruit",
                                  reason="cultivated fruit is far sweeter and poorer in fibre than wild fruit")],
                dropped=not_analysed("chromium")),
        profile("brackenmere-squirrel-monkey", "Squirrel monkey, colony", "primate-nrc2003",
                "nonhuman primates", "The general table of primates is the nearest that was published.",
                ratios=[CALCIUM_TO_PHOSPHORUS],
                shares=[house("little-fruit", "cultivated fruit is a treat", group="fruit", max=0.05, basis="dry-matter",
                              hard=True)],
                choices=[{"group": "insect", "at_least": 1, "at_most": 2, "min_g_each": 1},
                         {"group": "cooked vegetable", "at_least": 2, "at_most": 2, "min_g_each": 5}],
                dropped=not_analysed("chromium")),
        profile("brackenmere-fruit-bat", "Rodrigues fruit bat", "fruit-bat-grey-headed",
                "grey-headed flying fox", "No table of requirements of fruit bats has been published: only the energy and the "
                "nitrogen that a relative needs were measured. Every other rule here is the house's own.",
                stage="maintenance",
                targets=[house("calcium", "a floor until something is measured", nutrient="CA", min=5, unit="g",
                               basis="dry-matter"),
                         house("iron-limit", "some fruit bats store iron", nutrient="FE", max=100, unit="mg",
                               basis="dry-matter")],
                ratios=[CALCIUM_TO_PHOSPHORUS]),
        profile("brackenmere-dragon", "Bearded dragon, adult", "reptile-omnivorous",
                "omnivorous reptiles", "General levels for omnivorous reptiles; none were measured of this species.",
                targets=[house("energy", "an amount to begin with at preferred body temperature; watch condition",
                               nutrient="ENERC", min=14, max=22, unit="kcal", basis="metabolic-mass", hard=True)],
                ratios=[CALCIUM_TO_PHOSPHORUS],
                choices=[{"group": "leafy vegetable", "at_least": 2, "at_most": 3, "min_g_each": 1},
                         {"group": "insect", "at_least": 1, "at_most": 3, "min_g_each": 0.3}]),
        profile("brackenmere-young-dragon", "Bearded dragon, growing", "brackenmere-dragon",
                "omnivorous reptiles", "As the adults, with more insects: young dragons hunt.", stage="growth",
                targets=[house("energy", "an amount to begin with for growing young; watch condition",
                               nutrient="ENERC", min=20, max=30, unit="kcal", basis="metabolic-mass", hard=True),
                         house("protein", "young dragons grow", nutrient="PROCNT", min=250, max=350, unit="g",
                               basis="dry-matter")],
                shares=[house("mostly-insects", "young dragons hunt", group="insect", min=0.5, basis="dry-matter")]),
    )}


#: Versions that the house has not put in force yet.
DRAFTS = {"brackenmere-streaked-tenrec"}
IN_FORCE_FROM = "2026-01-01"
