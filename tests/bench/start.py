# SPDX-License-Identifier: GPL-3.0-or-later
"""Start to first painted home and peak memory, beside an empty window linked to the same libraries.

Usage: start.py BUILD-FOLDER [ROUNDS]. Prints medians and their ratios; judges nothing. Cold means that the files
were dropped from the kernel's cache before each start, which takes root; otherwise only warm starts are measured.
"""

import os
import pathlib
import statistics
import subprocess
import sys
import tempfile
import time

CACHES = pathlib.Path("/proc/sys/vm/drop_caches")


def start(command, environment):
    """Milliseconds from start to first paint, and peak memory in MiB."""
    begun = time.clock_gettime_ns(time.CLOCK_MONOTONIC)
    done = subprocess.run(command, env=environment, stdout=subprocess.PIPE, text=True, timeout=120, check=True)
    painted, kilobytes = done.stdout.split()
    return (int(painted) - begun) / 1e6, int(kilobytes) / 1024


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
    medians = {name: [statistics.median(column) for column in zip(*runs)] for name, runs in results.items()}
    print(f"{title}, median of {len(next(iter(results.values())))}")
    for name, (ms, mib) in medians.items():
        spread = sorted(run[0] for run in results[name])
        print(f"  {name:<13} first paint {ms:7.1f} ms ({spread[0]:.1f} to {spread[-1]:.1f})   peak {mib:6.1f} MiB")
    home, empty = medians["home"], medians["empty window"]
    print(f"  ratio         first paint {home[0] / empty[0]:7.2f}      peak {home[1] / empty[1]:6.2f}")


def main():
    build = pathlib.Path(sys.argv[1]).resolve()
    rounds = int(sys.argv[2]) if len(sys.argv) > 2 else 15
    with tempfile.TemporaryDirectory() as folder:
        environment = dict(os.environ, LC_ALL="C.UTF-8", XDG_CONFIG_HOME=folder, XDG_CACHE_HOME=folder,
                           XDG_RUNTIME_DIR=folder, HOME=folder)
        environment.setdefault("QT_QPA_PLATFORM", "xcb" if "DISPLAY" in environment else "offscreen")
        log = os.path.join(folder, "bench.sqlite")
        subprocess.run([build / "demo/strandbench_demo_bench", log], check=True,
                       env=dict(environment, QT_QPA_PLATFORM="offscreen"))
        programs = {"home": [build / "tests/bench/bench_home", "--log", log, "--glass", "1280x800"],
                    "empty window": [build / "tests/bench/bench_empty"]}
        print(f"platform {environment['QT_QPA_PLATFORM']}, demo bench of {os.path.getsize(log) // 1024} KiB")
        measure(programs, environment, 2, cold=False)  # warm up
        if can_drop():
            report("cold", measure(programs, environment, rounds, cold=True))
        else:
            print("cold: not measured, dropping the kernel's cache takes root")
        report("warm", measure(programs, environment, rounds, cold=False))
    return 0


if __name__ == "__main__":
    sys.exit(main())
