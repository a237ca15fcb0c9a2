# SPDX-License-Identifier: GPL-3.0-or-later
"""What is planted, on a few lines of each kind; and that the list of equivalents speaks of faults that there are."""

import json
import pathlib
import unittest

import mutate
import plant

HERE = pathlib.Path(__file__).resolve().parent


def become(source, file="a.cpp"):
    return {(each.kind, each.becomes) for each in plant.faults_of({file: source})}


class Sources(unittest.TestCase):
    def test_signs(self):
        self.assertEqual(become("bool f(int a, int b) { return a < b && a - b; }\n"), {
            ("boundary", "bool f(int a, int b) { return a <= b && a - b; }"),
            ("opposite", "bool f(int a, int b) { return a >= b && a - b; }"),
            ("logic", "bool f(int a, int b) { return a < b || a - b; }"),
            ("arithmetic", "bool f(int a, int b) { return a < b && a + b; }")})

    def test_what_is_no_sign(self):
        self.assertEqual(become("std::vector<int> f(const T* a, T&& b); // a < b\n#if A == B\n/* a + b */\n"
                                "throw std::logic_error(\"none\");\n"
                                "char c = '<';\nusing A = B<C>;\n"), set())

    def test_values(self):
        self.assertEqual(become("f(7, 0.5, true, u\"a\"_s);\n"), {
            ("constant", "f(8, 0.5, true, u\"a\"_s);"), ("constant", "f(6, 0.5, true, u\"a\"_s);"),
            ("constant", "f(7, 0.55, true, u\"a\"_s);"), ("constant", "f(7, 0.45, true, u\"a\"_s);"),
            ("truth", "f(7, 0.5, false, u\"a\"_s);"), ("text", "f(7, 0.5, true, u\"a_planted\"_s);")})

    def test_enumerators_become_others_of_the_same(self):
        self.assertEqual(become("f(Kind::A, Other::X);\ng(Kind::B, x);\n"), {
            ("enumerator", "f(Kind::B, Other::X);"), ("enumerator", "g(Kind::A, x);")})

    def test_conditions_over_lines(self):
        found = plant.faults_of({"a.cpp": "void f()\n{\n    if (!g(a,\n           b))\n        h();\n}\n"})
        self.assertEqual({(each.kind, each.becomes) for each in found}, {
            ("negation", "if (g(a,"), ("condition", "if (!(!g(a, b)))"), ("line", ";")})
        self.assertEqual(become("void f() { if (const auto x = g()) h(x); }\n"), set())

    def test_rows(self):
        self.assertIn(("row", ""), become("T t{{\n    {x, y},\n    {y, x},\n}};\n"))

    def test_each_changes_the_source_in_one_place(self):
        source = "void f()\n{\n    if (a < 1)\n        b.c(u\"t\"_s, K::A, K::B);\n}\n"
        for each in plant.faults_of({"a.cpp": source}):
            self.assertNotEqual(each.applied_to(source), source)
            self.assertIn(each.becomes, plant.in_one(each.applied_to(source)))


class Tables(unittest.TestCase):
    TABLE = '{\n  "a": {\n    "x": {"s": "yes", "r": "p"},\n    "y": {"s": "no", "r": "q"}\n  }\n}\n'

    def test_a_table_stays_json(self):
        found = plant.faults_of({"t.json": self.TABLE})
        self.assertEqual(len([each for each in found if each.kind == "value"]), 4)
        self.assertEqual(len([each for each in found if each.kind == "row"]), 2)
        for each in found:
            self.assertNotEqual(json.loads(each.applied_to(self.TABLE)), json.loads(self.TABLE))


class Drawn(unittest.TestCase):
    def test_the_same_for_a_seed_and_every_kind_before_one_twice(self):
        faults = plant.faults_of({"a.cpp": "    f(1, 2, 3, 4, 5, 6, 7, 8, true);\n"})
        self.assertEqual(mutate.sampled(faults, 5, 1), mutate.sampled(faults, 5, 1))
        self.assertNotEqual(mutate.sampled(faults, 5, 1), mutate.sampled(faults, 5, 2))
        self.assertEqual({each.kind for each in mutate.sampled(faults, 3, 1)}, {"constant", "truth", "line"})
        self.assertEqual(len(mutate.sampled(faults, 1000, 1)), len(faults))


class Equivalents(unittest.TestCase):
    def test_each_is_a_fault_of_today_and_has_a_reason(self):
        listed = json.loads((HERE / "areas.json").read_text(encoding="utf-8"))
        keys = set()
        for area in listed.values():
            keys |= {each.key() for each in plant.faults_of(
                {file: (mutate.ROOT / file).read_text(encoding="utf-8") for file in area["files"]})}
        for each in json.loads((HERE / "equivalents.json").read_text(encoding="utf-8"))["equivalents"]:
            self.assertIn((each["file"], each["line"], each["becomes"]), keys)
            self.assertGreater(len(each["reason"].split()), 4, each)


if __name__ == "__main__":
    unittest.main()
