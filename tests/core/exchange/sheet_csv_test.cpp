// SPDX-License-Identifier: GPL-3.0-or-later
// Product sheets as CSV. What a CSV file is: RFC 4180. What else is let pass is ours and said in sheet_csv.h.
#include "exchange/sheet_csv.h"

#include "exchange/sheet_draft.h"
#include "exchange/sheets.h"
#include "json_tools.h"

#include <gmock/gmock.h>

using namespace Qt::StringLiterals;
using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::StartsWith;

namespace strandbench {
namespace {

const ProductSheet& mixed() { return *demoCatalogue().byClass(FillerClass::MixedStrand); }

QByteArray changed(const QByteArray& from, const QByteArray& to)
{
    QByteArray csv = sheetToCsv(mixed());
    EXPECT_TRUE(csv.contains(from)) << from.toStdString();
    return csv.replace(from, to);
}

TEST(SheetCsv, IsAsRfc4180HasIt)
{
    const QByteArray csv = sheetToCsv(mixed());
    EXPECT_TRUE(csv.startsWith("field,value,unit\r\nid,demo_mixed_strand,\r\n"));
    EXPECT_THAT(csv.toStdString(), HasSubstr("\r\nworking_min.nominal,4.5,min\r\n"));
    EXPECT_THAT(csv.toStdString(), HasSubstr("\r\nreference_c,25,\u00b0C\r\n"));
    EXPECT_TRUE(csv.endsWith("\r\n"));
    EXPECT_EQ(csv.count('\n'), csv.count("\r\n"));
    SheetDraft draft = SheetDraft::of(mixed());
    draft.set(u"name"_s, u"The \"long\" one, red"_s);
    EXPECT_THAT(sheetToCsv(*draft.sheet()).toStdString(), HasSubstr("\r\nname,\"The \"\"long\"\" one, red\",\r\n"));
}

TEST(SheetCsv, LetsPassWhatSpreadsheetsWrite)
{
    const QByteArray csv = sheetToCsv(mixed());
    QByteArray lines = csv;
    lines.replace("\r\n", "\n");
    QByteArray unfinished = csv;
    unfinished.chop(2); // RFC 4180, 2.2: the last line end may be missing
    QByteArray allQuoted = csv;
    allQuoted.replace("density_g_per_ml,1.45,g/ml", "\"density_g_per_ml\",\"1.45\",\"g/ml\"");
    for (const QByteArray& each : {csv, "\xef\xbb\xbf" + csv, lines, unfinished, allQuoted}) {
        const auto sheet = readSheetCsv(each);
        ASSERT_TRUE(sheet) << faultsOf(sheet).front();
        EXPECT_EQ(sheet->source, mixed().source);
    }
}

TEST(SheetCsv, RowsMayComeInAnyOrder)
{
    QByteArrayList rows = sheetToCsv(mixed()).split('\n');
    rows.removeLast();
    std::reverse(rows.begin() + 1, rows.end());
    const auto sheet = readSheetCsv(rows.join('\n'));
    ASSERT_TRUE(sheet);
    EXPECT_EQ(sheet->source, mixed().source);
}

TEST(SheetCsv, FaultsNameTheFieldOrTheLine)
{
    const auto faults = [](const QByteArray& from, const QByteArray& to) {
        return faultsOf(readSheetCsv(changed(from, to)));
    };
    EXPECT_THAT(faults("density_g_per_ml,1.45,g/ml", "density_g_per_ml,1.45,lb/gal"),
                Contains("density_g_per_ml|lb/gal|NotOneOf|g/ml"));
    EXPECT_THAT(faults("density_g_per_ml,1.45,g/ml", "density_g_per_ml,\"1,45\",g/ml"),
                Contains("density_g_per_ml|1,45|WrongKind|number"));
    EXPECT_THAT(faults("density_g_per_ml,1.45,g/ml", "density_g_per_ml,0.1,g/ml"),
                ElementsAre("density_g_per_ml|0.1|OutOfRange|0.3,4,g/ml"));
    EXPECT_THAT(faults("density_g_per_ml,1.45,g/ml\r\n", ""), ElementsAre("density_g_per_ml||Missing|number,g/ml"));
    EXPECT_THAT(faults("names_zinc,true", "names_zinc,yes"), Contains("names_zinc|yes|WrongKind|true or false"));
    EXPECT_THAT(faults("names_zinc,true,", "colour,red,"), Contains(StartsWith("colour|red|UnknownKey")));
    EXPECT_THAT(faults("names_zinc,true,", "density_g_per_ml,1.5,g/ml"),
                Contains("density_g_per_ml|1.5|Conflicts|density_g_per_ml,1.45"));
    EXPECT_THAT(faults("names_zinc,true,", "names_zinc,true"), Contains(StartsWith("line ")));
    EXPECT_THAT(faults("field,value,unit", "field;value;unit"), ElementsAre(StartsWith("line 1|field;value;unit")));
    EXPECT_THAT(faults("Mixed strand (demo sheet)", "\"Mixed\" strand"), ElementsAre(StartsWith("line 3|")));
    EXPECT_THAT(faults("Mixed strand (demo sheet)", "\"Mixed strand"), ElementsAre(StartsWith("line 3|")));
    EXPECT_THAT(faults("Mixed strand", "Mixed\xff strand"), ElementsAre(StartsWith("file||NotReadable|UTF-8")));
    EXPECT_THAT(faultsOf(readSheetCsv({})), ElementsAre(StartsWith("line 1||NotReadable")));
    EXPECT_THAT(faultsOf(readSheetCsv(QByteArray(longestSheetFile + 1, 'x'))),
                ElementsAre(StartsWith("file|65537|TooLong")));
}

TEST(SheetCsv, HoldsASheetsOwnCells)
{
    SheetDraft draft = SheetDraft::of(mixed());
    for (const QString& reason : {u"tried, it \"peels\""_s, u"12"_s, u"true"_s, u"[1]"_s, u"a\r\nb"_s}) {
        draft.setRest(
            {{u"cells"_s, QJsonObject{{u"smc"_s, QJsonObject{{u"suitability"_s, u"no"_s}, {u"reason"_s, reason}}}}}});
        const auto sheet = draft.sheet();
        ASSERT_TRUE(sheet) << faultsOf(sheet).front();
        const auto read = readSheetCsv(sheetToCsv(*sheet));
        ASSERT_TRUE(read) << faultsOf(read).front() << sheetToCsv(*sheet).toStdString();
        EXPECT_EQ(read->cells, sheet->cells);
    }
}

} // namespace
} // namespace strandbench
