# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The larder of the invented Brackenmere Animal Gardens: ordinary foods from published tables, three invented products."""

# id: (name in the trade's words, group, form, preparation, NDB number in SR28)
ORDINARY = {
    "beetroot-raw": ("Beetroot, raw", "raw root", "raw", "peeled, grated", "11080"),
    "bell-pepper-red-raw": ("Bell pepper, red, raw", "other vegetable", "raw", "seeded, 1 cm pieces", "11821"),
    "broccoli-raw": ("Broccoli, raw", "other vegetable", "raw", "florets, stem sliced", "11090"),
    "butternut-squash-raw": ("Butternut squash, raw", "other vegetable", "raw", "peeled, grated", "11485"),
    "carrot-raw": ("Carrot, raw", "raw root", "raw", "grated", "11124"),
    "carrot-boiled": ("Carrot, boiled", "cooked vegetable", "boiled", "1 cm dice, cooled", "11125"),
    "courgette-raw": ("Courgette, raw", "other vegetable", "raw", "1 cm dice, skin on", "11477"),
    "dandelion-raw": ("Dandelion leaves, raw", "leafy vegetable", "raw", "washed, whole leaf", "11207"),
    "endive-raw": ("Endive, raw", "leafy vegetable", "raw", "washed, torn", "11213"),
    "green-beans-raw": ("Green beans, raw", "other vegetable", "raw", "topped, whole", "11052"),
    "green-beans-boiled": ("Green beans, boiled", "cooked vegetable", "boiled", "cut small, cooled", "11053"),
    "kale-raw": ("Kale, raw", "leafy vegetable", "raw", "washed, shredded", "11233"),
    "sweet-potato-boiled": ("Sweet potato, boiled", "cooked vegetable", "boiled", "peeled, 1 cm dice, cooled", "11510"),
    "turnip-greens-raw": ("Turnip greens, raw", "leafy vegetable", "raw", "washed, torn", "11568"),
    "egg-boiled": ("Hen's egg, hard-boiled", "egg", "boiled", "shelled, chopped", "01129"),
    "papaya-raw": ("Papaya, raw", "fruit", "raw", "seeded, diced", "09226"),
    "banana-raw": ("Banana, raw", "fruit", "raw", "peeled, sliced", "09040"),
}

# What the kitchen cooks and no bowl holds raw; as above.
RAW = {
    "sweet-potato-raw": ("Sweet potato, raw", "raw root", "raw", "peeled", "11507"),
    "egg-raw": ("Hen's egg, raw", "egg", "raw", "never given raw: avidin binds biotin", "01123"),
}

# id: (name, group, form, preparation, item in insects.csv)
LIVE = {
    "black-soldier-fly-larvae": ("Black soldier fly larvae", "insect", "live", "offered in a smooth dish", "black soldier fly larvae"),
    "cockroach-nymphs": ("Turkestan cockroach nymphs", "insect", "live", "offered by hand", "Turkestan cockroach nymph"),
    "crickets-adult": ("House crickets, adult", "insect", "live", "scattered", "house cricket adult"),
    "crickets-small": ("House crickets, small", "insect", "live", "scattered", "house cricket nymph"),
    "earthworms": ("Earthworms", "worm", "live", "rinsed, in damp leaf litter", "earthworm"),
    "mealworms": ("Mealworms", "insect", "live", "offered in a smooth dish", "mealworm larvae"),
    "silkworms": ("Silkworms", "insect", "live", "offered by hand", "silkworm larvae"),
    "waxworms": ("Waxworms", "insect", "live", "offered by hand", "waxworm larvae"),
}

# id: (name, item in prey.csv, mass of one in grams)
PREY = {
    "mouse-adult": ("Mouse, adult, whole", "mouse, adult (27 g)", 27),
    "chick-day-old": ("Day-old chick, whole", "day-old chick (40 g)", 40),
}

INVENTED_PRODUCT = "Invented product of the Brackenmere sample: every value is made up"

