// SPDX-License-Identifier: GPL-3.0-or-later
// From 'Stop and ask': notes by a tap and in one's own words, and a job parked by choice and taken up again.
#include "bench_fixture.h"
#include "shown.h"

#include "words/notes.h"

#include <QTest>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class BesideTheSteps : public BenchTest {
protected:
    const Repair& repair() { return *bench().repair(u"4421"_s); }
    void toAsk()
    {
        open();
        walkTo(skirtPanel(), Station::Prepare);
        tap(u"answer_stop"_s);
        ASSERT_EQ(screen(), u"screen_ask"_s);
    }
    void park(const QString& why, const QString& to)
    {
        ASSERT_TRUE(bench().thumb().hold(u"park_it"_s));
        ASSERT_EQ(screen(), u"screen_park_why"_s);
        tap(u"why_"_s + why);
        ASSERT_EQ(screen(), u"screen_park_to"_s);
        tap(u"to_"_s + to);
        ASSERT_EQ(screen(), u"screen_parked"_s);
    }
};

TEST_F(BesideTheSteps, ACommonNoteAndAKeyedOneAreEvents)
{
    toAsk();
    tap(u"notes"_s);
    ASSERT_EQ(screen(), u"screen_notes"_s);
    EXPECT_FALSE(shown(window(), u"no_notes"_s).isEmpty());
    tap(u"note_panel_warmed"_s);
    EXPECT_EQ(screen(), u"screen_notes"_s) << "there may be more to note";
    bench().clock().advance(seconds(120));
    tap(u"own_words"_s);
    tap(u"answer_way_on"_s);
    EXPECT_TRUE(window().screen()->troubleShown().contains(u"empty"_s));
    tap(u"letter_1"_s); // B
    tap(u"letter_4"_s); // E
    tap(u"letter_space"_s);
    tap(u"letter_page"_s);
    tap(u"letter_1"_s); // O
    tap(u"letter_0"_s); // N
    tap(u"letter_delete"_s);
    tap(u"letter_page"_s);
    tap(u"letter_7"_s);
    EXPECT_EQ(shown(window(), u"typed_note"_s), u"Be o7"_s);
    for (const Qt::Key key : {Qt::Key_X, Qt::Key_Space, Qt::Key_Y}) {
        bench().clock().advance(seconds(0.3));
        QTest::keyClick(window().focusWidget(), key);
        bench().thumb().settle();
    }
    bench().clock().advance(seconds(0.3));
    QTest::keyClick(window().focusWidget(), Qt::Key_Return);
    bench().thumb().settle();
    ASSERT_EQ(screen(), u"screen_notes"_s);
    ASSERT_EQ(repair().notes.size(), 2U);
    EXPECT_EQ(repair().notes[0].what, (Noted{u"panel_warmed"_s, {}}));
    EXPECT_EQ(repair().notes[1].what, (Noted{{}, u"Be o7x y"_s}));
    EXPECT_EQ(shown(window(), u"note_0"_s), u"Be o7x y"_s) << "newest first";
    EXPECT_EQ(shown(window(), u"note_1"_s), noteText({u"panel_warmed"_s, {}}));
    EXPECT_TRUE(shown(window(), u"note_0_by"_s).endsWith(u"Ada"_s));
    const int prepDone = repair().prepDone;
    open();
    EXPECT_EQ(repair().notes.size(), 2U);
    EXPECT_EQ(repair().prepDone, prepDone) << "a note moves no step";
}

TEST_F(BesideTheSteps, OlderNotesAreOneTapAway)
{
    toAsk();
    tap(u"notes"_s);
    for (const QString& note : {u"note_deeper_than_it_looked"_s, u"note_crack_ran_further"_s, u"note_panel_warmed"_s})
        tap(note);
    EXPECT_EQ(shown(window(), u"note_0"_s), noteText({u"panel_warmed"_s, {}}));
    tap(u"older_notes"_s);
    EXPECT_EQ(shown(window(), u"note_0"_s), noteText({u"deeper_than_it_looked"_s, {}}));
    EXPECT_TRUE(shown(window(), u"note_1"_s).isEmpty());
    tap(u"answer_way_on"_s);
    EXPECT_TRUE(screen().startsWith(u"screen_prepare"_s));
}

