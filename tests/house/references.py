# SPDX-License-Identifier: GPL-3.0-or-later
"""The index of published values, tests/reference/index.json, as a page to read:

    python3 -B tests/house/references.py . > tests/reference/index.md
"""

import json
import pathlib
import sys

INDEX = "tests/reference/index.json"
PAGE = "tests/reference/index.md"
HEAD = """# Published values that the tests check against

Written by `tests/house/references.py` from `tests/reference/index.json`; `check_references.py` holds both against the
tests: each file holds the test, the source's name, and in that test the value and the tolerance as they stand here.

*Known* says how the value came to us: looked up in the source; quoted by others; from memory, so that nothing rests on
it alone; from a library; or not told in the test. A tolerance is in the unit of the value, or a share of it where it
says so; *exact* leaves only the last digit's rounding; *given* is a figure that a case is made of.
"""


def read(root):
    return json.loads(pathlib.Path(root, INDEX).read_text(encoding="utf-8"))


def known(index, value):
    return value.get("known", index["sources"][value["source"]]["known"])


def cells(*texts):
    return "| " + " | ".join(str(text).replace("|", "\\|") for text in texts) + " |"


def tolerance(value):
    return value["tolerance"] + (" of it" if value.get("relative") else "")


def page(index):
    lines = [HEAD]
    for key, source in index["sources"].items():
        year = f", {source['year']}" if "year" in source else ""
        lines += [f"## {source['author']}: {source['title']}{year}", "",
                  cells("place", "what", "value", "unit", "within", "known", "test"), cells(*["---"] * 7)]
        for each in index["values"]:
            if each["source"] == key:
                where = f"`{each['file']}` {each['test']}"
                lines.append(cells(each["place"], each["what"], f"`{each['value']}`", each["unit"], tolerance(each),
                                   known(index, each), where))
        lines.append("")
    return "\n".join(lines)


if __name__ == "__main__":
    sys.stdout.write(page(read(sys.argv[1])))
