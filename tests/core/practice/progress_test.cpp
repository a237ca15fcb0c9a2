// SPDX-License-Identifier: GPL-3.0-or-later
// Entries of the practice record: written and read back, and folded into skills as the markings that they come from.
#include "shop.h"

#include "practice/practice_progress.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

Marking marked(const PracticePanel& panel, bool wrongSurface)
{
    const ModelAnswer model = modelAnswer(panel.truth, shop());
    Attempt attempt = perfectAttempt(model, shop());
    if (wrongSurface)
        attempt.found.surface = panel.truth.surface == SurfaceState::Paint ? SurfaceState::Sealer : SurfaceState::Paint;
    return mark(panel, model, attempt, shop());
}

TEST(PracticeProgress, FoldsEntriesAsTheMarkingsThatTheyComeFrom)
{
    SkillRecord seen;
    std::vector<PracticeEntry> entries;
    for (std::size_t i = 0; i < deliveredPanels().size(); i += 3) {
        const PracticePanel& panel = deliveredPanels()[i];
        const Marking marking = marked(panel, i % 2 == 0);
        seen.see(marking);
        entries.push_back(entryOf(panel.id, u"Ada"_s, qint64(i), marking));
        entries.push_back(entryOf(panel.id, u"Ravi"_s, qint64(i), marked(panel, false)));
    }
    EXPECT_EQ(skillRecordOf(entries, u"Ada"_s), seen);
    EXPECT_EQ(skillRecordOf(entries, u"nobody"_s), SkillRecord());
    for (const SkillState& each : skillsOf(entries, u"Ravi"_s))
        EXPECT_EQ(each.right, each.panels) << codeOf(each.skill).toStdString();
    EXPECT_EQ(workedBy(entries, u"Ada"_s).size() * 2, entries.size());
    EXPECT_EQ(workedBy(entries, u"Ada"_s).front(), deliveredPanels().front().id);
}

TEST(PracticeProgress, EntriesReadBackAsTheyWereWritten)
{
    std::vector<PracticeEntry> entries;
    QByteArray lines;
    for (const PracticePanel& each : deliveredPanels()) {
        entries.push_back(entryOf(each.id, u"José \"Pepe\"\n"_s, 5, marked(each, entries.size() % 2 == 0)));
        lines += writeEntry(entries.back());
    }
    EXPECT_EQ(lines.count('\n'), qsizetype(entries.size())) << "one line each";
    const ReadEntries read = readEntries(lines);
    EXPECT_TRUE(read.faults.empty());
    EXPECT_EQ(read.entries, entries);
}

TEST(PracticeProgress, EveryFaultOfALineIsNamed)
{
    const ReadEntries read = readEntries("{\"utc_ms\": 1, \"person\": \"\", \"panel\": \"a\", \"passed\": 3, "
                                         "\"filled_a_stop\": false, \"answers\": [{\"decision\": \"guess\"}], "
                                         "\"more\": 1}\n");
    QStringList fields;
    for (const Fault& each : read.faults)
        fields << each.field;
    EXPECT_TRUE(fields.contains(u"line 1: passed"_s));
    EXPECT_TRUE(fields.contains(u"line 1: answers[0].decision"_s));
    EXPECT_TRUE(fields.contains(u"line 1: answers[0].right"_s));
    EXPECT_TRUE(fields.contains(u"line 1: more"_s));
    EXPECT_TRUE(read.entries.empty());
}

} // namespace
} // namespace strandbench::test
