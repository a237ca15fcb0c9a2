// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_script.h"

#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

PhotoTaken photo(PhotoMoment moment) { return {moment, QByteArray(32, char('a' + int(moment))), u"image/png"_s}; }

/// Seconds from the act before until this one.
int pause(const Payload& payload)
{
    if (std::holds_alternative<EdgesClear>(payload))
        return 200; // of 280 to the gel
    if (std::holds_alternative<Sands>(payload))
        return 300; // 500 after the hardener, of 480 predicted
    return 30;
}

} // namespace

std::vector<Event> cleanRepair()
{
    RepairScript script;
    std::vector<Payload> acts;
    const auto put = [&](const Payload& payload) {
        if (script.put(payload))
            throw std::logic_error("what is due was refused");
    };
    while (script.repair().open()) {
        Payload due = actAt(script.repair());
        if (auto* mixed = std::get_if<HardenerIn>(&due)) {
            put(ReadingTaken{{celsius(21), celsius(20.5), Fraction::ofHundred(48)}});
            mixed->lot = u"F 1207"_s;
            mixed->hardenerLot = u"H 88"_s;
            mixed->sheetId = u"shop_mixed"_s;
        }
        if (std::holds_alternative<HandedOver>(due))
            for (const auto& [moment, code] : Codes<PhotoMoment>::table)
                put(photo(moment));
        put(due);
    }
    std::vector<Event> events = script.events();
    int at = 0;
    for (Event& each : events) {
        at += pause(each.payload);
        each.at = moment(at);
    }
    return events;
}

Catalogue reviewCatalogue()
{
    ProductSheet own;
    own.id = u"shop_mixed"_s;
    own.panelLow = celsius(15);
    own.panelHigh = celsius(28);
    own.panelLowCaution = celsius(12);
    own.greatestLift = millimetres(4);
    ProductSheet demo = own;
    demo.id = u"demo_mixed"_s;
    demo.demo = true;
    return Catalogue({own, demo});
}

void delayFrom(std::vector<Event>& events, qint64 seq, qint64 ms)
{
    for (Event& each : events)
        if (each.seq >= seq) {
            each.at.utcMs += ms;
            each.at.boottimeMs += ms;
        }
}

qint64 seqOf(const std::vector<Event>& events, const std::function<bool(const Event&)>& picks)
{
    for (const Event& each : events)
        if (picks(each))
            return each.seq;
    throw std::logic_error("no such event");
}

void insertAfter(std::vector<Event>& events, qint64 seq, const Payload& payload)
{
    Event made = events[std::size_t(seq - 1)];
    made.payload = payload;
    events.insert(events.begin() + seq, made);
    for (std::size_t i = std::size_t(seq); i < events.size(); ++i)
        events[i].seq = qint64(i) + 1;
}

JobRecord recordOf(const std::vector<Event>& events)
{
    auto record = strandbench::recordOf(events, reviewCatalogue());
    if (!record)
        throw std::logic_error(record.error().front().field.toStdString() + ": " +
                               record.error().front().value.toStdString());
    return *record;
}

std::vector<Deviation> deviationsOf(const std::vector<Event>& events)
{
    return strandbench::deviationsOf(recordOf(events), reviewCatalogue());
}

QStringList codesOf(const std::vector<Event>& events)
{
    QStringList codes;
    for (const Deviation& each : deviationsOf(events))
        codes << codeOf(each.kind);
    return codes;
}

} // namespace strandbench::test
