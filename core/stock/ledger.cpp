// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/ledger.h"

#include <algorithm>
#include <cmath>

namespace strandbench {

qint64 inMicrograms(Mass mass) { return std::llround(inGrams(mass) * 1e6); }
Mass fromMicrogramsOfStock(qint64 micrograms) { return grams(static_cast<double>(micrograms) / 1e6); }

Mass StockState::left() const { return fromMicrogramsOfStock(micrograms); }

Mass StockState::inTheOpenOne() const
{
    return fromMicrogramsOfStock(std::max<qint64>(0, micrograms - unopened * inMicrograms(each)));
}

StockState& StockLedger::known(const StockLot& lot, const Told& told)
{
    StockState& state = m_lots[lot];
    if (state.movements.empty()) {
        state.of = lot;
        state.since = told.at;
    }
    return state;
}

void StockLedger::add(StockState& state, StockMove move, qint64 micrograms, const Told& told)
{
    state.micrograms += micrograms;
    state.movements.push_back({move, micrograms, told.at, told.person, told.note});
}

void StockLedger::open(StockState& state, const Instant& at)
{
    state.unopened = std::max(0, state.unopened - 1);
    state.opened = at;
}

void StockLedger::take(const StockReceived& act, const Told& told)
{
    StockState& state = known(act.of, told);
    state.each = act.each;
    state.unopened += act.packages;
    if (act.bestBefore)
        state.bestBefore = state.bestBefore ? std::min(*state.bestBefore, *act.bestBefore) : *act.bestBefore;
    state.ended.reset();
    add(state, StockMove::Received, act.packages * inMicrograms(act.each), told);
}

void StockLedger::take(const StockOpened& act, const Told& told) { open(known(act.of, told), told.at); }

void StockLedger::take(const StockCounted& act, const Told& told)
{
    StockState& state = known(act.of, told);
    add(state, StockMove::Counted, inMicrograms(act.there) - state.micrograms, told);
    // What cannot be there unopened is open, or gone.
    if (const qint64 each = inMicrograms(state.each); each > 0)
        state.unopened =
            static_cast<int>(std::min<qint64>(state.unopened, std::max<qint64>(0, state.micrograms) / each));
}

void StockLedger::take(const StockAdjusted& act, const Told& told)
{
    Told noted = told;
    noted.note = codeOf(act.reason);
    add(known(act.of, told), StockMove::Adjusted, (act.less ? -1 : 1) * inMicrograms(act.by), noted);
}

void StockLedger::take(const StockEnded& act, const Told& told)
{
    StockState& state = known(act.of, told);
    Told noted = told;
    noted.note = codeOf(act.reason);
    add(state, StockMove::ThrownAway, -inMicrograms(act.thrownAway), noted);
    if (!state.opened)
        state.unopened = std::max(0, state.unopened - 1);
    state.opened.reset();
    if (state.unopened == 0)
        state.ended = act.reason;
}

void StockLedger::take(const StockMoved& act, const Told& told)
{
    StockState& state = known(act.of, told);
    state.moved = std::pair(act.from, told.at);
    state.probed.reset();
}

void StockLedger::take(const StockProbed& act, const Told& told)
{
    known(act.of, told).probed = std::pair(act.middle, told.at);
}

void StockLedger::used(const StockLot& lot, Mass amount, StockMove move, const Told& told)
{
    const auto found = m_lots.find(lot);
    if (found == m_lots.end())
        return;
    StockState& state = found->second;
    if (!state.opened)
        open(state, told.at);
    add(state, move, -inMicrograms(amount), told);
}

const StockState* StockLedger::of(const StockLot& lot) const
{
    const auto found = m_lots.find(lot);
    return found == m_lots.end() ? nullptr : &found->second;
}

std::vector<const StockState*> StockLedger::all() const
{
    std::vector<const StockState*> states;
    for (const auto& [lot, state] : m_lots)
        states.push_back(&state);
    return states;
}

const StockState* StockLedger::nextOf(const QString& product) const
{
    // Ended or not, open or not, and since when; what ended is told by its latest movement, the newest first.
    const auto rank = [](const StockState& state) {
        const qint64 since = state.ended    ? -state.movements.back().at.utcMs
                             : state.opened ? state.opened->utcMs
                                            : state.since.utcMs;
        return std::tuple(state.ended.has_value(), !state.opened.has_value(), since);
    };
    const StockState* next = nullptr;
    for (const auto& [lot, state] : m_lots)
        if (lot.product == product && (!next || rank(state) < rank(*next)))
            next = &state;
    return next;
}

Mass StockLedger::usable(const QString& product) const
{
    qint64 sum = 0;
    for (const auto& [lot, state] : m_lots)
        if (lot.product == product && !state.ended)
            sum += std::max<qint64>(0, state.micrograms);
    return fromMicrogramsOfStock(sum);
}

bool StockLedger::keeps(const QString& product) const
{
    return std::ranges::any_of(m_lots, [&](const auto& each) { return each.first.product == product; });
}

} // namespace strandbench
