// SPDX-License-Identifier: GPL-3.0-or-later
#include "watched_glass.h"

#include <QEvent>
#include <QTimer>

#include <ctime>

namespace strandbench::tapbench {
namespace {

constexpr std::chrono::seconds longest{30}; ///< that something may be busy

} // namespace

Moment Moment::now()
{
    timespec used{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &used);
    return {std::chrono::steady_clock::now(),
            std::chrono::seconds(used.tv_sec) + std::chrono::nanoseconds(used.tv_nsec)};
}

Spent between(const Moment& from, const Moment& to)
{
    using Milliseconds = std::chrono::duration<double, std::milli>;
    return {Milliseconds(to.wall - from.wall).count(), Milliseconds(to.processor - from.processor).count()};
}

void WatchedGlass::forget()
{
    m_touched.reset();
    m_painted.clear();
}

void WatchedGlass::rest(std::chrono::milliseconds still, const std::function<bool()>& busy)
{
    QTimer beat; // the loop sleeps between events, as the program's own does
    beat.start(std::chrono::milliseconds(2));
    const auto begun = std::chrono::steady_clock::now();
    auto last = begun; // that something went on
    while (std::chrono::steady_clock::now() - last < still) {
        processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents);
        const auto now = std::chrono::steady_clock::now();
        if (busy() && now - begun < longest)
            last = now;
        else if (!m_painted.empty())
            last = std::max(last, m_painted.back().at.wall);
    }
}

bool WatchedGlass::notify(QObject* receiver, QEvent* event)
{
    const QEvent::Type type = event->type(); // the event may be gone afterwards
    if ((type == QEvent::TouchBegin || type == QEvent::TouchEnd) && !m_touched)
        m_touched = Moment::now();
    if (type == QEvent::Paint && receiver->isWidgetType())
        ++m_paints;
    if (type != QEvent::UpdateRequest)
        return QApplication::notify(receiver, event);
    const int before = m_paints;
    ++m_depth;
    const bool taken = QApplication::notify(receiver, event);
    --m_depth;
    if (m_depth == 0 && m_paints != before && look)
        m_painted.push_back(look(Moment::now()));
    return taken;
}

} // namespace strandbench::tapbench
