// SPDX-License-Identifier: GPL-3.0-or-later
#include "repair/event.h"

#include <QSet>

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;
using namespace strandbench;

namespace {

/// The codes as stored: written out again here, since a change would orphan every log.
const std::vector<std::pair<Payload, QString>>& everyKind()
{
    static const std::vector<std::pair<Payload, QString>> all{
        {TakenIn{}, u"taken_in"_s},
        {Answered{}, u"answered"_s},
        {PlanAccepted{}, u"plan_accepted"_s},
        {StepDone{}, u"step_done"_s},
        {ReadingTaken{}, u"reading_taken"_s},
        {HardenerIn{}, u"hardener_in"_s},
        {EdgesClear{}, u"edges_clear"_s},
        {Gelled{}, u"gelled"_s},
        {Sands{}, u"sands"_s},
        {Sanded{}, u"sanded"_s},
        {Turned{}, u"turned"_s},
        {Parked{}, u"parked"_s},
        {AssessAgain{}, u"assess_again"_s},
        {TakenUpAgain{}, u"taken_up_again"_s},
        {HandedOver{}, u"handed_over"_s},
        {PhotoTaken{}, u"photo_taken"_s},
        {Noted{}, u"noted"_s},
        {PredictedAgain{}, u"predicted_again"_s},
        {PatMixed{}, u"pat_mixed"_s},
        {PatGelled{}, u"pat_gelled"_s},
        {LotForgotten{}, u"lot_forgotten"_s},
        {AlarmAnswered{}, u"alarm_answered"_s},
        {Overridden{}, u"overridden"_s},
        {SignedOff{}, u"signed_off"_s},
        {Corrected{}, u"corrected"_s},
        {ClockJumped{}, u"clock_jumped"_s},
        {ActRefused{}, u"act_refused"_s},
        {PinSet{}, u"pin_set"_s},
        {LogRestored{}, u"log_restored"_s},
        {LogMerged{}, u"log_merged"_s},
        {StockReceived{}, u"stock_received"_s},
        {StockOpened{}, u"stock_opened"_s},
        {StockCounted{}, u"stock_counted"_s},
        {StockAdjusted{}, u"stock_adjusted"_s},
        {StockEnded{}, u"stock_ended"_s},
        {StockMoved{}, u"stock_moved"_s},
        {StockProbed{}, u"stock_probed"_s},
        {BeadCalibrated{}, u"bead_calibrated"_s},
        {SheetKept{}, u"sheet_kept"_s},
        {SheetLaidAside{}, u"sheet_laid_aside"_s},
        {Returned{}, u"returned"_s},
        {ReworkBegun{}, u"rework_begun"_s},
    };
    return all;
}

TEST(EventKind, HasItsStoredCodeAndVersion)
{
    QSet<QString> codes;
    for (const auto& [payload, code] : everyKind()) {
        EXPECT_EQ(kindOf(payload), code) << qPrintable(code);
        static const std::map<QString, int> changed{{u"plan_accepted"_s, 4}, {u"hardener_in"_s, 5}, {u"answered"_s, 3},
                                                    {u"reading_taken"_s, 2}, {u"pat_mixed"_s, 2},   {u"parked"_s, 2},
                                                    {u"taken_in"_s, 2}};
        EXPECT_EQ(kindVersionOf(payload), changed.contains(code) ? changed.at(code) : 1) << qPrintable(code);
        codes << code;
    }
    EXPECT_EQ(codes.size(), qsizetype(std::variant_size_v<Payload>)) << "every alternative stands in the table once";
}

TEST(EventKind, ActsAgainstTheClock)
{
    QStringList found;
    for (const auto& [payload, code] : everyKind())
        if (isAgainstTheClock(payload))
            found << code;
    EXPECT_EQ(found, QStringList({u"hardener_in"_s, u"edges_clear"_s, u"gelled"_s, u"sands"_s, u"predicted_again"_s,
                                  u"pat_mixed"_s, u"pat_gelled"_s, u"alarm_answered"_s, u"clock_jumped"_s}));
}

} // namespace
