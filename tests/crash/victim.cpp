// SPDX-License-Identifier: GPL-3.0-or-later
#include "victim.h"

#include <cerrno>
#include <csignal>
#include <stdexcept>

#include <fcntl.h>
#include <poll.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

namespace strandbench::test {

Victim::Victim(const QString& program, const QStringList& arguments)
{
    std::vector<QByteArray> words{program.toLocal8Bit()};
    for (const QString& each : arguments)
        words.push_back(each.toLocal8Bit());
    std::vector<char*> given;
    for (QByteArray& each : words)
        given.push_back(each.data());
    given.push_back(nullptr);
    int ends[2];
    if (::pipe2(ends, O_CLOEXEC) != 0)
        throw std::runtime_error("pipe2");
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    posix_spawn_file_actions_adddup2(&actions, ends[1], STDOUT_FILENO);
    const int failed = ::posix_spawn(&m_process, given[0], &actions, nullptr, given.data(), environ);
    posix_spawn_file_actions_destroy(&actions);
    ::close(ends[1]);
    m_pipe = ends[0];
    if (failed != 0)
        throw std::runtime_error("posix_spawn");
}

bool Victim::read()
{
    char bytes[4096];
    ssize_t count = -1;
    do
        count = ::read(m_pipe, bytes, sizeof bytes);
    while (count < 0 && errno == EINTR);
    if (count <= 0)
        return false;
    m_rest.append(bytes, count);
    for (qsizetype end = m_rest.indexOf('\n'); end >= 0; end = m_rest.indexOf('\n')) {
        m_lines.push_back(m_rest.left(end));
        m_rest.remove(0, end + 1);
    }
    return true;
}

bool Victim::listen(Time until, const std::function<bool(const QByteArray&)>& stops)
{
    std::size_t heard = m_lines.size();
    for (;;) {
        const std::chrono::nanoseconds left = until - std::chrono::steady_clock::now();
        if (left.count() <= 0)
            return false;
        const timespec wait{left.count() / 1'000'000'000, left.count() % 1'000'000'000};
        pollfd waiting{m_pipe, POLLIN, 0};
        if (::ppoll(&waiting, 1, &wait, nullptr) <= 0)
            continue;
        if (!read())
            return false;
        for (; heard < m_lines.size(); ++heard)
            if (stops && stops(m_lines[heard]))
                return true;
    }
}

void Victim::kill()
{
    if (m_process == 0)
        return;
    ::kill(m_process, SIGKILL);
    while (read())
        continue;
    ::close(m_pipe);
    int status = 0;
    while (::waitpid(m_process, &status, 0) < 0 && errno == EINTR)
        continue;
    m_endedByItself = !WIFSIGNALED(status) || WTERMSIG(status) != SIGKILL;
    m_process = 0;
}

} // namespace strandbench::test
