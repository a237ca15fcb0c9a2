# SPDX-License-Identifier: GPL-3.0-or-later
"""The index of published values tells what stands in the tests: file, test, source, value and tolerance of each entry;
and there are at least sixty that rest on a source, not on memory or on a library. Each that is not used has its
reason."""

import collections
import pathlib
import re

import house
import references

LEAST = 60
OF_A_SOURCE = {"looked up", "quoted"}
KNOWN = OF_A_SOURCE | {"computed", "from memory", "library", "not told"}
HEADING = {"looked up", "from memory"}
LEAST_WORDS = 4
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


def of_the_dismissed(index, unused):
    """Whole, each once, each with a reason, and none of what the index holds."""
    used = {each["what"] for each in index["values"]}
    for what, times in collections.Counter(each.get("what", "") for each in unused).items():
        if times > 1:
            yield f"{references.DISMISSED}: {times} times {what}"
    for each in unused:
        lacks = [name for name in ("what", "source", "value", "why") if not str(each.get(name, "")).strip()]
        if lacks:
            yield f"{references.DISMISSED}: {each.get('what', each)}: without {', '.join(lacks)}"
        elif len(each["why"].split()) < LEAST_WORDS:
            yield f"{references.DISMISSED}: {each['what']}: '{each['why']}' is no reason"
        elif each["what"] in used:
            yield f"{references.DISMISSED}: {each['what']}: stands in {references.INDEX} as well"


def of_the_page(root, index, unused):
    if any("heading" not in each for each in index["sources"].values()) or any("why" not in each for each in unused):
        return
    page = pathlib.Path(root, references.PAGE)
    if not page.is_file() or page.read_text(encoding="utf-8") != references.page(index, unused):
        yield f"{references.PAGE}: not of this index; write it anew"


def problems(root):
    index = references.read(root)
    unused = references.dismissed(root)
    seen = collections.Counter((each["source"], each["place"], each["what"]) for each in index["values"])
    for name, times in seen.items():
        if times > 1:
            yield f"{references.INDEX}: {times} times {', '.join(name)}"
    for key in index["sources"].keys() - {each["source"] for each in index["values"]}:
        yield f"{references.INDEX}: nothing is of the source '{key}'"
    for key, source in index["sources"].items():
        if source.get("heading") not in HEADING:
            yield f"{references.INDEX}: '{key}' has a heading known by none of {', '.join(sorted(HEADING))}"
    for each in index["values"]:
        for fault in faults_of(root, each, index["sources"][each["source"]]):
            yield f"{references.INDEX}: {each['what']}: {fault}"
        if references.known(index, each) not in KNOWN:
            yield f"{references.INDEX}: {each['what']}: known by none of {', '.join(sorted(KNOWN))}"
    count = sum(references.known(index, each) in OF_A_SOURCE for each in index["values"])
    if count < LEAST:
        yield f"{references.INDEX}: {count} values of a source, at least {LEAST}"
    yield from of_the_dismissed(index, unused)
    yield from of_the_page(root, index, unused)


if __name__ == "__main__":
    house.main(problems)
