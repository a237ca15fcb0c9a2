// SPDX-License-Identifier: GPL-3.0-or-later
#include "school/replay_screen.h"

#include "theme/sizes.h"
#include "words/review_words.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The part of the job that an entry is of: its look on the timeline of a job, too.
SpanKind partOf(const ReplayEntry& entry)
{
    if (entry.code == u"mix"_s || entry.code == u"spread"_s)
        return SpanKind::Lay;
    if (entry.code == u"sand"_s)
        return SpanKind::Sand;
    if (entry.code == u"turn"_s)
        return SpanKind::Turn;
    if (entry.code == u"coat"_s)
        return SpanKind::Finish;
    return entry.code == u"before_primer"_s ? SpanKind::Wait : SpanKind::Prepare;
}

std::vector<TimeBar> barsOf(const std::vector<ReplayEntry>& entries)
{
    std::vector<TimeBar> bars;
    for (const ReplayEntry& each : entries)
        if (each.length > seconds(0))
            bars.push_back(
                {static_cast<int>(partOf(each)), inMinutes(each.start), inMinutes(each.start + each.length)});
    return bars;
}

/// The moments of the pupil's batches: edges cleared, and gelled.
std::vector<TimeMark> marksOf(const std::vector<ReplayEntry>& entries)
{
    std::vector<TimeMark> marks;
    for (const ReplayEntry& each : entries)
        if (each.code == u"clear_edges"_s)
            marks.push_back({TimeMarkShape::Square, inMinutes(each.start)});
        else if (each.code == u"gel"_s)
            marks.push_back({TimeMarkShape::Triangle, inMinutes(each.start)});
    return marks;
}

} // namespace

ReplayScreen::ReplayScreen(const Surroundings& around, const PracticeRun& run, const ModelAnswer& hand, QWidget* parent)
    : Screen(around, u"screen_practice_replay"_s, parent), m_worker(around.bench.computing())
{
    buildFrame(tr("Practice panel"), tr("What you did, below the model answer"));
    answers()->stop()->hide();
    answers()->setWayOn(tr("Back to the marks"));
    connect(answers(), &AnswerBar::wayOnTapped, this, &Screen::backTapped);
    auto* column = new QVBoxLayout;
    m_picture = new TimelinePicture(theme(), u"replay"_s, this);
    m_picture->setAccessibleName(tr("What you did, below the model answer"));
    m_told = label(u"replay_told"_s, TextRole::Body);
    column->addWidget(m_picture, 4);
    column->addWidget(m_told, 1);
    content()->addLayout(column, 1);
    m_worker.ask([this, truth = run.panel().truth, done = run.attempt(), hand, shop = around.bench.planning()] {
        const Replay replay = replayBeside(done, hand, modelAnswer(truth, shop), shop);
        return [this, replay] { showBoth(replay); };
    });
}

void ReplayScreen::showBoth(const Replay& replay)
{
    TimePicture picture;
    picture.planned = barsOf(replay.model);
    picture.actual = barsOf(replay.pupil);
    picture.marks = marksOf(replay.pupil);
    picture.to = std::max(1.0, inMinutes(replay.end));
    picture.plannedName = tr("model");
    picture.actualName = tr("you");
    picture.marksName = tr("yours");
    for (const auto& [kind, code] : Codes<SpanKind>::table)
        picture.looks.push_back(spanName(kind));
    picture.markNames = {QString(), tr("edges clear"), tr("gelled")};
    picture.clock = [this](double minute) { return words().longDuration(minutes(minute)); };
    m_picture->setPicture(picture);
    if (replay.model.empty())
        m_told->setText(tr("The model answer stops here: nothing is mixed."));
    else if (replay.pupil.empty())
        m_told->setText(tr("You stopped here: nothing was mixed."));
    else
        m_told->setText(tr("From the first step on. Edges and gel of your batches are marked below."));
}

} // namespace strandbench
