// SPDX-License-Identifier: GPL-3.0-or-later
#include "roles/pin_door.h"

#include "roles/pin_file.h"
#include "roles/pin_hash.h"

#include <QFileInfo>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// A PIN that is guessed first: one digit only, or digits in their order up or down.
bool isEasy(const QString& pin)
{
    const int step = pin[1].unicode() - pin[0].unicode();
    if (std::abs(step) > 1)
        return false;
    for (qsizetype i = 2; i < pin.size(); ++i)
        if (pin[i].unicode() - pin[i - 1].unicode() != step)
            return false;
    return true;
}

bool isDigit(QChar c) { return c >= u'0' && c <= u'9'; }

/// How long has been waited since the last wrong one; never more than has gone by, and never by the clock of the wall.
Duration waited(const Instant& lastWrong, const Instant& now)
{
    const qint64 since = now.boottimeMs - lastWrong.boottimeMs;
    const bool known = !now.bootId.isEmpty() && !lastWrong.bootId.isEmpty();
    // Of another boot nothing is known but that it is over: the wait begins with this one. Where nobody knows which
    // boot it is, a boot clock that went back tells of another.
    const bool another = known ? now.bootId != lastWrong.bootId : since < 0;
    return seconds(static_cast<double>(std::max<qint64>(another ? now.boottimeMs : since, 0)) / 1e3);
}

Duration waitLeftOf(const PinState& state, const Instant& now, const PinRate& rate)
{
    return std::max(Duration(waitAfter(state.wrong, rate) - waited(state.lastWrong, now)), seconds(0));
}

tl::unexpected<PinRefused> refused(ActRefusal why, const Duration& wait = seconds(0))
{
    return tl::unexpected(PinRefused{why, wait});
}

} // namespace

Duration waitAfter(int wrong, const PinRate& rate)
{
    if (wrong < rate.freeTries)
        return seconds(0);
    Duration wait = rate.firstWait;
    for (int i = rate.freeTries; i < wrong && wait < rate.longestWait; ++i)
        wait = wait * 2.0;
    return std::min(wait, rate.longestWait);
}

QString pinPathOf(const QString& log)
{
    // By its real name: a link to a log is the same log.
    const QFileInfo info(log);
    const QFileInfo real(info.exists() ? info.canonicalFilePath() : info.absoluteFilePath());
    return real.absolutePath() + u"/supervisor.pin"_s;
}

PinDoor::PinDoor(QString path, const Clock& clock, PinCost cost, PinRate rate)
    : m_path(std::move(path)), m_clock(clock), m_cost(cost), m_rate(std::move(rate))
{}

bool PinDoor::isSet() const { return readPinFile(m_path).is != ReadPin::Is::Missing; }

Duration PinDoor::waitLeft() const
{
    const ReadPin read = readPinFile(m_path);
    return read.is == ReadPin::Is::Read ? waitLeftOf(read.state, m_clock.now(), m_rate) : seconds(0);
}

tl::expected<PinState, PinRefused> PinDoor::count() const
{
    const PinLock lock(m_path);
    if (!lock.isHeld())
        return refused(ActRefusal::NotCounted);
    ReadPin read = readPinFile(m_path);
    if (read.is != ReadPin::Is::Read)
        return refused(ActRefusal::NotCounted);
    const Instant now = m_clock.now();
    if (const Duration left = waitLeftOf(read.state, now, m_rate); left.value() > 0)
        return refused(ActRefusal::MustWait, left);
    read.state.wrong = std::min(read.state.wrong + 1, mostWrong);
    read.state.lastWrong = {0, now.boottimeMs, now.bootId, 0};
    if (!writePinFile(m_path, read.state))
        return refused(ActRefusal::NotCounted);
    return read.state;
}

tl::expected<void, PinRefused> PinDoor::beginAnew(const QByteArray& hash) const
{
    const PinLock lock(m_path);
    if (!lock.isHeld())
        return refused(ActRefusal::NotCounted);
    ReadPin read = readPinFile(m_path);
    if (read.is != ReadPin::Is::Read)
        return refused(ActRefusal::NotCounted);
    if (read.state.hash != hash) // another was set while this one was looked at
        return refused(ActRefusal::WrongPin, waitLeftOf(read.state, m_clock.now(), m_rate));
    read.state.wrong = 0;
    if (!writePinFile(m_path, read.state)) // else the next right one might have to wait
        return refused(ActRefusal::NotCounted);
    return {};
}

tl::expected<void, PinRefused> PinDoor::open(const QString& pin)
{
    const ReadPin read = readPinFile(m_path);
    if (read.is == ReadPin::Is::Missing)
        return refused(ActRefusal::NotSet);
    if (read.is == ReadPin::Is::Read && pin.isEmpty())
        return refused(ActRefusal::NoPin);
    const auto counted = count();
    if (!counted)
        return tl::unexpected(counted.error());
    if (!matches(counted->hash, pin))
        return refused(ActRefusal::WrongPin, waitAfter(counted->wrong, m_rate));
    return beginAnew(counted->hash);
}

Faults PinDoor::set(const QString& pin)
{
    const auto fault = [](FaultKind kind, const QStringList& allowed) { return Faults{{u"pin"_s, {}, kind, allowed}}; };
    if (pin.size() < pinShortest || pin.size() > pinLongest || !std::ranges::all_of(pin, isDigit))
        return fault(FaultKind::OutOfRange, {QString::number(pinShortest), QString::number(pinLongest), u"digits"_s});
    if (isEasy(pin))
        return fault(FaultKind::NotOneOf, {u"digits that are neither all alike nor in their order"_s});
    const QByteArray hash = hashOf(pin, m_cost);
    const PinLock lock(m_path);
    if (hash.isEmpty() || !lock.isHeld() || !writePinFile(m_path, {hash, 0, {}}))
        return fault(FaultKind::NotFound, {m_path});
    return {};
}

} // namespace strandbench
