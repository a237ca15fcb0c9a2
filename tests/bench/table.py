# SPDX-License-Identifier: GPL-3.0-or-later
"""One table of what the benchmarks told: each question beside its referee, with ratio, aim and growth.

Usage: table.py ROWS [--markdown]. ROWS holds a row a line, as rows.h and start.py write them; those of one question at
several sizes become one line. The ratio is ours to the referee's, size by size: below 1 we are quicker, or smaller. The
figures of both are those of the largest size, and growth is how many times as much it takes as the smallest, with the
referee's own growth in brackets. An aim is met where it is met at every size. A row that is not whole ends it with
status 2.
"""

import json
import sys

NUMBERS = ("ours", "theirs", "ratio")
WORDS = ("bench", "what", "unit", "referee")
HEADINGS = ("benchmark", "question", "size", "ours", "referee", "its", "ratio", "aim", "met", "growth")
RIGHT = {"size", "ours", "its", "ratio", "aim", "growth"}


def judge(row):
    """Raises ValueError that names the field which is wrong."""
    if not isinstance(row, dict):
        raise ValueError(f"no row: {row!r}")
    for name in WORDS:
        if not isinstance(row.get(name), str) or not row[name]:
            raise ValueError(f"{name}: {row.get(name)!r}; it needs words")
    for name in NUMBERS:
        if not isinstance(row.get(name), (int, float)) or not row[name] > 0:
            raise ValueError(f"{name}: {row.get(name)!r}; it needs a number over 0")
    if ("size" in row) != ("of" in row):
        raise ValueError("size and of go together")
    if not abs(row["ratio"] * row["theirs"] / row["ours"] - 1) < 1e-6:
        raise ValueError(f"ratio: {row['ratio']} is not {row['ours']} to {row['theirs']}")


def read(lines):
    """Rows out of lines of JSON. Raises ValueError that names line and field."""
    rows = []
    for number, line in enumerate(lines, 1):
        try:
            rows.append(json.loads(line))
            judge(rows[-1])
        except json.JSONDecodeError as error:
            raise ValueError(f"line {number}: no JSON: {error}") from error
        except ValueError as error:
            raise ValueError(f"line {number}: {error}") from error
    return rows


def grouped(rows):
    """Rows of the same question beside the same referee, by size; in the order of the first of each."""
    groups = {}
    for row in rows:
        groups.setdefault((row["bench"], row["what"], row["referee"], row["unit"], row.get("of")), []).append(row)
    return [sorted(group, key=lambda row: row.get("size", 0)) for group in groups.values()]


def growth(group):
    """Ours and the referee's of the largest size to the smallest; empty of one size."""
    if len(group) < 2 or "size" not in group[0]:
        return ""
    least, most = group[0], group[-1]
    return f"{most['ours'] / least['ours']:.2f} ({most['theirs'] / least['theirs']:.2f})"


def figure(value):
    """Three figures or more from 1 on, two places below, without an exponent."""
    places = 2 if value < 10 else 1 if value < 100 else 0
    return f"{value:,.{places}f}".replace(",", " ")


def size(group):
    if "size" not in group[0]:
        return ""
    return " / ".join(f"{row['size']:,}".replace(",", " ") for row in group) + " " + group[0]["of"]


def met(group):
    """At every size that has an aim."""
    aimed = [row["ratio"] <= row["aim"] for row in group if "aim" in row]
    return ("yes" if all(aimed) else "NO") if aimed else ""


def cells(group):
    last = group[-1]
    return (last["bench"], last["what"], size(group), f"{figure(last['ours'])} {last['unit']}", last["referee"],
            f"{figure(last['theirs'])} {last['unit']}", " / ".join(f"{row['ratio']:.2f}" for row in group),
            f"{last['aim']:g}" if "aim" in last else "", met(group), growth(group))


def plain(groups):
    lines = [HEADINGS] + [cells(group) for group in groups]
    widths = [max(len(line[i]) for line in lines) for i in range(len(HEADINGS))]
    for line in lines:
        yield "  ".join(text.rjust(width) if name in RIGHT else text.ljust(width)
                        for name, text, width in zip(HEADINGS, line, widths)).rstrip()


def markdown(groups):
    yield "| " + " | ".join(HEADINGS) + " |"
    yield "| " + " | ".join("---:" if name in RIGHT else "---" for name in HEADINGS) + " |"
    for group in groups:
        yield "| " + " | ".join(text.replace("|", "\\|") for text in cells(group)) + " |"


def closing(groups):
    judged = [met(group) for group in groups if met(group)]
    return f"{judged.count('yes')} of {len(judged)} aims met"


def main(arguments):
    names = [each for each in arguments if each != "--markdown"]
    if len(names) != 1:
        print("Usage: table.py ROWS [--markdown]", file=sys.stderr)
        return 2
    try:
        with open(names[0], encoding="utf-8") as file:
            rows = read(file)
    except (OSError, ValueError) as error:
        print(f"{names[0]}: {error}", file=sys.stderr)
        return 2
    groups = grouped(rows)
    lines = markdown(groups) if "--markdown" in arguments else plain(groups)
    print("\n".join([*lines, "", closing(groups)]))
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
