# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The published tables, read as they stand: composition of ordinary foods, insects and prey; nutrient targets."""

import csv
import gzip
import math
import os

# USDA SR28 nutrient number -> FAO/INFOODS tagname. SR28 states the amounts in the units the problem format uses.
SR28_TAGNAMES = {
    "255": "WATER", "203": "PROCNT", "204": "FAT", "207": "ASH", "205": "CHOCDF", "291": "FIBTG", "209": "STARCH",
    "269": "SUGAR", "208": "ENERC", "301": "CA", "305": "P", "304": "MG", "306": "K", "307": "NA", "303": "FE",
    "309": "ZN", "312": "CU", "315": "MN", "317": "SE", "320": "VITA_RAE", "319": "RETOL", "321": "CARTB",
    "328": "VITD", "323": "VITE", "430": "VITK", "401": "VITC", "404": "THIA", "405": "RIBF", "406": "NIA",
    "410": "PANTAC", "415": "VITB6A", "417": "FOL", "418": "VITB12", "505": "LYS", "506": "MET", "507": "CYS",
}

# SR28 source codes whose values nobody measured on that food.
SR28_UNMEASURED = {"4": "calculated or imputed", "7": "assumed zero"}

# Below this many samples a scatter says nothing.
FEWEST_SAMPLES = 3


def tidy(value):
    """Six significant digits: no table states more, and the files stay the same on every machine."""
    return float(f"{value:.6g}")


