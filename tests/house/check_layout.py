# SPDX-License-Identifier: GPL-3.0-or-later
"""The top of the tree holds what DEVELOPERS.md draws, and nothing else; core's folders likewise."""

import pathlib

import house

TOP = {
    "core", "app", "resources", "translations", "tests", "demo", ".ci",
    "README.md", "DEVELOPERS.md", "LICENSE", "CMakeLists.txt", "CMakePresets.json",
    ".clang-format", ".clang-tidy", ".editorconfig", ".gitattributes", ".gitignore",
}
OWN = {"CMakeUserPresets.json"}  # a person's own, ignored by git
CORE = {
    "quantity", "material", "substrate", "geometry", "air", "mix", "cure", "learning", "plan", "clock", "roles",
    "repair", "exchange", "repairlog", "review", "practice", "instrument", "stock", "harm",
    "CMakeLists.txt", "precompiled.cmake", "warnings.cmake",
}


def problems(root):
    top = {path.name for path in pathlib.Path(root).iterdir() if not house.is_built(path.name)}
    for name in sorted(top - TOP - OWN):
        if not name.endswith(".user"):
            yield f"{name}: does not belong at the top of the tree"
    for name in sorted(TOP - top):
        yield f"{name}: missing at the top of the tree"
    for name in sorted({path.name for path in pathlib.Path(root, "core").iterdir()} - CORE):
        yield f"core/{name}: no folder of core in DEVELOPERS.md"


if __name__ == "__main__":
    house.main(problems)
