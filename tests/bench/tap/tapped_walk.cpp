// SPDX-License-Identifier: GPL-3.0-or-later
#include "tapped_walk.h"

#include <QAbstractButton>
#include <QPointingDevice>
#include <QTest>

using namespace Qt::StringLiterals;
using namespace std::chrono_literals;

namespace strandbench::tapbench {
namespace {

constexpr int most = 600;              ///< touches: no walk is longer
constexpr auto still = 40ms;           ///< without a picture: nothing more comes of a tap
constexpr auto shortestPress = 40ms;   ///< of a finger
constexpr double wholeSecond = 1000.0; ///< ms

QPointingDevice* touchScreen()
{
    static QPointingDevice* const device = QTest::createTouchDevice();
    return device;
}

} // namespace

TappedWalk::TappedWalk(WatchedGlass& glass, ScriptedBench& bench, DemoJob job)
    : m_glass(glass), m_bench(bench), m_job(job.job), m_walk(bench, std::move(job))
{
    m_glass.look = [this](const Moment& at) {
        return Painted{at, m_bench.window().screen(), m_bench.window().writing()};
    };
    QObject::connect(&m_bench.bench(), &Bench::changed, &m_ear, [this] { m_written = true; });
}

/// To where a clock of the mix has to be, and on to a whole second, when the glass's clocks turn.
void TappedWalk::letTimePass(const Touch& touch)
{
    if (!touch.sinceHardener)
        return;
    const Repair* repair = m_bench.repair(m_job);
    const Duration gone = elapsed(repair->run(*nextStep(*repair).batch)->hardenerIn, m_bench.clock().now());
    if (gone < *touch.sinceHardener)
        m_bench.clock().advance(*touch.sinceHardener - gone);
    m_bench.clock().advance(seconds(1 - double(m_bench.clock().now().utcMs % 1000) / wholeSecond));
    m_bench.thumb().settle();
}

QPoint TappedWalk::placeOf(const QString& control)
{
    if (!m_bench.thumb().waitFor(control))
        qFatal("%s on %s takes no touch", qPrintable(control), qPrintable(m_bench.window().screen()->objectName()));
    const QAbstractButton* button = m_bench.thumb().find(control);
    return button->mapTo(&m_bench.window(), button->rect().center());
}

void TappedWalk::press(Tap& tap, QPoint at)
{
    m_glass.forget();
    QTest::touchEvent(&m_bench.window(), touchScreen()).press(0, at, &m_bench.window());
    m_glass.rest(shortestPress, [] { return false; });
    tap.pressShown = !m_glass.painted().empty();
    if (tap.pressShown)
        tap.pressed = between(m_glass.touched().value(), m_glass.painted().front().at);
}

void TappedWalk::letGo(Tap& tap, QPoint at)
{
    const BenchWindow& window = m_bench.window();
    m_written = false;
    m_glass.forget();
    QTest::touchEvent(&m_bench.window(), touchScreen()).release(0, at, &m_bench.window());
    const auto& painted = m_glass.painted();
    const auto answer = [&] {
        return std::ranges::find_if(
            painted, [&](const Painted& each) { return !each.writing && each.screen == window.screen(); });
    };
    m_glass.rest(still, [&] { return window.writing() || answer() == painted.end(); });
    if (answer() == painted.end())
        qFatal("%s on %s: no answer was painted", qPrintable(tap.control), qPrintable(tap.screen));
    tap.changed = between(m_glass.touched().value(), painted.front().at);
    tap.answered = between(m_glass.touched().value(), answer()->at);
    tap.answer = window.screen()->objectName();
    tap.written = m_written;
}

Spent TappedWalk::repaint()
{
    const Moment begun = Moment::now();
    m_bench.window().repaint();
    return between(begun, Moment::now());
}

Tap TappedWalk::measure(const QString& control)
{
    const QPoint at = placeOf(control);
    Tap tap;
    tap.control = control;
    tap.screen = m_bench.window().screen()->objectName();
    press(tap, at);
    letGo(tap, at);
    tap.repaint = repaint();
    return tap;
}

std::vector<Tap> TappedWalk::all()
{
    std::vector<Tap> taps;
    while (m_bench.window().screen()->objectName() != u"screen_done"_s) {
        const std::optional<Touch> touch = m_walk.next();
        if (!touch || touch->held || taps.size() == most)
            qFatal("the walk ends on %s", qPrintable(m_bench.window().screen()->objectName()));
        letTimePass(*touch);
        taps.push_back(measure(touch->control));
    }
    return taps;
}

} // namespace strandbench::tapbench
