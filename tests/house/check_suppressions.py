# SPDX-License-Identifier: GPL-3.0-or-later
"""Whoever tells a tool to look away names what it is not to see, and says why."""

import re

import house

REASON = r"\s*[:;]\s*\S+( \S+)+"  # a colon or a semicolon, and some words
# (in which files, what looks away, how it looks with its reason, what is asked for). The patterns are split so that
# this file does not find itself.
IN_LINE = [
    (house.SOURCES, r"NO" r"LINT", r"NO" r"LINT(NEXTLINE|BEGIN)?\([\w.,\- ]+\)" + REASON + r"|NO" r"LINTEND\(",
     "NOLINT(check): reason"),
    (house.SOURCES, r"cppcheck" r"-suppress", r"cppcheck" r"-suppress \w+" + REASON, "cppcheck-suppress id ; reason"),
    (house.SOURCES, r"(GCO[V]|LCO[V]|GCOVR)" r"_EXCL", r"_EXCL_\w+" + REASON, "GCOVR_EXCL_LINE: reason"),
    ({"", ".sh"}, r"# shell" r"check .*\bdisable=", r"disable=[\w,]+ # \S+( \S+)+",
     "# shellcheck disable=SC1 # reason"),
]
# What is explained by a comment on its own line or on the one above.
BY_COMMENT = [
    (r"#pragma (GCC|clang) diag" r"nostic ignored", {".h", ".cpp"}, "//"),
    (r"-Wno" r"-[\w-]+", {".txt", ".cmake", ".py"}, "#"),
    (r"^(leak|race|thread):", {".txt", ".supp"}, "#"),
]
TIDY = ".clang-tidy"
NOT_OURS = ("tests/house/check_suppressions.py", "tests/house/checks_can_fail.py")


def without_reason(name, suffix, lines):
    for number, line in enumerate(lines, 1):
        for suffixes, what, explained, asked in IN_LINE:
            if suffix in suffixes and re.search(what, line) and not re.search(explained, line):
                yield f"{name}:{number}: looks away without a reason; write '{asked}'"
        above = lines[number - 2].strip() if number > 1 else ""
        for what, suffixes, comment in BY_COMMENT:
            found = re.search(what, line)
            if not found or suffix not in suffixes:
                continue
            rest = line[found.end():]
            if not re.search(comment + r" \S+", rest) and not re.match(comment + r" (?!SPDX)\S+", above):
                yield f"{name}:{number}: '{found.group().strip()}' has no reason beside or above it"


def switched_off_unexplained(text):
    """Checks of clang-tidy that are taken out of a group again, without a line on them at the head of the file."""
    head = text.split("\nChecks:")[0]
    for check in re.findall(r"^  -([\w.\-]+[a-z]),?$", text, re.M):
        if not re.search(rf"^#  [^:\n]*\b{re.escape(check)}\b[^:\n]*: \S+", head, re.M):
            yield f"{TIDY}: {check} is switched off, and nothing at its head says why"


def problems(root):
    for path, name in house.files(root):
        if not house.is_text(path) or name in NOT_OURS or path.suffix in {".ts", ".md"}:
            continue
        text = path.read_text(encoding="utf-8")
        if name == TIDY:
            yield from switched_off_unexplained(text)
        else:
            yield from without_reason(name, path.suffix, text.splitlines())


if __name__ == "__main__":
    house.main(problems)
