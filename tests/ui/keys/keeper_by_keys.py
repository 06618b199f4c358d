#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""A keeper weighs in a section's bowls in the real window, with number keys and Enter alone.

keeper_by_keys.py TAREBOWL: starts a display of its own, opens the invented sample by the first way in of a first start, goes to
the kitchen, types each weight and reads from the collection, with the command line, that it was kept. Exits with 77
(skipped) where there is no Xvfb or xdotool.
"""
import sys

from real_window import SKIPPED, Kitchen, Window, is_skipped, type_weight, wait_until


def weigh_in(window, kitchen, section):
    items = kitchen.items(section)
    for number, (label, item) in enumerate(items):
        type_weight(window, kitchen, section, number, f"{item['planned_g']:g}", f"{item['name']} of {label}")
    wrong = [f"{item['name']}: {item['planned_g']:g} became {item['weighed_g']:g}" for _, item in kitchen.items(section)
             if abs(item["weighed_g"] - item["planned_g"]) > 1e-3]
    if wrong:
        sys.exit(f"not what was typed: {', '.join(wrong)}")
    print(f"{len(items)} weights of {section} were typed and kept")


def main(program):
    if is_skipped():
        return SKIPPED
    with Window(program) as window:
        kitchen = Kitchen(program, window.collection)
        wait_until("the sample is there", lambda: kitchen.items("Reptiles and Bats"))
        window.go_to_room(5)
        weigh_in(window, kitchen, "Reptiles and Bats")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
