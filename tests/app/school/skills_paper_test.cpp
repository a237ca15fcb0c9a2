// SPDX-License-Identifier: GPL-3.0-or-later
// The skills on paper, read back with poppler: of every person, every skill's figure is core's, and every panel stands
// there once.
#include "bench_fixture.h"
#include "report/pdf_reader.h"

#include "school/skills_paper.h"
#include "words/practice_words.h"

#include <QDir>
#include <QFile>
#include <QRegularExpression>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

/// Panels of several people, some decisions right and some wrong, the same in every run.
std::vector<PracticeEntry> someEntries()
{
    std::vector<PracticeEntry> entries;
    const QString people[] = {u"Ines"_s, u"Otto"_s, QString()};
    unsigned dice = 7;
    for (int i = 0; i < 30; ++i) {
        PracticeEntry entry;
        entry.utcMs = workingMorning().utcMs + i * 86'400'000LL;
        entry.person = people[i % 3];
        entry.panel = u"panel_%1"_s.arg(i);
        for (const auto& [decision, code] : Codes<DecisionPoint>::table) {
            dice = dice * 1664525U + 1013904223U; // Knuth and Lewis, as in Numerical Recipes
            if (dice >> 31U || i % 3 != 1)
                entry.answers.push_back({decision, dice >> 28U != 3});
        }
        entry.passed = i % 2 == 0;
        entry.filledAStop = i % 7 == 3;
        entries.push_back(entry);
    }
    return entries;
}

class SkillsOnPaper : public BenchTest {
protected:
    void SetUp() override { qputenv("HOME", QFile::encodeName(folder())); } // the documents of this test
    void TearDown() override { qputenv("HOME", m_home); }

    [[nodiscard]] PdfReader paperOf(const QString& person, const std::vector<PracticeEntry>& entries, UnitSystem units)
    {
        const Settings settings = demoSettings();
        const Theme theme(Metrics(5.87), DayNight::Day, Hand::Right);
        const Words words(units, QLocale(u"en"_s));
        SkillsPaperScreen screen(Surroundings{theme, words, bench().bench(), settings, false}, person, entries, nullptr,
                                 {[] { return QStringList(); }, {}});
        const QDir documents(sheetFolders().front().path);
        for (const QString& each : documents.entryList({u"practice-*.pdf"_s}, QDir::Files))
            QFile::remove(documents.filePath(each));
        screen.findChild<TapButton*>(u"sheet_folder_0"_s)->click();
        const QStringList written = documents.entryList({u"practice-*.pdf"_s}, QDir::Files);
        EXPECT_EQ(written.size(), 1) << person.toStdString();
        QFile file(documents.filePath(written.value(0)));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return PdfReader(file.readAll());
    }

private:
    QByteArray m_home = qgetenv("HOME");
};

TEST_F(SkillsOnPaper, EveryPersonsAndSkillsFigureIsCores)
{
    open();
    const std::vector<PracticeEntry> entries = someEntries();
    const Words words(UnitSystem::Metric, QLocale(u"en"_s));
    for (const QString& person : {u"Ines"_s, u"Otto"_s, QString()}) {
        const QString text = paperOf(person, entries, UnitSystem::Metric).text().simplified();
        const SkillRecord record = skillRecordOf(entries, person);
        for (const auto& [skill, code] : Codes<Skill>::table) {
            int panels = 0;
            int right = 0;
            for (const PracticeEntry& each : entries) {
                if (each.person != person)
                    continue;
                const auto ofSkill = [skill = skill](const auto& answer) { return skillOf(answer.decision) == skill; };
                if (std::ranges::none_of(each.answers, ofSkill))
                    continue;
                ++panels;
                right += std::ranges::all_of(each.answers,
                                             [&](const auto& answer) { return !ofSkill(answer) || answer.right; });
            }
            ASSERT_GT(panels, 0) << code;
            EXPECT_EQ(record.of(skill).panels, panels) << code;
            const QString row = u"%1 %2 of %3 right, %4 %5"_s.arg(
                Words::title(skillName(skill)), QString::number(right), QString::number(panels),
                record.isMastered(skill) ? u"mastered"_s : u"not mastered yet"_s,
                words.percent(record.of(skill).known).replace(u'\u00a0', u' '));
            EXPECT_TRUE(text.contains(row)) << person.toStdString() << ": " << row.toStdString() << "\n"
                                            << text.toStdString();
        }
    }
}

TEST_F(SkillsOnPaper, EachPanelOfThePersonStandsThereOnceAndNobodyElses)
{
    open();
    const std::vector<PracticeEntry> entries = someEntries();
    for (const QString& person : {u"Ines"_s, u"Otto"_s}) {
        const QString text = paperOf(person, entries, UnitSystem::Metric).text();
        for (const PracticeEntry& each : entries) {
            const QRegularExpression word(u"\\b%1\\b"_s.arg(each.panel));
            EXPECT_EQ(text.count(word), each.person == person ? 1 : 0) << each.panel.toStdString();
        }
        EXPECT_EQ(text.count(u"filled where it must stop"_s),
                  std::ranges::count_if(
                      entries, [&](const PracticeEntry& each) { return each.person == person && each.filledAStop; }));
    }
}

} // namespace
} // namespace strandbench::test
