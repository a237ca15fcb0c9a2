// SPDX-License-Identifier: GPL-3.0-or-later
#include "school/practice_home.h"

#include "bench/settings.h"
#include "screens/frame/choice_screen.h"
#include "screens/frame/side_key.h"
#include "theme/sizes.h"
#include "words/practice_words.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(PracticeHome)
};

} // namespace

Screen* practiceHome(const Surroundings& around, const SkillRecord& skills, const PracticeHomeWays& ways,
                     QWidget* parent)
{
    ChoiceScreen::Spec spec;
    spec.name = u"screen_practice"_s;
    const QString person = around.settings.person;
    spec.context =
        person.isEmpty() ? Says::tr("Practice: nobody is at the bench") : Says::tr("Practice: %1").arg(person);
    spec.sentence = Says::tr("Practise: nothing here is in the shop’s record");
    spec.ofARepair = false;
    const QString weakest = skillName(skills.weakest());
    //: %1 is a skill: "mix"
    const QString exercises = Says::tr("exercises: %1").arg(weakest);
    if (ways.goOn)
        spec.tiles.push_back({u"practice_go_on"_s, Says::tr("Go on with the panel"), {}, {}, false, false, ways.goOn});
    spec.tiles.push_back({u"practice_next"_s, Says::tr("Next panel"), exercises, {}, false, false, ways.next});
    spec.tiles.push_back({u"practice_made"_s,
                          Says::tr("A panel made up"),
                          Says::tr("never the same again"),
                          {},
                          false,
                          false,
                          ways.made});
    spec.tiles.push_back(
        {u"practice_skills"_s, Says::tr("Skills"), Says::tr("what is mastered"), {}, false, false, ways.skills});
    spec.tiles.push_back(
        {u"practice_tour"_s, Says::tr("Tour"), Says::tr("three minutes"), {}, false, false, ways.tour});
    return new ChoiceScreen(around, std::move(spec), parent);
}

QString skillTold(const SkillState& state)
{
    if (state.panels == 0)
        return Says::tr("not tried yet");
    const QString counted = Says::tr("%1 of %2 right").arg(state.right).arg(state.panels);
    //: %1 is "8 of 10 right"
    return state.mastered ? Says::tr("%1, mastered").arg(counted) : Says::tr("%1, not mastered yet").arg(counted);
}

SkillsScreen::SkillsScreen(const Surroundings& around, const QString& person, const std::vector<PracticeEntry>& entries,
                           QWidget* parent)
    : Screen(around, u"screen_practice_skills"_s, parent)
{
    const auto panels = std::ranges::count(entries, person, &PracticeEntry::person);
    buildFrame(person.isEmpty() ? tr("Nobody named") : person, tr("%n panel(s) worked", nullptr, int(panels)));
    answers()->stop()->hide();
    answers()->setWayOn(panels > 0 ? tr("On paper") : tr("To a panel"));
    connect(answers(), &AnswerBar::wayOnTapped, this,
            panels > 0 ? &SkillsScreen::paperWanted : &SkillsScreen::panelWanted);
    auto* rows = new PagedRows(around, sizes::target, this);
    std::vector<PagedRows::MakeRow> all;
    for (const std::vector<SkillState> skills = skillsOf(entries, person); const SkillState& each : skills)
        all.push_back(rowOf(each));
    if (panels == 0)
        content()->addWidget(
            label(u"skills_none"_s, TextRole::Body,
                  tr("No practice panel was worked yet. Each one that is, counts towards these skills.")),
            1);
    content()->addWidget(rows, panels == 0 ? 2 : 1);
    rows->setRows(std::move(all));
    QStringList others;
    for (const PracticeEntry& each : entries)
        if (each.person != person && !others.contains(each.person))
            others << each.person;
    auto* keys = new QVBoxLayout;
    keys->setSpacing(px(sizes::gap));
    for (const QString& each : others.mid(0, around.upright ? 2 : 3))
        keys->addWidget(makeSideKey(theme(),
                                    {u"skills_of_"_s + each,
                                     each.isEmpty() ? tr("Nobody named") : each,
                                     {},
                                     Pictogram::None,
                                     [this, each] { Q_EMIT personWanted(each); }},
                                    this));
    if (!others.isEmpty())
        content()->addLayout(keys);
}

PagedRows::MakeRow SkillsScreen::rowOf(const SkillState& state)
{
    return [this, state](QWidget* parent) -> QWidget* {
        auto* row = new Card(theme(), parent);
        row->setObjectName(u"skill_"_s + codeOf(state.skill));
        auto* line = new QHBoxLayout(row);
        line->setContentsMargins(px(3), px(1), px(3), px(1));
        auto* name = new FitLabel(theme(), u"skill_name_"_s + codeOf(state.skill), TextRole::Title, row);
        name->setText(Words::title(skillName(state.skill)));
        auto* told = new FitLabel(theme(), u"skill_told_"_s + codeOf(state.skill), TextRole::Body, row);
        told->setText(skillTold(state));
        if (state.mastered)
            told->setRole(Role::Go);
        line->addWidget(name, 1);
        line->addWidget(told, 2);
        return row;
    };
}

} // namespace strandbench
