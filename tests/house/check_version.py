# SPDX-License-Identifier: GPL-3.0-or-later
"""The version is the same wherever it is told: the build, the package's changelog, the catalogue entry, the manual."""

import pathlib
import re

import house

PLACES = {
    "CMakeLists.txt": r"project\(Strandbench VERSION (\S+)",
    "app/install/changelog": r"^strandbench \(([^)]+)\)",
    "app/install/org.strandbench.Strandbench.metainfo.xml": r'<release version="([^"]+)"',
    "app/install/strandbench.1": r'^\.TH .*"Strandbench ([^"]+)"',
}


def problems(root):
    told = {}
    for name, pattern in PLACES.items():
        found = re.search(pattern, pathlib.Path(root, name).read_text(encoding="utf-8"), re.MULTILINE)
        if found:
            told[name] = found.group(1)
        else:
            yield f"{name}: tells no version"
    for name, version in told.items():
        if version != told.get("CMakeLists.txt", version):
            yield f"{name}: version {version}, and CMakeLists.txt says {told['CMakeLists.txt']}"


if __name__ == "__main__":
    house.main(problems)
