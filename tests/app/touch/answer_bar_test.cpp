// SPDX-License-Identifier: GPL-3.0-or-later
// The three answers: always there, always in the same places, read in every language.
#include "touch/answer_bar.h"

#include "theme/sizes.h"
#include "touch_rules/glass.h"
#include "touching.h"

#include <QCoreApplication>
#include <QSignalSpy>

#include <gtest/gtest.h>

namespace strandbench {
namespace {

using namespace Qt::StringLiterals;

class Answers : public testing::TestWithParam<int> {
protected:
    [[nodiscard]] const rules::Glass& glass() const { return rules::glasses()[static_cast<std::size_t>(GetParam())]; }
    [[nodiscard]] Theme themeFor(Hand hand = Hand::Right) const
    {
        return Theme(Metrics(glass().pixelsPerMillimetre()), DayNight::Day, hand);
    }
    [[nodiscard]] bool lay(AnswerBar& bar, const Theme& theme) const
    {
        return touching::show(bar, {glass().pixels.width() - 2 * theme.px(sizes::margin), theme.px(sizes::answer)});
    }
};

TEST_P(Answers, standInTheirProportion)
{
    const Theme theme = themeFor();
    AnswerBar bar(theme);
    bar.setWayOn(u"Edges are clear"_s);
    ASSERT_TRUE(lay(bar, theme));
    const double back = bar.back()->width();
    EXPECT_NEAR(bar.stop()->width() / back, 1.3, 0.05);
    EXPECT_NEAR(bar.wayOn()->width() / back, 2.6, 0.05);
    EXPECT_EQ(bar.stop()->x() - bar.back()->geometry().right() - 1, theme.px(sizes::gap));
    EXPECT_EQ(bar.wayOn()->height(), theme.px(sizes::answer));
    EXPECT_GE(bar.back()->width(), theme.px(sizes::target));
}

TEST_P(Answers, areMirroredForTheLeftHand)
{
    const Theme right = themeFor();
    const Theme left = themeFor(Hand::Left);
    AnswerBar one(right);
    AnswerBar other(left);
    for (AnswerBar* bar : {&one, &other})
        bar->setWayOn(u"Edges are clear"_s);
    ASSERT_TRUE(lay(one, right));
    ASSERT_TRUE(lay(other, left));
    EXPECT_EQ(other.wayOn()->x(), 0);
    EXPECT_GT(other.back()->x(), other.stop()->x());
    EXPECT_NEAR(other.width() - other.back()->geometry().right() - 1, one.back()->x(), 1);
    EXPECT_NEAR(other.wayOn()->width(), one.wayOn()->width(), 1);
}

TEST_P(Answers, doNotMoveWhateverTheyAreNamed)
{
    const Theme theme = themeFor();
    AnswerBar bar(theme);
    ASSERT_TRUE(lay(bar, theme));
    const QRect stop = bar.stop()->geometry();
    bar.setWayOn(u"Park it \u2014 to the welding shop and tell the supervisor about the seam"_s, TapButton::Kind::Go);
    bar.setBackNote(u"clock runs on"_s);
    QCoreApplication::processEvents();
    EXPECT_EQ(bar.stop()->geometry(), stop);
}

TEST_P(Answers, areReadInEnglishGermanAndFrench)
{
    struct Words {
        QString back;
        QString note;
        QString stop;
        QString way;
    };
    const std::vector<Words> languages{
        {u"Back"_s, u"clock runs on"_s, u"Stop and ask"_s, u"Hardener in \u2014 start"_s},
        {u"Zur\u00fcck"_s, u"Uhr l\u00e4uft weiter"_s, u"Anhalten und fragen"_s,
         u"H\u00e4rter zugegeben \u2014 Uhr starten"_s},
        {u"Retour"_s, u"le temps continue"_s, u"Arr\u00eater et demander"_s,
         u"Durcisseur vers\u00e9 \u2014 d\u00e9marrer"_s},
    };
    const Theme theme = themeFor();
    for (const Words& words : languages) {
        AnswerBar bar(theme);
        bar.setWayOn(words.way);
        bar.setBackNote(words.note);
        bar.back()->setTitle(words.back);
        bar.stop()->setTitle(words.stop);
        ASSERT_TRUE(lay(bar, theme));
        for (const TapButton* answer : {bar.back(), bar.stop(), bar.wayOn()}) {
            EXPECT_TRUE(answer->textFits()) << answer->title().toStdString();
            EXPECT_GE(answer->smallestTextMm(), 3.4) << answer->title().toStdString();
        }
        touching::keepLook(bar, u"answers_"_s + glass().name + u'_' + words.back);
    }
}

TEST_P(Answers, sayWhichWasTapped)
{
    const Theme theme = themeFor();
    AnswerBar bar(theme);
    bar.setWayOn(u"Edges are clear"_s, TapButton::Kind::Go);
    ASSERT_TRUE(lay(bar, theme));
    QSignalSpy back(&bar, &AnswerBar::backTapped);
    QSignalSpy stop(&bar, &AnswerBar::stopTapped);
    QSignalSpy way(&bar, &AnswerBar::wayOnTapped);
    touching::tap(bar.stop(), {20, 20});
    EXPECT_EQ(back.count() * 100 + stop.count() * 10 + way.count(), 10);
    touching::tap(bar.back(), {20, 20});
    touching::tap(bar.wayOn(), {20, 20});
    EXPECT_EQ(back.count() * 100 + stop.count() * 10 + way.count(), 111);
    bar.setWayOnEnabled(false);
    touching::tap(bar.wayOn(), {20, 20});
    EXPECT_EQ(way.count(), 1);
}

INSTANTIATE_TEST_SUITE_P(Glasses, Answers, testing::Range(0, 4), [](const auto& each) {
    return "glass_" + rules::glasses()[static_cast<std::size_t>(each.param)].name.toStdString();
});

} // namespace
} // namespace strandbench
