# SPDX-License-Identifier: GPL-3.0-or-later
"""Words that do not belong into the tree, or not into a part of it; each with its reason."""

import re

import house

# (pattern, where by the start of the name, except where, reason). The patterns are split so that this
# file does not find itself.
RULES = [
    (r"\b(TO" r"DO|FIX" r"ME|X" r"XX|HA" r"CK)\b", "", (), "finish it, or open a report; the tree holds no reminders"),
    (r"(?<![\w.:/-])/(work|home|root|mnt|media|Us" r"ers)/\w", "", (), "a path of one machine"),
    (r"(?<![\w.:/-])/tm" r"p/", "", (), "a fixed path for all; ask for a temporary folder"),
    (r"\bis" r"sues? #?\d", "", ("LICENSE",), "says nothing to a reader of the tree"),
    (r"https?://(?!(www\.)?(gnu\.org|fsf\.org|w3\.org|freedesktop\.org)\b)", "",
     (), "name a published source by its title; nothing here is fetched"),
    (r"\bTouch" r"Gesture\b", "", (), "clicks the button under the finger when a scroll ends"),
    (r"\bprocess" r"Events\b", "", ("tests/", "demo/walk/"), "a nested event loop"),
    (r"\b(SIG" r"NAL|SL" r"OT)\(", "", (), "connect by pointer, so that the compiler checks it"),
    (r"\bQ_" r"ASSERT\b", "core/", (), "gone in a release; throw, or return a fault"),
    (r"#include <Q(Sql\w*|tSql\b)", "",
     ("core/repairlog/", "tests/core/repairlog/", "tests/crash/", "tests/bench/commit/", "tests/bench/years/"),
     "only core/repairlog knows SQL"),
    (r"\b(job|headless|look-and-touch|cure-model|reference-values|craft|architecture)[.]md\b", "", (),
     "a document that is not in the tree"),
    (r"\bstd::(format|expected|views|ranges::views)\b", "", (), "not in Debian 12's compilers, or not in its clang"),
]


def problems(root):
    rules = [(re.compile(pattern), *rest) for pattern, *rest in RULES]
    for path, name in house.files(root):
        if not house.is_text(path):
            continue
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
            for pattern, where, unless, reason in rules:
                found = pattern.search(line)
                if found and name.startswith(where) and not name.startswith(tuple(unless)):
                    yield f"{name}:{number}: '{found.group()}': {reason}"


if __name__ == "__main__":
    house.main(problems)
