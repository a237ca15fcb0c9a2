// SPDX-License-Identifier: GPL-3.0-or-later
#include "school/skills_paper.h"

#include "report/write_new.h"
#include "words/event_words.h"
#include "words/practice_words.h"

#include <QCoreApplication>
#include <QDateTime>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(SkillsPaper)
};

/// All that the paper is made of, its own: the screen may go meanwhile.
struct Facts {
    QString person;
    std::vector<PracticeEntry> entries;
    Words words;
};

QString outcome(const PracticeEntry& entry)
{
    if (entry.filledAStop)
        return Says::tr("filled where it must stop");
    return entry.passed ? Says::tr("passed") : Says::tr("not passed");
}

PageFrame frameOf(const Facts& facts)
{
    PageFrame frame;
    //: %1 is a person
    frame.title = frame.head = Says::tr("Practice · %1").arg(personText(facts.person));
    frame.foot =
        Says::tr("Practice panels alone; nothing of this is in the shop’s record. It says what was practised, not "
                 "what somebody may do.");
    //: a page of several: "1 of 3"
    frame.number = [](int page, int of) { return Says::tr("%1 of %2").arg(page).arg(of); };
    return frame;
}

void writeSkills(PaperDocument& document, const Facts& facts)
{
    document.title(frameOf(facts).title);
    std::vector<QStringList> skills;
    for (const std::vector<SkillState> all = skillsOf(facts.entries, facts.person); const SkillState& each : all)
        skills.push_back({Words::title(skillName(each.skill)), skillTold(each), facts.words.percent(each.known)});
    document.table({{Says::tr("Skill"), 2}, {Says::tr("Panels"), 4}, {Says::tr("Likely known"), 2}}, skills);
    document.small(
        Says::tr("Mastered: known with a probability of 95 % by knowledge tracing (Corbett and Anderson, 1995)."));
    std::vector<QStringList> panels;
    for (const PracticeEntry& each : facts.entries) {
        if (each.person != facts.person)
            continue;
        QStringList wrong;
        for (const PracticeEntry::Answer& answer : each.answers)
            if (!answer.right && !wrong.contains(decisionName(answer.decision)))
                wrong << decisionName(answer.decision);
        panels.push_back({QDateTime::fromMSecsSinceEpoch(each.utcMs, Qt::UTC).toString(u"yyyy-MM-dd"_s), each.panel,
                          outcome(each), wrong.join(u", "_s)});
    }
    document.heading(Says::tr("Panels worked"));
    document.table(
        {{Says::tr("Day"), 1.6}, {Says::tr("Panel"), 2.6}, {Says::tr("How it ended"), 2.6}, {Says::tr("Mistakes"), 5}},
        panels);
}

} // namespace

SkillsPaperScreen::SkillsPaperScreen(const Surroundings& around, const QString& person,
                                     const std::vector<PracticeEntry>& entries, QWidget* parent, Printing printing)
    : PaperScreen(around, u"screen_practice_paper"_s, Says::tr("Choose where the skills go"), parent,
                  std::move(printing))
{
    const auto facts = std::make_shared<Facts>(Facts{person, entries, around.words});
    Papers papers;
    papers.stem = asFileName(u"practice-%1-%2"_s.arg(person, localDay(around.bench.clock().now())));
    const auto write = [facts](PaperDocument& document) { writeSkills(document, *facts); };
    papers.pdf = [facts, write](Paper paper, const std::stop_token& stop) {
        return printPdf(paper, frameOf(*facts), write, stop);
    };
    papers.print = [facts, write](QPagedPaintDevice& device, Paper, const std::stop_token& stop) {
        return printPages(device, frameOf(*facts), write, stop);
    };
    ready(std::move(papers));
}

} // namespace strandbench