TEST_F(BesideTheSteps, AScanIsWrittenIntoANote)
{
    toAsk();
    tap(u"notes"_s);
    tap(u"own_words"_s);
    for (const QChar each : u"LOT77"_s)
        QTest::keyClick(window().focusWidget(), static_cast<Qt::Key>(each.unicode()), Qt::ShiftModifier);
    QTest::keyClick(window().focusWidget(), Qt::Key_Return);
    bench().thumb().settle();
    EXPECT_EQ(screen(), u"screen_note_text"_s) << "its Enter does not keep the note";
    EXPECT_EQ(shown(window(), u"typed_note"_s).toUpper(), u"LOT77"_s);
}

TEST_F(BesideTheSteps, AJobParkedByChoiceSaysWhyAndWhereAndIsTakenUpWhereItWas)
{
    toAsk();
    const int prepDone = repair().prepDone;
    tap(u"park_it"_s);
    EXPECT_EQ(screen(), u"screen_ask"_s) << "a brush of the sleeve does nothing";
    ASSERT_NO_FATAL_FAILURE(park(u"metal_work_first"_s, u"metal_shop"_s));
    EXPECT_EQ(*repair().parked, (Parked{u"metal_shop"_s, {}, u"metal_work_first"_s}));
    open();
    const QString card = bench().thumb().find(u"job_card_0"_s)->accessibleDescription();
    EXPECT_TRUE(card.contains(parkReason(u"metal_work_first"_s))) << card.toStdString();
    EXPECT_TRUE(card.contains(parkedWhere(u"metal_shop"_s))) << card.toStdString();
    tap(u"job_card_0"_s);
    ASSERT_EQ(screen(), u"screen_parked"_s);
    EXPECT_TRUE(shown(window(), u"sentence"_s).contains(parkedWhere(u"metal_shop"_s)));
    EXPECT_TRUE(shown(window(), u"message_headline"_s).contains(parkReason(u"metal_work_first"_s).mid(1)));
    tap(u"answer_way_on"_s);
    EXPECT_EQ(nextStep(repair()).station, Station::Prepare);
    EXPECT_EQ(repair().prepDone, prepDone);
}

TEST_F(BesideTheSteps, AJobParkedWithAPersonIsAssessedAgainByAHold)
{
    toAsk();
    ASSERT_NO_FATAL_FAILURE(park(u"waits_for_answer"_s, u"person_1"_s));
    EXPECT_EQ(repair().parked->to, u"Ravi"_s);
    EXPECT_TRUE(shown(window(), u"sentence"_s).contains(u"Ravi"_s));
    EXPECT_FALSE(shown(window(), u"sentence"_s).contains(u'['));
    tap(u"assess_again"_s);
    EXPECT_EQ(screen(), u"screen_parked"_s);
    ASSERT_TRUE(bench().thumb().hold(u"assess_again"_s));
    EXPECT_EQ(screen(), u"screen_assess_substrate"_s);
}

TEST_F(BesideTheSteps, BackLeadsFromWhomToWhyToAskAndParksNothing)
{
    toAsk();
    ASSERT_TRUE(bench().thumb().hold(u"park_it"_s));
    tap(u"why_shift_over"_s);
    tap(u"answer_back"_s);
    EXPECT_EQ(screen(), u"screen_park_why"_s);
    tap(u"answer_back"_s);
    EXPECT_EQ(screen(), u"screen_ask"_s);
    EXPECT_FALSE(repair().parked.has_value());
}

TEST_F(BesideTheSteps, AJobThatIsParkedOrHasARunningMixIsNotParked)
{
    toAsk();
    ASSERT_NO_FATAL_FAILURE(park(u"shift_over"_s, u"nobody"_s));
    EXPECT_EQ(repair().parked->to, QString());
    tap(u"answer_stop"_s);
    EXPECT_EQ(screen(), u"screen_ask"_s);
    EXPECT_EQ(bench().thumb().find(u"park_it"_s), nullptr);
    tap(u"answer_way_on"_s);
    tap(u"answer_way_on"_s);
    walkTo(skirtPanel(), Station::Spread);
    tap(u"answer_stop"_s);
    EXPECT_EQ(bench().thumb().find(u"park_it"_s), nullptr);
    EXPECT_NE(bench().thumb().find(u"notes"_s), nullptr);
}

} // namespace
} // namespace strandbench::test
