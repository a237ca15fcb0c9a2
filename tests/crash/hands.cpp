// SPDX-License-Identifier: GPL-3.0-or-later
#include "hands.h"

#include "repair/repair_script.h"

#include "repair/lot_book.h"

#include <QCryptographicHash>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

/// Bytes that no other act has.
QByteArray picture(const QString& mark, int size)
{
    QByteArray bytes = mark.toUtf8();
    while (bytes.size() < size)
        bytes += QCryptographicHash::hash(bytes.right(64), QCryptographicHash::Sha256);
    return bytes;
}

PatMixed patOf(const QString& lot)
{
    return {u"demo_mixed"_s, lot,        u"L1"_s,    grams(29),  grams(0.58),
            celsius(20),     minutes(5), minutes(5), minutes(4), minutes(6)};
}

} // namespace

Instant SteppedClock::now() const
{
    Instant now = m_system.now();
    now.utcMs += m_byMs;
    return now;
}

void Hands::work(Bench& bench, SteppedClock& clock, int acts, const std::function<void(int)>& between)
{
    m_bench = &bench;
    m_clock = &clock;
    m_between = between;
    m_acts = acts;
    m_begun = 0;
    m_repairs = {};
    for (std::size_t hand = 0; hand < m_repairs.size(); ++hand)
        next(hand);
    if (m_waiting > 0)
        m_loop.exec();
}

const Repair* Hands::inHand(std::size_t hand)
{
    if (const Repair* mine = m_bench->repair(m_repairs[hand]); mine && mine->open())
        return mine;
    m_repairs[hand] = {};
    for (const Repair* each : m_bench->openRepairs())
        if (std::ranges::find(m_repairs, each->id) == m_repairs.end()) {
            m_repairs[hand] = each->id;
            return each;
        }
    m_repairs[hand] = QUuid::createUuid();
    return nullptr;
}

void Hands::next(std::size_t hand)
{
    if (m_begun == m_acts) {
        if (m_waiting == 0)
            m_loop.quit();
        return;
    }
    m_between(m_begun++);
    const QString mark = m_rules.tag + u'.' + QString::number(m_marks + 1);
    const Repair* repair = inHand(hand);
    const int kind = below(100);
    if (kind == 0) {
        m_clock->step(below(2) ? 3'600'000 : -3'600'000);
        m_bench->watchClock(); // an event of the bench that nobody waits for
    }
    if (!repair)
        act(hand, m_repairs[hand], TakenIn{mark, u"door"_s});
    else if (kind < 8) {
        const QByteArray bytes = picture(mark, 1000 + below(60'000));
        const QByteArray hash = QCryptographicHash::hash(bytes, QCryptographicHash::Sha256);
        act(hand, repair->id, PhotoTaken{PhotoMoment::AsFound, hash, u"image/jpeg"_s}, {bytes});
    } else if (kind < 14)
        act(hand, repair->id, Noted{{}, u"note "_s + mark});
    else if (kind < 18)
        act(hand, lotSubject({u"demo_mixed"_s, mark}), patOf(mark));
    else if (kind < 22)
        act(hand, repair->id, SignedOff{}); // refused, and that is written
    else
        act(hand, repair->id, actAt(*repair));
}

void Hands::act(std::size_t hand, const QUuid& subject, const Payload& payload, const std::vector<QByteArray>& kept)
{
    const QString mark = m_rules.tag + u'.' + QString::number(++m_marks);
    ++m_waiting;
    if (m_rules.lies)
        tell(u"done %1 0"_s.arg(mark));
    m_bench->submit(
        subject, mark, payload,
        [=, this](const std::optional<LogFailure>& failure) { answered(hand, mark, subject, failure); }, kept);
}

void Hands::answered(std::size_t hand, const QString& mark, const QUuid& subject,
                     const std::optional<LogFailure>& failure)
{
    --m_waiting;
    const bool refusedAct = failure && failure->trouble == LogTrouble::NeedsPin;
    if ((failure && !refusedAct) || m_bench->unsaved() > 0)
        return tell(u"trouble %1 was not written: %2"_s.arg(mark, failure ? failure->detail : u"it waits"_s));
    const Repair* repair = refusedAct ? nullptr : m_bench->repair(subject);
    if (!m_rules.lies)
        tell(u"done %1 %2"_s.arg(mark).arg(repair ? repair->lastSeq : 0));
    if (below(4) == 0)
        tellPlaces();
    next(hand);
}

void Hands::tellPlaces()
{
    m_bench->recorder().readAfter(m_placed, [this](const Logged<std::vector<Event>>& written) {
        if (!written)
            return tell(u"trouble the log does not read: %1"_s.arg(written.error().detail));
        for (const Event& each : *written) {
            if (!each.person.isEmpty())
                tell(u"at %1 %2 %3"_s.arg(each.person).arg(each.seq).arg(QString::fromLatin1(each.hash.toHex())));
            m_placed = std::max(m_placed, each.seq);
        }
    });
}

} // namespace strandbench::test
