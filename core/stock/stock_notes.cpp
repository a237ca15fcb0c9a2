// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/stock_notes.h"

#include "stock/even_out.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QDate dayOf(const Instant& at) { return QDate::fromString(localDay(at), Qt::ISODate); }

/// The notes of one lot, one after another.
class Notes {
public:
    Notes(const StockState& state, const StockNeed& need, const StockNow& now, const StockLimits& limits)
        : m_state(state), m_need(need), m_now(now), m_limits(limits)
    {}

    std::vector<StockNote> all()
    {
        if (m_state.ended)
            tell(u"stock_has_ended"_s, {codeOf(*m_state.ended)});
        amount();
        if (m_need.sheet)
            dates(*m_need.sheet);
        temperature();
        if (!m_need.tried)
            tell(u"stock_untried"_s, {});
        return std::move(m_notes);
    }

private:
    void tell(const QString& code, std::vector<Argument> arguments)
    {
        m_notes.push_back({m_state.of, {code, std::move(arguments)}});
    }

    void amount()
    {
        if (m_state.micrograms < 0)
            tell(u"stock_overdrawn"_s, {fromMicrogramsOfStock(-m_state.micrograms)});
        else if (inMicrograms(m_need.amount) > m_state.micrograms)
            tell(u"stock_short"_s, {m_need.amount, m_state.left()});
    }

    void dates(const ProductSheet& sheet)
    {
        const QDate today = dayOf(m_now.at);
        if (const QDate last = lastDayOf(m_state, sheet); today > last)
            tell(u"stock_past_its_date"_s, {last.toString(Qt::ISODate)});
        if (const auto last = lastOpenDayOf(m_state, sheet); last && today > *last)
            tell(u"stock_open_too_long"_s, {dayOf(*m_state.opened).toString(Qt::ISODate), Count{sheet.monthsOpened}});
    }

    void temperature()
    {
        if (m_state.probed) {
            const Temperature middle = m_state.probed->first;
            if (middle < m_limits.coolest || middle > m_limits.warmest)
                tell(u"stock_probe_off"_s, {middle, m_limits.coolest, m_limits.warmest});
            return;
        }
        if (!m_state.moved || !m_need.sheet)
            return;
        if (!m_now.air)
            return tell(u"stock_air_unknown"_s, {});
        if (const auto left = evensOutIn(m_state, *m_need.sheet, *m_now.air, m_now, m_limits);
            left && *left > seconds(0))
            tell(u"stock_evens_out"_s, {*left});
    }

    const StockState& m_state;
    const StockNeed& m_need;
    const StockNow& m_now;
    const StockLimits& m_limits;
    std::vector<StockNote> m_notes;
};

} // namespace

QDate lastDayOf(const StockState& state, const ProductSheet& sheet)
{
    return state.bestBefore.value_or(dayOf(state.since).addMonths(sheet.monthsSealed));
}

std::optional<QDate> lastOpenDayOf(const StockState& state, const ProductSheet& sheet)
{
    return state.opened ? std::optional(dayOf(*state.opened).addMonths(sheet.monthsOpened)) : std::nullopt;
}

std::optional<Duration> evensOutIn(const StockState& state, const ProductSheet& sheet, Temperature air,
                                   const StockNow& now, const StockLimits& limits)
{
    if (!state.moved || state.probed)
        return std::nullopt;
    const Mass of = state.each > grams(0) ? state.each : std::max(state.left(), grams(1));
    const Package package{of, sheet.density, sheet.specificHeat, sheet.conductivity};
    const Duration takes = evenAfter(package, state.moved->first, air, limits.even, now.faces);
    return std::max(seconds(0), takes - elapsed(state.moved->second, now.at));
}

std::vector<StockNote> notesOf(const StockState* state, const StockNeed& need, const StockNow& now,
                               const StockLimits& limits)
{
    if (state)
        return Notes(*state, need, now, limits).all();
    if (need.tried)
        return {};
    return {{need.of, {u"stock_untried"_s, {}}}};
}

} // namespace strandbench
