#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""installed_tree.py CMAKE BUILD: installs the program into a folder of its own and looks at what lies there: every file
that a desktop asks for, the validators' word on them where they are installed, no path of the machine that built it in
the texts, and a program that solves and reads the sample from there. Ends with 1 and a line for each fault."""
import os
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as xml

FILES = [
    "bin/tarebowl",
    "share/applications/org.tarebowl.Tarebowl.desktop",
    "share/metainfo/org.tarebowl.Tarebowl.metainfo.xml",
    "share/mime/packages/tarebowl.xml",
    "share/icons/hicolor/scalable/apps/tarebowl.svg",
    "share/icons/hicolor/scalable/mimetypes/application-x-tarebowl.svg",
    "share/man/man1/tarebowl.1.gz",
    "share/doc/tarebowl/copyright",
    "share/doc/tarebowl/changelog.gz",
    "share/tarebowl/sample-data/tenrec-hedgehog.json",
    "share/tarebowl/sample-data/laboratory.csv",
    "share/tarebowl/sample-data/herd/animals.json",
    "share/tarebowl/sample-data/diets/tenrec-evening.json",
    "share/tarebowl/sample-data/feeding/dragons.csv",
]

faults = []


def expect(holds, fault):
    if not holds:
        faults.append(fault)


def run(*command, **more):
    return subprocess.run(command, capture_output=True, text=True, **more)


def check_by(validator, *arguments):
    """What a validator that is installed says; nothing where it is not."""
    if not shutil.which(validator):
        return print(f"{validator} is not installed here: not asked")
    said = run(validator, *arguments)
    expect(said.returncode == 0, f"{validator}: {said.stdout}{said.stderr}")


def read(path):
    with open(path, encoding="utf-8") as file:
        return file.read()


def check_desktop(share):
    entry = read(share + "/applications/org.tarebowl.Tarebowl.desktop")
    lines = entry.splitlines()
    expect("Exec=tarebowl %f" in lines, "the desktop entry does not hand the file over")
    expect("MimeType=application/x-tarebowl;" in lines, "the desktop entry does not open collections")
    check_by("desktop-file-validate", share + "/applications/org.tarebowl.Tarebowl.desktop")
    check_by("appstreamcli", "validate", "--no-net", share + "/metainfo/org.tarebowl.Tarebowl.metainfo.xml")


def check_file_type(share):
    space = "{http://www.freedesktop.org/standards/shared-mime-info}"
    mime = xml.parse(share + "/mime/packages/tarebowl.xml").getroot().find(space + "mime-type")
    expect(mime.get("type") == "application/x-tarebowl", "the file type has another name")
    expect(mime.find(space + "glob").get("pattern") == "*.tarebowl", "the file type does not go by .tarebowl")
    if not shutil.which("update-mime-database"):
        return print("update-mime-database is not installed here: not asked")
    said = run("update-mime-database", share + "/mime")
    expect(said.returncode == 0, "update-mime-database: " + said.stderr)
    expect("*.tarebowl" in read(share + "/mime/globs2"), "collections are not known by their ending")


def check_magic(prefix, own):
    """A new collection carries the number that the file type looks for."""
    collection = own["HOME"] + "/house.tarebowl"
    made = run(prefix + "/bin/tarebowl", "new", collection, env=own)
    expect(made.returncode == 0, "no collection could be made: " + made.stderr)
    with open(collection, "rb") as file:
        header = file.read(100)
    magic = xml.parse(prefix + "/share/mime/packages/tarebowl.xml").getroot().iter()
    number = next(int(match.get("value"), 16) for match in magic if match.get("type") == "big32")
    expect(int.from_bytes(header[68:72], "big") == number, "the file type looks for another number than a collection has")


def check_man_page(share):
    if shutil.which("man"):
        said = run("man", "--warnings", "-l", share + "/man/man1/tarebowl.1.gz",
                   env={**os.environ, "LC_ALL": "C.UTF-8", "MANROFFSEQ": "", "MANWIDTH": "100"})
        expect(said.returncode == 0 and not said.stderr, "man: " + said.stderr)


def check_program(prefix, own):
    program = prefix + "/bin/tarebowl"
    version = run(program, "--version", env=own)
    expect(version.returncode == 0 and version.stdout.startswith("tarebowl "), "no version: " + version.stderr)
    solved = run(program, env=own)  # without a display it solves the sample that lies beside it
    expect(solved.returncode == 0, f"the sample is not solved ({solved.returncode}): {solved.stderr}")
    expect(os.path.realpath(prefix) + "/share/tarebowl/sample-data" in solved.stderr,
           "another sample is read than the one beside the program: " + solved.stderr)


def main(cmake, build):
    with tempfile.TemporaryDirectory() as place:
        prefix = place + "/installed"
        installed = run(cmake, "--install", build, "--prefix", prefix)
        if installed.returncode != 0:
            sys.exit("cmake --install: " + installed.stderr)
        for file in FILES:
            expect(os.path.isfile(f"{prefix}/{file}"), file + " is not there")
        if not faults:
            home = place + "/home"
            os.mkdir(home)
            own = {"PATH": os.environ["PATH"], "HOME": home, "LC_ALL": "C.UTF-8"}
            check_desktop(prefix + "/share")
            check_file_type(prefix + "/share")
            check_man_page(prefix + "/share")
            check_magic(prefix, own)
            check_program(prefix, own)
    for fault in faults:
        print(fault, file=sys.stderr)
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
