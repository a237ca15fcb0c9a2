// SPDX-License-Identifier: GPL-3.0-or-later
#include "log_fixture.h"

#include <QCoreApplication>
#include <QDir>

#include <csignal>
#include <new>
#include <stdexcept>

#include <sched.h>
#include <sys/mman.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

/// Qt loads its SQL drivers only with an application; it lives as long as the process.
void needApplication()
{
    static int count = 1;
    static char name[] = "test_repairlog";
    static char* arguments[] = {name, nullptr};
    static QCoreApplication* application = new QCoreApplication(count, arguments);
    Q_UNUSED(application)
}

} // namespace

int inChild(const std::function<int()>& run)
{
    Child child([&](Shared&) { return run(); });
    return child.wait();
}

Child::Child(const std::function<int(Shared&)>& run)
{
    void* memory = ::mmap(nullptr, sizeof(Shared), PROT_READ | PROT_WRITE, MAP_SHARED | MAP_ANONYMOUS, -1, 0);
    if (memory == MAP_FAILED)
        throw std::runtime_error("mmap");
    m_shared = new (memory) Shared;
    m_child = ::fork();
    if (m_child < 0)
        throw std::runtime_error("fork");
    if (m_child == 0)
        ::_exit(run(*m_shared));
}

Child::~Child()
{
    kill();
    ::munmap(m_shared, sizeof(Shared));
}

bool Child::waitFor(int acknowledged)
{
    while (m_shared->acknowledged < acknowledged) {
        if (ended(WNOHANG))
            return false;
        ::sched_yield();
    }
    return true;
}

int Child::wait()
{
    while (!ended(0))
        continue;
    return WIFSIGNALED(m_status) ? 256 + WTERMSIG(m_status) : WEXITSTATUS(m_status);
}

int Child::stop()
{
    m_shared->stop = true;
    return wait();
}

int Child::kill()
{
    if (!ended(WNOHANG))
        ::kill(m_child, SIGKILL);
    return wait();
}

/// A child that was waited for has a number no more: it may be another's by now.
bool Child::ended(int how)
{
    if (m_child == 0)
        return true;
    const pid_t found = ::waitpid(m_child, &m_status, how);
    if (found < 0)
        throw std::runtime_error("waitpid");
    if (found == m_child)
        m_child = 0;
    return m_child == 0;
}

std::map<QString, QByteArray> contentsOf(const QString& folder)
{
    std::map<QString, QByteArray> contents;
    for (const QString& name : QDir(folder).entryList(QDir::Files | QDir::Hidden | QDir::System)) {
        QFile file(QDir(folder).filePath(name));
        if (!file.open(QIODevice::ReadOnly))
            throw std::runtime_error("cannot read " + name.toStdString());
        contents[name] = file.readAll();
    }
    return contents;
}

LogTest::LogTest()
{
    needApplication();
    if (!m_folder.isValid())
        throw std::runtime_error("no temporary folder");
}

std::unique_ptr<RepairLog> LogTest::open(LogMode mode) const
{
    auto log = RepairLog::open(path(), mode);
    if (!log) {
        ADD_FAILURE() << "the log does not open: " << qPrintable(log.error().detail);
        throw std::runtime_error("no log");
    }
    return *std::move(log);
}

EventDraft LogTest::draft(const QUuid& repair, const Payload& payload, int atSeconds)
{
    return {repair, u"R. Quist"_s, payload, moment(atSeconds), {}};
}

Repair LogTest::walk(RepairLog& log, const QUuid& repair, Station until, const QString& panel)
{
    const TakenIn taken{u"4421"_s, panel.isEmpty() ? u"skirt panel, right rear"_s : panel};
    Repair folded;
    auto event = log.append(draft(repair, taken));
    for (int at = 30;; at += 30) {
        if (!event)
            throw std::runtime_error("append: " + event.error().detail.toStdString());
        if (apply(folded, *event))
            throw std::runtime_error("what was stored does not fold");
        if (nextStep(folded).station == until)
            return folded;
        event = log.append(draft(repair, actAt(folded), at));
    }
}

int LogTest::appendUntilStopped(RepairLog& log, Shared& shared)
{
    for (int job = 1; !shared.stop; ++job) {
        const QUuid id = QUuid::createUuid();
        Repair repair;
        Payload next = TakenIn{QString::number(job), u"door"_s};
        do {
            const auto event = log.append(draft(id, next));
            if (!event || apply(repair, *event))
                return 1;
            ++shared.acknowledged;
            next = repair.open() ? actAt(repair) : next;
        } while (repair.open() && !shared.stop);
    }
    return 0;
}

void LogTest::makeLog(Station until) const
{
    const auto log = open();
    walk(*log, QUuid::createUuid(), until);
    walk(*log, QUuid::createUuid(), Station::Assess, u"door"_s);
}

} // namespace strandbench::test
