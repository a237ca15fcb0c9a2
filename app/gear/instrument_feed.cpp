// SPDX-License-Identifier: GPL-3.0-or-later
#include "gear/instrument_feed.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int watchMs = 250;

/// As a person may see it: plain ASCII, and not without end.
QString shown(const QByteArray& line)
{
    QString text;
    for (const char byte : line.left(LinePattern::longest))
        text += byte >= ' ' && byte <= '~' ? QLatin1Char(byte) : QLatin1Char(byte == '\t' ? ' ' : '?');
    return text;
}

Faults notAsked(InstrumentKind kind, const QString& pattern)
{
    const QStringList wanted =
        kind == InstrumentKind::Scale ? QStringList{u"{weight}"_s} : QStringList{u"{temperature:C}"_s, u"{humidity}"_s};
    return {{u"pattern"_s, pattern, FaultKind::Missing, wanted}};
}

} // namespace

Checked<LinePattern> patternFor(InstrumentKind kind, const QString& text)
{
    auto pattern = LinePattern::of(text);
    if (!pattern)
        return pattern;
    const bool fits = kind == InstrumentKind::Scale
                          ? pattern->asksFor(u"weight"_s)
                          : pattern->asksFor(u"temperature"_s) || pattern->asksFor(u"humidity"_s);
    if (!fits)
        return tl::unexpected(notAsked(kind, text));
    return pattern;
}

InstrumentFeed::InstrumentFeed(InstrumentKind kind, const Clock& clock, QObject* parent)
    : QObject(parent), m_kind(kind), m_clock(clock), m_pattern(patternFor(kind, {})), m_serial(new SerialLine(m_untold))
{
    m_watch.setInterval(watchMs);
    connect(&m_watch, &QTimer::timeout, this, &InstrumentFeed::tell);
    m_serial->moveToThread(&m_thread);
    connect(&m_thread, &QThread::finished, m_serial, &QObject::deleteLater);
    connect(m_serial, &SerialLine::opened, this, [this](int opening) {
        if (opening != m_opening)
            return;
        forget();
        m_open = true;
        m_openedAt = now();
        tell();
    });
    connect(m_serial, &SerialLine::failed, this, [this](int opening, const SerialFault& fault) {
        if (opening != m_opening)
            return;
        forget();
        m_open = false;
        m_port = fault;
        tell();
    });
    connect(m_serial, &SerialLine::came, this, [this](int opening, const QByteArray& bytes, bool after) {
        --m_untold;
        if (opening == m_opening && m_open)
            take(bytes, after);
    });
}

InstrumentFeed::~InstrumentFeed()
{
    if (m_thread.isRunning()) {
        m_thread.quit();
        m_thread.wait();
    } else {
        delete m_serial;
    }
}

void InstrumentFeed::setUp(const InstrumentSetting& setting)
{
    if (setting == m_setting)
        return;
    const bool samePort =
        setting.port == m_setting.port && setting.baud == m_setting.baud && setting.frame == m_setting.frame;
    m_setting = setting;
    m_pattern = patternFor(m_kind, setting.pattern);
    m_lineFault.reset();
    m_newest.reset();
    m_readAt.reset();
    for (Steadiness* each : {&m_weight, &m_temperature, &m_humidity})
        each->restart();
    if (!samePort) {
        forget();
        m_open = false;
        m_port.reset();
        ++m_opening;
        if (!m_thread.isRunning() && isOn())
            m_thread.start();
        if (m_thread.isRunning())
            QMetaObject::invokeMethod(
                m_serial, [serial = m_serial, setting, opening = m_opening] { serial->open(setting, opening); },
                Qt::QueuedConnection);
        isOn() ? m_watch.start() : m_watch.stop();
    }
    tell();
}

Duration InstrumentFeed::now() const { return seconds(static_cast<double>(m_clock.now().boottimeMs) / 1e3); }

void InstrumentFeed::forget()
{
    m_reader.restart();
    m_port.reset();
    m_newest.reset();
    m_lineFault.reset();
    m_line.clear();
    m_bytes = 0;
    m_byteAt.reset();
    m_readAt.reset();
    for (Steadiness* each : {&m_weight, &m_temperature, &m_humidity})
        each->restart();
}

void InstrumentFeed::take(const QByteArray& bytes, bool after)
{
    if (after)
        m_reader.restart();
    m_bytes += bytes.size();
    m_byteAt = now();
    const int dropped = m_reader.dropped();
    const std::vector<QByteArray> lines = m_reader.take(bytes, now());
    // What was torn may have said that the scale moved: what stood before it no longer counts.
    if (m_reader.dropped() != dropped)
        for (Steadiness* each : {&m_weight, &m_temperature, &m_humidity})
            each->restart();
    for (const QByteArray& each : lines)
        takeLine(each);
    tell();
}

void InstrumentFeed::takeLine(const QByteArray& line)
{
    m_line = shown(line);
    if (!m_pattern)
        return;
    const auto read = m_pattern->read(line);
    if (!read) { // an overload, another page of its menu: what stood before no longer counts
        m_lineFault = read.error().front();
        m_newest.reset();
        for (Steadiness* each : {&m_weight, &m_temperature, &m_humidity})
            each->restart();
        return;
    }
    m_lineFault.reset();
    m_newest = *read;
    m_readAt = now();
    if (read->weight)
        m_weight.take(inGrams(*read->weight), read->steady, now());
    if (read->temperature)
        m_temperature.take(inKelvin(*read->temperature), read->steady, now());
    if (read->humidity)
        m_humidity.take(read->humidity->percent(), read->steady, now());
}

std::optional<LineReading> InstrumentFeed::steady() const
{
    if (!m_newest || (m_newest->weight && !m_weight.steady(now())) ||
        (m_newest->temperature && !m_temperature.steady(now())) || (m_newest->humidity && !m_humidity.steady(now())))
        return std::nullopt;
    return m_newest;
}

InstrumentView::Is InstrumentFeed::stands() const
{
    using Is = InstrumentView::Is;
    if (!isOn())
        return Is::Off;
    if (m_port)
        return Is::Failed;
    if (!m_open)
        return Is::Opening;
    if (!m_pattern)
        return Is::PatternWrong;
    if (m_readAt && now() - *m_readAt > Steadiness::stale() && !m_lineFault)
        return Is::Stale;
    if (!m_byteAt || now() - *m_byteAt > silentAfter())
        return now() - m_byteAt.value_or(m_openedAt) > silentAfter() ? Is::Silent : Is::Opening;
    if (m_lineFault)
        return Is::NoFit;
    if (!m_newest)
        return now() - m_openedAt > silentAfter() ? Is::Garbled : Is::Opening;
    return steady() ? Is::Steady : Is::Unsteady;
}

InstrumentView InstrumentFeed::view() const
{
    using Is = InstrumentView::Is;
    InstrumentView view;
    view.is = stands();
    view.line = m_line;
    if (m_port)
        view.port = *m_port;
    if (view.is == Is::PatternWrong)
        view.fault = m_pattern.error().front();
    if (view.is == Is::NoFit)
        view.fault = m_lineFault;
    if (view.is == Is::Steady || view.is == Is::Unsteady)
        view.live = m_newest;
    if (view.is == Is::Steady)
        view.steady = m_newest;
    return view;
}

void InstrumentFeed::tell()
{
    const InstrumentView view = this->view();
    if (view == m_told)
        return;
    m_told = view;
    Q_EMIT changed();
}

} // namespace strandbench
