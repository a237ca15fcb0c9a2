// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/worker.h"

namespace strandbench {

Worker::Worker(Runs runs, QObject* parent) : QObject(parent), m_runs(runs) {}

Worker::~Worker()
{
    {
        const std::lock_guard lock(m_mutex);
        m_ending = true;
        m_waiting.reset();
    }
    m_wake.notify_one();
    if (m_thread.joinable())
        m_thread.join();
}

void Worker::ask(Work work)
{
    const quint64 number = ++m_asked;
    if (m_runs == Runs::Inline)
        return show(work(), number);
    {
        const std::lock_guard lock(m_mutex);
        m_waiting.emplace(std::move(work), number);
    }
    if (!m_thread.joinable())
        m_thread = std::thread([this] { run(); });
    m_wake.notify_one();
}

void Worker::run()
{
    std::unique_lock lock(m_mutex);
    while (true) {
        m_wake.wait(lock, [this] { return m_ending || m_waiting; });
        if (m_ending)
            return;
        const auto [work, number] = *std::exchange(m_waiting, std::nullopt);
        lock.unlock();
        const Show result = work();
        // Queued to this object: what was asked for by a screen that is gone is never shown.
        QMetaObject::invokeMethod(
            this, [this, result, number = number] { show(result, number); }, Qt::QueuedConnection);
        lock.lock();
    }
}

void Worker::show(const Show& show, quint64 number)
{
    if (number != m_asked)
        return;
    m_shown = number;
    show();
}

} // namespace strandbench
