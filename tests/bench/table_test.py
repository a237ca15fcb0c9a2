# SPDX-License-Identifier: GPL-3.0-or-later
"""The table of the benchmarks, from planted rows whose ratios and growths were worked out by hand."""

import contextlib
import io
import json
import pathlib
import tempfile
import unittest

import table


def planted(**other):
    row = {"bench": "years", "what": "a day", "ours": 30, "unit": "ms", "referee": "SQL", "theirs": 20, "ratio": 1.5}
    return {**row, **other}


def read(*rows):
    return table.read([json.dumps(each) for each in rows])


class Table(unittest.TestCase):
    def column(self, rows, heading):
        return [table.cells(group)[table.HEADINGS.index(heading)] for group in table.grouped(rows)]

    def test_tells_whether_an_aim_is_met_and_counts(self):
        rows = read(planted(aim=1.5), planted(aim=1.4, what="a lot"), planted(what="a week"))
        self.assertEqual(self.column(rows, "met"), ["yes", "NO", ""])
        self.assertEqual(table.closing(table.grouped(rows)), "1 of 2 aims met")

    def test_an_aim_that_is_missed_at_one_size_is_missed(self):
        rows = read(planted(size=10, of="repairs", aim=1.5),
                    planted(size=20, of="repairs", aim=1.5, ours=32, ratio=1.6),
                    planted(size=30, of="repairs", aim=1.5))
        self.assertEqual(self.column(rows, "met"), ["NO"])
        self.assertEqual(self.column(rows, "ratio"), ["1.50 / 1.60 / 1.50"])

    def test_growth_is_of_the_largest_size_to_the_smallest_of_the_same_question(self):
        rows = read(planted(size=1000, of="repairs", ours=90, theirs=60),
                    planted(size=10, of="repairs"),
                    planted(size=100, of="repairs", ours=150, theirs=100),
                    planted(size=5, of="repairs", what="a search"))
        self.assertEqual(self.column(rows, "growth"), ["3.00 (3.00)", ""])
        self.assertEqual(self.column(rows, "size"), ["10 / 100 / 1 000 repairs", "5 repairs"])
        self.assertEqual(self.column(rows, "ours"), ["90.0 ms", "30.0 ms"])

    def test_keeps_referees_units_and_benchmarks_apart(self):
        rows = read(planted(size=10, of="pages"), planted(size=20, of="pages", referee="C"),
                    planted(size=30, of="pages", unit="s"), planted(size=40, of="pages", bench="paper"))
        self.assertEqual(self.column(rows, "growth"), ["", "", "", ""])

    def test_figures_are_told_to_three_places_or_more(self):
        told = [table.figure(each) for each in (0.0314, 0.5, 3.14159, 31.4159, 314.159, 31415.9)]
        self.assertEqual(told, ["0.03", "0.50", "3.14", "31.4", "314", "31 416"])

    def test_refuses_rows_that_are_not_whole_by_line_and_field(self):
        for wrong, named in ((planted(theirs=0), "line 2: theirs"), (planted(unit=""), "line 2: unit"),
                             (planted(ratio=1.4), "line 2: ratio"), (planted(size=3), "line 2: size and of"),
                             (planted(ours="30"), "line 2: ours")):
            with self.subTest(named), self.assertRaisesRegex(ValueError, named):
                read(planted(), wrong)
        with self.assertRaisesRegex(ValueError, "line 1: no JSON"):
            table.read(["{"])

    def run_on(self, text, *arguments):
        with tempfile.TemporaryDirectory() as folder:
            path = pathlib.Path(folder, "rows")
            path.write_text(text, encoding="utf-8")
            out, err = io.StringIO(), io.StringIO()
            with contextlib.redirect_stdout(out), contextlib.redirect_stderr(err):
                status = table.main([str(path), *arguments])
        return status, out.getvalue().splitlines(), err.getvalue()

    def test_both_ways_of_printing_hold_every_row(self):
        text = json.dumps(planted(aim=2)) + "\n" + json.dumps(planted(bench="commit", what="a | b")) + "\n"
        status, lines, _ = self.run_on(text)
        self.assertEqual((status, len(lines), lines[-1]), (0, 5, "1 of 1 aims met"))
        self.assertRegex(lines[1], r"^years +a day +30\.0 ms +SQL +20\.0 ms +1\.50 +2 +yes$")
        status, lines, _ = self.run_on(text, "--markdown")
        self.assertEqual((status, len(lines)), (0, 6))
        self.assertEqual(lines[3], "| commit | a \\| b |  | 30.0 ms | SQL | 20.0 ms | 1.50 |  |  |  |")

    def test_a_wrong_row_ends_it_with_status_2(self):
        status, lines, told = self.run_on("[]\n")
        self.assertEqual((status, lines), (2, []))
        self.assertIn("line 1", told)


if __name__ == "__main__":
    unittest.main()
