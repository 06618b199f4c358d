#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The real window and the command line write to one collection as fast as they can: nobody loses a write.

window_and_commands.py TAREBOWL: in each round a keeper types the weights of a section in the window, while commands
in processes of their own weigh in and correct another section's bowls, and the one that the window has open. At the
end every weight that anybody was told is kept stands in the file, once; the window showed no box that it waits
behind; no command failed. TAREBOWL_HAMMER_SECONDS says for how long (DEVELOPERS.md, "Faults"): one round where it says
nothing. Exits with 77 (skipped) where there is no Xvfb or xdotool.
"""
import os
import sqlite3
import subprocess
import sys
import threading
import time

from real_window import SKIPPED, Kitchen, Window, is_skipped, type_weight, wait_until

TYPED = "Reptiles and Bats"
HAMMERED = "Small Mammals"
COMMAND_PATIENCE_S = 120  # a command that takes longer hangs


class Commands(threading.Thread):
    """Command after command, each with a weight of its own: the file says which of them it kept."""

    def __init__(self, program, collection, item, first_mg):
        super().__init__()
        self.program, self.collection, self.item = program, collection, item
        self.next_mg = first_mg
        self.kept_mg, self.errors = [], []
        self.is_over = threading.Event()

    def run(self):
        while not self.is_over.is_set() and not self.errors:
            self.weigh_in(self.next_mg)
            self.next_mg += 1

    def weigh_in(self, milligrams):
        group, bowl, food = self.item
        table = f"group,bowl,food,g,reason\n{group},{bowl},{food},{milligrams / 1000:.3f},weighed once more\n"
        try:
            said = subprocess.run([self.program, "weigh-in", self.collection, "-", "--confirm"], input=table,
                                  capture_output=True, text=True, timeout=COMMAND_PATIENCE_S)
        except subprocess.TimeoutExpired:
            self.errors.append(f"{food}: no answer within {COMMAND_PATIENCE_S} s")
            return
        if said.returncode == 0:
            self.kept_mg.append(milligrams)
        else:
            self.errors.append(f"{food}: exit {said.returncode}: {said.stderr.strip()}")


def item_of(kitchen, section, number):
    """Group, bowl and food of the number-th line of a section."""
    bowls = kitchen.sheet(section)["bowls"]
    lines = [(bowl["group"], bowl["bowl"], item["food"]) for bowl in bowls for item in bowl["items"]]
    return lines[number]


def times_kept(collection, milligrams):
    """How often a weight stands in the file, as a first entry or as a correction."""
    with sqlite3.connect(f"file:{collection}?mode=ro", uri=True) as file:
        first = file.execute("SELECT count(*) FROM feeding_line WHERE weighed_mg = ?", [milligrams]).fetchone()[0]
        later = file.execute("SELECT count(*) FROM feeding_correction WHERE mg = ?", [milligrams]).fetchone()[0]
    return first + later


def type_section(window, kitchen, started):
    """Types all weights; once the first one is there, those who correct it are started."""
    items = kitchen.items(TYPED)
    for number, (label, item) in enumerate(items):
        type_weight(window, kitchen, TYPED, number, f"{item['planned_g']:g}", f"{item['name']} of {label}")
        if number == 0:
            started()
        if len(window.boxes()) != 1:
            sys.exit(f"not the window alone is in sight: {', '.join(window.boxes())}")
    return [item["planned_g"] for _, item in items]


def expect_all_kept(collection, writers):
    for writer in writers:
        if writer.errors:
            sys.exit(f"a command failed: {writer.errors[0]}")
        if not writer.kept_mg:
            sys.exit(f"{writer.item}: was kept out for good")
        wrong = [weight for weight in writer.kept_mg if times_kept(collection, weight) != 1]
        if wrong:
            sys.exit(f"{writer.item}: lost or doubled, of {len(writer.kept_mg)}: {wrong[:5]} mg")


def hammer(program):
    with Window(program) as window:
        kitchen = Kitchen(program, window.collection)
        wait_until("the sample is there", lambda: kitchen.items(TYPED))
        window.go_to_room(5)
        apart = Commands(program, window.collection, item_of(kitchen, HAMMERED, 0), 100_000_001)
        beside = Commands(program, window.collection, item_of(kitchen, TYPED, 0), 200_000_001)
        apart.start()
        try:
            typed = type_section(window, kitchen, beside.start)
        finally:
            for writer in (apart, beside):
                writer.is_over.set()
                if writer.is_alive():
                    writer.join()
        expect_all_kept(window.collection, [apart, beside])
        weighed = [item["weighed_g"] for _, item in kitchen.items(TYPED)]
        lost = [grams for grams, there in zip(typed[1:], weighed[1:]) if abs(grams - there) > 1e-3]
        if lost or times_kept(window.collection, round(typed[0] * 1000)) < 1:
            sys.exit(f"typed and lost: {lost or typed[0]} g")
        if not window.is_running():
            sys.exit("the window is gone")
        return len(typed), len(apart.kept_mg) + len(beside.kept_mg)


def main(program):
    if is_skipped():
        return SKIPPED
    end = time.monotonic() + float(os.environ.get("TAREBOWL_HAMMER_SECONDS", "0"))
    typed, commanded = hammer(program)
    while time.monotonic() < end:
        more_typed, more_commanded = hammer(program)
        typed, commanded = typed + more_typed, commanded + more_commanded
    print(f"{typed} weights typed and {commanded} by commands were kept, each of them once")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
