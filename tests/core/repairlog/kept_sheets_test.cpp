// SPDX-License-Identifier: GPL-3.0-or-later
// Product sheets in the log: what may be kept, what comes back, and what a check of the log finds.
#include "log_fixture.h"
#include "referee.h"

#include "exchange/events.h"
#include "exchange/sheet_draft.h"
#include "exchange/sheets.h"
#include "repairlog/rescue.h"

#include <QCryptographicHash>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QByteArray shopSheet(double density, const QString& id = u"shop_mixed"_s)
{
    SheetDraft draft = SheetDraft::of(*demoCatalogue().byClass(FillerClass::MixedStrand));
    draft.set(u"id"_s, id);
    draft.set(u"name"_s, u"Mixed strand of this shop"_s);
    draft.set(u"demo"_s, false);
    draft.set(u"density_g_per_ml"_s, density);
    return draft.toJson();
}

QByteArray hashOf(const QByteArray& bytes) { return QCryptographicHash::hash(bytes, QCryptographicHash::Sha256); }

class KeptSheets : public test::LogTest {
protected:
    static EventDraft keeping(const QByteArray& bytes, int second, const QString& id = u"shop_mixed"_s)
    {
        EventDraft made = draft(benchSubject(), SheetKept{id, hashOf(bytes)}, second);
        made.blobs = {bytes};
        return made;
    }
    [[nodiscard]] QString breaks() const
    {
        const auto report = verifyLog(path());
        return !report ? report.error().detail : report->clean ? QString() : report->breaksAt + u": "_s + report->where;
    }
};

TEST_F(KeptSheets, ComeBackInAllTheirVersions)
{
    {
        const auto log = open();
        ASSERT_TRUE(log->append(keeping(shopSheet(1.4), 10)));
        ASSERT_TRUE(log->append(keeping(shopSheet(1.6, u"shop_other"_s), 20, u"shop_other"_s)));
        ASSERT_TRUE(log->append(keeping(shopSheet(1.5), 30)));
        ASSERT_TRUE(log->append(draft(benchSubject(), SheetLaidAside{u"shop_other"_s}, 40)));
    }
    EXPECT_EQ(breaks(), QString());
    const auto log = open();
    const auto book = log->sheets();
    ASSERT_TRUE(book);
    ASSERT_EQ(book->versions(u"shop_mixed"_s).size(), 2U);
    EXPECT_EQ(book->versions(u"shop_mixed"_s).front().sheet.source, shopSheet(1.5));
    EXPECT_EQ(book->versions(u"shop_mixed"_s).back().sheet.hash, hashOf(shopSheet(1.4)));
    EXPECT_FALSE(book->inUse(u"shop_other"_s));
    EXPECT_EQ(book->catalogue(demoCatalogue()).byClass(FillerClass::MixedStrand)->source, shopSheet(1.5));
}

TEST_F(KeptSheets, WhatIsNoSheetOfThatNameIsNotKept)
{
    const auto log = open();
    const auto why = [&](const EventDraft& draft) {
        const auto event = log->append(draft);
        EXPECT_FALSE(event);
        return event ? QString() : event.error().detail;
    };
    EventDraft without = keeping(shopSheet(1.4), 10);
    without.blobs.clear();
    EXPECT_TRUE(why(without).contains(u"did not come with it"));
    EventDraft others = keeping(shopSheet(1.4), 10);
    others.blobs = {shopSheet(1.5)};
    EXPECT_TRUE(why(others).contains(u"did not come with it"));
    EXPECT_TRUE(why(keeping(shopSheet(1.4), 10, u"shop_long"_s)).contains(u"shop_long"));
    EXPECT_TRUE(why(keeping(shopSheet(9), 10)).contains(u"density_g_per_ml"));
    EXPECT_TRUE(why(keeping("{}", 10)).contains(u"id"));
    const QString demo = u"demo_mixed_strand"_s;
    EXPECT_TRUE(why(keeping(shopSheet(1.4, demo), 10, demo)).contains(u"demo sheet"));
    EXPECT_TRUE(why(draft(benchSubject(), SheetLaidAside{u"shop_mixed"_s}, 10)).contains(u"not in use"));
    EXPECT_TRUE(
        why(draft(QUuid::createUuid(), SheetKept{u"shop_mixed"_s, hashOf("x")}, 10)).contains(u"not of the bench"));
    EXPECT_EQ(log->head()->count, 0);
}

TEST_F(KeptSheets, BytesThatAreMissingOrOthersAreFound)
{
    {
        const auto log = open();
        ASSERT_TRUE(log->append(keeping(shopSheet(1.4), 10)));
        ASSERT_TRUE(log->append(keeping(shopSheet(1.5), 20)));
    }
    ASSERT_EQ(breaks(), QString());
    const QByteArray first = hashOf(shopSheet(1.4)).toHex();
    ASSERT_EQ(test::Referee(path()).run("DROP TRIGGER event_blob_no_delete; DROP TRIGGER blob_no_delete;"
                                        "DELETE FROM event_blob WHERE hash = x'" +
                                        first +
                                        "';"
                                        "DELETE FROM blob WHERE hash = x'" +
                                        first + "';"),
              "");
    EXPECT_FALSE(breaks().isEmpty());
    const QString saved = folder() + u"/saved.sqlite"_s;
    const auto rescued = rescueLog(path(), saved);
    ASSERT_TRUE(rescued) << rescued.error().detail.toStdString();
    const auto report = verifyLog(saved);
    ASSERT_TRUE(report);
    EXPECT_TRUE(report->clean) << report->where.toStdString() << ": a sheet that is known to be lost is no break";
    const auto log = RepairLog::open(saved, LogMode::ReadOnly);
    ASSERT_TRUE(log);
    const auto book = (*log)->sheets();
    ASSERT_TRUE(book);
    ASSERT_EQ(book->versions(u"shop_mixed"_s).size(), 1U);
    EXPECT_EQ(book->versions(u"shop_mixed"_s).front().sheet.hash, hashOf(shopSheet(1.5)));
}

} // namespace
} // namespace strandbench
