# SPDX-License-Identifier: GPL-3.0-or-later
"""The index of published values tells what stands in the tests: file, test, source, value and tolerance of each entry;
and there are at least sixty that rest on a source, not on memory or on a library."""

import collections
import pathlib
import re

import house
import references

LEAST = 60
OF_A_SOURCE = {"looked up", "quoted"}
KNOWN = OF_A_SOURCE | {"from memory", "library", "not told"}
IN_WORDS = {"exact", "given"}
TEST = re.compile(r"^TEST\w*\((\w+),\s*(\w+)\)[^\n{]*\n?\{(?:[^\n]*\}\n|.*?^\}\n)", re.MULTILINE | re.DOTALL)


def one_line(text):
    """A comment that runs over lines, as one."""
    return re.sub(r"\s+", " ", re.sub(r"\n\s*//+", " ", text))


def seen_by(test, text):
    """The file without its other tests: the test itself, and the values and constants outside of any."""
    return TEST.sub(lambda found: found.group() if f"{found[1]}.{found[2]}" == test else "", text)


def holds(text, literal):
    before = r"(?<![\w.])" if re.match(r"[\w.]", literal) else ""
    after = r"(?![\w.']|\d)" if re.match(r"[\w.]", literal[-1]) else ""
    return re.search(before + re.escape(literal) + after, text) is not None


def faults_of(root, value, source):
    path = pathlib.Path(root, value["file"])
    if not path.is_file():
        yield f"'{value['file']}' is not there"
        return
    text = path.read_text(encoding="utf-8")
    if value["test"] not in {f"{found[1]}.{found[2]}" for found in TEST.finditer(text)}:
        yield f"{value['file']} has no test {value['test']}"
        return
    if source["named"] not in one_line(text):
        yield f"{value['file']} does not name '{source['named']}'"
    seen = seen_by(value["test"], text)
    if not holds(one_line(seen), value["value"]):
        yield f"{value['test']} does not hold '{value['value']}'"
    if value["tolerance"] not in IN_WORDS and not holds(seen, value["tolerance"]):
        yield f"{value['test']} has no tolerance '{value['tolerance']}'"


def problems(root):
    index = references.read(root)
    seen = collections.Counter((each["source"], each["place"], each["what"]) for each in index["values"])
    for name, times in seen.items():
        if times > 1:
            yield f"{references.INDEX}: {times} times {', '.join(name)}"
    for key in index["sources"].keys() - {each["source"] for each in index["values"]}:
        yield f"{references.INDEX}: nothing is of the source '{key}'"
    for each in index["values"]:
        for fault in faults_of(root, each, index["sources"][each["source"]]):
            yield f"{references.INDEX}: {each['what']}: {fault}"
        if references.known(index, each) not in KNOWN:
            yield f"{references.INDEX}: {each['what']}: known by none of {', '.join(sorted(KNOWN))}"
    count = sum(references.known(index, each) in OF_A_SOURCE for each in index["values"])
    if count < LEAST:
        yield f"{references.INDEX}: {count} values of a source, at least {LEAST}"
    page = pathlib.Path(root, references.PAGE)
    if not page.is_file() or page.read_text(encoding="utf-8") != references.page(index):
        yield f"{references.PAGE}: not of this index; write it anew"


if __name__ == "__main__":
    house.main(problems)
