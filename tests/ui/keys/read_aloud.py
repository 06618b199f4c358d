#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""What a screen reader is told of the real window, over AT-SPI, in a session of its own.

read_aloud.py TAREBOWL: opens the invented sample, goes to the diets and reads the balance ladder as a screen reader
does: of each target its name, value, unit, zone and state in words, which must be those of the diet's sheet that the
command line writes. Then the kitchen: what the field for the weight says of the line on the scale, and of the next
one once a weight was typed. Exits with 77 (skipped) where there is no Xvfb, xdotool, D-Bus or AT-SPI.
"""
import collections
import html.parser
import os
import re
import shutil
import sqlite3
import subprocess
import sys
import tempfile

from real_window import SKIPPED, Kitchen, Window, is_skipped, wait_until

STATES = {"met", "at limit", "short", "over", "unknown"}
SECTION = "Reptiles and Bats"  # the first one of the kitchen
# "Calcium: short · 4.2 g/kg DM · target …"
SPOKEN = re.compile(r"^(?P<name>.+?): (?P<state>[a-z ]+) · (?P<value>(?:[≥≈] )?[-0-9.,]+|\?)(?: (?P<unit>[^·]+?))? · target (?P<zone>.+)$")

try:
    import gi
    gi.require_version("Atspi", "2.0")
    from gi.repository import Atspi, GLib
except (ImportError, ValueError):
    Atspi = None


def python_that_hears():
    """This Python, or the system's, for which distributions package AT-SPI; nothing where neither has it."""
    asked = "import gi; gi.require_version('Atspi', '2.0'); from gi.repository import Atspi"
    known = [python for python in (sys.executable, "/usr/bin/python3") if os.access(python, os.X_OK)]
    return next((python for python in known
                 if subprocess.run([python, "-c", asked], stderr=subprocess.DEVNULL).returncode == 0), None)


class Rows(html.parser.HTMLParser):
    """The rows of all tables of a page, as lists of what stands in their cells."""

    def __init__(self):
        super().__init__()
        self.rows, self.is_in_cell = [], False

    def handle_starttag(self, tag, attrs):
        if tag == "tr":
            self.rows.append([])
        self.is_in_cell = tag in ("td", "th")
        if self.is_in_cell:
            self.rows[-1].append("")

    def handle_endtag(self, tag):
        self.is_in_cell = self.is_in_cell and tag not in ("td", "th")

    def handle_data(self, data):
        if self.is_in_cell:
            self.rows[-1][-1] += data


class Reader:
    """A screen reader's sight of one program."""

    # What holds rows or cells is asked for them, not walked through.
    LEAVES = {"table", "tree", "tree table", "list", "list box"}

    def __init__(self, pid):
        self.app = wait_until("the window is there for a screen reader", lambda: self.program(pid))

    @staticmethod
    def children(node):
        for place in range(node.get_child_count()):
            child = node.get_child_at_index(place)
            if child is not None:
                yield child

    def program(self, pid):
        desktop = Atspi.get_desktop(0)
        return next((app for app in self.children(desktop) if app.get_process_id() == pid), None)

    def find(self, role, holds):
        """In sight of the program; nothing where it is not there, or the window was changing meanwhile."""
        try:
            self.app.clear_cache()  # as it is now, not as it was told before
            return self.search(role, holds, self.app)
        except GLib.Error:
            return None

    def search(self, role, holds, node):
        if node.get_role_name() == role and node.get_state_set().contains(Atspi.StateType.SHOWING) and holds(node):
            return node
        if node.get_role_name() in self.LEAVES:
            return None
        found = (self.search(role, holds, child) for child in self.children(node))
        return next((one for one in found if one is not None), None)

    def cells(self, table):
        """All of it, row by row; nothing while it is being filled."""
        try:
            table.clear_cache()
            rows, columns = table.get_n_rows(), table.get_n_columns()
            return [[table.get_accessible_at(row, column).get_name() for column in range(columns)]
                    for row in range(rows)]
        except (GLib.Error, AttributeError):
            return None


