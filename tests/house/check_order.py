# SPDX-License-Identifier: GPL-3.0-or-later
"""Includes follow need and never run back: core's folders in their order, core never app, app's in theirs."""

import re

import house

# A folder may include itself and what stands before it. The linker holds this for functions; this check
# holds it for what is only in headers.
CORE = [
    "quantity", "material", "harm", "air", "instrument", "substrate", "geometry", "mix", "cure", "learning", "plan",
    "clock", "stock", "roles", "repair", "review", "exchange", "repairlog", "practice",
]
APP = ["theme", "words", "pictures", "touch", "sound", "bench", "camera", "gear", "report",
       "screens", "school", "shell", "headless"]
INCLUDE = re.compile(r'^\s*#include "(\w+)/')


def known(folder, order):
    return set(order[: order.index(folder) + 1]) if folder in order else set(order)


def problems(root):
    for path, name in house.files(root):
        parts = name.split("/")
        if path.suffix not in house.SOURCES or parts[0] not in ("core", "app") or len(parts) < 3:
            continue
        allowed = known(parts[1], CORE) if parts[0] == "core" else set(CORE) | known(parts[1], APP)
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
            include = INCLUDE.match(line)
            if include and include.group(1) not in allowed:
                yield f"{name}:{number}: {parts[0]}/{parts[1]} does not know '{include.group(1)}'"


if __name__ == "__main__":
    house.main(problems)
