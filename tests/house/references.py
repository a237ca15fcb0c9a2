# SPDX-License-Identifier: GPL-3.0-or-later
"""The index of published values, tests/reference/index.json, and those that are not used, as a page to read:

    python3 -B tests/house/references.py . > tests/reference/index.md
"""

import json
import pathlib
import sys

INDEX = "tests/reference/index.json"
DISMISSED = "tests/reference/dismissed.json"
PAGE = "tests/reference/index.md"
HEAD = """# Published values that the tests check against

Written by `tests/house/references.py` from `tests/reference/index.json` and `dismissed.json`; `check_references.py`
holds them against the tests: each file holds the test, the source's name, and in that test the value and the tolerance
as they stand here.

*Known* says how the value came to us: looked up in the source; quoted by others; computed apart from this program from
what the source has; from memory, so that nothing rests on it alone; from a library; or not told in the test. A
tolerance is in the unit of the value, or a share of it where it says so; *exact* leaves only the last digit's rounding;
*given* is a figure that a case is made of. Under each source stands how its own name was come by: looked up, or from
memory.
"""
UNUSED = """## Looked at and not used

Each with its reason. None of them stands above.
"""


def read(root, name=INDEX):
    return json.loads(pathlib.Path(root, name).read_text(encoding="utf-8"))


def dismissed(root):
    return read(root, DISMISSED)["dismissed"]


def known(index, value):
    return value.get("known", index["sources"][value["source"]]["known"])


def cells(*texts):
    return "| " + " | ".join(str(text).replace("|", "\\|") for text in texts) + " |"


def tolerance(value):
    return value["tolerance"] + (" of it" if value.get("relative") else "")


def of_source(index, key):
    source = index["sources"][key]
    year = f", {source['year']}" if "year" in source else ""
    yield from [f"## {source['author']}: {source['title']}{year}", "", f"Its name: {source['heading']}.", "",
                cells("place", "what", "value", "unit", "within", "known", "test"), cells(*["---"] * 7)]
    for each in index["values"]:
        if each["source"] == key:
            where = f"`{each['file']}` {each['test']}"
            yield cells(each["place"], each["what"], f"`{each['value']}`", each["unit"], tolerance(each),
                        known(index, each), where)
    yield ""


def page(index, unused):
    lines = [HEAD]
    for key in index["sources"]:
        lines += of_source(index, key)
    lines += [UNUSED, cells("source", "what", "value", "why it is not used"), cells(*["---"] * 4)]
    lines += [cells(each["source"], each["what"], each["value"], each["why"]) for each in unused]
    return "\n".join(lines + [""])


if __name__ == "__main__":
    sys.stdout.write(page(read(sys.argv[1]), dismissed(sys.argv[1])))
