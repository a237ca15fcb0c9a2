// SPDX-License-Identifier: GPL-3.0-or-later
// The checker of screens: it passes a good one and finds each fault that is planted.
#include "touch_rules/rule_check.h"

#include "sample_screen.h"
#include "theme/sizes.h"
#include "touching.h"

#include <QCoreApplication>
#include <QLabel>
#include <QPainter>
#include <QPushButton>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <memory>

namespace strandbench {
namespace {

using namespace Qt::StringLiterals;
using rules::Breach;
using rules::checkScreen;
using rules::RuleSet;
using testing::Contains;
using testing::IsEmpty;
using testing::Not;

MATCHER_P2(IsBreach, rule, widget, "")
{
    return arg.rule == QString::fromLatin1(rule) && arg.widget.contains(QString::fromLatin1(widget));
}

struct Setting {
    std::size_t glass;
    DayNight dayNight;
    Hand hand;
};

class GoodScreen : public testing::TestWithParam<Setting> {};

TEST_P(GoodScreen, hasNoBreach)
{
    const rules::Glass& glass = rules::glasses()[GetParam().glass];
    const Theme theme(Metrics(glass.pixelsPerMillimetre()), GetParam().dayNight, GetParam().hand);
    SampleScreen screen(theme, glass);
    ASSERT_TRUE(touching::show(screen, glass.pixels));
    touching::keepLook(screen, u"sample_"_s + glass.name +
                                   (GetParam().dayNight == DayNight::Day ? u"_day"_s : u"_night"_s) +
                                   (GetParam().hand == Hand::Left ? u"_left"_s : u""_s));
    EXPECT_THAT(checkScreen(&screen, theme), IsEmpty());
    screen.answers->setWayOnEnabled(false);
    screen.choices.front()->setEnabled(false);
    EXPECT_THAT(checkScreen(&screen, theme), IsEmpty()) << "with a way on that is not open yet";
}

std::vector<Setting> allSettings()
{
    std::vector<Setting> all;
    for (std::size_t glass = 0; glass < rules::glasses().size(); ++glass)
        for (const DayNight dayNight : {DayNight::Day, DayNight::Night})
            for (const Hand hand : {Hand::Right, Hand::Left})
                all.push_back({glass, dayNight, hand});
    return all;
}

INSTANTIATE_TEST_SUITE_P(All, GoodScreen, testing::ValuesIn(allSettings()), [](const auto& each) {
    return "glass_" + rules::glasses()[each.param.glass].name.toStdString() +
           (each.param.dayNight == DayNight::Day ? "_day" : "_night") +
           (each.param.hand == Hand::Left ? "_left" : "_right");
});

/// Paints itself in the colours given, to plant faults of contrast.
class PaleButton final : public QPushButton {
public:
    PaleButton(QWidget* parent, QColor face, QColor ink) : QPushButton(parent), m_face(face), m_ink(ink) {}

protected:
    void paintEvent(QPaintEvent*) override
    {
        QPainter painter(this);
        painter.fillRect(rect(), m_face);
        painter.setPen(m_ink);
        painter.drawText(rect(), Qt::AlignCenter, text());
    }

private:
    QColor m_face;
    QColor m_ink;
};

class Fault : public testing::Test {
protected:
    void SetUp() override
    {
        ASSERT_TRUE(touching::show(screen, glass.pixels));
        ASSERT_THAT(checkScreen(&screen, theme), IsEmpty());
    }
    // A control at a free place: the strip where the ribbon would be.
    TapButton* extra(const QString& name, double xMm, double yMm, double widthMm, double heightMm)
    {
        auto* button = new TapButton(theme, name, TapButton::Kind::Plain, &screen);
        button->setTitle(u"Extra"_s);
        button->setGeometry(theme.px(xMm), theme.px(yMm), theme.px(widthMm), theme.px(heightMm));
        button->show();
        QWidget::setTabOrder(screen.answers->wayOn(), button);
        return button;
    }
    [[nodiscard]] std::vector<Breach> found(RuleSet set = RuleSet::Bench) { return checkScreen(&screen, theme, set); }
    const rules::Glass& glass = rules::glasses()[1];
    Theme theme = Theme(Metrics(glass.pixelsPerMillimetre()), DayNight::Day, Hand::Right);
    SampleScreen screen{theme, glass};
};

TEST_F(Fault, aSmallTargetIsFound)
{
    extra(u"little"_s, 100, 0.5, 30, 18);
    EXPECT_THAT(found(), Contains(IsBreach("target_size", "little")));
    EXPECT_THAT(found(RuleSet::Dense), Not(Contains(IsBreach("target_size", "little"))));
    extra(u"least"_s, 3, 0.5, 30, 13);
    EXPECT_THAT(found(RuleSet::Dense), Contains(IsBreach("target_size", "least")));
}

TEST_F(Fault, aLowAnswerIsFound)
{
    screen.answers->stop()->setFixedHeight(theme.px(22));
    QCoreApplication::processEvents();
    EXPECT_THAT(found(), Contains(IsBreach("answer_height", "answer_stop")));
}

TEST_F(Fault, targetsTooCloseOrOverEachOtherAreFound)
{
    extra(u"one"_s, 3, 0.5, 25, 20);
    TapButton* two = extra(u"two"_s, 31, 0.5, 25, 20);
    EXPECT_THAT(found(), Contains(IsBreach("target_gap", "one | two")));
    two->move(theme.px(32), two->y());
    EXPECT_THAT(found(), Not(Contains(IsBreach("target_gap", "one | two"))));
    two->move(theme.px(10), two->y());
    EXPECT_THAT(found(), Contains(IsBreach("target_gap", "one | two")));
}

TEST_F(Fault, aTargetBeyondTheGlassIsFound)
{
    extra(u"beyond"_s, 205, 0.5, 25, 20);
    EXPECT_THAT(found(), Contains(IsBreach("target_inside", "beyond")));
}

TEST_F(Fault, aCutTextIsFound)
{
    screen.choices.back()->setTitle(u"Donaudampfschifffahrtsgesellschaftskapit\u00e4n"_s);
    EXPECT_THAT(found(), Contains(IsBreach("text_fits", "smc")));
    screen.sentence->setText(QString(400, u'x'));
    QCoreApplication::processEvents();
    EXPECT_THAT(found(), Contains(IsBreach("text_fits", "sentence")));
}

TEST_F(Fault, aTextBeyondTheGlassIsFound)
{
    auto* label = new FitLabel(theme, u"beyond"_s, TextRole::Body, &screen);
    label->setText(u"read me"_s);
    label->setGeometry(theme.px(205), 10, theme.px(40), theme.px(8));
    label->show();
    EXPECT_THAT(found(), Contains(IsBreach("text_inside", "beyond")));
}

TEST_F(Fault, smallTextIsFound)
{
    auto* label = new QLabel(u"fine print"_s, &screen);
    label->setObjectName(u"fine_print"_s);
    label->setFont(theme.font(2.6));
    label->setGeometry(20, 10, 300, 40);
    label->show();
    EXPECT_THAT(found(), Contains(IsBreach("text_size", "fine_print")));
    screen.choices.front()->setTitleSize({3.0, 3.0});
    EXPECT_THAT(found(), Contains(IsBreach("text_size", "laminate")));
}

TEST_F(Fault, aCutTextOfAPlainLabelIsFound)
{
    auto* label = new QLabel(u"a text that is much longer than its place"_s, &screen);
    label->setObjectName(u"plain"_s);
    label->setFont(theme.font(4));
    label->setGeometry(20, 10, 80, 40);
    label->show();
    EXPECT_THAT(found(), Contains(IsBreach("text_fits", "plain")));
}

TEST_F(Fault, aPaleTextIsFound)
{
    screen.body->setRole(Role::Rail);
    EXPECT_THAT(found(), Contains(IsBreach("text_contrast", "until")));
}

TEST_F(Fault, aPaleEdgeIsFound)
{
    auto* pale = new PaleButton(&screen, QColor(0xE0DDD2), QColor(0x16202B));
    pale->setObjectName(u"pale"_s);
    pale->setText(u"Pale"_s);
    pale->setFont(theme.font(4));
    pale->setGeometry(theme.px(3), 4, theme.px(30), theme.px(20));
    pale->show();
    EXPECT_THAT(found(), Contains(IsBreach("edge_contrast", "pale")));
}

TEST_F(Fault, aNamelessControlIsFound)
{
    TapButton* mute = extra(u"mute"_s, 3, 0.5, 25, 20);
    mute->setTitle({});
    mute->setSign(Pictogram::Plus);
    EXPECT_THAT(found(), Contains(IsBreach("name", "mute")));
    mute->setAccessibleName(u"More"_s);
    EXPECT_THAT(found(), Not(Contains(IsBreach("name", "mute"))));
}

TEST_F(Fault, aControlWithoutARoleIsFound)
{
    auto* gauge = new QWidget(&screen);
    gauge->setObjectName(u"gauge"_s);
    gauge->setFocusPolicy(Qt::TabFocus);
    gauge->setAccessibleName(u"Gauge"_s);
    gauge->setGeometry(3, 3, 200, 100);
    gauge->show();
    EXPECT_THAT(found(), Contains(IsBreach("role", "gauge")));
}

TEST_F(Fault, aNameUsedTwiceOrMissingIsFound)
{
    extra(u"answer_back"_s, 3, 0.5, 25, 24);
    EXPECT_THAT(found(), Contains(IsBreach("object_name", "answer_back")));
    extra({}, 60, 0.5, 25, 20);
    EXPECT_THAT(found(), Contains(IsBreach("object_name", "TapButton")));
}

TEST_F(Fault, aControlOutOfTheKeyboardsReachIsFound)
{
    screen.hold->setFocusPolicy(Qt::NoFocus);
    EXPECT_THAT(found(), Contains(IsBreach("keyboard_reach", "assess_again")));
    screen.hold->setEnabled(false);
    EXPECT_THAT(found(), Not(Contains(IsBreach("keyboard_reach", "assess_again"))));
}

TEST_F(Fault, aWrongOrderOfTheKeyboardIsFound)
{
    QWidget::setTabOrder(screen.answers->wayOn(), screen.answers->back());
    EXPECT_THAT(found(), Contains(IsBreach("keyboard_order", "answer_back")));
}

TEST_F(Fault, whatIsHiddenIsNoFault)
{
    TapButton* hidden = extra(u"little"_s, 100, 0.5, 30, 10);
    hidden->hide();
    EXPECT_THAT(found(), IsEmpty());
}

TEST_F(Fault, aBreachTellsWhatItFoundAndWhatIsAllowed)
{
    extra(u"little"_s, 100, 0.5, 30, 18);
    const std::vector<Breach> breaches = found();
    const auto it =
        std::find_if(breaches.begin(), breaches.end(), [](const Breach& b) { return b.rule == "target_size"_L1; });
    ASSERT_NE(it, breaches.end());
    EXPECT_EQ(it->found, u"17.97 mm"_s);
    EXPECT_EQ(it->allowed, u"20.00 mm or more"_s);
}

} // namespace
} // namespace strandbench