# Per 100 g as fed; made up, and made to close: WATER + PROCNT + FAT + ASH + CHOCDF = 100.
PELLETS = {
    "insect-eater-pellet": ("Insect-eater pellet (invented)", "soaked in its own mass of water just before feeding", {
        "WATER": 9.0, "PROCNT": 33.0, "FAT": 13.0, "ASH": 8.5, "CHOCDF": 36.5, "FIBC": 6.0, "FIBND": 17.0, "FIBAD": 9.0,
        "STARCH": 18.0, "SUGAR": 3.0, "ENERC": 340.0, "CA": 1500.0, "P": 900.0, "MG": 160.0, "K": 800.0, "NA": 320.0,
        "FE": 18.0, "ZN": 13.0, "CU": 1.8, "MN": 6.5, "SE": 60.0, "ID": 150.0, "VITA_RAE": 400.0, "RETOL": 400.0,
        "VITD": 9.0, "VITE": 22.0, "VITC": 30.0, "THIA": 1.4, "RIBF": 1.6, "NIA": 9.0,
    }),
    "leaf-eater-pellet": ("Low-iron pellet (invented)", "dry, by the piece", {
        "WATER": 9.5, "PROCNT": 21.0, "FAT": 4.5, "ASH": 8.0, "CHOCDF": 57.0, "FIBC": 15.0, "FIBND": 32.0, "FIBAD": 19.0,
        "STARCH": 14.0, "SUGAR": 4.0, "ENERC": 265.0, "CA": 1150.0, "P": 720.0, "MG": 240.0, "K": 1000.0, "NA": 330.0,
        "FE": 9.0, "ZN": 15.0, "CU": 2.6, "MN": 7.0, "SE": 45.0, "ID": 110.0, "VITA_RAE": 300.0, "RETOL": 300.0,
        "VITD": 9.5, "VITE": 20.0, "VITC": 40.0, "THIA": 1.2, "RIBF": 1.2, "NIA": 8.0,
    }),
}
# A maker's label guarantees a bound, not a mean.
PELLET_QUALIFIERS = {"PROCNT": ">=", "FAT": ">=", "FIBC": "<="}

# IUPAC standard atomic weights, as in the reference facts: Ca 40.078, C 12.011, O 15.999.
CALCIUM_SHARE_OF_CARBONATE = 40.078 / (40.078 + 12.011 + 3 * 15.999)
PURE_CARBONATE = "pure calcium carbonate by definition: molar arithmetic with Ca 40.078, C 12.011, O 15.999"
ABSENT_FROM_CARBONATE = ["WATER", "PROCNT", "FAT", "CHOCDF", "FIBTG", "FIBND", "FIBAD", "ENERC", "P", "MG", "K", "NA",
                         "FE", "ZN", "CU", "MN", "SE", "ID", "VITA_RAE", "RETOL", "VITD", "VITE", "VITC", "THIA", "RIBF", "NIA"]


def limestone():
    values = {tag: 0.0 for tag in ABSENT_FROM_CARBONATE}
    values |= {"ASH": 100.0, "CA": float(f"{100_000 * CALCIUM_SHARE_OF_CARBONATE:.6g}")}
    return {"name": "Limestone powder (invented product)", "group": "supplement", "form": "powder",
            "preparation": "dusted on just before feeding", "invented": True, "source": PURE_CARBONATE, "per_100_g": values}


class Larder:
    """Makes the foods of a problem: what the published table says, plus the limits of one diet."""

    def __init__(self, sr28, insects, prey):
        self.sr28, self.insects, self.prey = sr28, insects, prey

    def food(self, food_id, **limits):
        return {"id": food_id, **self._described(food_id), **limits}

    def _described(self, food_id):
        if food_id in ORDINARY or food_id in RAW:
            name, group, form, preparation, ndb = (ORDINARY | RAW)[food_id]
            return self._head(name, group, form, preparation) | self.sr28.food(ndb)
        if food_id in LIVE:
            name, group, form, preparation, item = LIVE[food_id]
            return self._head(name, group, form, preparation) | self.insects.food(item)
        if food_id in PREY:
            name, item, mass = PREY[food_id]
            return self._head(name, "whole prey", "thawed", "whole, thawed in the cold room") | {
                "scale_step_g": mass} | self.prey.food(item)
        if food_id in PELLETS:
            name, preparation, values = PELLETS[food_id]
            return self._head(name, "pellet", "dry", preparation) | {
                "invented": True, "source": INVENTED_PRODUCT, "per_100_g": values, "qualifiers": PELLET_QUALIFIERS}
        if food_id == "limestone":
            return limestone()
        raise KeyError(food_id)

    @staticmethod
    def _head(name, group, form, preparation):
        return {"name": name, "group": group, "form": form, "preparation": preparation}
