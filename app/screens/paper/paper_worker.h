// SPDX-License-Identifier: GPL-3.0-or-later
// What goes on paper is made beside the glass, one thing at a time, and can be told to stop.
#pragma once

#include "bench/worker.h"

#include <stop_token>

namespace strandbench {

class PaperWorker {
public:
    /// Makes and keeps or prints it, away from the glass; touches no widget, gives up once asked to stop. Everything
    /// that it reads is its own: the screen may go meanwhile.
    using Work = std::function<Worker::Show(const std::stop_token& stop)>;

    explicit PaperWorker(Worker::Runs runs) : m_worker(runs) {}
    /// Asks what is under way to stop, and waits for it; nothing is shown any more.
    ~PaperWorker() { stop(); }
    PaperWorker(const PaperWorker&) = delete;
    PaperWorker& operator=(const PaperWorker&) = delete;

    void ask(const Work& work)
    {
        m_stop = std::stop_source();
        m_worker.ask([work, stop = m_stop.get_token()] { return work(stop); });
    }
    /// What is under way may still end whole: what it then shows is true.
    void stop() { m_stop.request_stop(); }
    [[nodiscard]] bool busy() const { return m_worker.busy(); }

private:
    std::stop_source m_stop;
    Worker m_worker; ///< goes first
};

} // namespace strandbench
