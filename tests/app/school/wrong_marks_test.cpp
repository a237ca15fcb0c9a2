// SPDX-License-Identifier: GPL-3.0-or-later
// The screen of a wrong decision, one for every consequence that a single mistake can have: worked by taps, and held to
// the rules of look and touch.
#include "every_look.h"
#include "practice_thumb.h"
#include "pupils.h"

#include "pictures/section_picture.h"

#include <QTemporaryDir>

#include <algorithm>
#include <iostream>
#include <set>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class WrongMarks : public LookTest {
protected:
    void open(const QString& log)
    {
        ScriptedBench::Spec spec = specOn(log, demoSettings());
        spec.practises = true;
        m_bench = std::make_unique<ScriptedBench>(spec);
        m_bench->window().showHome();
        tap(u"practice"_s);
        tap(u"skip_tour"_s);
    }
    /// Works the panel with the mistake in it, and opens the mark that it cost. False: it cannot be made on the glass.
    bool lookAt(const PracticePanel& panel, const Mistake& mistake, const Mark& expected)
    {
        m_bench->practice().begin(panel);
        m_bench->thumb().settle();
        if (!PracticeThumb(*m_bench).work(mistake.attempt).isEmpty())
            return false;
        const auto& marks = m_bench->practice().marking()->marks;
        const auto wrong = std::ranges::find(marks, Judged::Wrong, &Mark::judged);
        if (wrong == marks.end() || wrong->consequence->what.code != expected.consequence->what.code)
            return false; // figures are keyed in to a tenth
        const QString key = u"mark_%1"_s.arg(wrong - marks.begin());
        for (int page = 0; page < 5 && !m_bench->thumb().find(key); ++page)
            tap(u"more"_s);
        tap(key);
        m_bench->thumb().settle();
        const auto* picture = m_bench->window().findChild<QWidget*>(u"mark_picture"_s);
        EXPECT_TRUE(picture && !picture->accessibleName().isEmpty()) << mistake.name;
        check();
        return true;
    }
};

/// Of each consequence the first mistake that fingers can make.
TEST_P(WrongMarks, Hold)
{
    const QTemporaryDir folder;
    open(folder.filePath(u"bench.sqlite"_s));
    std::set<QString> seen;
    for (const Lesson& lesson : deliveredLessons())
        for (const std::vector<Mistake> mistakes = singleMistakes(lesson); const Mistake& mistake : mistakes) {
            if (std::ranges::all_of(mistake.consequences, [&](const QString& each) { return seen.contains(each); }))
                continue;
            const Marking marking = markOf(lesson, mistake.attempt);
            const Mark& mark = *std::ranges::find(marking.marks, Judged::Wrong, &Mark::judged);
            const QString& code = mark.consequence->what.code;
            if (!seen.contains(code) && lookAt(lesson.panel, mistake, mark))
                seen.insert(code);
        }
    std::cout << "consequences seen on the glass: " << seen.size() << '\n';
    EXPECT_GT(seen.size(), 25U);
}

// The smallest glass in the language with the longest words: it takes minutes.
INSTANTIATE_TEST_SUITE_P(TightLooks, WrongMarks, ::testing::Values(Look{rules::glasses().front(), u"de"_s}),
                         nameOfLook);

} // namespace
} // namespace strandbench::test
