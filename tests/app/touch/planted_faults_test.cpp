// SPDX-License-Identifier: GPL-3.0-or-later
// Faults of each kind that the first test of the rules does not plant, one a screen: the rule finds exactly that one.
#include "touch_rules/rule_check.h"

#include "sample_screen.h"
#include "touching.h"

#include <QLabel>
#include <QPainter>
#include <QPushButton>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using rules::Breach;
using testing::IsEmpty;

/// What its like says of itself is said wrongly: it paints two colours and has no words.
class Drawing final : public QWidget {
public:
    using QWidget::QWidget;

protected:
    void paintEvent(QPaintEvent*) override
    {
        QPainter painter(this);
        painter.fillRect(rect(), Qt::white);
        painter.drawLine(rect().topLeft(), rect().bottomRight());
    }
};

/// A text of its own making, on which nothing is written.
class Told final : public FitLabel {
public:
    using FitLabel::FitLabel;
    ShownText shown;
    [[nodiscard]] std::vector<ShownText> shownTexts() const override { return {shown}; }
};

class Planted : public testing::Test {
protected:
    void SetUp() override
    {
        ASSERT_TRUE(touching::show(screen, glass.pixels));
        ASSERT_THAT(rules::checkScreen(&screen, theme), IsEmpty());
    }
    /// The rules that are broken, each once, with what breaks them.
    [[nodiscard]] std::vector<std::string> broken() const
    {
        std::set<std::string> all;
        for (const Breach& each : rules::checkScreen(const_cast<SampleScreen*>(&screen), theme))
            all.insert(each.rule.toStdString() + ' ' + each.widget.toStdString());
        return {all.begin(), all.end()};
    }
    template <typename Widget> Widget* put(Widget* widget, const QString& name, double xMm, double widthMm)
    {
        widget->setObjectName(name);
        widget->setGeometry(theme.px(xMm), theme.px(1), theme.px(widthMm), theme.px(20));
        widget->show();
        return widget;
    }
    using Only = std::vector<std::string>;

    const rules::Glass& glass = rules::glasses()[1];
    Theme theme = Theme(Metrics(glass.pixelsPerMillimetre()), DayNight::Day, Hand::Right);
    SampleScreen screen{theme, glass};
};

TEST_F(Planted, ASentenceTooSmall)
{
    // As high as its least size is only above its half: what is left of it is smaller than a sentence may be.
    auto* label = new FitLabel(theme, u"small_sentence"_s, TextRole::Sentence, &screen);
    label->setText(u"Press in firmly, wet the edges, fill to level, and so on until it is level"_s);
    put(label, u"small_sentence"_s, 3, 40);
    const std::vector<std::string> found = broken();
    EXPECT_THAT(found, testing::Contains("text_fits small_sentence"));
    EXPECT_EQ(found.size(), 1U);
}

TEST_F(Planted, APictureWithoutWords)
{
    auto* drawing = put(new Drawing(&screen), u"drawing"_s, 3, 40);
    EXPECT_EQ(broken(), (Only{"picture_role drawing", "picture_text drawing"}));
    drawing->setAccessibleName(u"A line from corner to corner"_s);
    EXPECT_EQ(broken(), Only{"picture_role drawing"});
}

TEST_F(Planted, ATextThatIsNotReadOut)
{
    auto* label = new FitLabel(theme, u"mute"_s, TextRole::Body, &screen);
    label->setText(u"Read me"_s);
    put(label, u"mute"_s, 3, 40)->setAccessibleName(u" "_s);
    EXPECT_EQ(broken(), Only{"name mute"});
}

TEST_F(Planted, ATextLeftOutAndNowhereWhole)
{
    auto* told = new Told(theme, u"elided"_s, TextRole::Body, &screen);
    told->setText(u"…17-M84"_s);
    told->setAccessibleName(u"A job"_s);
    put(told, u"elided"_s, 3, 40);
    told->shown = {u"…17-M84"_s, QRectF(0, 0, 100, 60), 4.6, true};
    EXPECT_EQ(broken(), Only{"text_elided elided"});
    told->setAccessibleName(u"WO-2026-11-26/000417-M84"_s);
    EXPECT_EQ(broken(), Only{});
}

TEST_F(Planted, APlainTextTooPale)
{
    auto* label = put(new QLabel(u"Pale"_s, &screen), u"pale"_s, 3, 40);
    label->setFont(theme.font(4));
    QPalette palette = label->palette();
    palette.setColor(QPalette::WindowText, QColor(0x8B97A3));
    label->setPalette(palette);
    EXPECT_EQ(broken(), Only{"text_contrast pale"});
}

TEST_F(Planted, AControlWithoutAValue)
{
    auto* gauge = put(new QLabel(u"7"_s, &screen), u"gauge"_s, 3, 40);
    gauge->setFont(theme.font(4));
    gauge->setFocusPolicy(Qt::TabFocus);
    gauge->setAccessibleName(u"Gauge"_s);
    QWidget::setTabOrder(screen.answers->wayOn(), gauge);
    EXPECT_THAT(broken(), testing::Contains("value gauge"));
}

} // namespace
} // namespace strandbench
