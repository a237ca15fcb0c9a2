# SPDX-License-Identifier: GPL-3.0-or-later
"""What the documents point at is there: linked files, and the folders and files they name in backquotes."""

import pathlib
import re

import house

LINK = re.compile(r"\]\(([^)#]+)\)")
NAMED = re.compile(r"`((?:core|app|resources|translations|tests|demo)/[\w./-]*)`")


def problems(root):
    for path, name in house.files(root):
        if path.suffix != ".md":
            continue
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
            for target in LINK.findall(line):
                if "://" not in target and not (path.parent / target).exists():
                    yield f"{name}:{number}: '{target}' is not there"
            for target in NAMED.findall(line):
                if not pathlib.Path(root, target).exists():
                    yield f"{name}:{number}: '{target}' is not there"


if __name__ == "__main__":
    house.main(problems)
