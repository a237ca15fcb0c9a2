// SPDX-License-Identifier: GPL-3.0-or-later
#include "random_taps.h"

#include "touch/hold_button.h"
#include "walk/every_job.h"

#include <QMouseEvent>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

/// Keys that leave the bench another one than the test began with: the glass, its language, its folders.
bool isOfTheSetUp(const QString& screen)
{
    return screen.startsWith(u"screen_set_up"_s) || screen == u"screen_calibrate"_s;
}

/// What the screen of a station is called, or begins with.
QStringList screensOf(const NextStep& next)
{
    switch (next.station) {
    case Station::Assess:
        return {u"screen_assess_"_s + codeOf(*next.question)};
    case Station::Decide:
        return {u"screen_plan"_s, u"screen_refusal"_s, u"screen_replan"_s};
    case Station::Prepare:
        return {u"screen_prepare_"_s};
    case Station::Finish:
        return {u"screen_finish_"_s};
    case Station::HandOver:
        return {u"screen_hand_over"_s};
    default:
        return {u"screen_"_s + codeOf(next.station)};
    }
}

} // namespace

RandomThumb::RandomThumb(ScriptedBench& bench, unsigned seed)
    : m_bench(bench),
      m_dice(seed),
      m_jobs{anyJob(u"4417"_s, u"Roof cap, front"_s), anyJob(u"4421"_s, u"Skirt panel, right rear"_s),
             anyJob(u"4402"_s, u"Wheel arch, left"_s)}
{
    // Every answer is given, whatever is asked after another was changed.
    m_jobs[1].answers[u"substrate"_s] = u"smc"_s;
    m_jobs[1].answers[u"damage_kind"_s] = u"hole"_s;
    m_jobs[2].answers[u"substrate"_s] = u"steel"_s;
    m_jobs[2].answers[u"damage_kind"_s] = u"weld_seam"_s;
    m_jobs[2].answers[u"weld"_s] = u"spot"_s;
    DemoJob deep = anyJob(u"4438"_s, u"Luggage door, left"_s);
    deep.figures[u"depth_mm"_s] = u"12"_s;
    deep.figures[u"panel_thickness_mm"_s] = u"16"_s;
    m_jobs.push_back(deep);
}

bool RandomThumb::chance(double share) { return std::uniform_real_distribution<double>(0, 1)(m_dice) < share; }

const DemoJob& RandomThumb::any()
{
    return m_jobs[std::uniform_int_distribution<std::size_t>(0, m_jobs.size() - 1)(m_dice)];
}

std::vector<QAbstractButton*> RandomThumb::touchable() const
{
    std::vector<QAbstractButton*> all;
    for (QAbstractButton* each : m_bench.window().findChildren<QAbstractButton*>())
        if (each->isVisible() && each->isEnabled() && !each->objectName().isEmpty())
            all.push_back(each);
    return all;
}

bool RandomThumb::touchAny()
{
    const std::vector<QAbstractButton*> all = touchable();
    if (all.empty())
        return false;
    const QAbstractButton* chosen = all[std::uniform_int_distribution<std::size_t>(0, all.size() - 1)(m_dice)];
    if (chosen->objectName() == u"set_up"_s)
        return true; // legal, but not this test's
    m_last = chosen->objectName();
    Thumb thumb = m_bench.thumb();
    // A held key is rested upon now and then only: the ring takes a second of real time.
    if (qobject_cast<const HoldButton*>(chosen) && chance(0.5))
        return thumb.hold(m_last);
    return thumb.tap(m_last);
}

std::optional<DemoJob> RandomThumb::onGlass()
{
    const QString screen = m_bench.window().screen()->objectName();
    if (screen == u"screen_home"_s || screen == u"screen_person"_s || screen == u"screen_job_number"_s ||
        screen == u"screen_panel"_s)
        return any();
    const std::optional<QUuid> shown = m_bench.window().presentRepair();
    const Repair* repair = shown ? m_bench.bench().repair(*shown) : nullptr;
    // A walk goes by job numbers: of two panels of one job it would take the other.
    if (!repair || m_bench.repair(repair->job) != repair)
        return std::nullopt;
    DemoJob job = any();
    for (const DemoJob& each : m_jobs)
        if (each.job == repair->job)
            job = each;
    job.job = repair->job;
    return job;
}

bool RandomThumb::touchOnTheWay()
{
    const std::optional<DemoJob> job = onGlass();
    if (!job)
        return touchAny();
    Walk walk(m_bench, *job);
    const std::optional<Touch> touch = walk.next();
    if (!touch)
        return touchAny();
    m_last = touch->control;
    return walk.step() || touchAny();
}

bool RandomThumb::touch()
{
    if (isOfTheSetUp(m_bench.window().screen()->objectName()))
        m_bench.window().showHome();
    m_bench.clock().advance(seconds(std::uniform_int_distribution<int>(0, 20)(m_dice)));
    const bool done = chance(0.6) ? touchOnTheWay() : touchAny();
    m_seen.insert(m_bench.window().screen()->objectName());
    if (m_bench.window().screen()->objectName() == u"screen_done"_s)
        ++m_handedOver;
    return done;
}

QString RandomThumb::oddOfScreen() const
{
    if (touchable().empty())
        return u"nothing can be tapped"_s;
    const std::optional<QUuid> shown = m_bench.window().presentRepair();
    if (!shown)
        return {};
    const Repair* repair = m_bench.bench().repair(*shown);
    if (!repair)
        return u"a screen of a repair that is not there"_s;
    const QString screen = m_bench.window().screen()->objectName();
    const QStringList wanted = screensOf(nextStep(*repair));
    const bool fits = std::ranges::any_of(wanted, [&](const QString& each) { return screen.startsWith(each); });
    return fits ? QString() : screen + u" instead of "_s + wanted.join(u", "_s);
}

Station RandomThumb::leadToTheEnd(const DemoJob& job)
{
    m_bench.window().showHome();
    m_bench.thumb().settle();
    const QUuid id = m_bench.repair(job.job)->id;
    Walk walk(m_bench, job);
    for (int i = 0; i < 900 && walk.step(); ++i) {
        const Station at = nextStep(*m_bench.bench().repair(id)).station;
        if (at == Station::Done || at == Station::Parked)
            break;
    }
    m_why = walk.why();
    return nextStep(*m_bench.bench().repair(id)).station;
}

QString RandomThumb::summary() const
{
    QStringList names(m_seen.begin(), m_seen.end());
    names.sort();
    return u"%1 screens, %2 handed over: %3"_s.arg(m_seen.size()).arg(m_handedOver).arg(names.join(u' '));
}

} // namespace strandbench::test
