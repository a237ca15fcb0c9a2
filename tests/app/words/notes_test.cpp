// SPDX-License-Identifier: GPL-3.0-or-later
// Every code of notes, photos and parking has its words, and each words of its own.
#include "readable.h"

#include "words/notes.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

TEST(NoteWords, EveryCodeHasItsOwn)
{
    QSet<QString> seen;
    for (const QString& code : commonNotes()) {
        const QString text = noteText({code, {}});
        EXPECT_TRUE(isReadable(text)) << code.toStdString();
        EXPECT_LE(wordsIn(text), 5) << "a tile: " << code.toStdString();
        seen.insert(text);
    }
    EXPECT_EQ(std::size_t(seen.size()), commonNotes().size());
    EXPECT_EQ(noteText({{}, u"as keyed in"_s}), u"as keyed in"_s);
    seen.clear();
    for (const QString& code : parkReasons()) {
        EXPECT_TRUE(isReadable(parkReason(code))) << code.toStdString();
        seen.insert(parkReason(code));
    }
    EXPECT_EQ(std::size_t(seen.size()), parkReasons().size());
    EXPECT_EQ(parkReason({}), QString());
    for (const auto& [moment, code] : Codes<PhotoMoment>::table) {
        EXPECT_TRUE(isReadable(photoMomentName(moment))) << code;
        EXPECT_TRUE(isReadable(photoMomentInList(moment))) << code;
    }
}

TEST(NoteWords, AJobIsParkedAtAPlaceWithAPersonOrHere)
{
    EXPECT_EQ(parkedWhere(u"welding_shop"_s), u"to the welding shop"_s);
    EXPECT_EQ(parkedWhere(u"Ada"_s), u"to Ada"_s);
    EXPECT_TRUE(isReadable(parkedWhere({})));
}

TEST(NoteWords, TheLikelyPlaceComesFirstAndNoneIsLost)
{
    for (const QString& reason : parkReasons()) {
        const std::vector<QString> places = parkPlaces(reason);
        EXPECT_EQ(QSet<QString>(places.begin(), places.end()).size(), 8) << reason.toStdString();
        for (const QString& each : places)
            EXPECT_NE(parkedWhere(each), u"to "_s + each) << "no place of this code: " << each.toStdString();
    }
    EXPECT_EQ(parkPlaces(u"metal_work_first"_s).front(), u"metal_shop"_s);
    EXPECT_EQ(parkPlaces(u"waits_for_part"_s).front(), u"parts_counter"_s);
    EXPECT_EQ(parkPlaces(u"shift_over"_s).front(), u"supervisor"_s);
}

} // namespace
} // namespace strandbench
