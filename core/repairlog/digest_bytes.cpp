// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/digest_bytes.h"

#include <QDataStream>
#include <QIODevice>

namespace strandbench {
namespace {

QDataStream& operator<<(QDataStream& out, Mass mass) { return out << mass.value(); }
QDataStream& operator<<(QDataStream& out, Duration time) { return out << time.value(); }
QDataStream& operator>>(QDataStream& in, Mass& mass)
{
    double value = 0;
    in >> value;
    mass = Mass::from_value(value);
    return in;
}
QDataStream& operator>>(QDataStream& in, Duration& time)
{
    double value = 0;
    in >> value;
    time = Duration::from_value(value);
    return in;
}

template <class T> QDataStream& operator<<(QDataStream& out, const std::optional<T>& value)
{
    out << value.has_value();
    return value ? out << *value : out;
}
template <class T> QDataStream& operator>>(QDataStream& in, std::optional<T>& value)
{
    bool there = false;
    in >> there;
    if (there)
        in >> value.emplace();
    return in;
}

// One list of members, for writing and for reading.

template <class S, class B> void batch(S&& go, B& b)
{
    go(b.batch.finishing), go(b.batch.index), go(b.sheetId), go(b.lot), go(b.hardenerLot), go(b.planned), go(b.mixed);
    go(b.hardener), go(b.predictedGel), go(b.observedGel), go(b.utcMs);
}

template <class S, class P> void part(S&& go, P& p) { go(p.part), go(p.planned), go(p.actual); }

template <class S, class D> void head(S&& go, D& d)
{
    go(d.repair), go(d.bench), go(d.job), go(d.panel), go(d.substrate), go(d.station), go(d.standing), go(d.people);
    go(d.takenInUtcMs), go(d.handedOverDay), go(d.reworkOf), go(d.readable);
}

constexpr quint32 most = 100'000; ///< of anything: a count beyond is damage

} // namespace

QByteArray digestBytes(const RepairDigest& digest)
{
    QByteArray bytes;
    QDataStream out(&bytes, QIODevice::WriteOnly);
    out.setVersion(QDataStream::Qt_6_4);
    const auto write = [&out](const auto& value) { out << value; };
    head(write, digest);
    write(static_cast<quint32>(digest.deviations.size()));
    for (const DeviationKind each : digest.deviations)
        write(each);
    write(static_cast<quint32>(digest.batches.size()));
    for (const DigestBatch& each : digest.batches)
        batch(write, each);
    write(static_cast<quint32>(digest.parts.size()));
    for (const PartTime& each : digest.parts)
        part(write, each);
    return bytes;
}

std::optional<RepairDigest> digestFrom(const QByteArray& bytes)
{
    RepairDigest digest;
    QDataStream in(bytes);
    in.setVersion(QDataStream::Qt_6_4);
    const auto read = [&in](auto& value) { in >> value; };
    const auto list = [&](auto& all, const auto& member) {
        quint32 count = 0;
        read(count);
        for (quint32 i = 0; i < std::min(count, most) && in.status() == QDataStream::Ok; ++i)
            member(all.emplace_back());
    };
    head(read, digest);
    list(digest.deviations, read);
    list(digest.batches, [&](DigestBatch& each) { batch(read, each); });
    list(digest.parts, [&](PartTime& each) { part(read, each); });
    if (in.status() != QDataStream::Ok || !in.atEnd())
        return std::nullopt;
    return digest;
}

} // namespace strandbench
