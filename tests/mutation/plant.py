# SPDX-License-Identifier: GPL-3.0-or-later
"""Finds where a source or a table can be made wrong in one place, and how. Nothing is written here.

C++ is read as tokens, not as a syntax tree: comments, preprocessor lines and template brackets are left alone by how
the house lays code out (a comparison has a space on both sides, a template bracket has none).
"""

import collections
import dataclasses
import json
import re

TOKEN = re.compile(r"""
    (?P<skip> //[^\n]* | /\*.*?\*/ | ^[ \t]*\#[^\n]* | ^[ \t]*(?:using|namespace|static_assert)\b[^\n]*)
  | (?P<text> (?:u8|u|L)? "(?:\\.|[^"\\\n])*" (?:_\w+)? )
  | (?P<letter> (?:u8|u|L)? '(?:\\.|[^'\\\n])+' )
  | (?P<number> \d[\d']* (?:\.\d+)? (?:[eE][-+]?\d+)? [uUlL]* )
  | (?P<name> [A-Za-z_]\w* )
  | (?P<sign> <=> | <<= | >>= | ->\* | \.\* | << | >> | <= | >= | == | != | && | \|\| | \+= | -= | \*= | /= | \+\+ | --
            | -> | :: | . )
""", re.X | re.S | re.M)

BETWEEN = {  # signs with a space on either side: what each becomes
    "<": [("boundary", "<="), ("opposite", ">=")], "<=": [("boundary", "<"), ("opposite", ">")],
    ">": [("boundary", ">="), ("opposite", "<=")], ">=": [("boundary", ">"), ("opposite", "<")],
    "==": [("opposite", "!=")], "!=": [("opposite", "==")],
    "+": [("arithmetic", "-")], "-": [("arithmetic", "+")], "*": [("arithmetic", "/")], "/": [("arithmetic", "*")],
    "+=": [("arithmetic", "-=")], "-=": [("arithmetic", "+=")],
    "&&": [("logic", "||")], "||": [("logic", "&&")],
}
STATEMENT = re.compile(r"^[ \t]+(?!return\b|throw\b|case\b|using\b|static\b|delete\b|else\b)"
                       r"[A-Za-z_][\w:.\[\]]*(?:->[\w.]+)*(?:\(| [-+*/]?= )[^\n]*;[ \t]*(?=\n|//)", re.M)
ROW = re.compile(r"^[ \t]+\{[^\n{}]*\},[ \t]*(?=\n|//)", re.M)


@dataclasses.dataclass(frozen=True)
class Fault:
    """One fault: in <file>, each (from, to, text) of <edits> put in the place of what is there."""
    file: str
    kind: str
    edits: tuple
    line_number: int
    line: str     # the lines it is in, as they are, in one
    becomes: str  # and as they would be

    def applied_to(self, source):
        return applied(source, self.edits)

    def key(self):
        return self.file, self.line, self.becomes


def applied(source, edits):
    for start, end, text in sorted(edits, reverse=True):
        source = source[:start] + text + source[end:]
    return source


def in_one(text):
    return " ".join(text.split())


def fault(file, source, kind, *edits):
    first = source.rfind("\n", 0, min(edit[0] for edit in edits)) + 1
    last = source.find("\n", max(edit[1] for edit in edits))
    last = len(source) if last < 0 else last
    moved = [(start - first, end - first, text) for start, end, text in edits]
    lines = source[first:last]
    return Fault(file, kind, edits, source.count("\n", 0, first) + 1, in_one(lines), in_one(applied(lines, moved)))


def tokens(source):
    return [found for found in TOKEN.finditer(source) if found.lastgroup != "skip" and not found.group().isspace()]


def spaced(source, token):
    return source[token.start() - 1].isspace() and source[token.end():token.end() + 1].isspace()


def closing(parts, opening):
    """The token that closes the bracket at <opening>, or None."""
    depth = 0
    for token in parts[opening:]:
        depth += {"(": 1, ")": -1}.get(token.group(), 0)
        if depth == 0:
            return token
    return None


def numbers_near(number):
    """What a constant becomes: one more and one less, or a tenth of it either way."""
    digits = number.replace("'", "").rstrip("uUlL")
    if digits.isdigit():
        value = int(digits)
        return [str(value + 1)] + ([str(value - 1)] if value > 0 else [])
    value = float(digits)
    return ["1.0"] if value == 0 else [f"{value * 1.1:.12g}", f"{value * 0.9:.12g}"]


def enumerators(sources):
    """Of each Name::Name pair of the files, the second names that the first is seen with."""
    seen = collections.defaultdict(set)
    for source in sources:
        parts = tokens(source)
        for scope, sign, name, after in zip(parts, parts[1:], parts[2:], parts[3:]):
            if is_enumerator(scope, sign, name, after):
                seen[scope.group()].add(name.group())
    return {scope: sorted(names) for scope, names in seen.items()}


