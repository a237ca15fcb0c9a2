// SPDX-License-Identifier: GPL-3.0-or-later
#include "log_fixture.h"

#include <QCoreApplication>
#include <QDir>

#include <stdexcept>

#include <sys/stat.h>
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
    const pid_t child = ::fork();
    if (child < 0)
        throw std::runtime_error("fork");
    if (child == 0)
        ::_exit(run());
    int status = 0;
    if (::waitpid(child, &status, 0) != child)
        throw std::runtime_error("waitpid");
    return WIFSIGNALED(status) ? 256 + WTERMSIG(status) : WEXITSTATUS(status);
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

void LogTest::makeLog(Station until) const
{
    const auto log = open();
    walk(*log, QUuid::createUuid(), until);
    walk(*log, QUuid::createUuid(), Station::Assess, u"door"_s);
}

} // namespace strandbench::test
