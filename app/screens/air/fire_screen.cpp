// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/air/fire_screen.h"

#include "exchange/harm.h"
#include "screens/air/air_screen.h"
#include "screens/frame/page_column.h"
#include "screens/frame/paged_rows.h"
#include "words/air_words.h"
#include "words/harm_words.h"

using namespace Qt::StringLiterals;

namespace strandbench {

FireScreen::FireScreen(const Surroundings& around, QWidget* parent) : Screen(around, u"screen_fire"_s, parent)
{
    buildFrame(airContext(around), tr("What can burn here"));
    auto* column = new QVBoxLayout;
    column->setSpacing(px(1));
    auto* pages = new PagedRows(around, PagedRows::wholePages, this);
    pages->setRows(
        {[this](QWidget* into) { return flashPage(into); }, [this](QWidget* into) { return lightsPage(into); }});
    column->addWidget(pages, 1);
    column->addWidget(label(u"fire_first"_s, TextRole::Small,
                            tr("The safety data sheet, local codes and licensed practice come first."),
                            Role::MutedInk));
    content()->addLayout(column, 1);
    answers()->setWayOn({});
    answers()->stop()->hide();
}

QWidget* FireScreen::flashPage(QWidget* parent) const
{
    auto* page = new QWidget(parent);
    QBoxLayout* row = columnsIn(page, around());
    const std::vector<FirePoint> points = firePoints(builtInHarm());
    const auto newest = around().bench.newestReading();
    const auto air = newest ? std::optional(newest->reading.air) : std::nullopt;
    const std::size_t half = (points.size() + 1) / 2;
    for (const std::size_t from : {std::size_t(0), half}) {
        const PageColumn column(theme(), from == 0 ? u"fire_points"_s : u"fire_more_points"_s, page);
        for (std::size_t i = from; i < std::min(points.size(), from + half); ++i)
            column.addPair(u"fire_"_s + points[i].material, words::harmMaterial(points[i].material),
                           words::fireLine(points[i], air, words()));
        row->addWidget(column.card, 1);
    }
    return page;
}

QWidget* FireScreen::lightsPage(QWidget* parent) const
{
    auto* page = new QWidget(parent);
    QBoxLayout* row = columnsIn(page, around());
    const PageColumn lights(theme(), u"fire_lights"_s, page);
    lights.add(u"fire_lights_title"_s, TextRole::Body, tr("What lights vapour"), true);
    lights.add(u"fire_sparks"_s, TextRole::Body, tr("Sparks of grinder, drill, switch or plug."));
    lights.add(u"fire_static"_s, TextRole::Body, tr("Static of dry rags, foil and spray: earth can and panel."));
    lights.add(u"fire_hot"_s, TextRole::Body, tr("Heater, lamp, hot pipe, flame, cigarette."));
    lights.add(u"fire_low"_s, TextRole::Small, tr("The vapours are heavier than air: they lie low and creep far."));
    row->addWidget(lights.card, 1);
    const PageColumn itself(theme(), u"fire_itself"_s, page);
    itself.add(u"fire_itself_title"_s, TextRole::Body, tr("What heats up by itself"), true);
    itself.add(u"fire_rags"_s, TextRole::Body, words::harmWaste(u"rags_in_can"_s));
    for (const Measure measure : {Measure::SpreadLeftOver, Measure::NeverTogether}) {
        const CautionText text = words::measure(measure);
        itself.addPair(u"fire_"_s + codeOf(measure), text.lead, text.rest);
    }
    row->addWidget(itself.card, 1);
    return page;
}

} // namespace strandbench
