# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The real window on a screen of its own, moved by keys, and the sheet as the command line reads it."""
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

    def search(self, *by):
        found = subprocess.run(["xdotool", "search", "--onlyvisible", *by],
                               env={**os.environ, "DISPLAY": self.name}, capture_output=True, text=True)
        return found.stdout.split()

    def window(self, title):
        return self.search("--name", title)

    def close(self):
        self.server.terminate()
        self.server.wait()


class Kitchen:
    """The sheet as the collection holds it."""

    def __init__(self, program, collection):
        self.program, self.collection = program, collection

    def sheet(self, section):
        said = subprocess.run([self.program, "prep", self.collection, "--section", section, "--json"],
                              capture_output=True, text=True)
        return json.loads(said.stdout) if said.returncode == 0 else None  # None: the sample is being made

    def items(self, section):
        sheet = self.sheet(section)
        return sheet and [(bowl["label"], item) for bowl in sheet["bowls"] for item in bowl["items"]]

    def weighed(self, section):
        return sum("weighed_g" in item for _, item in self.items(section))


def is_skipped():
    if shutil.which("Xvfb") and shutil.which("xdotool"):
        return False
    print("skipped: there is no Xvfb or xdotool here")
    return True


class Window:
    """The program's window in a home of its own; a first start asks how to begin, and the invented sample is chosen."""

    def __init__(self, program):
        self.display = Display()
        self.home = tempfile.TemporaryDirectory()
        home = self.home.name
        own = {**os.environ, "HOME": home, "XDG_CONFIG_HOME": home + "/config", "XDG_DATA_HOME": home + "/data",
               "XDG_RUNTIME_DIR": home, "DISPLAY": self.display.name, "QT_QPA_PLATFORM": "xcb", "LC_ALL": "C.UTF-8"}
        self.process = subprocess.Popen([program, "--theme", "light"], env=own)
        self.collection = home + "/data/Tarebowl/brackenmere.tarebowl"

    def __enter__(self):
        try:
            shown = wait_until("the window is there", lambda: self.display.window("Tarebowl"))
            self.display.keys("windowfocus", "--sync", shown[-1])
            self.display.keys("key", "space")  # the first of the ways in
            wait_until("the sample is open", lambda: self.display.window("brackenmere"))
        except BaseException:
            self.__exit__()
            raise
        return self

    def __exit__(self, *_):
        self.process.terminate()
        self.process.wait()
        self.display.close()
        self.home.cleanup()

    def keys(self, *arguments):
        self.display.keys(*arguments)

    def go_to_room(self, number):
        """Goes there and waits until the room shows what it reads: keys before that would be lost."""
        self.keys("key", f"ctrl+{number}")
        self.wait_until_at_rest()

    def wait_until_at_rest(self):
        """Until the program has used no processor time for a second."""
        used = [None]

        def is_at_rest():
            before, used[0] = used[0], self.processor_ticks()
            time.sleep(1)
            return before == used[0]

        wait_until("the window is at rest", is_at_rest)

    def processor_ticks(self):
        """Of the process in user and kernel mode: fields 14 and 15 of proc(5)'s stat, counted after its name."""
        with open(f"/proc/{self.process.pid}/stat", encoding="ascii") as stat:
            fields = stat.read().rpartition(")")[2].split()
        return int(fields[11]) + int(fields[12])

    def boxes(self):
        """What is in sight of the program: the window, and whatever it has put before it."""
        return self.display.search("--pid", str(self.process.pid))

    def is_running(self):
        return self.process.poll() is None


def type_weight(window, kitchen, section, number, grams, what):
    """One weight; it is there when the command line reads it as the number-th of the section."""
    window.keys("type", grams)
    window.keys("key", "Return")

    def kept():
        return kitchen.weighed(section) > number

    end = time.monotonic() + 8
    while not kept() and time.monotonic() < end:
        time.sleep(0.1)
    if not kept():  # it asked: the weight of the bowl before, within a minute. Enter again keeps it.
        window.keys("key", "Return")
    wait_until(f"{what} is kept", kept)
