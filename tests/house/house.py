# SPDX-License-Identifier: GPL-3.0-or-later
"""What the house checks share: the files of the tree, and how a check reports."""

import pathlib
import sys

SOURCES = {".h", ".cpp"}
SCRIPTS = {".py", ".sh", ".cmake", ".service"}
SCRIPT_NAMES = {"run", "contact_sheets", "reproducible", "fresh_machine", "CMakeLists.txt", "package_date.cmake.in",
                ".clang-format", ".clang-tidy", ".editorconfig", ".gitattributes"}
TEXTS = SOURCES | SCRIPTS | {".md", ".json", ".txt", ".ts", ".svg", ".qrc", ".desktop", ".supp", ".xml", ".1"}


def is_built(name):
    """Whether a name at the top is a build folder, which .gitignore leaves out too."""
    return name == "build" or name.startswith("build-") or name == ".git"


def files(root):
    """Every file of the tree as (path, name from the root), sorted, without what a build or git made."""
    for top in sorted(pathlib.Path(root).iterdir()):
        if is_built(top.name):
            continue
        for path in [top] if top.is_file() else sorted(top.rglob("*")):
            if path.is_file() and "__pycache__" not in path.parts:
                yield path, path.relative_to(root).as_posix()


def is_code(path):
    """Sources, build files and scripts."""
    return path.suffix in SOURCES | SCRIPTS or path.name in SCRIPT_NAMES


def is_text(path):
    return path.suffix in TEXTS or is_code(path) or path.name in {"LICENSE", ".gitignore"}


def main(problems):
    """Runs problems(root, *rest of the command line) and ends the process: 0 when there are none."""
    found = list(problems(*sys.argv[1:]))
    for each in found:
        print(each)
    print(f"{len(found)} problem(s)")
    sys.exit(1 if found else 0)
