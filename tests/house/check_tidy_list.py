# SPDX-License-Identifier: GPL-3.0-or-later
"""The checks that clang-tidy really runs are the ones that tests/house/clang_tidy_checks.txt names."""

import pathlib
import subprocess

import house


def problems(root, clang_tidy):
    done = subprocess.run([clang_tidy, "--list-checks"], cwd=root, capture_output=True, text=True, check=True)
    runs = {line.strip() for line in done.stdout.splitlines() if line.startswith("    ")}
    pinned = set(pathlib.Path(root, "tests/house/clang_tidy_checks.txt").read_text(encoding="utf-8").split())
    yield from (f"{name}: pinned, but clang-tidy does not run it" for name in sorted(pinned - runs))
    yield from (f"{name}: clang-tidy runs it, but it is not pinned" for name in sorted(runs - pinned))


if __name__ == "__main__":
    house.main(problems)
