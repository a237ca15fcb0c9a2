// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample_record.h"

#include "exchange/sheets.h"
#include "walk/demo_jobs.h"

#include <QBuffer>
#include <QCryptographicHash>
#include <QImage>
#include <QTemporaryDir>

#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

std::vector<Event> walkOnce()
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(u"bench.sqlite"_s);
    {
        ScriptedBench bench({path, workingMorning(), demoSettings(), {1280, 800}, 5.87, {}});
        Walk walk(bench, skirtPanel());
        if (bench.trouble() || !walk.walkTo(Station::Done))
            throw std::runtime_error(walk.why().toStdString());
    }
    const auto log = RepairLog::open(path, LogMode::ReadOnly);
    const auto day = (*log)->repairsOfDay(localDay(workingMorning()));
    return *(*log)->events(day->at(0).repair);
}

/// Puts acts behind the first of a kind, at the same moment.
template <class T> void putAfter(std::vector<Event>& events, const std::vector<Payload>& acts)
{
    for (std::size_t i = 0; i < events.size(); ++i) {
        if (!std::holds_alternative<T>(events[i].payload))
            continue;
        std::vector<Event> made;
        for (const Payload& act : acts) {
            made.push_back(events[i]);
            made.back().payload = act;
        }
        events.insert(events.begin() + std::ptrdiff_t(i) + 1, made.begin(), made.end());
        return;
    }
    throw std::logic_error("no such act");
}

} // namespace

const std::vector<Event>& walkedEvents()
{
    static const std::vector<Event> events = walkOnce();
    return events;
}

QByteArray samplePicture()
{
    QImage image(400, 300, QImage::Format_RGB32);
    image.fill(QColor(60, 110, 160));
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return bytes;
}

std::vector<Event> sampleEvents()
{
    std::vector<Event> events = walkedEvents();
    const QByteArray hash = QCryptographicHash::hash(samplePicture(), QCryptographicHash::Sha256);
    putAfter<TakenIn>(events, {PhotoTaken{PhotoMoment::AsFound, hash, u"image/png"_s},
                               Noted{{}, u"Deeper below the edge, 3 mm more"_s}});
    putAfter<PlanAccepted>(events, {Parked{u"supervisor"_s, {}, {}}, TakenUpAgain{}});
    std::erase_if(events, [](const Event& each) { return std::holds_alternative<Gelled>(each.payload); });
    putAfter<HardenerIn>(events, {Gelled{{false, 0}, GelPlace::Board}, Gelled{{false, 0}, GelPlace::Panel}});
    int lot = 0;
    for (std::size_t i = 0; i < events.size(); ++i) {
        events[i].seq = qint64(i) + 1;
        if (auto* mixed = std::get_if<HardenerIn>(&events[i].payload); mixed && lot++ > 0) {
            mixed->lot = u"F-1207"_s;
            mixed->hardenerLot = u"H-0088"_s;
        }
        if (std::holds_alternative<Gelled>(events[i].payload)) {
            events[i].at.utcMs += 100'000;
            events[i].at.boottimeMs += 100'000;
        }
    }
    return events;
}

JobRecord sampleRecord()
{
    auto record = recordOf(sampleEvents(), demoCatalogue());
    if (!record)
        throw std::runtime_error(record.error().front().field.toStdString());
    return *record;
}

SheetFacts sampleFacts(Paper paper)
{
    static const Assumptions assumptions;
    return {{u"5a0c52f4-3a0e-4bb4-8a43-6a1ad3a2a0a5"_s, 131,
             QByteArray::fromHex(QByteArray(32, 'a') + QByteArray(32, '7'))},
            demoCatalogue(),
            assumptions,
            [](const QByteArray&) { return samplePicture(); },
            paper};
}

} // namespace strandbench::test
