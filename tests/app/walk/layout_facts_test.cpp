// SPDX-License-Identifier: GPL-3.0-or-later
// Layouts that are compared: what moved is named, and nothing else is.
#include "layout_facts.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

Keys keys() { return {{u"answer_back"_s, {6, 206, 96, 48}}, {u"answer_way_on"_s, {330, 206, 96, 48}}}; }

Layouts layoutsOf(const Keys& keys, const QString& screen = u"screen_mix"_s)
{
    Layouts layouts;
    layouts.note(screen, keys);
    return layouts;
}

TEST(LayoutFacts, TheSameIsNoChange)
{
    EXPECT_EQ(Layouts::changes(layoutsOf(keys()), layoutsOf(keys())), QStringList());
    Keys rounded = keys();
    rounded[u"answer_back"_s].translate(1, -1);
    EXPECT_EQ(Layouts::changes(layoutsOf(keys()), layoutsOf(rounded)), QStringList());
}

TEST(LayoutFacts, AKeyThatMovedIsNamedWithBothPlaces)
{
    Keys moved = keys();
    moved[u"answer_back"_s].translate(12, 0);
    EXPECT_EQ(
        Layouts::changes(layoutsOf(keys()), layoutsOf(moved)),
        QStringList{u"screen_mix: the key 'answer_back' stood 3.0 mm from the left, 103.0 mm from the top, 48.0 by "
                    "24.0 mm, and stands 9.0 mm from the left, 103.0 mm from the top, 48.0 by 24.0 mm"_s});
}

TEST(LayoutFacts, AKeyThatCameWentOrGrewIsNamed)
{
    Keys other = keys();
    other[u"answer_way_on"_s].setWidth(80);
    other.remove(u"answer_back"_s);
    other.insert(u"harm"_s, {6, 150, 60, 40});
    const QStringList changes = Layouts::changes(layoutsOf(keys()), layoutsOf(other));
    ASSERT_EQ(changes.size(), 3);
    EXPECT_TRUE(changes[0].startsWith(u"screen_mix: the key 'answer_back' is gone"_s)) << changes[0].toStdString();
    EXPECT_TRUE(changes[1].contains(u"'answer_way_on' stood"_s)) << changes[1].toStdString();
    EXPECT_TRUE(changes[2].startsWith(u"screen_mix: the key 'harm' is new"_s)) << changes[2].toStdString();
}

TEST(LayoutFacts, AScreenThatCameOrWentIsNamed)
{
    EXPECT_EQ(Layouts::changes(layoutsOf(keys()), layoutsOf(keys(), u"screen_pat"_s)),
              (QStringList{u"screen_mix: is not shown any more"_s, u"screen_pat: is new"_s}));
    Layouts twice = layoutsOf(keys());
    Keys moved = keys();
    moved[u"answer_back"_s].translate(12, 0);
    twice.note(u"screen_mix"_s, moved);
    EXPECT_EQ(Layouts::changes(layoutsOf(keys()), twice), QStringList{u"screen_mix: had 1 layouts, and has 2"_s});
}

TEST(LayoutFacts, AreReadAsTheyWereWritten)
{
    Layouts layouts = layoutsOf(keys());
    layouts.note(u"screen_pat"_s, {{u"answer_stop"_s, {100, 206, 96, 48}}});
    const auto read = Layouts::fromJson(layouts.toJson());
    ASSERT_TRUE(read);
    EXPECT_EQ(read->toJson(), layouts.toJson());
    EXPECT_EQ(Layouts::changes(layouts, *read), QStringList());
    EXPECT_FALSE(Layouts::fromJson("no layouts"));
}

} // namespace
} // namespace strandbench::test