def targets_of_sheet(program, collection, diet):
    """State by the subject of each target, as the command line writes the sheet of the newest version."""
    with tempfile.TemporaryDirectory() as folder:
        page = os.path.join(folder, "sheet.html")
        said = subprocess.run([program, "sheet", collection, page, "--diet", diet], capture_output=True, text=True)
        if said.returncode != 0:
            sys.exit(f"no sheet of {diet}: {said.stderr.strip()}")
        rows = Rows()
        with open(page, encoding="utf-8") as file:
            rows.feed(file.read())
    titles = next(place for place, row in enumerate(rows.rows) if row[:1] == ["Target"])
    targets = [row for row in rows.rows[titles + 1:] if len(row) == len(rows.rows[titles])]
    return collections.Counter(row[4].split(" ", 1)[1] for row in targets)


def diets_of(collection):
    with sqlite3.connect(f"file:{collection}?mode=ro", uri=True) as file:
        return [row[0] for row in file.execute("SELECT code FROM diet ORDER BY code")]


def read_ladder(reader):
    ladder = wait_until("the balance ladder is found", lambda: reader.find("table", lambda node: node.get_name() == "Balance ladder"))
    rows = wait_until("the balance ladder has its rungs", lambda: reader.cells(ladder))
    spoken = []
    for row in rows:
        for cell in row:  # whichever cell the reader stands on says all of the target
            match = SPOKEN.match(cell)
            if not match or match["state"] not in STATES:
                sys.exit(f"a rung of the ladder is not told in words: {cell!r}")
        if len(set(row)) != 1:
            sys.exit(f"the cells of a rung say different things: {row}")
        spoken.append(match)
    unitless = [match[0] for match in spoken if not match["unit"] and ":" not in match["name"]]
    if unitless:
        sys.exit(f"an amount without a unit: {unitless}")
    return spoken


def expect_ladder(program, collection, spoken):
    told = collections.Counter(match["state"] for match in spoken)
    sheets = {diet: targets_of_sheet(program, collection, diet) for diet in diets_of(collection)}
    if told not in sheets.values():
        sys.exit(f"the ladder tells {dict(told)}, and no diet's sheet does: {sheets}")


def read_kitchen(window, reader, kitchen):
    """What the field says of the line on the scale, and that it goes on to the next one."""
    items = [item for _, item in kitchen.items(SECTION)]

    def says(item):
        field = reader.find("text", lambda node: node.get_name() == "Weight in g")
        said = field.get_description() if field is not None else ""
        numbers = [float(number) for number in re.findall(r"\d+(?:\.\d+)?", said)]
        return item["name"] in said and any(abs(number - item["planned_g"]) < 1e-6 for number in numbers) and said

    first = wait_until(f"the kitchen says {items[0]['name']}", lambda: says(items[0]))
    window.keys("type", f"{items[0]['planned_g']:g}")
    window.keys("key", "Return")
    second = wait_until(f"the kitchen says {items[1]['name']}", lambda: says(items[1]))
    return first, second


def read(program):
    with Window(program) as window:
        kitchen = Kitchen(program, window.collection)
        wait_until("the sample is there", lambda: kitchen.items(SECTION))
        reader = Reader(window.process.pid)
        window.go_to_room(4)
        spoken = read_ladder(reader)
        expect_ladder(program, window.collection, spoken)
        print(f"{len(spoken)} targets are read aloud, the first: {spoken[0][0]}")
        window.go_to_room(5)
        for said in read_kitchen(window, reader, kitchen):
            print(f"the kitchen reads: {said}")
    return 0


def main(program, is_inside):
    if is_inside:
        return read(program)
    if is_skipped():
        return SKIPPED
    python = python_that_hears()
    if python is None or not shutil.which("dbus-run-session"):
        print("skipped: there is no D-Bus session or no AT-SPI for Python here")
        return SKIPPED
    with tempfile.TemporaryDirectory() as folder:  # a session of its own: nothing of it is left behind
        own = {**os.environ, "XDG_RUNTIME_DIR": folder, "QT_LINUX_ACCESSIBILITY_ALWAYS_ON": "1"}
        own.pop("DISPLAY", None)
        own.pop("AT_SPI_BUS_ADDRESS", None)
        command = ["dbus-run-session", "--", python, "-B", os.path.abspath(__file__), program, "--inside"]
        return subprocess.run(command, env=own).returncode


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], "--inside" in sys.argv[2:]))
