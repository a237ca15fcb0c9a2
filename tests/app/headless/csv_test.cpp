// SPDX-License-Identifier: GPL-3.0-or-later
// Every CSV that the program writes, with what breaks careless writers in it, read back cell by cell by others.
// What a CSV file is: RFC 4180.
#include "csv_readers.h"
#include "repair_script.h"

#include "exchange/sheet_csv.h"
#include "exchange/sheet_draft.h"
#include "exchange/sheets.h"
#include "report/day_csv.h"
#include "report/recall_list.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const QStringList& nasty()
{
    static const QStringList texts{u"plain"_s,
                                   u""_s,
                                   u"a, b"_s,
                                   u"say \"hi\""_s,
                                   u"\""_s,
                                   u"\"\""_s,
                                   u","_s,
                                   u"two\r\nlines"_s,
                                   u"cr\ronly"_s,
                                   u"lf\nonly"_s,
                                   u"\r\n"_s,
                                   u"ends in a quote and a line\"\r\n"_s,
                                   u"  leading"_s,
                                   u"trailing  "_s,
                                   u"Kotflügel vorn, größer · é · ½ · 漢 · 😀"_s,
                                   u"=1+1"_s,
                                   u"=HYPERLINK(\"x\",\"y\")"_s,
                                   u"+49"_s,
                                   u"-"_s,
                                   u"@a"_s,
                                   u"007"_s,
                                   u"1e5"_s,
                                   u"NULL"_s,
                                   u"tab\there"_s,
                                   u"; 'single' \\ back"_s};
    return texts;
}

QString at(qsizetype i) { return nasty()[i % nasty().size()]; }

/// What RFC 4180 asks of the file as a whole, and two readers of it agreeing in every cell.
QJsonArray readByAll(const QByteArray& csv)
{
    EXPECT_TRUE(csv.endsWith("\r\n"));
    EXPECT_FALSE(csv.startsWith("\xef\xbb\xbf"));
    const QJsonArray rows = pythonRows(csv);
    for (const QJsonValue& each : rows)
        EXPECT_EQ(each.toArray().size(), rows[0].toArray().size()) << "the same number of fields";
    EXPECT_EQ(pythonWrites(csv), csv) << "byte for byte";
    QJsonArray below = rows;
    below.removeFirst();
    EXPECT_EQ(sqliteRows(csv), below);
    return rows;
}

/// The texts of one column, below its heading.
QStringList column(const QJsonArray& rows, const QString& name)
{
    const QJsonArray names = rows[0].toArray();
    qsizetype place = 0;
    while (place < names.size() && names[place].toString() != name)
        ++place;
    EXPECT_LT(place, names.size()) << name.toStdString();
    QStringList texts;
    for (qsizetype i = 1; i < rows.size(); ++i)
        texts << rows[i][place].toString();
    return texts;
}

Told told(const Instant& at, const QString& person) { return {at, person, 1}; }

