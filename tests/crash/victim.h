// SPDX-License-Identifier: GPL-3.0-or-later
// A process that tells lines until it is killed.
#pragma once

#include <QByteArray>
#include <QStringList>

#include <chrono>
#include <functional>
#include <vector>

namespace strandbench::test {

class Victim {
public:
    using Time = std::chrono::steady_clock::time_point;

    Victim(const QString& program, const QStringList& arguments);
    ~Victim() { kill(); }
    Victim(const Victim&) = delete;
    Victim& operator=(const Victim&) = delete;

    /// Listens until the moment has come, a line stops it (true), or the process ends.
    bool listen(Time until, const std::function<bool(const QByteArray& line)>& stops = {});
    /// SIGKILL, then everything that was told before it.
    void kill();
    [[nodiscard]] const std::vector<QByteArray>& lines() const { return m_lines; }
    /// Whether it ended without being killed.
    [[nodiscard]] bool endedByItself() const { return m_endedByItself; }

private:
    /// What the pipe holds; false at its end.
    bool read();
    int m_pipe = -1;
    int m_process = 0;
    QByteArray m_rest; ///< a line whose end was not read yet
    std::vector<QByteArray> m_lines;
    bool m_endedByItself = false;
};

} // namespace strandbench::test
