# SPDX-License-Identifier: GPL-3.0-or-later
"""The house checks, each on a small tree that is wrong in one way: a check that cannot fail checks nothing."""

import os
import pathlib
import tempfile
import unittest

import catalogue
import check_layout
import check_lengths
import check_licence_lines
import check_links
import check_order
import check_spoken
import check_strings
import check_translations
import check_words

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

    def test_a_document_that_points_nowhere(self):
        self.write("demo/home.png", "")
        self.write("README.md", "![Home](demo/home.png) [Q](https://www.gnu.org) `demo/home.png` `build/x`\n")
        self.assertEqual(self.found(check_links), [])
        self.write("DEVELOPERS.md", "[L](LICENSE)\n`core/air/gone.h`\n")
        self.assertEqual(len(self.found(check_links)), 2)


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
