#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The languages of the window are complete and sound: check_languages.py LUPDATE HOUSE.

Every string of the sources stands in each .ts file with a translation, and nothing stands there that the sources do not
say; what is put into a sentence is put into it once in every language; letters that are keys stay the same keys."""
import importlib.util
import pathlib
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ElementTree

LANGUAGES = ["de", "fr", "es"]
ALL = LANGUAGES + ["en"]
PLURAL_FORMS = 2  # in all of these
KEPT = {  # marks that carry a meaning by themselves
    "shape": re.compile(r"[●◐▼▲◆■○□◌◇½±≥≤→]"),
    "ellipsis": re.compile(r"…$"),
    "key": re.compile(r"^[A-Z](?=  )|\((?:F1|P|O|L)\)$|\*$"),
    "edge": re.compile(r"^ +| +$"),
    "line": re.compile(r"\n"),
    "place of a page": re.compile(r"\{\}"),
    "filter": re.compile(r"\(\*[^)]*\)"),
}


def key_of(context, message):
    return context.findtext("name"), message.findtext("source"), message.findtext("comment") or ""


def read(path):
    strings = {}
    for context in ElementTree.parse(path).getroot().findall("context"):
        for message in context.findall("message"):
            translation = message.find("translation")
            forms = [form.text or "" for form in translation.findall("numerusform")]
            strings[key_of(context, message)] = (
                translation.get("type"),
                forms if message.get("numerus") else [translation.text or ""],
                message.get("numerus") == "yes",
            )
    return strings


def places(text):
    return sorted(re.findall(r"%L?\d+|%n", text))


def faults_of(key, text, is_plural):
    source = key[1]
    faults = []
    if not text.strip() and source.strip():
        return ["is empty"]
    meant, found = places(source), places(text)
    if found != meant and not (is_plural and [place for place in meant if place != "%n"] == found):
        faults.append(f"puts in {found} instead of {meant}")
    for name, mark in KEPT.items():
        if sorted(mark.findall(source)) != sorted(mark.findall(text)):
            faults.append(f"has another {name}")
    if source.count("&") != text.count("&"):
        faults.append("has another number of &")
    if source.count("*") != text.count("*"):
        faults.append("names other controls between asterisks")
    return faults


def check_file(language, strings, fresh):
    faults = [f"{language}: {key} is missing: build the target tarebowl_strings" for key in fresh.keys() - strings.keys()]
    faults += [f"{language}: {key} is said nowhere any more" for key in strings.keys() - fresh.keys()]
    for key, (kind, forms, is_plural) in strings.items():
        if kind is not None:
            faults.append(f"{language}: {key} is {kind}")
            continue
        if is_plural and len(forms) != PLURAL_FORMS:
            faults.append(f"{language}: {key} has {len(forms)} forms of plural")
        for form in forms:
            faults += [f"{language}: {key} → “{form}” {fault}" for fault in faults_of(key, form, is_plural)]
    return faults


def is_called(text, name):
    """As the guide finds a control: whole, or its first words."""
    return text.startswith(name) and (len(text) == len(name) or not text[len(name)].isalnum())


def check_guide(language, strings):
    """What the guide names between asterisks is what the controls are called in this language."""
    faults = []
    names = re.compile(r"\*(\S(?:[^*]*\S)?)\*")
    controls = [(key[1], forms[0]) for key, (_, forms, _) in strings.items() if key[0] not in ("Guide", "PartTexts")]
    for key, (_, forms, _) in strings.items():
        if key[0] != "Guide":
            continue
        english = names.findall(key[1])
        for name in names.findall(forms[0]):
            if not any(is_called(text, name) and any(is_called(source, said) for said in english) for source, text in controls):
                faults.append(f"{language}: the guide says *{name}*, and no control of {english} is called so")
    return faults


def fresh_strings(lupdate, house, plural_only):
    with tempfile.TemporaryDirectory() as folder:
        path = pathlib.Path(folder) / "fresh.ts"
        subprocess.run(
            [lupdate, "-silent", *(["-pluralonly"] if plural_only else []), "-I", house, "-locations", "none", house / "ui",
             house / "resources/languages/data_strings.h", "-ts", path],
            check=True, capture_output=True)
        return read(path)


def check_data_strings(folder):
    """data_strings.h is what make_data_strings.py writes today."""
    spec = importlib.util.spec_from_file_location("make_data_strings", folder / "make_data_strings.py")
    maker = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(maker)
    if maker.text() != (folder / "data_strings.h").read_text(encoding="utf-8"):
        return ["data_strings.h is not what make_data_strings.py writes: run it"]
    return []


def main():
    lupdate, house = sys.argv[1], pathlib.Path(sys.argv[2])
    folder = house / "resources/languages"
    faults = check_data_strings(folder)
    for language in ALL:
        fresh = fresh_strings(lupdate, house, plural_only=language == "en")
        if len(fresh) < 10:
            faults.append(f"{language}: lupdate finds hardly any string")
        strings = read(folder / f"tarebowl_{language}.ts")
        faults += check_file(language, strings, fresh) + check_guide(language, strings)
    print("\n".join(faults) if faults else "All strings of the window are translated.")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
