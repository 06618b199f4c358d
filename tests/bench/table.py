#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Prints what the benchmarks measured against the solver's bars, as a table in Markdown.

    bench_solver --benchmark_out=solver.json && table.py solver.json [MORE.json …]

MORE: of bench_whole_steps and bench_remedies.

Figures are medians over the instances, in microseconds, of processor time where one thread works; ratios are to one Eigen LLT factor-and-solve of
as many foods, from the same run. Benchmarks that no bar speaks of are listed below the table.
"""
import json
import pathlib
import re
import sys

SIZES = ("12x31", "25x53", "60x69", "80x120")


class Measured:
    def __init__(self, files):
        self.times, self.counters, self.context = {}, {}, {}
        for file in files:
            content = json.loads(pathlib.Path(file).read_text())
            self.context = self.context or content["context"]
            for run in content["benchmarks"]:
                if run.get("run_type") == "aggregate" or run.get("error_occurred"):
                    continue
                name = re.sub(r"/(iterations:\d+|manual_time|real_time)", "", run["name"])
                unit = {"ns": 1e-3, "us": 1.0, "ms": 1e3, "s": 1e6}[run["time_unit"]]
                timed = "real_time" if "manual_time" in run["name"] else "cpu_time"
                self.times[name] = run[timed] * unit
                self.counters[name] = {k: v for k, v in run.items() if isinstance(v, float)}
        self.named = set()

    def time(self, name):
        self.named.add(name)
        return self.times.get(name)

    def best_other(self, name, size):
        others = [self.time(f"{name}/{other}/{size}") for other in ("glpk", "clp")]
        return min((t for t in others if t is not None), default=None)


def number(value):
    return f"{value:.3g}" if value < 1000 else f"{value:.0f}"


def line(what, size, microseconds, ratio, of, bar, holds):
    mark = "" if holds is None else ("yes" if holds else "**no**")
    return f"| {what} | {size} | {number(microseconds)} | {number(ratio)} {of} | {bar} | {mark} |"


def against_floor(measured, what, name, bars):
    for size, bar in zip(SIZES, bars):
        time, floor = measured.time(f"{name}/{size}"), measured.time(f"floor/{size}")
        if time is not None and floor:
            holds = None if bar is None else time / floor <= bar
            yield line(what, size, time, time / floor, "floors", "" if bar is None else f"≤ {bar}", holds)


def against_others(measured, what, name, question, bar):
    for size in SIZES:
        time, other = measured.time(f"{name}/{size}"), measured.best_other(question, size)
        if time is not None and other is not None:
            holds = None if bar is None else other / time >= bar
            yield line(what, size, time, other / time, f"times faster than {number(other)}",
                       "" if bar is None else f"≥ {bar}", holds)


def in_units_of(measured, what, name, unit, of, bar):
    for size in SIZES:
        time, one = measured.time(f"{name}/{size}"), measured.time(f"{unit}/{size}")
        if time is not None and one:
            yield line(what, size, time, time / one, of, f"≤ {bar}", time / one <= bar)


def within(measured, what, name, bar):
    time = measured.time(name)
    if time is not None:
        yield line(what, name.rpartition("/")[2], time, time, "µs", f"≤ {bar}", time <= bar)


def verdict(what, size, time, shown, bar, holds):
    return f"| {what} | {size} | {number(time)} | {shown} | {bar} | {'yes' if holds else '**no**'} |"


def whole_grams(measured):
    """What bench_whole_steps counted; two threads, a second at most."""
    for bands in ("met", "unmet"):
        name, size = f"nearest_in_grams_{bands}/12x31/threads:2", "12x31"
        if (time := measured.time(name)) is not None:
            worst = measured.counters[name]["worst_ms"]
            yield verdict(f"whole grams, bands {bands}", size, time, f"worst {number(worst)} ms", "≤ 1000 µs, worst 50 ms",
                          time <= 1000 and worst <= 50 and measured.counters[name]["proved_pct"] >= 100)
    for bands, least, gap in (("met", 98, 0.5), ("unmet", 95, 1.0)):
        name = f"nearest_in_grams_{bands}/25x53/threads:2"
        if (time := measured.time(name)) is not None:
            proved, widest = (measured.counters[name][key] for key in ("proved_pct", "worst_gap_pct"))
            yield verdict(f"whole grams, bands {bands}", "25x53", time, f"{number(proved)} % proved, gap {number(widest)} %",
                          f"≥ {least} %, gap {gap} %", proved >= least and widest <= gap)
    for bands in ("met", "unmet"):
        glance, name = f"first_answer_in_20_ms_{bands}/40x60", f"nearest_in_grams_{bands}/40x60/threads:2"
        if (time := measured.time(glance)) is not None and measured.time(name) is not None:
            answered, widest = measured.counters[glance]["answered_pct"], measured.counters[name]["worst_gap_pct"]
            yield verdict(f"whole grams, first answer in 20 ms, bands {bands}", "40x60", time,
                          f"{number(answered)} % answered, gap {number(widest)} % at 1 s", "100 %, gap 2 %",
                          answered >= 100 and widest <= 2)
    for what in ("least_shortfall", "least_cost"):
        for size in ("12x31", "25x53"):
            name = f"{what}_in_grams/{size}"
            if (time := measured.time(name)) is not None:
                faster = measured.counters[name]["times_faster"]
                yield verdict(f"whole grams, {what.replace('_', ' ')}", size, time,
                              f"{number(faster)} times faster than GLPK or CBC", "≥ 5", faster >= 5)


def table(measured):
    for bands in ("met", "unmet"):
        yield from against_floor(measured, f"nearest, elastic, cold, bands {bands}", f"nearest_cold/{bands}", (10, 10, 6, 6))
    for bands in ("met", "unmet"):
        yield from against_floor(measured, f"the same, warm, bands {bands}", f"nearest_warm/{bands}", (2, 2, 2, 2))
    for bands in ("met", "unmet"):
        yield from against_floor(measured, f"lexicographic, cold, bands {bands}", f"lexicographic_cold/{bands}", (25,) * 4)
    yield from against_others(measured, "both stages, beside stage 1 of GLPK and Clp", "lexicographic_cold/unmet",
                              "least_shortfall_cold", None)
    yield from against_others(measured, "stage 1 alone, cold", "least_shortfall_cold/tarebowl",
                              "least_shortfall_cold", 10)
    yield from against_others(measured, "cheapest, cold", "cheapest_cold/tarebowl", "cheapest_cold", None)
    for bands in ("met", "unmet"):
        yield from within(measured, f"choices, 2 of 6, twice, bands {bands}", f"choices_two_of_six_twice/{bands}/60x69", 1000)
    yield from in_units_of(measured, "minimal conflict", "minimal_conflict", "nearest_cold/unmet", "cold solves", 5)
    for foods in (12, 25):
        for whole, steps in ((0, "any amounts"), (1, "scale steps")):
            yield from within(measured, f"remedies over 9,000 foods, {foods} in the diet, {steps}",
                              f"firstFiveRemedies/foods:{foods}/whole:{whole}", 50_000)
    yield from whole_grams(measured)


def processor():
    for text in pathlib.Path("/proc/cpuinfo").read_text().splitlines():
        if text.startswith("model name"):
            return text.partition(":")[2].strip()
    return "unknown processor"


def main():
    if len(sys.argv) < 2:
        print(__doc__)
        return 2
    measured = Measured(sys.argv[1:])
    print(f"{processor()}, {measured.context['num_cpus']} processors, {measured.context['date'][:10]}\n")
    print("| what | foods × rows | µs | ratio | bar | holds |\n|---|---|---|---|---|---|")
    print("\n".join(table(measured)))
    rest = [name for name in measured.times if name not in measured.named]
    if rest:
        print("\nNo bar by itself:\n\n| benchmark | µs | worst µs |\n|---|---|---|")
    for name in rest:
        worst = measured.counters[name].get("worst_us")
        print(f"| {name} | {number(measured.times[name])} | {number(worst) if worst else ''} |")
    for name, counters in measured.counters.items():
        for what in ("failed", "unproved"):
            if counters.get(what):
                print(f"\n{name}: {counters[what]:.0f} of 50 {what}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
