// SPDX-License-Identifier: GPL-3.0-or-later
#include "program.h"

#include <gtest/gtest.h>

#include <vector>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const QString logCommands = u"verify, backup, keep, merge, restore, rescue, supervise"_s;
const QStringList commandNames{u"plan"_s, u"mix"_s, u"cure"_s, u"air"_s, u"verify"_s, u"backup"_s};

TEST(Arguments, HelpAndVersionAreEverywhere)
{
    for (const QString& option : {u"--help"_s, u"-h"_s}) {
        const Ran top = program({option});
        EXPECT_EQ(top.status, 0);
        EXPECT_TRUE(top.err.isEmpty()) << top.err.toStdString();
        for (const QString& name : commandNames) {
            EXPECT_TRUE(top.out.contains("\n  " + name.toLatin1() + ' ')) << name.toStdString();
            const Ran own = program({name, option});
            EXPECT_EQ(own.status, 0) << name.toStdString();
            EXPECT_TRUE(own.out.startsWith("Usage: strandbench " + name.toLatin1())) << own.out.toStdString();
        }
    }
    for (const QString& option : {u"--version"_s, u"-v"_s}) {
        EXPECT_EQ(program({option}).out, program({u"plan"_s, option}).out);
        EXPECT_TRUE(program({option}).out.startsWith("strandbench ")) << option.toStdString();
    }
}

TEST(Arguments, HelpNamesEveryOption)
{
    EXPECT_TRUE(program({u"mix"_s, u"--help"_s}).out.contains("--puddle-mm D"));
    EXPECT_TRUE(program({u"mix"_s, u"--help"_s}).out.contains("--sheet ID"));
    EXPECT_TRUE(program({u"air"_s, u"--help"_s}).out.contains("--humidity-percent H"));
    EXPECT_TRUE(program({u"verify"_s, u"--help"_s}).out.contains("--expect HEAD"));
    EXPECT_TRUE(program({u"backup"_s, u"--help"_s}).out.contains("--to FILE"));
    EXPECT_TRUE(program({u"plan"_s, u"--help"_s}).out.contains("--lang xx"));
}

struct Case {
    QStringList arguments;
    QString message; ///< the one line on standard error
};

TEST(Arguments, AreRefusedByName)
{
    const std::vector<Case> cases{
        {{u"paln"_s}, u"'paln': no such command; there is: plan, mix, cure, air, report, "_s + logCommands},
        {{u"paint"_s}, u"'paint': no such command; there is: plan, mix, cure, air, report, "_s + logCommands},
        {{u"harden"_s, u"-"_s}, u"'harden': no such command; there is: plan, mix, cure, air, report, "_s + logCommands},
        {{QString()}, u"'': no such command; there is: plan, mix, cure, air, report, "_s + logCommands},
        {{u"--nonsense"_s}, u"'--nonsense': no such option; --help lists them"_s},
        {{u"plan"_s, u"-"_s, u"--color"_s}, u"'--color': no such option; --help lists them"_s},
        {{u"mix"_s, u"--puddle=5"_s}, u"'--puddle': no such option; --help lists them"_s},
        {{u"mix"_s, u"--puddle-mm=50"_s, u"-q"_s}, u"'-q': no such option; --help lists them"_s},
        {{u"mix"_s, u"--puddle-mm"_s}, u"'--puddle-mm': its value is missing"_s},
        {{u"mix"_s, u"--puddle-mm"_s, u"50"_s, u"--puddle-mm"_s, u"60"_s},
         u"--puddle-mm: given 2 times; allowed is once"_s},
        {{u"mix"_s, u"--puddle-mm="_s}, u"--puddle-mm: must not be empty; it needs D"_s},
        {{u"mix"_s, u"--puddle-mm"_s, u"50"_s, u"60"_s}, u"'60': one word too many"_s},
        {{u"plan"_s}, u"FILE: missing; it is a file, or - for standard input"_s},
        {{u"plan"_s, QString()}, u"FILE: must not be empty; it is a file, or - for standard input"_s},
        {{u"plan"_s, u"-"_s, u"more"_s}, u"'more': one word too many"_s},
        {{u"verify"_s}, u"--log: missing; it needs DB"_s},
        {{u"plan"_s, u"-"_s, u"--lang"_s, u"xx"_s}, u"--lang: 'xx' is not one of: de, en, es, fr"_s},
        {{u"mix"_s, u"--puddle-mm"_s, u"50"_s, u"--lang"_s, u"en"_s, u"--lang"_s, u"en"_s},
         u"--lang: given 2 times; allowed is once"_s},
        {{u"pl\nan"_s}, u"'pl an': no such command; there is: plan, mix, cure, air, report, "_s + logCommands},
    };
    for (const Case& each : cases) {
        const Ran ran = program(each.arguments, "{}");
        const std::string shown = each.arguments.join(u' ').toStdString();
        EXPECT_EQ(ran.status, 2) << shown;
        EXPECT_EQ(ran.messages(), QStringList{each.message}) << shown;
        EXPECT_TRUE(ran.out.isEmpty()) << shown;
    }
}

TEST(Arguments, TellEveryFaultAtOnce)
{
    const Ran ran = program({u"backup"_s});
    EXPECT_EQ(ran.status, 2);
    EXPECT_EQ(ran.messages(), (QStringList{u"--log: missing; it needs DB"_s, u"--to: missing; it needs FILE"_s}));
}

TEST(Arguments, LeaveAnOutputThatCannotBeWrittenToBeSeen)
{
    const QStringList mix{u"mix"_s, u"--puddle-mm"_s, u"50"_s};
    EXPECT_EQ(programInto(u"/dev/null"_s, mix).status, 0);
    const Ran full = programInto(u"/dev/full"_s, mix);
    EXPECT_EQ(full.status, 1);
    EXPECT_EQ(full.messages(), QStringList{u"standard output cannot be written"_s});
    EXPECT_EQ(programInto(u"/dev/full"_s, {u"--help"_s}).status, 1);
}

} // namespace
} // namespace strandbench
