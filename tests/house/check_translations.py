# SPDX-License-Identifier: GPL-3.0-or-later
"""Every catalogue is whole, and every translation keeps what its source holds: figures, keys, tone, room."""

import collections
import pathlib
import re

import catalogue
import house

LANGUAGES = ["en", "es", "fr", "de"]
PLURAL_FORMS = {"en": 2, "es": 2, "fr": 2, "de": 2}
PLACE = re.compile(r"%(?:L?\d{1,2}|L?n)")
KEY = re.compile(r"&(?=\w)")
TAG = re.compile(r"</?\w+[^>]*>")


def places(text, without_count=False):
    """The marks that figures are put in for, each with how often; %n may be left out of a singular."""
    found = collections.Counter(PLACE.findall(text.replace("%%", "")))
    return collections.Counter({k: v for k, v in found.items() if not (without_count and k in ("%n", "%Ln"))})


def faults_of_form(source, form, singular):
    if not form.strip():
        yield "no translation"
        return
    if places(form, singular) != places(source, singular):
        yield f"figures differ: {sorted(places(source))} became {sorted(places(form))}"
    if len(KEY.findall(form.replace("&&", ""))) != len(KEY.findall(source.replace("&&", ""))):
        yield "keyboard keys (&) differ"
    if sorted(TAG.findall(form)) != sorted(TAG.findall(source)):
        yield "tags differ"
    if ("!" in form or "\u00a1" in form) and "!" not in source:
        yield "an exclamation mark that the source has not"
    if (form[:1].isspace(), form[-1:].isspace()) != (source[:1].isspace(), source[-1:].isspace()):
        yield "space at an end differs"
    if form.count("\n") != source.count("\n"):
        yield "line breaks differ"


def faults_of(message, language):
    if message.state:
        yield message.state
        return
    if message.numerus and len(message.forms) != PLURAL_FORMS[language]:
        yield f"{len(message.forms)} plural forms, {PLURAL_FORMS[language]} needed"
    for number, form in enumerate(message.forms):
        yield from faults_of_form(message.source, form, message.numerus and number == 0)


def problems(root):
    for language in LANGUAGES:
        name = f"translations/strandbench_{language}.ts"
        path = pathlib.Path(root, name)
        if not path.is_file():
            yield f"{name}: missing"
            continue
        said, messages = catalogue.read(path)
        if said.split("_")[0] != language:
            yield f"{name}: says that its language is '{said}'"
        for message in messages:
            if language == "en" and not message.numerus:
                yield f"{name}: {message.name}: the English file holds plurals only"
            for fault in faults_of(message, language):
                yield f"{name}: {message.name}: {fault}"


if __name__ == "__main__":
    house.main(problems)
