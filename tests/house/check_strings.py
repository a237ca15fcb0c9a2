# SPDX-License-Identifier: GPL-3.0-or-later
"""Every string of the sources stands in every catalogue, and no catalogue holds one that is gone."""

import pathlib
import subprocess
import tempfile

import catalogue
import check_translations
import house


def strings_of_sources(root, lupdate):
    """The messages that lupdate finds now, read into an empty catalogue."""
    with tempfile.TemporaryDirectory() as folder:
        fresh = pathlib.Path(folder, "fresh_de.ts")
        command = [lupdate, "-silent", "-locations", "none", "-target-language", "de", "-extensions", "cpp,h",
                   "core", "app", "-I", "core", "-I", "app", "-ts", str(fresh)]
        done = subprocess.run(command, cwd=root, capture_output=True, text=True, check=True)
        return catalogue.read(fresh)[1], done.stderr.strip()


def problems(root, lupdate):
    sources, complaints = strings_of_sources(root, lupdate)
    yield from (f"lupdate: {line}" for line in complaints.splitlines())
    if not sources:
        yield "no string found in core and app: the search itself is broken"
    for language in check_translations.LANGUAGES:
        name = f"translations/strandbench_{language}.ts"
        wanted = {m.key: m for m in sources if m.numerus or language != "en"}
        held = {m.key: m for m in catalogue.read(pathlib.Path(root, name))[1]}
        for key in sorted(wanted.keys() - held.keys()):
            yield f"{name}: {wanted[key].name}: missing; build the target update_translations and translate it"
        for key in sorted(held.keys() - wanted.keys()):
            yield f"{name}: {held[key].name}: no longer in the sources"


if __name__ == "__main__":
    house.main(problems)
