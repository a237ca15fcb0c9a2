// SPDX-License-Identifier: GPL-3.0-or-later
// The end of a sheet: what the log says of its signing, and room to sign.
#include "pdf_reader.h"
#include "sample_record.h"

#include "exchange/sheets.h"
#include "words/role_words.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

const Words& metric()
{
    static const Words words(UnitSystem::Metric, QLocale::c());
    return words;
}

/// The sample with further acts an hour later, each by the supervisor.
JobRecord closedBy(const std::vector<Payload>& acts)
{
    std::vector<Event> events = sampleEvents();
    for (const Payload& act : acts) {
        Event event = events.back();
        event.payload = act;
        event.person = u"Mara Ott"_s;
        event.seq += 1;
        event.at.utcMs += 3'600'000;
        event.at.boottimeMs += 3'600'000;
        events.push_back(event);
    }
    return *recordOf(events, demoCatalogue());
}

/// Of the last act, as a person writes it.
QString timeOf(const JobRecord& record)
{
    const Instant& at = record.events.back().at;
    return QDateTime::fromSecsSinceEpoch(at.utcMs / 1000, Qt::OffsetFromUTC, at.utcOffsetSeconds)
        .toString(u"yyyy-MM-dd HH:mm"_s);
}

QString textOf(const JobRecord& record)
{
    return PdfReader(jobSheetPdf(record, sampleFacts(Paper::A4), metric())).text().simplified();
}

const QUuid other = QUuid::fromString(u"0f7c1b52-8f0e-4c53-9a55-d3fc3b1f0a11"_s);

TEST(SignBlock, SaysThatNobodySigned)
{
    const QString text = textOf(closedBy({}));
    EXPECT_TRUE(text.contains(u"Not signed yet"_s));
    EXPECT_FALSE(text.contains(u"Signed off by"_s) || text.contains(u"Returned by"_s) || text.contains(u"ework"_s));
}

TEST(SignBlock, SaysWhoSignedOffAndWhen)
{
    const JobRecord record = closedBy({SignedOff{}});
    const QString text = textOf(record);
    EXPECT_TRUE(text.contains(u"Signed off by Mara Ott, "_s + timeOf(record))) << text.toStdString();
    EXPECT_FALSE(text.contains(u"Not signed yet"_s));
}

TEST(SignBlock, SaysWhoReturnedItWhyAndWhatBecameOfIt)
{
    const Returned why{u"pinholes"_s, u"left of the lamp"_s};
    JobRecord record = closedBy({why});
    QString text = textOf(record);
    EXPECT_TRUE(text.contains(u"Returned by Mara Ott, "_s + timeOf(record) + u": "_s + returnText(why)))
        << text.toStdString();
    EXPECT_TRUE(text.contains(u"left of the lamp"_s));
    EXPECT_TRUE(text.contains(u"Its rework is not taken in yet"_s));
    EXPECT_FALSE(text.contains(u"Not signed yet"_s));
    text = textOf(closedBy({why, ReworkBegun{other}}));
    EXPECT_TRUE(text.contains(u"Done again as repair "_s + other.toString(QUuid::WithoutBraces)));
    EXPECT_FALSE(text.contains(u"not taken in yet"_s));
}

TEST(SignBlock, SaysWhatItIsTheReworkOf)
{
    std::vector<Event> events = sampleEvents();
    std::get<TakenIn>(events.front().payload).reworkOf = other;
    const QString text = textOf(*recordOf(events, demoCatalogue()));
    EXPECT_TRUE(text.contains(u"Rework of repair "_s + other.toString(QUuid::WithoutBraces)));
    EXPECT_TRUE(text.contains(u"Not signed yet"_s));
}

TEST(SignBlock, LeavesRoomToSignBelowIt)
{
    for (const Paper paper : {Paper::A4, Paper::Letter}) {
        const PdfReader pdf(jobSheetPdf(closedBy({SignedOff{}}), sampleFacts(paper), metric()));
        for (const QString& heading : {u"Name"_s, u"Date"_s, u"Signature"_s})
            EXPECT_FALSE(pdf.placesOf(heading).empty()) << heading.toStdString();
        const auto heading = pdf.placesOf(u"Sign-off"_s);
        const auto technician = pdf.placesOf(u"Technician"_s);
        const auto supervisor = pdf.placesOf(u"Supervisor"_s);
        ASSERT_EQ(heading.size(), 1U);
        ASSERT_EQ(technician.size(), 1U);
        ASSERT_EQ(supervisor.size(), 1U);
        const double room = 8 / 25.4 * 72; // mm: a hand's writing
        EXPECT_GE(supervisor[0].top() - technician[0].bottom(), room);
        EXPECT_GE(technician[0].top() - pdf.placesOf(u"Signature"_s)[0].bottom(), room);
        const double page = pdf.pageSizePoints().height();
        EXPECT_EQ(int(heading[0].top() / page), int(supervisor[0].bottom() / page)) << "all on one page";
    }
}

TEST(SignBlock, OfADayTellsEachJob)
{
    JobRecord open = closedBy({});
    open.repair.job = u"4499"_s;
    const JobRecord signedOff = closedBy({SignedOff{}});
    const PdfReader pdf(dayPdf(u"2026-09-14"_s, {signedOff, open}, sampleFacts(Paper::A4), metric()));
    const double page = pdf.pageSizePoints().height();
    int lines = 0; // of the day's own page, before the sheets
    for (const QRectF& each : pdf.placesOf(u"Signature"_s))
        lines += each.top() < page ? 1 : 0;
    EXPECT_EQ(lines, 1);
    const QString day = pdf.pages().front().simplified();
    EXPECT_TRUE(day.contains(u"Signed off by Mara Ott"_s)) << day.toStdString();
    EXPECT_TRUE(day.contains(u"Not signed yet"_s));
    EXPECT_EQ(pdf.placesOf(u"Signature"_s).size(), 3U) << "the day, and each of two jobs";
}

} // namespace
} // namespace strandbench::test
