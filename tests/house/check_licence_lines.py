# SPDX-License-Identifier: GPL-3.0-or-later
"""Every source, build file and script says its licence in its first line (after '#!' in its second)."""

import house

LINE = "SPDX-License-Identifier: GPL-3.0-or-later"


def problems(root):
    for path, name in house.files(root):
        if not house.is_code(path):
            continue
        lines = path.read_text(encoding="utf-8").splitlines()
        first = lines[1:2] if lines[:1] and lines[0].startswith("#!") else lines[:1]
        if not first or LINE not in first[0]:
            yield f"{name}: the first line is not '{LINE}'"


if __name__ == "__main__":
    house.main(problems)
