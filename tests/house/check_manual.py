# SPDX-License-Identifier: GPL-3.0-or-later
"""The manual page tells every command and option that the program's help tells, and none besides."""

import pathlib
import re
import shlex
import subprocess

import house

MANUAL = "app/install/strandbench.1"
OPTION = re.compile(r"^  ((?:-\w, )?--\S+(?: \S+)?)(?:\s{2,}|$)")
COMMAND = re.compile(r"^  ([a-z]+)\s{2,}\S")


def told_by_help(ask):
    """Heading to options as the help has them; those of every command stand with the program. ask(command or None)
    gives a help text."""
    general = ask(None).splitlines()
    told = {}
    for found in filter(None, map(COMMAND.match, general)):
        lines = ask(found.group(1)).splitlines()
        heading = lines[0].removeprefix("Usage: ").removesuffix(" [options]")
        told[heading] = {option.group(1) for option in map(OPTION.match, lines) if option}
    common = set.intersection(*told.values())
    told = {heading: options - common for heading, options in told.items()}
    told["strandbench"] = {option.group(1) for option in map(OPTION.match, general) if option}
    return told


def told_by_manual(text):
    """Heading to options as the manual page has them: what a tag line (.TP) under a heading (.SS) begins with."""
    told, heading, tag = {}, None, False
    for line in text.replace("\\-", "-").splitlines():
        macro, _, rest = line.partition(" ")
        if macro == ".SH":
            heading = None
        elif macro == ".SS":
            heading = rest
            told[heading] = set()
        elif tag and heading and macro in (".B", ".BI", ".BR"):
            told[heading].add("".join(shlex.split(rest)))
        tag = macro == ".TP"
    return told


def differences(manual, program):
    for heading in sorted(manual.keys() | program.keys()):
        if heading not in manual or heading not in program:
            where = "the manual page" if heading not in manual else "the program"
            yield f"{MANUAL}: '{heading}' is not in {where}"
            continue
        for option in sorted(program[heading] - manual[heading]):
            yield f"{MANUAL}: '{heading}' lacks '{option}'"
        for option in sorted(manual[heading] - program[heading]):
            yield f"{MANUAL}: '{heading}' has no '{option}' in the program"


def problems(root, program):
    def ask(command):
        words = [program, *([command] if command else []), "--help"]
        return subprocess.run(words, check=True, capture_output=True, encoding="utf-8").stdout

    text = pathlib.Path(root, MANUAL).read_text(encoding="utf-8")
    yield from differences(told_by_manual(text), told_by_help(ask))


if __name__ == "__main__":
    house.main(problems)
