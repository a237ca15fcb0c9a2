# SPDX-License-Identifier: GPL-3.0-or-later
"""Start to first painted home, by the wall and by the processor, and peak memory, beside an empty window linked to
the same libraries.

Usage: start.py BUILD-FOLDER [ROUNDS] [--rows FILE]. Prints medians and their ratios; judges nothing. Cold means that
the files were dropped from the kernel's cache before each start, which takes root; otherwise only warm starts are
measured. The processor's time holds all threads, and nothing else that the machine does. FILE gets the same as rows
for table.py.
"""

import json
import os
import pathlib
import statistics
import subprocess
import sys
import tempfile
import time

CACHES = pathlib.Path("/proc/sys/vm/drop_caches")
START_AIM, MEMORY_AIM = 1.5, 2


def start(command, environment):
    """Milliseconds from start to first paint, peak memory in MiB, milliseconds of the processor."""
    begun = time.clock_gettime_ns(time.CLOCK_MONOTONIC)
    done = subprocess.run(command, env=environment, stdout=subprocess.PIPE, text=True, timeout=120, check=True)
    painted, kilobytes, microseconds = (int(each) for each in done.stdout.split())
    return (painted - begun) / 1e6, kilobytes / 1024, microseconds / 1e3


def can_drop():
    try:
        CACHES.write_text("1")
    except OSError:
        return False
    return True


def measure(programs, environment, rounds, cold):
    results = {name: [] for name in programs}
    for _ in range(rounds):
        for name, command in programs.items():  # in turn, so that a busy moment meets both
            if cold:
                subprocess.run(["sync"], check=True)
                CACHES.write_text("3")
            results[name].append(start(command, environment))
    return results


def report(title, results):
    """Prints the medians, and returns them: of the home, then of the empty window, each in the order of start()."""
    medians = {name: [statistics.median(column) for column in zip(*runs)] for name, runs in results.items()}
    print(f"{title}, median of {len(next(iter(results.values())))}")
    for name, (ms, mib, processor) in medians.items():
        spread = sorted(run[0] for run in results[name])
        print(f"  {name:<13} first paint {ms:7.1f} ms ({spread[0]:.1f} to {spread[-1]:.1f})   processor "
              f"{processor:7.1f} ms   peak {mib:6.1f} MiB")
    home, empty = medians["home"], medians["empty window"]
    print(f"  ratios        first paint {home[0] / empty[0]:.2f}   processor {home[2] / empty[2]:.2f}   peak "
          f"{home[1] / empty[1]:.2f}", flush=True)
    return home, empty


def row(what, ours, unit, theirs, aim):
    return {"bench": "start", "what": what, "ours": ours, "unit": unit, "referee": "an empty window", "theirs": theirs,
            "ratio": ours / theirs, "aim": aim}


def measure_all(programs, environment, rounds):
    """Rows of what could be measured here."""
    measure(programs, environment, 2, cold=False)  # warm up
    rows = []
    if can_drop():
        home, empty = report("cold", measure(programs, environment, rounds, cold=True))
        rows.append(row("cold, to the first painted home", home[0], "ms", empty[0], START_AIM))
    else:
        print("cold: not measured, dropping the kernel's cache takes root")
    home, empty = report("warm", measure(programs, environment, rounds, cold=False))
    return rows + [row("warm, to the first painted home", home[0], "ms", empty[0], START_AIM),
                   row("warm, processor's time until then", home[2], "ms", empty[2], START_AIM),
                   row("peak memory", home[1], "MiB", empty[1], MEMORY_AIM)]


def main(arguments):
    rows_file = None
    if "--rows" in arguments:
        place = arguments.index("--rows")
        rows_file = arguments[place + 1]
        arguments = arguments[:place] + arguments[place + 2:]
    build = pathlib.Path(arguments[0]).resolve()
    rounds = int(arguments[1]) if len(arguments) > 1 else 15
    with tempfile.TemporaryDirectory() as folder:
        environment = dict(os.environ, LC_ALL="C.UTF-8", XDG_CONFIG_HOME=folder, XDG_CACHE_HOME=folder,
                           XDG_RUNTIME_DIR=folder, HOME=folder)
        environment.setdefault("QT_QPA_PLATFORM", "xcb" if "DISPLAY" in environment else "offscreen")
        log = os.path.join(folder, "bench.sqlite")
        subprocess.run([build / "demo/strandbench_demo_bench", log], check=True,
                       env=dict(environment, QT_QPA_PLATFORM="offscreen"))
        programs = {"home": [build / "tests/bench/start/bench_home", "--log", log, "--glass", "1280x800"],
                    "empty window": [build / "tests/bench/start/bench_empty"]}
        print(f"platform {environment['QT_QPA_PLATFORM']}, demo bench of {os.path.getsize(log) // 1024} KiB")
        rows = measure_all(programs, environment, rounds)
    if rows_file:
        with open(rows_file, "a", encoding="utf-8") as file:
            file.writelines(json.dumps(each) + "\n" for each in rows)
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
