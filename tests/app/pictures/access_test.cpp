// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/mix_block.h"
#include "pictures/phase_ribbon.h"
#include "pictures/puddle_picture.h"
#include "pictures/section_picture.h"
#include "pictures/step_picture.h"

#include <QAccessible>

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QAccessible::Role roleOf(QWidget& widget)
{
    QAccessibleInterface* face = QAccessible::queryAccessibleInterface(&widget);
    return face ? face->role() : QAccessible::NoRole;
}

TEST(PictureAccess, picturesArePicturesWithTheNameThatTheScreenGives)
{
    const Theme theme(Metrics(5.9), DayNight::Day, Hand::Right);
    SectionPicture section(theme, u"section"_s);
    PuddlePicture puddle(theme, u"puddle"_s);
    PhaseRibbon phases(theme, u"phases"_s);
    StepPicture step(theme, u"step"_s);
    for (QWidget* each : {static_cast<QWidget*>(&section), static_cast<QWidget*>(&puddle),
                          static_cast<QWidget*>(&phases), static_cast<QWidget*>(&step)}) {
        each->setAccessibleName(u"Section of the repair"_s);
        EXPECT_EQ(roleOf(*each), QAccessible::Graphic) << each->objectName().toStdString();
        EXPECT_EQ(QAccessible::queryAccessibleInterface(each)->text(QAccessible::Name), u"Section of the repair"_s);
    }
}

TEST(PictureAccess, aBlockIsAButtonNamedByJobAndPhase)
{
    const Theme theme(Metrics(5.9), DayNight::Day, Hand::Right);
    MixBlock block(theme, u"block"_s);
    block.setShown({}, {u"4421 skirt panel"_s, u"Spread"_s, u"02:05"_s});
    QAccessibleInterface* face = QAccessible::queryAccessibleInterface(&block);
    ASSERT_NE(face, nullptr);
    EXPECT_EQ(face->role(), QAccessible::Button);
    EXPECT_EQ(face->text(QAccessible::Name), u"4421 skirt panel, Spread"_s);
    int clicks = 0;
    QObject::connect(&block, &MixBlock::clicked, [&] { ++clicks; });
    ASSERT_NE(face->actionInterface(), nullptr);
    EXPECT_TRUE(face->actionInterface()->actionNames().contains(QAccessibleActionInterface::pressAction()));
    face->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    EXPECT_EQ(clicks, 1);
}

} // namespace
} // namespace strandbench
