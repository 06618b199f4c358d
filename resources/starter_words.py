# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""How the words of the table of published targets are read: nutrient names, bases, units and provenance."""

from decimal import Decimal

# name in the table: (tagname, id of the target)
NUTRIENTS = {
    "crude_protein": ("PROCNT", "protein"), "crude_protein_macaque_maintenance": ("PROCNT", "protein"),
    "crude_fat": ("FAT", "fat"), "fat": ("FAT", "fat"), "lipid": ("FAT", "fat"),
    "crude_fibre": ("FIBC", "crude-fibre"), "fibre": ("FIBC", "crude-fibre"),
    "NDF": ("FIBND", "ndf"), "NDF_macaque": ("FIBND", "ndf"), "ADF": ("FIBAD", "adf"), "ADF_or_chitin": ("FIBAD", "adf"),
    "n-3 fatty acids": ("FAPUN3", "n-3"), "n-6 fatty acids": ("FAPUN6", "n-6"),
    "linoleic_acid": ("F18D2N6", "linoleic-acid"), "alpha_linolenic_acid": ("F18D3N3", "alpha-linolenic-acid"),
    "arachidonic_acid": ("F20D4N6", "arachidonic-acid"), "EPA_DHA": ("XEPADHA", "epa-dha"),
    "arginine": ("ARG", "arginine"), "histidine": ("HIS", "histidine"), "isoleucine": ("ILE", "isoleucine"),
    "leucine": ("LEU", "leucine"), "lysine": ("LYS", "lysine"), "methionine": ("MET", "methionine"),
    "methionine_cystine": ("AAS", "methionine-cystine"), "phenylalanine": ("PHE", "phenylalanine"),
    "phenylalanine_tyrosine": ("XPHETYR", "phenylalanine-tyrosine"), "threonine": ("THR", "threonine"),
    "tryptophan": ("TRP", "tryptophan"), "valine": ("VAL", "valine"), "taurine": ("TAU", "taurine"),
    "taurine_canned": ("TAU", "taurine-canned"), "taurine_extruded": ("TAU", "taurine-extruded"),
    "Ca": ("CA", "calcium"), "Ca_macaque": ("CA", "calcium"), "P": ("P", "phosphorus"), "P_macaque": ("P", "phosphorus"),
    "nonphytate_P": ("XPNPHY", "nonphytate-phosphorus"), "Mg": ("MG", "magnesium"), "K": ("K", "potassium"),
    "Na": ("NA", "sodium"), "Cl": ("CL", "chloride"), "Fe": ("FE", "iron"), "Zn": ("ZN", "zinc"), "Cu": ("CU", "copper"),
    "Cu_extruded": ("CU", "copper"), "Mn": ("MN", "manganese"), "Se": ("SE", "selenium"), "I": ("ID", "iodine"),
    "Cr": ("CR", "chromium"), "Mo": ("MO", "molybdenum"),
    "vitamin_A": ("VITA_RAE", "vitamin-a"), "vitamin_D": ("VITD", "vitamin-d"), "vitamin_D3": ("VITD", "vitamin-d"),
    "vitamin_E": ("VITE", "vitamin-e"), "vitamin_K": ("VITK", "vitamin-k"), "vitamin_C": ("VITC", "vitamin-c"),
    "thiamin": ("THIA", "thiamin"), "riboflavin": ("RIBF", "riboflavin"), "niacin": ("NIA", "niacin"),
    "pantothenic_acid": ("PANTAC", "pantothenic-acid"), "Ca_pantothenate": ("PANTAC", "pantothenic-acid"),
    "pyridoxine": ("VITB6A", "vitamin-b6"), "vitamin_B6": ("VITB6A", "vitamin-b6"), "biotin": ("BIOT", "biotin"),
    "folic_acid": ("FOL", "folate"), "folacin": ("FOL", "folate"), "vitamin_B12": ("VITB12", "vitamin-b12"),
    "choline": ("CHOLN", "choline"), "ME_maintenance": ("ENERC", "energy"), "N_maintenance": ("PROCNT", "protein"),
}

RATIOS = {"Ca_P_ratio": ("ca-p", "CA", "P"), "omega6_omega3_ratio": ("n6-n3", "FAPUN6", "FAPUN3")}