def is_enumerator(scope, sign, name, after):
    return (sign.group() == "::" and scope.lastgroup == name.lastgroup == "name" and scope.group()[0].isupper()
            and name.group()[0].isupper() and after.group() not in ("(", "::", "<", "{", "*"))


def faults_of_signs(file, source, parts):
    for before, token in zip(parts, parts[1:]):
        sign = token.group()
        if sign in BETWEEN and token.lastgroup == "sign" and spaced(source, token):
            if before.group() in ("return", "=", "(", ",", "operator"):
                continue
            for kind, other in BETWEEN[sign]:
                yield fault(file, source, kind, (token.start(), token.end(), other))
        elif sign == "!":
            yield fault(file, source, "negation", (token.start(), token.end(), ""))


def faults_of_conditions(file, source, parts):
    for index, token in enumerate(parts[:-1]):
        if token.group() != "if" or parts[index + 1].group() != "(":
            continue
        opening, end = parts[index + 1], closing(parts, index + 1)
        inside = source[opening.end():end.start()] if end else ";"
        if ";" in inside or re.match(r"\s*(?:const )?(?:auto|[A-Z]\w*)[*&]? ?[*&]?\w+ = ", inside):
            continue  # it declares something; negated it would not compile
        yield fault(file, source, "condition", (opening.end(), opening.end(), "!("), (end.start(), end.start(), ")"))


def is_thrown(source, token):
    """Whether it is the text of an exception, which is for the impossible and read by nobody but us."""
    return source[source.rfind("\n", 0, token.start()) + 1:token.start()].lstrip().startswith("throw ")


def faults_of_values(file, source, parts, known):
    for index, token in enumerate(parts):
        text = token.group()
        if token.lastgroup == "number":
            for other in numbers_near(text):
                yield fault(file, source, "constant", (token.start(), token.end(), other))
        elif text in ("true", "false"):
            other = "false" if text == "true" else "true"
            yield fault(file, source, "truth", (token.start(), token.end(), other))
        elif token.lastgroup == "text" and text.count('"') == 2 and not is_thrown(source, token):
            end = token.start() + text.rindex('"')
            yield fault(file, source, "text", (end, end, "_planted"))
        if index + 3 < len(parts) and is_enumerator(*parts[index:index + 4]):
            others = [name for name in known.get(text, []) if name != parts[index + 2].group()]
            if others:
                name = parts[index + 2]
                next_one = next((each for each in others if each > name.group()), others[0])
                yield fault(file, source, "enumerator", (name.start(), name.end(), next_one))


def faults_of_lines(file, source):
    for found in STATEMENT.finditer(source):
        line = found.group()
        if line.count("(") == line.count(")") and line.count("{") == line.count("}"):
            start = found.start() + len(line) - len(line.lstrip())
            yield fault(file, source, "line", (start, found.end(), ";"))
    for found in ROW.finditer(source):
        yield fault(file, source, "row", (found.start(), found.end(), ""))


def faults_of_source(file, source, known):
    parts = tokens(source)
    yield from faults_of_signs(file, source, parts)
    yield from faults_of_conditions(file, source, parts)
    yield from faults_of_values(file, source, parts, known)
    yield from faults_of_lines(file, source)


def faults_of_table(file, source):
    """Of a table in JSON: each text value made the next of those that stand under the same key; each line left out."""
    values = collections.defaultdict(set)
    members = list(re.finditer(r'"(\w+)": "([^"]*)"', source))
    for member in members:
        values[member.group(1)].add(member.group(2))
    for member in members:
        others = sorted(values[member.group(1)] - {member.group(2)})
        if others:
            other = next((each for each in others if each > member.group(2)), others[0])
            yield fault(file, source, "value", (member.start(2), member.end(2), other))
    for found in re.finditer(r"^[ \t]+\"\w+\": \{[^{}]*\}(,?)\n", source, re.M):
        start = found.start()
        if not found.group(1):  # the last of its object takes the comma before it along
            start = source.rindex(",", 0, start)
        one = fault(file, source, "row", (start, found.end() - (0 if found.group(1) else 1), ""))
        json.loads(one.applied_to(source))
        yield one


def faults_of(files):
    """All faults of {name: text}, in the order of the files and of their lines."""
    known = enumerators(text for name, text in files.items() if not name.endswith(".json"))
    found = []
    for name, text in files.items():
        of_file = faults_of_table(name, text) if name.endswith(".json") else faults_of_source(name, text, known)
        found.extend(sorted(of_file, key=lambda each: (each.line_number, each.edits)))
    return list(dict.fromkeys(found))
