#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Writes data_strings.h: what the window says in words that stand in the data compiled into the program (names of
nutrients, cautions) or in errors of the collection's file, so that Qt Linguist finds them. Run it when those change;
a test says when it was forgotten."""
import json
import pathlib

HERE = pathlib.Path(__file__).parent
DATA = HERE.parent / "data"

# Fixed words of core/store, as StoreError::detail() has them.
STORE = [
    "there is no such file",
    "is there already",
    "is a folder, not a collection",
    "is no regular file",
    "is empty",
    "is no collection of Tarebowl",
    "is a database of another program",
    "is damaged",
    "is damaged: it ends in its header",
    "cannot be read",
    "cannot be written",
    "cannot be made here",
    "the file or its folder cannot be written",
    "was written by a newer Tarebowl; nothing was changed",
    "was written by a newer Tarebowl; nothing was copied",
    "nothing of a collection can be found in it",
    "was written by an older Tarebowl and is open for reading only; copy it where it can be written and open the copy",
    "is being written by another window or command",
    "cannot be written: the disk is full",
    "cannot be read or written: the disk reports an error",
    "the change breaks a rule of the collection",
    "the collection could not be read or written",
    "was moved, deleted or replaced while it was open; nothing was written. Put it back where it was, or open it anew",
    # Of a collection on a server.
    "the server asks for a password, and none was given; open it again and type it, or put it into ~/.pgpass",
    "the server does not accept the password; open it again and type it anew, or look into ~/.pgpass",
    "the server does not let you in; ask whoever runs it",
    "the server has no such database; look at its name, or ask whoever runs the server to make one",
    "you may not open this database; ask whoever runs the server",
    "the server's certificate was not accepted: it has expired by this machine's clock, or it is signed by nobody whom this machine trusts. "
    "Look at the clock, and ask whoever runs the server for a valid one, or for the certificate of who signs for it, which belongs in "
    "~/.postgresql/root.crt",
    "the certificate of who signs for the server is not there; ask whoever runs the server for it and put it into ~/.postgresql/root.crt",
    "the server's certificate is of another name than the address; write the server's name as it stands there, or ask whoever runs the server",
    "no secure connection came about; ask whoever runs the server whether it offers one",
    "the server does not answer; look at its name, at the network, and whether it runs",
    "the database holds no collection; tarebowl server init makes one in it",
    "was raised by a newer Tarebowl; install that here, too. Nothing was changed",
    "was made by an older Tarebowl; whoever set it up raises it with tarebowl server upgrade",
    "nobody has let you into this collection; whoever runs it does so with tarebowl server add",
    "your role on the server may not do this, and nothing was written",
    "the connection to the server was lost; what was not said to be saved was not written",
    "the connection to the server was lost, and it does not answer",
    "the connection to the server was lost while it was being written; nothing was kept of it",
    "a password does not belong in an address, where others can read it; leave it out, and it is asked for, or read from ~/.pgpass",
    "was moved or removed on the server while it was open; nothing was written. Open it where it is now",
    "cannot be written: the server's disk is full; nothing was written. Tell whoever runs the server",
    "cannot be read or written: the server's disk reports an error",
    "is damaged on the server; tell whoever runs it",
    "daily",
    "before-upgrade",
    "before-restore",
]

# Words of the pages that core/exchange writes: for the kitchen (prep_sheet_html.cpp, prep_sheet_words.cpp), of a diet
# (diet_sheet*.cpp, sheet_words.cpp, line_words.cpp, wording.cpp) and of a rotation (rotation_page.cpp).
PAGES = [
    "{} animal",
    "{} animals",
    ", {} g in all",
    ", a new diet is phased in: day {} of {}",
    "To weigh",
    "Food",
    "Preparation",
    "Weighed, g",
    " (swapped in)",
    " (not in stock)",
    "{} (not in the collection)",
    "{} piece ({})",
    "{} pieces ({})",
    "Without weighing, for each animal: {} … {} g {} ({}){}",
    "bowl",
    "treat",
    "training-reward",
    "enrichment",
    "browse",
    "The kitchen needs",
    "In the bowls",
    "Raw, bought",
    "Bowls",
    "raw: {} {}",
    "? raw amount unknown: no cooking yield",
    "{} as bought",
    "Out of the freezer today, for tomorrow",
    "Feed well today: live food of tomorrow",
    "No bowl for {}: {}.",
    "no diet is in force",
    "nobody knows how many animals it has",
    "it has no animal on this day",
    "nothing is planned for this day",
    "Cautions",
    "Always",
    "Gloves on; washed hands are not enough.",
    "One bowl, one animal or group, with its label.",
    "Bowls and tools stay in their section.",
    "Leftovers never come back into the prep room: they are weighed where dirty bowls go.",
    "Tare the empty bowl before each food.",
    "Draft",
    "Submitted",
    "Approved",
    "Retired",
    "{} by {} on {}",
    "Not for feeding.",
    "Fed from {}.",
    "Fed from {}, phased in over {} day.",
    "Fed from {}, phased in over {} days.",
    "{} of {} kg",
    "{} kcal ME ({}) per animal and day",
    "; cost ?",
    "; cost {} per animal, {} for {}",
    "(without {} food that has no price)",
    "(without {} foods that have no price)",
    "Set otherwise than the targets say: {}.",
    "no reason given",
    "? Not judged: {}.",
    "of no food is it known",
    "no food is of its group",
    "the body mass is not known",
    "the need of an animal without body heat of its own is no feeding rate; state a target in its profile",
    "it does not say of how dry a feed it speaks",
    "it cannot be judged",
    "Energy and targets are of what is eaten: {}; all else is eaten up.",
    "What is fed, as fed, each day",
    "Meal",
    "g per animal",
    "g for {}",
    "Given as",
    "In all",
    "How it stands against its targets",
    "Target",
    "Value",
    "Zone",
    "Unit",
    "State",
    "Known",
    "Source",
    ", hard",
    "Set aside: {}",
    "Known: the share of the eaten dry matter whose value is known. What is unknown could only add to a value with ≥; one with ≈ it could move either way.",
    "g per animal and day",
    "g for {} and day",
    "least g",
    "most g",
    "Cost per animal and day",
    "Of",
    "Least",
    "Most",
    "Known (%)",
    "Hard",
    "yes",
    "Caution",
    "Severity",
    "Reason",
    "Advice",
    "Set aside because",
    "Diet",
    "never",
    "limit",
    "consider",
    "seen",
    "memory",
    "house-rule",
    "invented",
    "derived",
    "for {}",
    "● met",
    "◐ at limit",
    "▼ short",
    "▲ over",
    "? unknown",
    "per kg as fed",
    "per kg DM",
    "per 1000 kcal ME",
    "per animal and day",
    "per kg body mass",
    "per kg^0.75 body mass",
    "Group: {}",
    "% of as fed",
    "% of ME",
    "% of DM",
    "Grams per animal, as fed: {} to {}",
    "To buy for {}",
    "Week",
    "Group",
    "Offered, kg",
    "To buy, kg",
    "in all",
    "The mean day against the targets",
    "Bowl labels",
    "Invented sample: not for feeding.",
    "INVENTED SAMPLE: animals, masses, products and decisions on this sheet are made up. Not for feeding.",
    "Tarebowl supports, and does not replace, a qualified nutritionist and a licensed vet; local rules on feeding,\nhygiene, live prey and "
    "medicines come first. Published requirements of a model species are a starting point.\n",
]


def quoted(text):
    return '"' + text.replace("\\", "\\\\").replace('"', '\\"').replace("\n", "\\n") + '"'


def text():
    nutrients = json.loads((DATA / "nutrients.json").read_text(encoding="utf-8"))["nutrients"]
    cautions = json.loads((DATA / "cautions.json").read_text(encoding="utf-8"))["cautions"]
    lines = [("Nutrients", one["name"]) for one in nutrients]
    for one in cautions:
        lines += [("Cautions", one[part]) for part in ("reason", "advice") if one.get(part)]
    lines += [("Store", words) for words in STORE]
    lines += [("Pages", words) for words in PAGES]
    head = "// SPDX-FileCopyrightText: 2026 The Tarebowl authors\n// SPDX-License-Identifier: GPL-3.0-or-later\n#pragma once\n\n"
    head += "// Written by make_data_strings.py for Qt Linguist; nothing includes it.\n// clang-format off\n"
    return head + "".join(f"QT_TRANSLATE_NOOP({quoted(context)}, {quoted(words)})\n" for context, words in dict.fromkeys(lines))


if __name__ == "__main__":
    (HERE / "data_strings.h").write_text(text(), encoding="utf-8")