# Rows that state no amount of a nutrient of the diet, and why they are kept as remarks.
REMARKS = {
    "digestible_energy": "digestible energy is no metabolizable energy",
    "TDN": "total digestible nutrients are an energy measure of their own",
    "BMR": "energy at rest, see the energy need",
    "field_energy_minimum": "energy of the free-living animal, see the energy need",
    "intake_percent_BW_per_day": "food per body mass as fed, no nutrient",
    "beta_carotene_alternative": "instead of vitamin A, not beside it",
    "choline_bitartrate": "amount of the salt, which is 41 % choline",
}

# What the reading of a row adds to its note.
READING = {
    "Ca_pantothenate": "printed as calcium pantothenate and taken as printed: on the safe side for a minimum",
    "N_maintenance": "printed as nitrogen; protein is N x 6.25",
    "fibre": "printed as fibre, read as crude fibre",
    "ADF_or_chitin": "printed as ADF or chitin",
    "taurine_canned": "of canned food", "taurine_extruded": "of extruded food", "Cu_extruded": "of extruded food",
    "vitamin_D3": "printed as vitamin D3",
}

# basis in the table: (basis, kcal ME per g dry matter, dry matter of the feed, what was assumed)
BASES = {
    "DM": ("dry-matter", None, None, ""),
    "DM (4.0 kcal ME/g)": ("dry-matter", "4.0", None, ""),
    "DM (AME 4.0 kcal/g)": ("dry-matter", "4.0", None, ""),
    "DM (3.5 kcal ME/g)": ("dry-matter", "3.5", None, ""),
    "DM (3.5 kcal ME/g; source gives the same footnote text)": ("dry-matter", "3.5", None, ""),
    "DM approx (diet 3.2-3.5 kcal/g)": ("dry-matter", "3.35", None, "3.35 kcal/g is the middle of the printed 3.2-3.5"),
    "DM of prey": ("dry-matter", None, None, ""),
    "diet basis not stated (DM assumed)": ("dry-matter", None, None, "the basis is not stated; dry matter is assumed"),
    "as fed (90 % DM, 2900 kcal MEn/kg)": ("as-fed", "3.2222", "0.9", "2900 kcal per kg as fed at 90 % dry matter"),
    "as fed (90 % DM, 2850 kcal MEn/kg)": ("as-fed", "3.1667", "0.9", "2850 kcal per kg as fed at 90 % dry matter"),
    "as fed, per kg diet, 10 % moisture, 3.8-4.1 kcal ME/g":
        ("as-fed", "4.3889", "0.9", "3.95 kcal/g as fed is the middle of the printed 3.8-4.1"),
    "as fed, per kg diet": ("as-fed", None, "0.9", "the dry matter of the feed is not printed; 90 % is assumed"),
    "as fed, per kg diet, ad libitum": ("as-fed", None, "0.9", "the dry matter of the feed is not printed; 90 % is assumed"),
    "pellet basis": ("as-fed", None, "0.9", "the dry matter of the pellet is not printed; 90 % is assumed"),
    "per 1000 kcal": ("energy", None, None, ""),
    "per kg^0.75 per day": ("metabolic-mass", None, None, ""),
    "per kg body weight per day": ("body-mass", None, None, ""),
    "ratio": (None, None, None, ""),
}

# unit in the table: (unit, amount in it for one printed)
UNITS = {
    "%": ("g", "10"), "g/kg": ("g", "1"), "mg/kg": ("mg", "1"), "IU/kg": ("IU", "1"), "g": ("g", "1"), "mg": ("mg", "1"),
    "ug": ("ug", "1"), "kJ": ("kJ", "1"), "g/1000 kcal ME": ("g", "1"), "mg/1000 kcal ME": ("mg", "1"),
    "IU/1000 kcal ME": ("IU", "1"), "mg retinol/kg": ("mg", "1"), "ug retinol/g": ("mg", "1"), "ug RE": ("ug", "1"),
    "mg RRR-a-tocopherol/kg": ("mg", "1"), "mg/kg BW/day": ("mg", "1"), "g N": ("g", "6.25"),
}

# Maxima that protect from harm. Of reptiles the iron, copper and iodine are printed as ranges and are none.
LIMITED = {"VITA_RAE", "RETOL", "VITD", "FE", "SE", "CU", "ID"}
RANGES = {"FE", "CU", "ID"}


def provenance(words):
    for word in ("seen", "memory", "derived"):
        if words.startswith(word):
            return word
    raise ValueError(f"provenance {words!r}")


def amount(printed, factor):
    """12.50 printed as a number that reads back the same."""
    number = Decimal(printed) * Decimal(factor)
    return int(number) if number == number.to_integral_value() else float(number)
