// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/air/vapour_screen.h"

#include "clock/local_days.h"
#include "screens/air/air_screen.h"
#include "screens/frame/page_column.h"
#include "words/air_words.h"
#include "words/assumption_words.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const Duration lookedBack = minutes(24 * 60);
constexpr std::size_t limitsOnAPage = 4; // as many as a low glass has room for, in every language

/// The number of an assumption as it is shown, without its unit, and with it.
Printed shownAssumption(const QString& code, const Surroundings& around)
{
    const AssumptionEntry& entry = *findAssumption(code);
    return AssumptionWords(around.words).printed(entry, entry.numberOf(around.bench.assumptions()));
}

std::vector<Vapour> vapoursOf(const ShopAir& air)
{
    std::vector<Vapour> all;
    for (const auto& [vapour, code] : Codes<Vapour>::table)
        if (air.gaveOff(vapour))
            all.push_back(vapour);
    return all;
}

} // namespace

VapourScreen::VapourScreen(const Surroundings& around, QWidget* parent) : Screen(around, u"screen_vapour"_s, parent)
{
    buildFrame(airContext(around), tr("A reason to ventilate, never a clearance"));
    auto* column = new QVBoxLayout;
    column->setSpacing(px(1));
    m_pages = new PagedRows(around, PagedRows::wholePages, this);
    column->addWidget(m_pages, 1);
    column->addWidget(label(u"vapour_first"_s, TextRole::Small,
                            tr("Beside the panel it is more. A measurement, the safety data sheet and local codes come "
                               "first."),
                            Role::MutedInk));
    content()->addLayout(column, 1);
    answers()->setWayOn({});
    answers()->stop()->hide();
    const QString today = localDay(around.bench.clock().now());
    around.bench.recorder().readAir(daysFrom(today, -1), today,
                                    [screen = QPointer<VapourScreen>(this)](const Logged<std::vector<Event>>& events) {
                                        if (screen)
                                            screen->showAir(events);
                                    });
}

void VapourScreen::showAir(const Logged<std::vector<Event>>& events)
{
    if (!events)
        return showTrouble(events.error());
    const AirOfDays air = airOf(*events, around().bench.planning().catalogue);
    m_readAt = around().bench.clock().now();
    m_unknownSheets = air.unknownSheets;
    m_air.emplace(around().bench.assumptions().room, workBefore(air, m_readAt, lookedBack));
    std::vector<PagedRows::MakeRow> pages{[this](QWidget* into) { return roomPage(into); }};
    for (const Vapour vapour : vapoursOf(*m_air)) {
        const std::size_t limits = m_air->besideLimits(vapour).size();
        for (std::size_t from = 0; from < limits; from += limitsOnAPage)
            pages.push_back([this, vapour, from](QWidget* into) { return limitsPage(vapour, from, into); });
    }
    m_pages->setRows(std::move(pages));
}

QString VapourScreen::nowLine(Vapour vapour) const
{
    const Duration now = elapsed(m_readAt, around().bench.clock().now());
    return tr("now %1; highest mean of 15 min %2, of 8 h %3")
        .arg(words::ppm(m_air->at(vapour, now), words()),
             words::ppm(m_air->ofKind(vapour, LimitKind::ShortTerm), words()),
             words::ppm(m_air->ofKind(vapour, LimitKind::TimeWeighted), words()));
}

QWidget* VapourScreen::roomPage(QWidget* parent)
{
    auto* page = new QWidget(parent);
    QBoxLayout* row = columnsIn(page, around());
    addRoom(page, row);
    addReckoned(page, row);
    return page;
}

void VapourScreen::addRoom(QWidget* page, QBoxLayout* row)
{
    m_now.clear();
    const PageColumn room(theme(), u"vapour_room"_s, page);
    const std::vector<Vapour> vapours = vapoursOf(*m_air);
    if (vapours.empty())
        room.add(u"vapour_none"_s, TextRole::Body,
                 tr("Nothing was mixed or wiped down here in the last 24 hours. What else gives off vapour is not "
                    "known."));
    for (const Vapour vapour : vapours) {
        const QString name = u"vapour_"_s + codeOf(vapour);
        room.add(name, TextRole::Body, words::vapour(vapour), true);
        m_now.emplace_back(room.add(name + u"_now"_s, TextRole::Body, nowLine(vapour)), vapour);
    }
    if (vapours.size() > 1) {
        const VapourRange together = m_air->ofMixtureLimit(mixtureLimits);
        room.add(u"vapour_together"_s, TextRole::Small,
                 tr("Together at most %1 of the OSHA PEL of a mixture.")
                     .arg(words().percent(Fraction::ofHundred(std::ceil(together.most.percent())))));
    }
    row->addWidget(room.card, 1);
}

void VapourScreen::addReckoned(QWidget* page, QBoxLayout* row) const
{
    const PageColumn reckoned(theme(), u"vapour_reckoned"_s, page);
    const auto line = [&](const QString& name, const QString& text) { reckoned.add(name, TextRole::Small, text); };
    line(u"vapour_box"_s, tr("Reckoned for %1 of well-mixed air that changes %2 times an hour: assumptions, see bench "
                             "set-up.")
                              .arg(shownAssumption(u"room_m3"_s, around()).joined(),
                                   shownAssumption(u"room_changes_per_h"_s, around()).figure));
    line(u"vapour_from_to"_s,
         tr("Styrene from what worked-in resin gives off to what gel coat does, by 40 CFR 63 VVVV Table 3; none was "
            "found for filler. Solvent: all of it."));
    line(u"vapour_counted"_s, tr("Counted: batches, test pats and wiping down told here in the last 24 hours. Not "
                                 "guide coat, lay-up resin or other work."));
    if (m_unknownSheets > 0)
        line(u"vapour_unknown"_s, tr("%n batch(es) whose sheet is not loaded: not counted.", nullptr, m_unknownSheets));
    row->addWidget(reckoned.card, 1);
}

QWidget* VapourScreen::limitsPage(Vapour vapour, std::size_t from, QWidget* parent) const
{
    auto* page = new QWidget(parent);
    QBoxLayout* row = columnsIn(page, around());
    const PageColumn column(theme(), u"vapour_limits"_s, page);
    column.add(u"vapour_name"_s, TextRole::Body, words::vapour(vapour), true);
    const std::vector<LimitBeside> all = m_air->besideLimits(vapour);
    for (std::size_t i = from; i < std::min(all.size(), from + limitsOnAPage); ++i) {
        QWidget* sign = all[i].lies == BesideIt::Below ? nullptr : column.sign(Pictogram::Caution, tr("Caution"));
        column.addPair(u"vapour_limit_%1"_s.arg(i), words::limitLine(all[i].limit, words()),
                       words::besideLine(all[i], words()), sign);
    }
    row->addWidget(column.card, 1);
    return page;
}

void VapourScreen::tick()
{
    for (const auto& [label, vapour] : m_now)
        if (label)
            label->setText(nowLine(vapour));
}

} // namespace strandbench
