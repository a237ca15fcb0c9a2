// SPDX-License-Identifier: GPL-3.0-or-later
#include "walk/walk.h"

#include "touch/fit_label.h"
#include "touch/tap_button.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const QString wayOn = u"answer_way_on"_s;

/// A metric figure of a job as it is keyed in: in inches to a thousandth and degrees Fahrenheit to a tenth in
/// US customary units.
QString keyed(const QString& field, const QString& metric, UnitSystem units)
{
    if (units == UnitSystem::Metric)
        return metric;
    if (field.endsWith(u"_mm"_s))
        return QString::number(inInches(millimetres(metric.toDouble())), 'f', 3);
    if (field.endsWith(u"_c"_s))
        return QString::number(inFahrenheit(celsius(metric.toDouble())), 'f', 1);
    return metric;
}

} // namespace

QString Walk::textOf(const QString& label) const
{
    const auto* shown = m_bench.window().findChild<FitLabel*>(label);
    return shown ? shown->text() : QString();
}

std::optional<Touch> Walk::tileOf(const QString& title) const
{
    QString more;
    for (const TapButton* each : m_bench.window().findChildren<TapButton*>()) {
        if (!each->isVisible())
            continue;
        if (each->title() == title)
            return Touch{each->objectName()};
        if (each->objectName() == u"more_answers"_s)
            more = each->objectName();
    }
    return more.isEmpty() ? std::nullopt : std::optional(Touch{more});
}

QString Walk::panelAsShown() const
{
    return QCoreApplication::translate("TakeInScreen", m_job.panel.toUtf8().constData());
}

std::optional<Touch> Walk::onHome() const
{
    const Repair* repair = m_bench.repair(m_job.job);
    if (!repair)
        return Touch{m_bench.window().settings().person == m_job.person ? u"take_in"_s : u"person"_s};
    for (const QAbstractButton* each : m_bench.window().findChildren<QAbstractButton*>())
        if (each->isVisible() && each->accessibleName().startsWith(m_job.job + u','))
            return Touch{each->objectName()};
    return Touch{u"more_jobs"_s};
}

std::optional<Touch> Walk::keyAfter(const QString& shown, const QString& wanted) const
{
    if (!wanted.startsWith(shown))
        return Touch{u"key_clear"_s};
    if (shown.size() == wanted.size())
        return Touch{wayOn};
    const QChar key = wanted.at(shown.size());
    return Touch{key == u'.' ? u"key_point"_s : u"key_"_s + key};
}

std::optional<Touch> Walk::onFigures(const std::map<QString, QString>& figures) const
{
    const QString dash = u"–"_s;
    if (const auto* typed = m_bench.window().findChild<FitLabel*>(u"typed"_s); typed && typed->isVisible()) {
        // The key pad is open: for the first figure that is still a dash.
        for (const auto& [name, wanted] : figures) {
            const auto* figure = m_bench.window().findChild<TapButton*>(name + u"_figure"_s);
            if (figure && figure->title() == dash)
                return keyAfter(typed->text().section(QChar(0x00a0), 0, 0).remove(dash).replace(u',', u'.'),
                                keyed(name, wanted, m_bench.window().settings().units));
        }
    }
    for (const auto& [name, wanted] : figures) {
        const auto* figure = m_bench.window().findChild<TapButton*>(name + u"_figure"_s);
        if (figure && figure->title() == dash)
            return Touch{figure->objectName()};
    }
    return Touch{wayOn};
}

const BatchRun* Walk::run() const
{
    const Repair* repair = m_bench.repair(m_job.job);
    const NextStep next = nextStep(*repair);
    return next.batch ? repair->run(*next.batch) : nullptr;
}

std::optional<Touch> Walk::onClock(bool spreading) const
{
    const BatchRun* mix = run();
    const BatchTimes& times = mix->times();
    if (spreading)
        return Touch{wayOn, false, times.gel * 0.8};
    // The first batch of fibre filler also tells when it gelled, on the board and on the panel.
    if (mix->batch == BatchRef{}) {
        if (!mix->boardGelled || !mix->panelGelled) {
            const bool board = !mix->boardGelled;
            const Thumb thumb = m_bench.thumb();
            const QString place = board ? u"gelled_board"_s : u"gelled_panel"_s;
            return Touch{thumb.find(place) ? place : u"it_has_gelled"_s, false,
                         board ? times.boardGel : std::max(times.gel, times.boardGel)};
        }
    }
    return Touch{wayOn, false, times.sand + seconds(5)};
}

std::optional<Touch> Walk::next() const
{
    const QString screen = m_bench.window().screen()->objectName();
    if (screen == u"screen_home"_s)
        return onHome();
    if (screen == u"screen_person"_s)
        return tileOf(m_job.person);
    if (screen == u"screen_job_number"_s)
        return keyAfter(textOf(u"job_number"_s).remove(u"–"_s), m_job.job);
    if (screen == u"screen_panel"_s)
        return tileOf(panelAsShown());
    if (screen == u"screen_assess_size"_s || screen == u"screen_assess_reading"_s)
        return onFigures(m_job.figures);
    if (screen.startsWith(u"screen_assess_"_s)) {
        const QString answer = u"answer_"_s + m_job.answers.at(screen.mid(QStringView(u"screen_assess_").size()));
        return Touch{m_bench.thumb().find(answer) ? answer : u"more_answers"_s};
    }
    if (screen.startsWith(u"screen_prepare_read_panel"_s))
        return onFigures(m_job.readAgain);
    if (screen == u"screen_spread"_s || screen == u"screen_wait"_s)
        return onClock(screen == u"screen_spread"_s);
    if (screen == u"screen_done"_s || screen == u"screen_parked"_s)
        return std::nullopt;
    return Touch{wayOn};
}

bool Walk::step()
{
    const std::optional<Touch> touch = next();
    if (!touch) {
        m_why = u"the walk is over at %1"_s.arg(m_bench.window().screen()->objectName());
        return false;
    }
    if (touch->sinceHardener) {
        const Duration gone = elapsed(run()->hardenerIn, m_bench.clock().now());
        if (gone < *touch->sinceHardener)
            m_bench.clock().advance(*touch->sinceHardener - gone);
        m_bench.thumb().settle();
    }
    Thumb thumb = m_bench.thumb();
    const QString screen = m_bench.window().screen()->objectName();
    if (!(touch->held ? thumb.hold(touch->control) : thumb.tap(touch->control))) {
        m_why = u"%1 on %2 takes no touch"_s.arg(touch->control, screen);
        return false;
    }
    if (touched)
        touched(*touch);
    return true;
}

bool Walk::walkTo(Station station, int batch)
{
    constexpr int most = 600; // touches: no walk is longer
    for (int i = 0; i < most; ++i) {
        const Repair* repair = m_bench.repair(m_job.job);
        if (repair) {
            const NextStep at = nextStep(*repair);
            if (at.station == station && (!at.batch || at.batch->index == batch))
                return true;
        }
        if (m_bench.window().screen()->objectName() == u"screen_done"_s)
            return station == Station::Done;
        if (!step())
            return false;
    }
    m_why = u"the walk does not end"_s;
    return false;
}

} // namespace strandbench
