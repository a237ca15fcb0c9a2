// SPDX-License-Identifier: GPL-3.0-or-later
// The fields of the acts of stock, as events store them (see event_fields.h). Masses in micrograms: a hardener's are
// small.
#pragma once

#include "exchange/event_io.h"
#include "stock/stock_acts.h"

namespace strandbench {

using namespace Qt::StringLiterals; // this header is for the event_*.cpp files of this folder alone

template <class Io, Is<StockLot> V> void fields(Io& io, V& v)
{
    io.text(u"product"_s, v.product);
    io.text(u"lot"_s, v.lot);
}

template <class Io, Is<StockReceived> V> void fields(Io& io, V& v)
{
    io.part(u"of"_s, v.of);
    io.count(u"packages"_s, v.packages);
    io.hardener(u"each_ug"_s, v.each);
    io.maybeDate(u"best_before"_s, v.bestBefore);
}

template <class Io, Is<StockOpened> V> void fields(Io& io, V& v) { io.part(u"of"_s, v.of); }

template <class Io, Is<StockCounted> V> void fields(Io& io, V& v)
{
    io.part(u"of"_s, v.of);
    io.hardener(u"there_ug"_s, v.there);
}

template <class Io, Is<StockAdjusted> V> void fields(Io& io, V& v)
{
    io.part(u"of"_s, v.of);
    io.hardener(u"by_ug"_s, v.by);
    io.flag(u"less"_s, v.less);
    io.code(u"reason"_s, v.reason);
}

template <class Io, Is<StockEnded> V> void fields(Io& io, V& v)
{
    io.part(u"of"_s, v.of);
    io.code(u"reason"_s, v.reason);
    io.hardener(u"thrown_away_ug"_s, v.thrownAway);
}

template <class Io, Is<StockMoved> V> void fields(Io& io, V& v)
{
    io.part(u"of"_s, v.of);
    io.temperature(u"from_mk"_s, v.from);
}

template <class Io, Is<StockProbed> V> void fields(Io& io, V& v)
{
    io.part(u"of"_s, v.of);
    io.temperature(u"middle_mk"_s, v.middle);
}

} // namespace strandbench
