# SPDX-License-Identifier: GPL-3.0-or-later
"""What a person reads is marked for translation: no sentence stands in app as a plain Qt literal."""

import re

import house

LITERAL = re.compile(r'(?:u"((?:[^"\\]|\\.)*)"|"((?:[^"\\]|\\.)*)"_L1)')
SENTENCE = re.compile(r"[^\W\d_]{2,} [^\W\d_]{2,}")
NOT_READ = re.compile(r"setObjectName|app/theme/")  # names of threads and widgets; names of fonts


def problems(root):
    for path, name in house.files(root):
        if path.suffix not in house.SOURCES or not name.startswith("app/") or NOT_READ.search(name):
            continue
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
            if NOT_READ.search(line):
                continue
            for literal in LITERAL.finditer(line.split("//")[0]):
                text = literal.group(1) or literal.group(2) or ""
                if SENTENCE.search(text) and not text.startswith("--"):  # options are typed as they stand
                    yield f"{name}:{number}: '{text}' is not marked for translation"


if __name__ == "__main__":
    house.main(problems)
