# SPDX-License-Identifier: GPL-3.0-or-later
"""by_folder.py COUNTS LEAST: gcovr's summary as a table of core's folders; ends with 1 below LEAST % of the lines."""

import collections
import json
import pathlib
import sys

COUNTED = ("line", "branch")
LOWEST = 12  # files named at the end, those with the most lines that were not run


def share(covered, total):
    return f"{100 * covered / total:6.1f} %" if total else "     - "


def row(name, counts):
    shown = f"{name:14}"
    for what in COUNTED:
        covered, total = pair(counts, what)
        shown += f" {covered:6} of {total:6} {share(covered, total)}"
    return shown


def pair(counts, what):
    return counts[what + "_covered"], counts[what + "_total"]


def main(summary, least):
    files = json.loads(pathlib.Path(summary).read_text(encoding="utf-8"))["files"]
    folders = collections.defaultdict(collections.Counter)
    for each in files:
        counts = {f"{what}_{end}": each[f"{what}_{end}"] for what in COUNTED for end in ("covered", "total")}
        folders[each["filename"].split("/")[1]].update(counts)
    print(f"{'folder of core':14} {'lines':>25} {'branches':>25}")
    for name in sorted(folders):
        print(row(name, folders[name]))
    whole = sum(folders.values(), collections.Counter())
    print(row("core", whole))
    print("\nmost lines not run:")
    for each in sorted(files, key=lambda each: each["line_covered"] - each["line_total"])[:LOWEST]:
        print(f"{each['line_total'] - each['line_covered']:5} of {each['line_total']:4} {each['filename']}")
    covered, total = pair(whole, "line")
    print(f"\nof core {share(covered, total).strip()} of the lines, {share(*pair(whole, 'branch')).strip()} of the "
          f"branches; asked for: {least:g} % of the lines")
    return 0 if covered >= total * least / 100 else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], float(sys.argv[2])))
