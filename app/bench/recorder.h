// SPDX-License-Identifier: GPL-3.0-or-later
// The log behind a thread of its own: one writer, never on the GUI thread, whose acknowledgement moves the
// screen on.
#pragma once

#include "repairlog/repair_log.h"

#include <QObject>
#include <QThread>

#include <functional>

namespace strandbench {

class Recorder final : public QObject {
    Q_OBJECT
public:
    explicit Recorder(QString path, QObject* parent = nullptr);
    ~Recorder() override;

    /// Opens the log in the writer's thread and brings the events of every open repair. Waits for it.
    [[nodiscard]] Logged<std::vector<std::vector<Event>>> open();

    /// Writes one event; `then` is called in this object's thread with what became of it.
    void append(const EventDraft& draft, std::function<void(const Logged<Event>&)> then);

    /// Fetches the bytes of a SHA-256 that the log keeps; `then` is called in this object's thread.
    void blob(const QByteArray& hash, std::function<void(const Logged<QByteArray>&)> then);

    [[nodiscard]] const QString& path() const { return m_path; }

private:
    QString m_path;
    QThread m_thread;
    QObject* m_writer;                ///< lives in m_thread: where the writer's calls run
    std::unique_ptr<RepairLog> m_log; ///< touched in m_thread alone
};

} // namespace strandbench
