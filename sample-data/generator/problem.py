# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""One balance problem of the sample, in the order in which a person reads it; and its text."""

import json

WIDTH = 120


def problem(title, notes, animal, method, foods, targets, reference, **more):
    return {"format": "tarebowl-problem/1", "title": title, "invented": True, "notes": notes, "animal": animal,
            "energy_method": method, "foods": foods, "targets": targets, **more, "reference": reference}


def text_of(value, indent=0):
    """JSON that a person can read: what holds only plain values stands on one line, wrapped where it is long."""
    pad = " " * indent
    if isinstance(value, dict) and any(isinstance(v, (dict, list)) for v in value.values()):
        lines = [f"{pad}  {json.dumps(k)}: {text_of(v, indent + 2).lstrip()}" for k, v in value.items()]
        return pad + "{\n" + ",\n".join(lines) + "\n" + pad + "}"
    if isinstance(value, list) and value:
        return pad + "[\n" + ",\n".join(text_of(v, indent + 2) for v in value) + "\n" + pad + "]"
    if isinstance(value, dict):
        pairs = ", ".join(f"{json.dumps(k)}: {json.dumps(v, ensure_ascii=False)}" for k, v in value.items())
        if len(pairs) + indent + 2 <= WIDTH:
            return pad + "{" + pairs + "}"
        return pad + "{\n" + _wrapped(value, indent + 2) + "\n" + pad + "}"
    return pad + json.dumps(value, ensure_ascii=False)


def _wrapped(plain, indent):
    lines, line = [], ""
    for item in [f"{json.dumps(k)}: {json.dumps(v, ensure_ascii=False)}" for k, v in plain.items()]:
        if line and len(line) + len(item) + indent + 2 > WIDTH:
            lines.append(line)
            line = ""
        line = f"{line}, {item}" if line else item
    return ",\n".join(" " * indent + text for text in [*lines, line])
