// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/set_up/supervisor_screens.h"

#include "screens/frame/choice_screen.h"
#include "screens/record/record_row.h"
#include "screens/job/refusal_screen.h"
#include "screens/record/with_record.h"
#include "theme/sizes.h"
#include "words/event_words.h"
#include "words/role_words.h"

#include <QCoreApplication>
#include <QPointer>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(SupervisorScreens)
};

} // namespace

bool canOverride(const Surroundings& around, const Repair& repair, const std::vector<Stop>& stops)
{
    Repair trial = repair;
    for (const Stop& each : refusing(stops)) {
        if (each.overridable != Override::Supervisor)
            return false;
        trial.assessment.overridden.push_back(each.reason.code);
    }
    if (trial == repair)
        return false; // nothing refuses, there is only something to ask
    if (nextQuestion(trial))
        return true; // what is asked then decides
    return around.bench.plan(trial).fill;
}

Screen* makeOverrideScreen(const Surroundings& around, const Repair& repair, const std::vector<QString>& stops,
                           const std::function<void(const Overridden&)>& tell, QWidget* parent)
{
    ChoiceScreen::Spec spec;
    spec.name = u"screen_override"_s;
    QStringList names;
    for (const QString& each : stops)
        names << around.words.stopHeadline(each);
    spec.context = contextOf(repair, around.words) + u" · "_s + names.join(u", "_s);
    spec.sentence = Says::tr("Why is this stop overridden?");
    for (const QString& code : overrideReasons())
        spec.tiles.push_back({u"override_"_s + code, overrideReason(code), {}, {}, false, false, [tell, stops, code] {
                                  tell(Overridden{stops, code});
                              }});
    return new ChoiceScreen(around, std::move(spec), parent);
}

CorrectWhichScreen::CorrectWhichScreen(const Surroundings& around, const QUuid& repair, QWidget* parent)
    : Screen(around, u"screen_correct_which"_s, parent)
{
    buildFrame({}, Says::tr("Which entry is to be put right?"));
    m_rows = new PagedRows(around, sizes::target, this);
    content()->addWidget(m_rows, 1);
    answers()->stop()->hide();
    answers()->setWayOn({});
    withRecord(around, this, repair, [this](const JobRecord& record, const RepairFile&) { showRecord(record); });
}

void CorrectWhichScreen::showRecord(const JobRecord& record)
{
    setContext(contextOf(record.repair, words()));
    std::vector<PagedRows::MakeRow> rows;
    for (const EventLine& each : eventLines(record, words()))
        rows.push_back([this, each, index = rows.size()](QWidget* parent) -> QWidget* {
            auto* row = new TapButton(theme(), u"correct_%1"_s.arg(index), TapButton::Kind::Plain, parent);
            row->setTitle(each.text);
            row->setTitleSize(Theme::size(TextRole::Body));
            row->setSecondLine(words().clockTime(each.at) + u" · "_s + personText(each.person));
            connect(row, &TapButton::clicked, this, [this, each] { Q_EMIT chosen(each.seq, each.text); });
            return row;
        });
    m_rows->setRows(std::move(rows));
}

BenchDayScreen::BenchDayScreen(const Surroundings& around, QWidget* parent)
    : Screen(around, u"screen_bench_day"_s, parent)
{
    const QString day = localDay(around.bench.clock().now());
    buildFrame(day, Says::tr("See what happened to the bench"));
    m_rows = new PagedRows(around, recordRowHeight(around), this);
    content()->addWidget(m_rows, 1);
    answers()->stop()->hide();
    answers()->setWayOn({});
    around.bench.recorder().readDay(day, [screen = QPointer<BenchDayScreen>(this)](const Logged<DayBook>& book) {
        if (screen)
            screen->showDay(book);
    });
}

void BenchDayScreen::showDay(const Logged<DayBook>& book)
{
    if (!book)
        return showTrouble(book.error());
    std::vector<PagedRows::MakeRow> rows;
    for (const Event& each : book->ofBench) {
        const RecordRow row{u"bench_event_%1"_s.arg(rows.size()), words().clockTime(each.at),
                            std::holds_alternative<ClockJumped>(each.payload) ? QString() : personText(each.person),
                            benchEventText(each.payload, words()), false};
        rows.push_back([this, row](QWidget* parent) { return makeRecordRow(around(), row, parent); });
    }
    m_rows->setRows(std::move(rows));
}

} // namespace strandbench