DayEntry entryWith(const JobRecord& whole, qsizetype i)
{
    JobRecord record = whole;
    record.repair.job = at(i);
    record.repair.panel = at(i + 1);
    record.people = {at(i + 2)};
    for (BatchRecord& each : record.batches)
        each.mixed.lot = at(i + 3);
    record.signedOff = told(test::moment(90'000), at(i + 4));
    record.returned = told(test::moment(91'000), at(i + 5));
    record.repair.returned = Kept<Returned>{{u"other"_s, at(i + 6)}, test::moment(91'000), at(i + 5)};
    return {record, {}};
}

TEST(Csv, OfADayIsReadByOthersCellByCell)
{
    test::RepairScript script;
    script.walkTo(Station::Done);
    const JobRecord whole = *recordOf(script.events(), demoCatalogue());
    std::vector<DayEntry> entries;
    QMap<QString, QStringList> expected;
    for (qsizetype i = 0; i < nasty().size(); ++i) {
        entries.push_back(entryWith(whole, i));
        expected[u"job"_s] << at(i);
        expected[u"panel"_s] << at(i + 1);
        expected[u"people"_s] << at(i + 2);
        expected[u"filler_lots"_s] << at(i + 3);
        expected[u"signed_off_by"_s] << at(i + 4);
        expected[u"returned_by"_s] << at(i + 5);
        expected[u"return_text"_s] << at(i + 6);
        expected[u"repair"_s] << whole.repair.id.toString(QUuid::WithoutBraces);
        expected[u"batches"_s] << QString::number(whole.batches.size());
        expected[u"day"_s] << u"2026-11-25"_s;
    }
    const QJsonArray rows = readByAll(dayToCsv(u"2026-11-25"_s, entries));
    for (const auto& [name, texts] : expected.asKeyValueRange())
        EXPECT_EQ(column(rows, name), texts) << name.toStdString();
    for (const QString& name : {u"day"_s, u"taken_in"_s, u"handed_over"_s, u"signed_off"_s, u"returned"_s})
        EXPECT_TRUE(isIso(column(rows, name).front())) << column(rows, name).front().toStdString();
    EXPECT_FALSE(isIso(u"25.11.2026"_s)) << "the check can fail";
}

TEST(Csv, OfADayWithoutWorkIsAHeading)
{
    const QByteArray csv = dayToCsv(u"2026-11-25"_s, {});
    EXPECT_EQ(pythonRows(csv).size(), 1);
    EXPECT_EQ(sqliteRows(csv).size(), 0);
}

TEST(Csv, OfARecallIsReadByOthersCellByCell)
{
    std::vector<LotUse> uses;
    QMap<QString, QStringList> expected;
    for (qsizetype i = 0; i < nasty().size(); ++i) {
        LotUse use;
        use.of = {at(i), at(i + 1)};
        use.repair = QUuid::fromString(u"0f7c1b52-8f0e-4c53-9a55-d3fc3b1f0a11"_s);
        use.job = at(i + 2);
        use.panel = at(i + 3);
        use.person = at(i + 4);
        use.localDay = u"2026-01-09"_s;
        use.utcMs = 1'768'000'000'000 + i * 1000;
        use.amount = grams(12.25);
        use.batch = static_cast<int>(i);
        uses.push_back(use);
        expected[u"product"_s] << at(i);
        expected[u"lot"_s] << at(i + 1);
        expected[u"job"_s] << at(i + 2);
        expected[u"panel"_s] << at(i + 3);
        expected[u"person"_s] << at(i + 4);
        expected[u"batch"_s] << u"filler %1"_s.arg(i + 1);
        expected[u"local_day"_s] << use.localDay;
        expected[u"repair"_s] << use.repair.toString(QUuid::WithoutBraces);
    }
    const QJsonArray rows = readByAll(recallCsv(uses));
    for (const auto& [name, texts] : expected.asKeyValueRange())
        EXPECT_EQ(column(rows, name), texts) << name.toStdString();
    // 1 768 000 000 s after the epoch is 2026-01-09 23:06:40 UTC, by date --utc --date=@1768000000.
    EXPECT_EQ(column(rows, u"mixed_utc"_s).front(), u"2026-01-09T23:06:40Z"_s);
    EXPECT_TRUE(isIso(column(rows, u"mixed_utc"_s).front()));
    EXPECT_EQ(column(rows, u"amount_g"_s).front().toDouble(), 12.25);
}

TEST(Csv, OfAProductSheetIsReadByOthersCellByCell)
{
    int kept = 0;
    for (const QString& text : nasty()) {
        SheetDraft draft = SheetDraft::of(*demoCatalogue().byClass(FillerClass::MixedStrand));
        draft.set(u"name"_s, text);
        const auto sheet = draft.sheet();
        if (!sheet)
            continue; // a name that no sheet may have
        ++kept;
        const QJsonArray rows = readByAll(sheetToCsv(*sheet));
        const QStringList fields = column(rows, u"field"_s);
        const QStringList values = column(rows, u"value"_s);
        const QStringList units = column(rows, u"unit"_s);
        for (const SheetField& each : sheetFields()) {
            const qsizetype place = fields.indexOf(each.path);
            ASSERT_EQ(place >= 0, draft.holds(each.path)) << each.path.toStdString();
            if (place < 0)
                continue;
            EXPECT_EQ(units[place], each.unit) << each.path.toStdString();
            const QJsonValue value = draft.value(each.path);
            if (value.isDouble())
                EXPECT_EQ(values[place].toDouble(), value.toDouble()) << each.path.toStdString();
            else if (value.isString())
                EXPECT_EQ(values[place], value.toString()) << each.path.toStdString();
            else
                EXPECT_EQ(values[place], value.toBool() ? u"true"_s : u"false"_s) << each.path.toStdString();
        }
    }
    EXPECT_GT(kept, 10) << "the sheet takes most of them";
}

TEST(Csv, ReadersRefuseWhatIsNone)
{
    EXPECT_ANY_THROW((void)pythonRows("a,b\r\n\"open,1\r\n"));
    EXPECT_ANY_THROW((void)pythonRows("a,b\r\n\xff,1\r\n"));
    EXPECT_ANY_THROW((void)sqliteRows("a,b\r\n1\r\n"));
    EXPECT_NE(pythonWrites("a,b\n1,2\n"), "a,b\n1,2\n");
}

} // namespace
} // namespace strandbench
