#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""A keeper weighs in a section's bowls in the real window, with number keys and Enter alone.

keeper_by_keys.py TAREBOWL: starts a display of its own, opens the invented sample by the first way in of a first start, goes to
the kitchen, types each weight and reads from the collection, with the command line, that it was kept. Exits with 77
(skipped) where there is no Xvfb or xdotool.
"""
import json
import os
import shutil
import subprocess
import sys
import tempfile
import time

SKIPPED = 77
PATIENCE_S = 60  # a machine that is busy is slow; nothing here depends on how slow


def wait_until(what, holds):
    end = time.monotonic() + PATIENCE_S
    while time.monotonic() < end:
        found = holds()
        if found:
            return found
        time.sleep(0.1)
    sys.exit(f"waited in vain until {what}")


class Display:
    """A screen of 1366x768 that nobody else uses."""

    def __init__(self):
        reading, writing = os.pipe()
        self.server = subprocess.Popen(
            ["Xvfb", "-displayfd", str(writing), "-screen", "0", "1366x768x24", "-nolisten", "tcp"],
            pass_fds=[writing], stderr=subprocess.DEVNULL)
        os.close(writing)
        with os.fdopen(reading) as numbers:
            self.name = ":" + numbers.readline().strip()

    def keys(self, *arguments):
        subprocess.run(["xdotool", *arguments], env={**os.environ, "DISPLAY": self.name}, check=True,
                       stdout=subprocess.DEVNULL)

    def window(self, title):
        found = subprocess.run(["xdotool", "search", "--onlyvisible", "--name", title],
                               env={**os.environ, "DISPLAY": self.name}, capture_output=True, text=True)
        return found.stdout.split()

    def close(self):
        self.server.terminate()
        self.server.wait()


class Kitchen:
    """The sheet as the collection holds it."""

    def __init__(self, program, collection):
        self.program, self.collection = program, collection

    def items(self, section):
        said = subprocess.run([self.program, "prep", self.collection, "--section", section, "--json"],
                              capture_output=True, text=True)
        if said.returncode != 0:
            return None  # the sample is being made
        sheet = json.loads(said.stdout)
        return [(bowl["label"], item) for bowl in sheet["bowls"] for item in bowl["items"]]

    def weighed(self, section):
        return sum("weighed_g" in item for _, item in self.items(section))


def weigh_in(display, kitchen, section):
    items = wait_until("the sample is there", lambda: kitchen.items(section))
    for number, (label, item) in enumerate(items):
        display.keys("type", f"{item['planned_g']:g}")
        display.keys("key", "Return")

        def kept():
            return kitchen.weighed(section) > number

        end = time.monotonic() + 8
        while not kept() and time.monotonic() < end:
            time.sleep(0.1)
        if not kept():  # it asked: the weight of the bowl before, within a minute. Enter again keeps it.
            display.keys("key", "Return")
        wait_until(f"{item['name']} of {label} is kept", kept)
    wrong = [item["name"] for _, item in kitchen.items(section) if abs(item["weighed_g"] - item["planned_g"]) > 1e-3]
    if wrong:
        sys.exit(f"not what was typed: {', '.join(wrong)}")
    print(f"{len(items)} weights of {section} were typed and kept")


def main(program):
    if not shutil.which("Xvfb") or not shutil.which("xdotool"):
        print("skipped: there is no Xvfb or xdotool here")
        return SKIPPED
    display = Display()
    with tempfile.TemporaryDirectory() as home:
        own = {**os.environ, "HOME": home, "XDG_CONFIG_HOME": home + "/config", "XDG_DATA_HOME": home + "/data",
               "XDG_RUNTIME_DIR": home, "DISPLAY": display.name, "QT_QPA_PLATFORM": "xcb", "LC_ALL": "C.UTF-8"}
        window = subprocess.Popen([program, "--theme", "light"], env=own)
        try:
            shown = wait_until("the window is there", lambda: display.window("Tarebowl"))
            display.keys("windowfocus", "--sync", shown[-1])
            display.keys("key", "space")
            wait_until("the sample is open", lambda: display.window("brackenmere"))
            display.keys("key", "ctrl+5")
            weigh_in(display, Kitchen(program, home + "/data/Tarebowl/brackenmere.tarebowl"), "Reptiles and Bats")
        finally:
            window.terminate()
            window.wait()
            display.close()
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
