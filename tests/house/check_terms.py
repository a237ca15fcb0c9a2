# SPDX-License-Identifier: GPL-3.0-or-later
"""Where a source holds a term of the termbase, its translation holds that term, by one of the stems it may take.

A term is checked in the languages it lists stems for. Of two terms that overlap the longer one is meant: 'gel coat' is
no 'gel'. What is translated otherwise with good reason stands in term_exceptions.json beside this file."""

import json
import pathlib
import re

import catalogue
import house

LANGUAGES = ["es", "fr", "de"]
TERMS = "resources/termbase/terms.json"
EXCEPTIONS = "tests/house/term_exceptions.json"


def folded(text):
    return text.lower().replace("\u00a0", " ").replace("\u00ad", "")


def pattern(term):
    """The term as a word by itself, one or many: 'batch', 'batches', 'batch(es)'."""
    return re.compile(r"(?<![\w-])" + re.escape(folded(term)) + r"(?:s|es|\(s\)|\(es\))?(?![\w-])")


def terms_in(source, terms):
    """The terms that a source holds, the longest first; what belongs to one is not looked at again."""
    rest = folded(source)
    for term in sorted(terms, key=lambda each: -len(each["en"])):
        shorter = pattern(term["en"]).sub("\n", rest)
        if shorter != rest:
            yield term
        rest = shorter


def problems(root):
    terms = json.loads(pathlib.Path(root, TERMS).read_text(encoding="utf-8"))["terms"]
    exceptions = json.loads(pathlib.Path(root, EXCEPTIONS).read_text(encoding="utf-8"))["exceptions"]
    excused = {(each["term"], each["language"], each["source"]): each["why"] for each in exceptions}
    used = set()
    for each, why in excused.items():
        if not why.strip():
            yield f"{EXCEPTIONS}: {each[0]} in {each[1]}: '{each[2]}': no reason"
    for language in LANGUAGES:
        name = f"translations/strandbench_{language}.ts"
        for message in catalogue.read(pathlib.Path(root, name))[1]:
            for term in terms_in(message.source, terms):
                stems = [folded(stem) for stem in term.get(f"stems_{language}", [])]
                if not stems or all(any(stem in folded(form) for stem in stems) for form in message.forms):
                    continue
                key = (term["id"], language, message.source)
                if key in excused:
                    used.add(key)
                else:
                    yield f"{name}: {message.name}: '{term['en']}' is '{term[language]}', not in {message.forms}"
    for key in sorted(excused.keys() - used):
        yield f"{EXCEPTIONS}: {key[0]} in {key[1]}: '{key[2]}': excuses nothing"


if __name__ == "__main__":
    house.main(problems)
