# SPDX-License-Identifier: GPL-3.0-or-later
"""Reads .ts files: messages as plain values."""

import dataclasses
import xml.etree.ElementTree


@dataclasses.dataclass(frozen=True)
class Message:
    context: str
    source: str
    comment: str       # tells two alike sources apart
    state: str         # "", "unfinished", "vanished", "obsolete"
    numerus: bool
    forms: tuple       # one text, or one for each plural form

    @property
    def key(self):
        return (self.context, self.source, self.comment)

    @property
    def name(self):
        return f"{self.context}: '{self.source}'" + (f" ({self.comment})" if self.comment else "")


def text(element):
    """The text of an element with Qt's <byte value="x.."/> spelt out; empty for none."""
    if element is None:
        return ""
    parts = [element.text or ""]
    for child in element:
        if child.tag == "byte":
            parts.append(chr(int(child.get("value").replace("x", "0x"), 0)))
        parts.append(child.tail or "")
    return "".join(parts)


def read(path):
    """(language, messages) of a .ts file."""
    top = xml.etree.ElementTree.parse(path).getroot()
    messages = []
    for context in top.iter("context"):
        for message in context.iter("message"):
            numerus = message.get("numerus") == "yes"
            translation = message.find("translation")
            forms = [translation] if not numerus else translation.findall("numerusform")
            messages.append(Message(
                context=text(context.find("name")), source=text(message.find("source")),
                comment=text(message.find("comment")), state=translation.get("type", ""), numerus=numerus,
                forms=tuple(text(form) for form in forms)))
    return top.get("language", ""), messages
