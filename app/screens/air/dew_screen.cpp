// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/air/dew_screen.h"

#include "clock/local_days.h"
#include "screens/air/air_screen.h"
#include "screens/frame/page_column.h"

#include <QPointer>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// Minutes of the local day that a moment falls in.
double minuteOfDay(const Instant& at)
{
    constexpr qint64 dayMs = 86'400'000;
    const qint64 local = (at.utcMs + at.utcOffsetSeconds * 1000LL) % dayMs;
    return double(local < 0 ? local + dayMs : local) / 60'000;
}

/// A difference in the degrees that are shown.
double shownDegrees(TemperatureStep step, UnitSystem units)
{
    return units == UnitSystem::UsCustomary ? inFahrenheitStep(step) : inKelvinStep(step);
}

} // namespace

DewScreen::DewScreen(const Surroundings& around, QWidget* parent) : Screen(around, u"screen_dew"_s, parent)
{
    buildFrame(airContext(around), tr("Panel above its dew point"));
    auto* column = new QVBoxLayout;
    column->setSpacing(px(1));
    m_pages = new PagedRows(around, PagedRows::wholePages, this);
    m_none = label(u"dew_none"_s, TextRole::Body);
    m_none->hide();
    column->addWidget(m_pages, 1);
    column->addWidget(m_none, 1);
    column->addWidget(label(u"dew_whose"_s, TextRole::Small,
                            tr("The least margin follows the practice of ISO 8502-4 and ISO 12944-7; a sheet that asks "
                               "for more comes first."),
                            Role::MutedInk));
    content()->addLayout(column, 1);
    answers()->setWayOn({});
    answers()->stop()->hide();
    const QString today = localDay(around.bench.clock().now());
    around.bench.recorder().readAir(daysFrom(today, -daysBack), today,
                                    [screen = QPointer<DewScreen>(this)](const Logged<std::vector<Event>>& events) {
                                        if (screen)
                                            screen->showDays(events);
                                    });
}

void DewScreen::showDays(const Logged<std::vector<Event>>& events)
{
    if (!events)
        return showTrouble(events.error());
    const AirOfDays air =
        airOf(*events, around().bench.planning().catalogue, around().bench.assumptions().decision.filling);
    std::vector<PagedRows::MakeRow> pages;
    for (const QString& day : daysRead(air))
        pages.push_back(
            [this, day, readings = readingsOf(air, day)](QWidget* into) { return dayPage(day, readings, into); });
    m_none->setText(tr("Nothing was read in the last %n day(s).", nullptr, daysBack + 1));
    m_none->setVisible(pages.empty());
    m_pages->setVisible(!pages.empty());
    m_pages->setRows(std::move(pages));
}

QWidget* DewScreen::dayPage(const QString& day, const std::vector<AirReading>& readings, QWidget* parent) const
{
    auto* page = new QWidget(parent);
    QBoxLayout* row = columnsIn(page, around());
    auto* box = new Card(theme(), page);
    box->setObjectName(u"dew_card"_s);
    auto* inside = new QVBoxLayout(box);
    inside->setContentsMargins(px(1), px(1), px(1), px(1));
    auto* picture = new DewPicture(theme(), u"dew_picture"_s, box);
    picture->setDay(dewDay(readings));
    picture->setAccessibleName(tr("Margin over the dew point against the time of day, %1").arg(day));
    inside->addWidget(picture);
    row->addWidget(box, 3);
    row->addWidget(figures(day, readings, page), 2);
    return page;
}

DewDay DewScreen::dewDay(const std::vector<AirReading>& readings) const
{
    const Words& in = words();
    const TemperatureStep least = around().bench.assumptions().decision.filling.dewMargin;
    DewDay day;
    for (const AirReading& each : readings)
        day.marks.push_back({minuteOfDay(each.at), shownDegrees(each.air.margin, in.units()), each.nearDew()});
    std::ranges::stable_sort(day.marks, {}, &DewMark::minute); // a clock may have been set back
    day.least = shownDegrees(least, in.units());
    day.leastName = tr("limit %1").arg(in.temperatureStep(least));
    day.belowName = tr("below the limit");
    day.degrees = [in](double degrees) {
        const bool whole = std::abs(degrees - std::round(degrees)) < 1e-6;
        return in.number(degrees, whole ? 0 : 1) + QChar(QChar::Nbsp) + temperatureUnit(in.units());
    };
    day.minute = [](int minute) {
        return u"%1:%2"_s.arg(minute / 60 % 24, 2, 10, QLatin1Char('0')).arg(minute % 60, 2, 10, QLatin1Char('0'));
    };
    return day;
}

QWidget* DewScreen::figures(const QString& day, const std::vector<AirReading>& readings, QWidget* parent) const
{
    const PageColumn column(theme(), u"dew_figures"_s, parent);
    const AirReading& last = readings.back();
    const bool today = day == localDay(around().bench.clock().now());
    //: a day, and the time of its last reading
    column.add(u"dew_when"_s, TextRole::Small,
               tr("%1, last read at %2").arg(today ? tr("Today") : day, words().clockTime(last.at)));
    column.add(u"dew_margin"_s, TextRole::Title, tr("%1 above dew point").arg(words().temperatureStep(last.air.margin)),
               true);
    column.add(u"dew_reading"_s, TextRole::Body,
               tr("air %1, %2; panel %3; dew point %4")
                   .arg(words().temperature(last.reading.air), words().percent(last.reading.humidity),
                        words().temperature(last.reading.panel), words().temperature(last.air.dewPoint)));
    const auto near = std::ranges::count_if(readings, &AirReading::nearDew);
    const QString limit = words().temperatureStep(around().bench.assumptions().decision.filling.dewMargin);
    if (near == 0) {
        column.add(u"dew_within"_s, TextRole::Body,
                   tr("%n reading(s), each within the limit of %1.", nullptr, int(readings.size())).arg(limit));
        return column.card;
    }
    const auto worst = std::ranges::min_element(readings, {}, [](const AirReading& each) { return each.air.margin; });
    column.addPair(u"dew_below"_s, tr("%n reading(s) below the limit of %1", nullptr, int(near)).arg(limit),
                   tr("least %1 at %2: no filling then")
                       .arg(words().temperatureStep(worst->air.margin), words().clockTime(worst->at)),
                   column.sign(Pictogram::Caution, tr("Caution")));
    return column.card;
}

} // namespace strandbench
