// SPDX-License-Identifier: GPL-3.0-or-later
// Every screen of practice on every glass in every language, by the rules of look and touch.
#include "every_look.h"
#include "practice_thumb.h"

#include "school/tour.h"

#include <QTemporaryDir>

#include <set>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class PracticeRules : public LookTest {
protected:
    [[nodiscard]] QString screen() const { return m_bench->window().screen()->objectName(); }
    /// Works a panel as the model answer does; each kind of screen is checked once.
    void work(const QString& id)
    {
        const PracticePanel panel = carried(id);
        m_bench->practice().begin(panel);
        m_bench->thumb().settle();
        const PlanningSet& shop = m_bench->bench().planning();
        const Attempt attempt = perfectAttempt(modelAnswer(panel.truth, shop), shop);
        PracticeThumb pupil(*m_bench);
        for (int taps = 0; taps < 400 && screen() != u"screen_practice_marks"_s; ++taps) {
            if (m_seen.insert(screen()).second)
                check();
            ASSERT_EQ(pupil.step(attempt), QString());
            m_bench->thumb().settle();
        }
        check();
    }
    /// Of the marks on the page that is shown.
    [[nodiscard]] int firstShown() const
    {
        for (std::size_t i = 0; i < m_bench->practice().marking()->marks.size(); ++i)
            if (m_bench->thumb().find(u"mark_%1"_s.arg(i)))
                return int(i);
        return -1;
    }
    std::set<QString> m_seen;
};

TEST_P(PracticeRules, Hold)
{
    const QTemporaryDir folder;
    ScriptedBench::Spec spec = specOn(folder.filePath(u"bench.sqlite"_s), demoSettings());
    spec.practises = true;
    m_bench = std::make_unique<ScriptedBench>(spec);
    m_bench->window().showHome();
    m_bench->thumb().settle();
    check();
    tapAndCheck(u"practice"_s);
    for (int page = 0; page < tourPages(); ++page)
        tapAndCheck(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_practice"_s);
    ASSERT_NO_FATAL_FAILURE(work(u"smc_bonnet_hole"_s));
    m_bench->thumb().settle();
    tapAndCheck(u"mark_%1"_s.arg(firstShown()));
    tap(u"answer_way_on"_s);
    tapAndCheck(u"replay"_s);
    tap(u"answer_way_on"_s);
    tap(u"answer_way_on"_s);
    tapAndCheck(u"practice_skills"_s);
    tapAndCheck(u"answer_way_on"_s);
    tap(u"answer_back"_s);
    tap(u"answer_back"_s);
    ASSERT_NO_FATAL_FAILURE(work(u"spot_joint"_s));
}

/// What each try finds, on a panel that has much to find.
TEST_P(PracticeRules, HoldForEveryTry)
{
    const QTemporaryDir folder;
    ScriptedBench::Spec spec = specOn(folder.filePath(u"bench.sqlite"_s), demoSettings());
    spec.practises = true;
    m_bench = std::make_unique<ScriptedBench>(spec);
    m_bench->window().showHome();
    m_bench->thumb().settle();
    tap(u"practice"_s);
    tap(u"skip_tour"_s);
    m_bench->practice().begin(carried(u"black_by_the_belt"_s));
    m_bench->thumb().settle();
    for (const auto& [what, code] : Codes<PanelTry>::table) {
        const QString key = u"try_"_s + QString::fromLatin1(code);
        if (!m_bench->thumb().find(key)) {
            tap(u"more_tries"_s);
            m_bench->thumb().settle();
        }
        tapAndCheck(key);
    }
}

INSTANTIATE_TEST_SUITE_P(EveryLook, PracticeRules, ::testing::ValuesIn(everyLook()), nameOfLook);

} // namespace
} // namespace strandbench::test
