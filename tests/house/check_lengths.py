# SPDX-License-Identifier: GPL-3.0-or-later
"""No source file is longer than a reader can hold, no line wider than the screen."""

import house

MOST_LINES = 400
MOST_COLUMNS = 120
NAMED = {"run", "reproducible", "fresh_machine"}  # scripts that have no suffix


def problems(root):
    for path, name in house.files(root):
        if path.suffix not in house.SOURCES | house.SCRIPTS and path.name not in NAMED:
            continue
        lines = path.read_text(encoding="utf-8").splitlines()
        if len(lines) > MOST_LINES:
            yield f"{name}: {len(lines)} lines, at most {MOST_LINES}"
        for number, line in enumerate(lines, 1):
            if len(line) > MOST_COLUMNS:
                yield f"{name}:{number}: {len(line)} columns, at most {MOST_COLUMNS}"


if __name__ == "__main__":
    house.main(problems)
