// SPDX-License-Identifier: GPL-3.0-or-later
// A whole repair by Tab and space alone: everything that a thumb does, whoever cannot touch the glass does by keys.
#include "bench_fixture.h"

#include <QTemporaryDir>
#include <QTest>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class ByKeyboard : public ::testing::TestWithParam<Hand> {
protected:
    void open()
    {
        ScriptedBench::Spec spec;
        spec.log = m_folder.filePath(u"bench.sqlite"_s);
        spec.start = workingMorning();
        spec.settings = demoSettings();
        spec.settings.hand = GetParam();
        spec.practises = true;
        spec.means = Thumb::Means::Keys;
        m_bench = std::make_unique<ScriptedBench>(spec);
    }
    QTemporaryDir m_folder;
    std::unique_ptr<ScriptedBench> m_bench;
};

TEST_P(ByKeyboard, AWholeRepairIsWalked)
{
    open();
    Walk walk(*m_bench, skirtPanel());
    ASSERT_TRUE(walk.walkTo(Station::Done)) << walk.why().toStdString();
}

/// Every control that can be tapped on a screen has its turn, once a round.
TEST_P(ByKeyboard, TabComesToEveryControlOnceARound)
{
    open();
    const auto round = [this] {
        QStringList seen;
        const QWidget* first = nullptr;
        for (int i = 0; i < 200; ++i) {
            QTest::keyClick(&m_bench->window(), Qt::Key_Tab);
            const QWidget* now = m_bench->window().focusWidget();
            if (now == first)
                break;
            if (!first)
                first = now;
            seen << now->objectName();
        }
        seen.sort();
        return seen;
    };
    for (const QString& on : {u"take_in"_s, u"help"_s, u"help_words"_s}) {
        ASSERT_TRUE(m_bench->thumb().tap(on)) << on.toStdString();
        QStringList wanted;
        for (const QAbstractButton* each : m_bench->window().findChildren<QAbstractButton*>())
            if (each->isVisible() && each->isEnabled())
                wanted << each->objectName();
        wanted.sort();
        EXPECT_EQ(round(), wanted) << on.toStdString();
    }
}

INSTANTIATE_TEST_SUITE_P(BothHands, ByKeyboard, ::testing::Values(Hand::Right, Hand::Left),
                         [](const auto& each) { return each.param == Hand::Right ? "right" : "left"; });

} // namespace
} // namespace strandbench::test
