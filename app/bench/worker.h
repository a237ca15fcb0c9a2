// SPDX-License-Identifier: GPL-3.0-or-later
// Computing beside the glass: one piece of work at a time, and the latest request wins.
#pragma once

#include <QObject>

#include <condition_variable>
#include <functional>
#include <mutex>
#include <optional>
#include <thread>

namespace strandbench {

class Worker final : public QObject {
    Q_OBJECT
public:
    enum class Runs {
        InThread,
        Inline ///< at once, within ask(): for tests and pictures
    };
    /// What is shown of a result, on the glass's own thread.
    using Show = std::function<void()>;
    /// Computes, away from the glass; touches no widget.
    using Work = std::function<Show()>;

    explicit Worker(Runs runs, QObject* parent = nullptr);
    /// Waits for what is being computed; nothing is shown any more.
    ~Worker() override;

    /// Takes the place of what waits, and of what is being computed: only the newest is shown.
    void ask(Work work);
    /// True until the newest has been shown.
    [[nodiscard]] bool busy() const { return m_shown != m_asked; }

private:
    void run();
    void show(const Show& show, quint64 number);

    Runs m_runs;
    quint64 m_asked = 0; ///< glass's thread alone
    quint64 m_shown = 0;
    std::mutex m_mutex;
    std::condition_variable m_wake;
    std::optional<std::pair<Work, quint64>> m_waiting;
    bool m_ending = false;
    std::thread m_thread;
};

} // namespace strandbench
