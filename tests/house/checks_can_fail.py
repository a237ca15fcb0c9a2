# SPDX-License-Identifier: GPL-3.0-or-later
"""The house checks, each on a small tree that is wrong in one way: a check that cannot fail checks nothing."""

import json
import os
import pathlib
import tempfile
import unittest

import catalogue
import check_cppcheck
import check_drawings
import check_layout
import check_lengths
import check_licence_lines
import check_links
import check_manual
import check_order
import check_references
import check_spoken
import check_strings
import check_suppressions
import check_terms
import check_translations
import check_version
import check_words
import references

LICENCE = "// SPDX-License-Identifier: GPL-3.0-or-later\n"


def translation(source, form, kind="", numerus=False):
    forms = "".join(f"<numerusform>{each}</numerusform>" for each in form) if numerus else form
    mark = ' numerus="yes"' if numerus else ""
    state = f' type="{kind}"' if kind else ""
    return (f"<message{mark}><source>{source}</source>"
            f"<translation{state}>{forms}</translation></message>")


class Tree(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.root = pathlib.Path(folder.name)

    def write(self, name, text):
        path = self.root / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")

    def found(self, check):
        return list(check.problems(self.root))


class Terms(Tree):
    def catalogues(self, source, form):
        for language in check_terms.LANGUAGES:
            self.write(f"translations/strandbench_{language}.ts",
                       f'<TS language="{language}"><context><name>C</name>{translation(source, form)}</context></TS>')

    def setUp(self):
        super().setUp()
        self.write(check_terms.TERMS, """{"terms": [
            {"id": "gel", "en": "gel", "de": "Gel", "stems_de": ["gel"]},
            {"id": "gel_coat", "en": "gel coat", "de": "Gelcoat", "stems_de": ["gelcoat"]},
            {"id": "batch", "en": "batch", "de": "Ansatz", "stems_de": ["ansatz", "ans\u00e4tz"]}]}""")
        self.write(check_terms.EXCEPTIONS, '{"exceptions": []}')

    def test_another_word_than_the_termbases(self):
        self.catalogues("2 batches of it", "2 Ans\u00e4tze davon")
        self.assertEqual(self.found(check_terms), [])
        self.catalogues("2 batches of it", "2 Mischungen davon")
        self.assertEqual(len(self.found(check_terms)), 1)

    def test_a_part_of_a_longer_term_is_not_looked_at(self):
        self.catalogues("a gel coat", "ein Gelcoat")
        self.assertEqual(self.found(check_terms), [])
        self.catalogues("a gel coat", "ein Gel")
        self.assertEqual(len(self.found(check_terms)), 1)
        self.catalogues("a gelatine", "eine Sache")
        self.assertEqual(self.found(check_terms), [])

    def test_an_exception_has_a_reason_and_excuses_something(self):
        said = '{"term": "batch", "language": "de", "source": "a batch", "why": "%s"}'
        self.catalogues("a batch", "eine Mischung")
        self.write(check_terms.EXCEPTIONS, '{"exceptions": [' + said % "so said" + "]}")
        self.assertEqual(self.found(check_terms), [])
        self.write(check_terms.EXCEPTIONS, '{"exceptions": [' + said % "" + "]}")
        self.assertEqual(len(self.found(check_terms)), 1)
        self.catalogues("a batch", "ein Ansatz")
        self.write(check_terms.EXCEPTIONS, '{"exceptions": [' + said % "so said" + "]}")
        self.assertEqual(len(self.found(check_terms)), 1)


class Sources(Tree):
    def test_a_stranger_at_the_top(self):
        for name in check_layout.TOP:
            (self.root / name).mkdir()
        self.assertEqual(self.found(check_layout), [])
        self.write("notes/plan.md", "")
        self.assertEqual(self.found(check_layout), ["notes: does not belong at the top of the tree"])

    def test_a_missing_licence_line(self):
        self.write("core/air/gate.cpp", LICENCE)
        self.write("build/made.cpp", "int made;\n")
        self.write("demo/run", "#!/bin/bash\n# SPDX-License-Identifier: GPL-3.0-or-later\n")
        self.assertEqual(self.found(check_licence_lines), [])
        self.write("core/air/late.cpp", "\n" + LICENCE)
        self.assertEqual(len(self.found(check_licence_lines)), 1)

    def test_a_file_too_long_and_a_line_too_wide(self):
        self.write("core/air/whole.cpp", "\n" * check_lengths.MOST_LINES)
        self.assertEqual(self.found(check_lengths), [])
        self.write("core/air/long.cpp", "\n" * (check_lengths.MOST_LINES + 1))
        self.write("core/air/wide.cpp", "/" * (check_lengths.MOST_COLUMNS + 1))
        self.assertEqual(len(self.found(check_lengths)), 2)

    def test_words_that_do_not_belong(self):
        self.write("core/air/gate.cpp", "// see http://www.w3.org/2000/svg, https://www.gnu.org/licenses/\n")
        self.write("tests/a.cpp", "QCoreApplication::process" "Events();\n")
        self.assertEqual(self.found(check_words), [])
        for number, line in enumerate([
                "// TO" "DO later", 'open("/ho' 'me/me/x")', "see is" "sue 12", "http" "s://mirror.example/x",
                "QScroller::Touch" "Gesture", "SIG" "NAL(clicked())", "Q_" "ASSERT(x);", "#include <" "QSqlQuery>",
                "process" "Events();", "std::for" "mat(x)"]):
            self.write(f"core/air/word{number}.cpp", line + "\n")
        self.assertEqual(len(self.found(check_words)), 10)

    def test_an_include_that_runs_back(self):
        self.write("core/plan/planner.cpp", '#include "mix/mix.h"\n')
        self.write("app/screens/home.cpp", '#include "repairlog/repair_log.h"\n#include "touch/tap_button.h"\n')
        self.assertEqual(self.found(check_order), [])
        self.write("core/mix/mix.cpp", '#include "plan/planner.h"\n')
        self.write("core/air/gate.cpp", '#include "words/words.h"\n')
        self.write("app/theme/theme.cpp", '#include "screens/home.h"\n')
        self.assertEqual(len(self.found(check_order)), 3)

    def test_a_sentence_that_is_not_marked(self):
        self.write("app/screens/home.cpp", 'tr("Take in a panel"); setObjectName(u"log writer"_s); u"%1 %2"_s;\n')
        self.assertEqual(self.found(check_spoken), [])
        self.write("app/screens/mix.cpp", 'setTitle(u"Hardener in"_s);\nsetTitle("Edges are clear"_L1);\n')
        self.assertEqual(len(self.found(check_spoken)), 2)

    def test_who_looks_away_without_a_reason(self):
        self.write(".clang-tidy", "#  performance-a: lists are short\nChecks: >-\n  -*,\n  -performance-a,\n  misc-b\n")
        self.write("core/mix/a.cpp", "#include <stdlib.h> // NO" "LINT(modernize-x): a header of POSIX\n"
                   "// cppcheck" "-suppress unused ; the address is handed on\n")
        self.write("core/flags.cmake", "# g++ 12 loses track there\n-Wno" "-maybe\n")
        self.write("tests/run", "# shell" "check disable=SC1 # for the shell inside\n# shell" "check source=a\n")
        self.write("tests/leaks.txt", "# a cache of others\nleak:libcache\n")
        self.assertEqual(self.found(check_suppressions), [])
        self.write(".clang-tidy", "Checks: >-\n  -*,\n  -performance-a,\n")
        self.write("core/mix/a.cpp", "int a; // NO" "LINT\n// NO" "LINT(modernize-x)\n// cppcheck" "-suppress unused\n")
        self.write("core/flags.cmake", "-Wno" "-maybe\n")
        self.write("tests/run", "# shell" "check disable=SC1\n")
        self.write("tests/leaks.txt", "leak:libcache\n")
        self.assertEqual(len(self.found(check_suppressions)), 7)

    def test_a_document_that_points_nowhere(self):
        self.write("demo/home.png", "")
        self.write("README.md", "![Home](demo/home.png) [Q](https://www.gnu.org) `demo/home.png` `build/x`\n")
        self.assertEqual(self.found(check_links), [])
        self.write("DEVELOPERS.md", "[L](LICENSE)\n`core/air/gone.h`\n")
        self.assertEqual(len(self.found(check_links)), 2)

    def test_versions_that_differ(self):
        for name, text in {
                "CMakeLists.txt": "project(Strandbench VERSION {} LANGUAGES CXX",
                "app/install/changelog": "strandbench ({}) unstable; urgency=medium",
                "app/install/org.strandbench.Strandbench.metainfo.xml": '<release version="{}" date="2026-11-28">',
                "app/install/strandbench.1": '.TH STRANDBENCH 1 2026-11-28 "Strandbench {}" "User commands"'}.items():
            self.write(name, text.format("0.1.0") + "\n")
        self.assertEqual(self.found(check_version), [])
        self.write("app/install/changelog", "strandbench (0.2.0) unstable; urgency=medium\n")
        self.write("app/install/strandbench.1", ".TH STRANDBENCH 1\n")
        self.assertEqual(len(self.found(check_version)), 2)


class Manual(unittest.TestCase):
    """A program with two commands, and a manual page of it."""

    PAGE = """.SS strandbench
.TP
.BI \\-\\-log " DB"
.TP
.BR \\-h ", " \\-\\-help
.SS strandbench plan FILE
.SS strandbench mix
.TP
.BI \\-\\-filler\\-g " M"
"""
    HELP = {
        None: "Usage: strandbench [command] [options]\n\n  plan     Plans.\n  mix      Mixes.\n\n"
              "  --log DB     The log.\n  -h, --help   This help.\n",
        "plan": "Usage: strandbench plan FILE [options]\nPlans.\n\n  -h, --help   This help.\n",
        "mix": "Usage: strandbench mix [options]\nMixes.\n\n  --filler-g M   The mass.\n  -h, --help   This help.\n",
    }

    def differences(self, page, told):
        return list(check_manual.differences(check_manual.told_by_manual(page), check_manual.told_by_help(told.get)))

    def test_a_page_that_tells_all(self):
        self.assertEqual(self.differences(self.PAGE, self.HELP), [])

    def test_an_option_or_a_command_too_few_or_too_many(self):
        self.assertEqual(self.differences(self.PAGE.replace("filler", "hardener"), self.HELP), [
            "app/install/strandbench.1: 'strandbench mix' lacks '--filler-g M'",
            "app/install/strandbench.1: 'strandbench mix' has no '--hardener-g M' in the program"])
        self.assertEqual(len(self.differences(self.PAGE.replace(".SS strandbench plan FILE\n", ""), self.HELP)), 1)
        self.assertEqual(len(self.differences(self.PAGE + ".SS strandbench guess\n", self.HELP)), 1)


class References(Tree):
    TEST = ("// Water by a Handbook of\n// Steam: its table 3.\n"
            "TEST(Steam, Table)\n{\n    EXPECT_NEAR(p(300), 0.35, 0.005);\n}\n\n"
            "TEST(Steam, Other)\n{\n    EXPECT_NEAR(p(400), 9.87, 0.01);\n}\n")

    UNUSED = {"what": "pressure of ice", "source": "A: T", "value": "0.6 kPa", "why": "nothing freezes at this bench"}

    def faults(self, times=check_references.LEAST, unused=(UNUSED,), heading="looked up", **other):
        value = {"source": "steam", "place": "3", "value": "0.35", "unit": "MPa", "tolerance": "0.005",
                 "file": "tests/steam_test.cpp", "test": "Steam.Table", **other}
        source = {"author": "A", "title": "T", "named": "Handbook of Steam", "known": "quoted", "heading": heading}
        values = [{**value, "what": f"pressure {i}"} for i in range(times)]
        self.write("tests/steam_test.cpp", self.TEST)
        index = {"sources": {"steam": source}, "values": values}
        self.write(references.INDEX, json.dumps(index))
        self.write(references.DISMISSED, json.dumps({"dismissed": unused}))
        if all("why" in each for each in unused):
            self.write(references.PAGE, references.page(index, unused))
        return self.found(check_references)

    def test_an_index_that_tells_what_the_tests_hold(self):
        self.assertEqual(self.faults(), [])

    def test_each_way_to_be_wrong(self):
        for other in [{"file": "tests/gone.cpp"}, {"test": "Steam.Gone"}, {"value": "0.3"}, {"value": "9.87"},
                      {"tolerance": "0.01"}, {"known": "heard"}]:
            self.assertGreaterEqual(len(self.faults(**other)), check_references.LEAST, other)
        self.TEST = self.TEST.replace("Steam:", "Water:")
        self.assertEqual(len(self.faults()), check_references.LEAST)

    def test_too_few_of_a_source(self):
        self.assertEqual(len(self.faults(check_references.LEAST - 1)), 1)
        self.assertEqual(len(self.faults(known="from memory")), 1)

    def test_a_heading_from_nowhere(self):
        self.assertEqual(len(self.faults(heading="heard")), 1)

    def test_what_is_not_used_without_a_reason_twice_or_used_all_the_same(self):
        without = {name: text for name, text in self.UNUSED.items() if name != "why"}
        for unused in [(without,), ({**self.UNUSED, "why": " "},), ({**self.UNUSED, "why": "no need"},),
                       ({**self.UNUSED, "source": ""},), ({**self.UNUSED, "value": ""},),
                       (self.UNUSED, self.UNUSED), ({**self.UNUSED, "what": "pressure 7"},)]:
            self.assertEqual(len(self.faults(unused=unused)), 1, unused)
        self.assertEqual(self.faults(unused=()), [])

    def test_a_page_of_another_index(self):
        self.faults()
        self.write(references.PAGE, "")
        self.assertEqual(len(self.found(check_references)), 1)


class Drawings(Tree):
    GOOD = (check_drawings.LICENCE + '\n<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 96 96">'
            '<title>Drop</title><g fill="none" stroke="#16202B" stroke-width="3" stroke-linecap="round" '
            'stroke-linejoin="round"><path d="M0 0L9 9"/></g></svg>\n')

    def faults(self, *change):
        self.write(check_drawings.KEYS, '{u"#16202B"_s, Role::Ink},')
        self.write("resources/drawings/acts/drop.svg", self.GOOD.replace(*change) if change else self.GOOD)
        return self.found(check_drawings)

    def test_what_is_right(self):
        self.assertEqual(self.faults(), [])

    def test_each_way_to_be_of_another_hand(self):
        path = '<path d="M0 0L9 9"/>'
        for wrong in [
                ("#16202B", "#16202A"), ('width="3"', 'width="2"'), ('join="round"', 'join="miter"'),
                ("0 0 96 96", "0 0 24 24"), ("<title>Drop</title>", ""), ("<!-- SPDX", "<!-- spdx"),
                ("</svg>", ""), (path, "<text>80</text>"), (path, '<path d="M0 0" style="fill:red"/>'),
                (path, '<path d="M0 0" fill="#FEFEFE"/>'), (path, '<use href="../tools/gone.svg"/>'),
                (path, '<g id="frame2"/><g id="frame3"/>')]:
            self.assertEqual(len(self.faults(*wrong)), 1, wrong)

    def test_a_tool_that_nobody_uses(self):
        self.faults()
        self.write("resources/drawings/tools/drop.svg", self.GOOD)
        self.assertEqual(self.found(check_drawings), ["resources/drawings/tools/drop.svg: no step uses it"])


class Translations(Tree):
    def catalogues(self, message="", english=""):
        for language in check_translations.LANGUAGES:
            body = english if language == "en" else message if language == "de" else ""
            self.write(f"translations/strandbench_{language}.ts",
                       f'<TS version="2.1" language="{language}"><context><name>C</name>{body}</context></TS>')

    def faults(self, message="", english=""):
        self.catalogues(message, english)
        return self.found(check_translations)

    def test_what_is_right(self):
        self.assertEqual(self.faults(
            translation("%1 of %L2 &amp;go", "%L2 von %1 &amp;los") +
            translation("%n lift(s)", ["eine Lage", "%n Lagen"], numerus=True),
            translation("%n lift(s)", ["%n lift", "%n lifts"], numerus=True)), [])

    def test_a_missing_catalogue(self):
        self.catalogues()
        (self.root / "translations/strandbench_fr.ts").unlink()
        self.assertEqual(self.found(check_translations), ["translations/strandbench_fr.ts: missing"])

    def test_each_way_to_be_wrong(self):
        for wrong in [
                translation("Mix", "", "unfinished"), translation("Mix", "Mischen", "vanished"),
                translation("Mix", ""), translation("%1 g", "g"), translation("%1 g", "%1 %1 g"),
                translation("%L1 g", "%1 g"), translation("&amp;Go", "Los"), translation("Go", "Los!"),
                translation("<b>Go</b>", "Los") .replace("<b>", "&lt;b>").replace("</b>", "&lt;/b>"),
                translation("Go ", "Los"), translation("Go", "Los\nlos"),
                translation("%n lift(s)", ["eine Lage"], numerus=True),
                translation("%n lift(s)", ["eine Lage", "Lagen"], numerus=True)]:
            self.assertEqual(len(self.faults(wrong)), 1, wrong)

    def test_english_holds_plurals_only(self):
        self.assertEqual(len(self.faults(english=translation("Mix", "Mix"))), 1)

    def test_messages_are_told_apart_by_their_comment(self):
        self.write("a.ts", '<TS language="de"><context><name>C</name><message><source>Fill</source>'
                           "<comment>the act</comment><translation>Spachteln</translation></message></context></TS>")
        self.assertEqual(catalogue.read(self.root / "a.ts")[1][0].key, ("C", "Fill", "the act"))


CPPCHECK = os.environ.get("STRANDBENCH_CPPCHECK", "")


@unittest.skipUnless(CPPCHECK, "STRANDBENCH_CPPCHECK names no cppcheck")
class Cppcheck(Tree):
    def faults(self, line, above=""):
        self.write("core/mix/a.cpp", f"int last()\n{{\n    int of[3] = {{1, 2, 3}};\n{above}    return {line};\n}}\n")
        file = str(self.root.resolve() / "core/mix/a.cpp")
        self.write("build/compile_commands.json", json.dumps([
            {"file": file, "directory": str(self.root), "command": f"g++ -isystem /usr/include/none -c {file}"}]))
        return list(check_cppcheck.problems(self.root, CPPCHECK, self.root / "build"))

    def test_an_index_beyond_the_end(self):
        self.assertEqual(self.faults("of[2]"), [])
        found = self.faults("of[3]")
        self.assertEqual(len(found), 1)
        self.assertTrue(found[0].startswith("core/mix/a.cpp:4: error: "), found)
        self.assertEqual(self.faults("of[3]", "// cppcheck" "-suppress arrayIndexOutOfBounds ; for this test\n"), [])

    def test_a_build_of_something_else(self):
        self.write("build/compile_commands.json", "[]")
        self.assertEqual(len(list(check_cppcheck.problems(self.root, CPPCHECK, self.root / "build"))), 1)


LUPDATE = os.environ.get("STRANDBENCH_LUPDATE", "")


@unittest.skipUnless(LUPDATE, "STRANDBENCH_LUPDATE names no lupdate")
class Strings(Tree):
    """What lupdate finds in the sources, against what the catalogues hold."""

    def faults(self, message=""):
        self.write("core/empty.cpp", LICENCE)
        self.write("app/screens/home.cpp", LICENCE + 'const char* t = QT_TRANSLATE_NOOP("C", "Mix");\n')
        for language in check_translations.LANGUAGES:
            body = "" if language == "en" else message
            self.write(f"translations/strandbench_{language}.ts",
                       f'<TS version="2.1" language="{language}"><context><name>C</name>{body}</context></TS>')
        return list(check_strings.problems(self.root, LUPDATE))

    def test_what_is_right(self):
        self.assertEqual(self.faults(translation("Mix", "Mischen")), [])

    def test_a_string_that_no_catalogue_holds(self):
        found = self.faults()
        self.assertEqual(len(found), 3)
        for language, fault in zip(["es", "fr", "de"], found):
            self.assertIn(f"strandbench_{language}.ts", fault)
            self.assertIn("missing", fault)

    def test_a_string_that_is_gone(self):
        found = self.faults(translation("Mix", "Mischen") + translation("Spread", "Auftragen"))
        self.assertEqual(len(found), 3)
        for fault in found:
            self.assertIn("no longer in the sources", fault)


if __name__ == "__main__":
    unittest.main()
