// SPDX-License-Identifier: GPL-3.0-or-later
// How the alarm bar looks: the rules of look and touch on every glass in both phases, how it flashes, and that it
// stands still for whoever asked for it.
#include "alarm_glass.h"
#include "theme/sizes.h"
#include "touch_rules/contrast.h"
#include "touch_rules/rule_check.h"

#include <QImage>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace strandbench {
namespace {

using testing::IsEmpty;

class BarLook : public testing::Test {
protected:
    void SetUp() override { ASSERT_TRUE(glass.show()); }
    Glass glass;
};

int changedShare(const QImage& one, const QImage& other)
{
    int changed = 0;
    for (int y = 0; y < one.height(); ++y)
        for (int x = 0; x < one.width(); ++x)
            changed += one.pixel(x, y) != other.pixel(x, y) ? 1 : 0;
    return 100 * changed / (one.width() * one.height());
}

TEST_F(BarLook, flashesOnceInTwoSecondsOverNearlyAllOfIt)
{
    for (const AlarmShown& each : {edges, gels, sandFrom, sandUntil}) {
        glass.set({each});
        glass.later(500);
        const QImage full = glass.bar->grab().toImage();
        int swaps = 0;
        QImage before = full;
        for (int ms = 0; ms < 10'000; ms += 100) { // ticked far too often
            glass.later(100);
            const QImage now = glass.bar->grab().toImage();
            if (now == before)
                continue;
            ++swaps;
            EXPECT_GE(changedShare(now, before), 60) << each.headline.toStdString();
            before = now;
        }
        EXPECT_GE(swaps, 9);
        EXPECT_LE(swaps, 12); // two of them are a flash: 0.6 a second, three are allowed
    }
}

TEST_F(BarLook, beginsInFullColour)
{
    glass.set({gels});
    glass.later(1000);
    glass.set({sandFrom});
    const QImage image = glass.bar->grab().toImage();
    EXPECT_EQ(QColor(image.pixel(glass.button(0)->geometry().left() + glass.theme.px(4), glass.theme.px(3))),
              glass.theme.color(Role::Go));
}

TEST_F(BarLook, standsStillInFullColourWithAThickEdgeWhenMotionIsReduced)
{
    Glass calm(rules::glasses()[1], DayNight::Day, Hand::Right, true);
    ASSERT_TRUE(calm.show());
    calm.set({gels});
    const QImage first = calm.bar->grab().toImage();
    for (int i = 0; i < 5; ++i) {
        calm.later(1000);
        EXPECT_EQ(calm.bar->grab().toImage(), first);
    }
    const QRect button = calm.button(0)->geometry();
    const auto edgePixels = [&](const QImage& image, const Theme& theme) {
        int edge = 0;
        for (int x = button.left(); x < button.left() + theme.px(4); ++x)
            edge += QColor(image.pixel(x, button.center().y())) == theme.color(Role::OnStop) ? 1 : 0;
        return edge;
    };
    EXPECT_GE(edgePixels(first, calm.theme), calm.theme.px(1));
    glass.set({gels});
    EXPECT_LT(edgePixels(glass.bar->grab().toImage(), glass.theme), calm.theme.px(1));
    EXPECT_EQ(QColor(first.pixel(button.left() + calm.theme.px(4), calm.theme.px(3))), calm.theme.color(Role::Stop));
}

struct Setting {
    std::size_t glass;
    DayNight dayNight;
    bool calm;
};

class EveryGlass : public testing::TestWithParam<Setting> {};

TEST_P(EveryGlass, keepsTheRulesInBothPhasesAloneAndBeside)
{
    const rules::Glass& size = rules::glasses()[GetParam().glass];
    Glass glass(size, GetParam().dayNight, Hand::Right, GetParam().calm);
    ASSERT_TRUE(glass.show());
    const std::vector<std::vector<AlarmShown>> all{
        {edges}, {gels}, {sandFrom}, {sandUntil}, {edges, gels}, {gels, sandUntil}, {edges, sandFrom}};
    int picture = 0;
    for (const std::vector<AlarmShown>& alarms : all) {
        glass.set(alarms);
        for (const int phase : {0, 1}) {
            EXPECT_THAT(rules::checkScreen(&glass.window, glass.theme), IsEmpty()) << phase;
            touching::keepLook(*glass.bar,
                               u"alarm_%1%2_%3_%4_%5"_s.arg(size.name, GetParam().calm ? u"_calm"_s : QString())
                                   .arg(static_cast<int>(GetParam().dayNight))
                                   .arg(picture)
                                   .arg(phase));
            for (std::size_t i = 0; i < alarms.size(); ++i) {
                const auto shown = glass.button(static_cast<int>(i))->shownTexts();
                ASSERT_FALSE(shown.empty());
                EXPECT_EQ(shown.front().text, alarms[i].headline);
                EXPECT_GE(shown.front().emMm, 4.0);
            }
            glass.later(1000);
        }
        ++picture;
    }
}

std::vector<Setting> settings()
{
    std::vector<Setting> all;
    for (std::size_t glass = 0; glass < rules::glasses().size(); ++glass)
        for (const DayNight dayNight : {DayNight::Day, DayNight::Night})
            for (const bool calm : {false, true})
                all.push_back({glass, dayNight, calm});
    return all;
}

INSTANTIATE_TEST_SUITE_P(All, EveryGlass, testing::ValuesIn(settings()), [](const auto& each) {
    return "glass_" + rules::glasses()[each.param.glass].name.toStdString() +
           (each.param.dayNight == DayNight::Day ? "_day" : "_night") + (each.param.calm ? "_calm" : "");
});

TEST_F(BarLook, inkStandsOutFromTheColourOfEveryKind)
{
    for (const DayNight dayNight : {DayNight::Day, DayNight::Night}) {
        const Theme theme = touching::bench(dayNight);
        for (const auto& [kind, code] : Codes<AlarmKind>::table) {
            const AlarmColors colors = colorsOf(kind);
            EXPECT_GE(rules::contrastRatio(theme.color(colors.ground), theme.color(colors.ink)), 7.0) << code;
        }
    }
}

TEST_F(BarLook, aHeadlineIsWholeAndTheSecondLineGivesWay)
{
    Glass upright(rules::glasses()[3]);
    ASSERT_TRUE(upright.show());
    const AlarmShown longest{AlarmKind::SandUntil, u"Jetzt schleifen: es wird immer härter"_s,
                             u"+12 weitere · 2024-000417-M84 · Seitenwand hinten rechts mit Radlauf · Mischung 3"_s};
    upright.set({gels, longest});
    const auto shown = upright.button(1)->shownTexts();
    ASSERT_EQ(shown.size(), 2U);
    EXPECT_EQ(shown[0].text, longest.headline);
    EXPECT_TRUE(shown[0].fits);
    EXPECT_TRUE(shown[1].text.endsWith(u'…'));
    EXPECT_TRUE(shown[1].text.startsWith(u"+12 weitere"_s));
    EXPECT_THAT(rules::checkScreen(&upright.window, upright.theme), IsEmpty());
    EXPECT_TRUE(upright.button(1)->spoken().endsWith(longest.second)); // whole for whoever listens
    touching::keepLook(*upright.bar, u"alarm_longest"_s);
}

} // namespace
} // namespace strandbench