def rows(path):
    with open(path, encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


class Sr28:
    """USDA National Nutrient Database for Standard Reference, release 28: values per 100 g edible portion."""

    SOURCE = "USDA SR28 (2015, rev. May 2016)"

    def __init__(self, folder):
        self.descriptions = {row["food_id"]: row["food"] for row in rows(os.path.join(folder, "food_des.csv"))}
        self.values = {}
        with gzip.open(os.path.join(folder, "nut_data.csv.gz"), "rt", encoding="utf-8", newline="") as file:
            for row in csv.DictReader(file):
                if row["nutr_id"] in SR28_TAGNAMES:
                    self.values.setdefault(row["food_id"], {})[SR28_TAGNAMES[row["nutr_id"]]] = row

    def food(self, ndb):
        """Composition, scatter, sample counts and sources of one food by its five-digit NDB number."""
        key = ndb.lstrip("0")
        food = {
            "source": f"{self.SOURCE}, NDB {ndb}: {self.descriptions[key]}",
            "per_100_g": {}, "sd_per_100_g": {}, "n_samples": {}, "sources": {},
        }
        for tag in SR28_TAGNAMES.values():
            row = self.values[key].get(tag)
            if row is None:
                continue
            food["per_100_g"][tag] = tidy(float(row["value"]))
            count = int(row["num_points"] or 0)
            if count > 0:
                food["n_samples"][tag] = count
            # SR28 prints the standard error of the mean: SD = SE * sqrt(n).
            if row["se"] and float(row["se"]) > 0 and count >= FEWEST_SAMPLES:
                food["sd_per_100_g"][tag] = tidy(float(row["se"]) * math.sqrt(count))
            if row["source_type_id"] in SR28_UNMEASURED:
                food["sources"][tag] = f"{self.SOURCE}, {SR28_UNMEASURED[row['source_type_id']]}"
        return food


# Column of insects.csv (per kg as fed) -> (tagname, factor to the tagname's unit per 100 g).
INSECT_PROXIMATES = {
    "moisture_g_kg": ("WATER", 0.1), "protein_g_kg": ("PROCNT", 0.1), "fat_g_kg": ("FAT", 0.1),
    "ash_g_kg": ("ASH", 0.1), "ADF_g_kg": ("FIBAD", 0.1), "NDF_g_kg": ("FIBND", 0.1), "ME_kcal_kg": ("ENERC", 0.1),
}
INSECT_MINERALS = {
    "Ca_mg_kg": ("CA", 0.1), "P_mg_kg": ("P", 0.1), "Mg_mg_kg": ("MG", 0.1), "K_mg_kg": ("K", 0.1),
    "Na_mg_kg": ("NA", 0.1), "Fe_mg_kg": ("FE", 0.1), "Zn_mg_kg": ("ZN", 0.1), "Cu_mg_kg": ("CU", 0.1),
    "Mn_mg_kg": ("MN", 0.1), "Se_mg_kg": ("SE", 100.0),
}
# 1 mg of d-alpha-tocopherol is 1.49 IU; the form in the insect is taken to be the natural one.
INSECT_VITAMINS = {"vit_E_IU_kg": ("VITE", 0.1 / 1.49)}

PROXIMATES_READ = "as printed in Hand-Rearing Birds, 2nd ed., Table 41.1 (read)"


class Insects:
    """Feeder insects; each value carries whether its source was read or recalled, as the table states it."""

    def __init__(self, path):
        self.by_name = {row["item"]: row for row in rows(path) if row["basis"] == "as fed"}

    def food(self, item):
        row = self.by_name[item]
        publication = row["publication"].replace("Zoo Biol ", "Zoo Biology ")
        from_memory = f"{publication}, from memory: to be checked against the publication"
        food = {"source": f"{publication}, {PROXIMATES_READ}", "per_100_g": {}, "sources": {}}
        for column, (tag, factor) in (INSECT_PROXIMATES | INSECT_MINERALS | INSECT_VITAMINS).items():
            if row[column] == "":
                continue
            food["per_100_g"][tag] = tidy(float(row[column]) * factor)
            recalled = (column in INSECT_MINERALS or column in INSECT_VITAMINS or column == "NDF_g_kg"
                        or (column == "ME_kcal_kg" and not row["ME_prov"].startswith("seen")))
            if recalled:
                food["sources"][tag] = from_memory
        return food


class Prey:
    """Whole prey from its printed energy: grams of protein, fat and NFE follow from their shares of energy at 4, 9
    and 4 kcal/g, the factors with which the printed rows leave room for ash (3.5, 8.5 and 3.5 do not)."""

    def __init__(self, path):
        self.by_name = {row["item"]: row for row in rows(path) if row["basis"] == "energy"}

    def food(self, item):
        row = self.by_name[item]
        assert row["seen_or_memory"] == "seen"
        source = row["source"].split(" (")[0]
        energy = float(row["energy_kcal_g_as_fed"]) * 100.0
        share = {key: float(row[f"{key}_pct_kcal"]) / 100.0 for key in ("protein", "fat", "NFE")}
        grams = {"WATER": float(row["water_pct"]), "PROCNT": share["protein"] * energy / 4.0,
                 "FAT": share["fat"] * energy / 9.0, "CHOCDF": share["NFE"] * energy / 4.0}
        grams["ASH"] = 100.0 - sum(grams.values())
        computed = f"computed from {source}: shares of energy at 4, 9 and 4 kcal/g, ash by difference"
        food = {"source": f"{source} (read)", "per_100_g": {tag: tidy(value) for tag, value in grams.items()},
                "sources": {tag: computed for tag in grams if tag != "WATER"}}
        food["per_100_g"]["ENERC"] = energy
        for tag, column in (("CA", "Ca_mg_per_kcal"), ("P", "P_mg_per_kcal")):
            food["per_100_g"][tag] = tidy(float(row[column]) * energy)
        return food


# Name in targets.csv -> tagname.
TARGET_TAGNAMES = {
    "crude_protein": "PROCNT", "crude_fat": "FAT", "NDF": "FIBND", "ADF": "FIBAD", "Ca": "CA", "P": "P", "Mg": "MG",
    "K": "K", "Na": "NA", "Fe": "FE", "Zn": "ZN", "Cu": "CU", "Mn": "MN", "Se": "SE", "I": "ID",
    "vitamin_A": "VITA_RAE", "vitamin_D": "VITD", "vitamin_D3": "VITD", "vitamin_E": "VITE", "vitamin_C": "VITC",
    "thiamin": "THIA", "riboflavin": "RIBF", "niacin": "NIA",
}
# Unit in targets.csv -> (unit of the problem file, factor).
TARGET_UNITS = {
    "%": ("g", 10.0), "g/1000 kcal ME": ("g", 1.0), "mg/1000 kcal ME": ("mg", 1.0), "IU/1000 kcal ME": ("IU", 1.0),
    "g": ("g", 1.0), "mg": ("mg", 1.0), "ug": ("ug", 1.0), "ug RE": ("ug", 1.0), "mg/kg": ("mg", 1.0), "IU/kg": ("IU", 1.0),
}


class Targets:
    """Published targets by profile and nutrient, each with its source and whether that source was read."""

    def __init__(self, path):
        self.by_key = {}
        for row in rows(path):
            self.by_key.setdefault((row["profile"], row["nutrient"]), row)

    def row(self, profile, nutrient):
        return self.by_key[(profile, nutrient)]

    @staticmethod
    def provenance(row):
        """A value derived by arithmetic from a page that was read counts as read; everything else is memory."""
        return "seen" if row["seen_or_memory"].startswith(("seen", "derived from seen")) else "memory"

    def target(self, profile, nutrient, basis):
        row = self.row(profile, nutrient)
        unit, factor = TARGET_UNITS[row["unit"]]
        bounds = {key: tidy(float(row[key]) * factor) for key in ("min", "max") if row[key]}
        return {"nutrient": TARGET_TAGNAMES[nutrient], **bounds, "unit": unit, "basis": basis,
                "source": row["source"], "provenance": self.provenance(row)}
