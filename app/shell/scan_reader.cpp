// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/scan_reader.h"

#include <QApplication>
#include <QPointer>
#include <QWidget>

namespace strandbench {
namespace {

// Common practice, no source: scanners send a character every 1 to 40 ms; the fastest typists need over 60 ms.
const Duration machinePace = seconds(0.05); ///< a character, on the average
constexpr std::size_t leastScan = 2;        ///< characters before the Enter
constexpr std::size_t leastCutShort = 5;    ///< characters without an Enter that no person types at that pace

bool isModifier(int key)
{
    return key == Qt::Key_Shift || key == Qt::Key_Control || key == Qt::Key_Alt || key == Qt::Key_AltGr ||
           key == Qt::Key_Meta || key == Qt::Key_CapsLock || key == Qt::Key_NumLock;
}

bool begins(const QKeyEvent& press)
{
    constexpr Qt::KeyboardModifiers commands = Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier;
    const QString text = press.text();
    return !text.isEmpty() && text[0].isPrint() && !text[0].isSpace() && !(press.modifiers() & commands);
}

} // namespace

ScanReader::Take ScanReader::take(const QKeyEvent& press, const Instant& now)
{
    if (press.key() == Qt::Key_Return || press.key() == Qt::Key_Enter) {
        const auto count = static_cast<double>(m_held.size());
        const bool scan = m_held.size() >= leastScan && elapsed(m_first, now) <= machinePace * count;
        return scan ? Take::Scan : Take::PassOn;
    }
    if (press.isAutoRepeat())
        return Take::PassOn;
    // A control character within a scan belongs to it: whoever wants the text has to refuse it whole.
    if (holding() ? press.text().isEmpty() : !begins(press))
        return Take::PassOn;
    if (m_held.empty())
        m_first = now;
    m_last = now;
    m_held.push_back({press.key(), press.modifiers(), press.text()});
    return Take::Held;
}

bool ScanReader::rested(const Instant& now) const
{
    return holding() && elapsed(m_last, now) > seconds(longestRestMs / 1000.0);
}

QString ScanReader::text() const
{
    QString all;
    for (const Kept& each : m_held)
        all += each.text;
    return all;
}

bool ScanReader::cutShort() const
{
    const auto gaps = static_cast<double>(m_held.size()) - 1;
    return m_held.size() >= leastCutShort && elapsed(m_first, m_last) <= machinePace * gaps;
}

std::vector<ScanReader::Kept> ScanReader::release() { return std::exchange(m_held, {}); }

ScanGate::ScanGate(QWidget& window, const Clock& clock) : QObject(&window), m_window(window), m_clock(clock)
{
    m_rest.setSingleShot(true);
    m_rest.setTimerType(Qt::PreciseTimer);
    connect(&m_rest, &QTimer::timeout, this, &ScanGate::onTimeout);
    qApp->installEventFilter(this);
}

bool ScanGate::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() != QEvent::KeyPress || m_typing)
        return false;
    const auto* widget = qobject_cast<QWidget*>(watched);
    if (!widget || (widget != &m_window && !m_window.isAncestorOf(widget)))
        return false;
    const auto& press = *static_cast<QKeyEvent*>(event);
    if (isModifier(press.key()))
        return false; // a scanner presses Shift between its characters
    if (m_reader.rested(m_clock.now()))
        letGo();
    switch (m_reader.take(press, m_clock.now())) {
    case ScanReader::Take::Held:
        m_lastCall = false;
        m_rest.start(ScanReader::longestRestMs);
        return true;
    case ScanReader::Take::Scan: {
        m_rest.stop();
        const QString text = m_reader.text();
        (void)m_reader.release();
        Q_EMIT scanned(text);
        return true;
    }
    case ScanReader::Take::PassOn:
        break;
    }
    const QPointer<QObject> there = watched;
    letGo();
    return there.isNull(); // what was let go may have closed the screen that this press was for
}

void ScanGate::onTimeout()
{
    // Characters that waited behind a busy glass are let in first.
    if (std::exchange(m_lastCall, true))
        letGo();
    else
        m_rest.start(0);
}

void ScanGate::letGo()
{
    m_rest.stop();
    if (m_reader.cutShort()) {
        const QString text = m_reader.text();
        (void)m_reader.release();
        Q_EMIT cutShort(text);
        return;
    }
    m_typing = true;
    for (const ScanReader::Kept& each : m_reader.release()) {
        QKeyEvent press(QEvent::KeyPress, each.key, each.modifiers, each.text);
        QCoreApplication::sendEvent(m_window.focusWidget() ? m_window.focusWidget() : &m_window, &press);
    }
    m_typing = false;
}

} // namespace strandbench
