// SPDX-License-Identifier: GPL-3.0-or-later
// The program that crash_test kills: opens the bench of a log, works, backs up beside the work, closes, opens again,
// and so on until it is killed. What it tells, says told.h.
//
// strandbench_crash_worker LOG SEED TAG [lie]
#include "hands.h"

#include "exchange/rules.h"
#include "exchange/sheets.h"

#include <QCoreApplication>
#include <QFileInfo>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

/// Backs the log up in a thread of its own, as the command beside the bench does.
class Backups {
public:
    explicit Backups(const QString& log) : m_log(log) {}
    ~Backups() { finish(); }
    Backups(const Backups&) = delete;
    Backups& operator=(const Backups&) = delete;
    void start(const QString& name)
    {
        if (m_thread && !m_thread->isFinished())
            return;
        finish();
        tell(u"backup "_s + name);
        m_thread.reset(QThread::create([log = m_log, name] {
            const auto report = backupLog(log, QFileInfo(log).absolutePath() + u'/' + name);
            tell(report ? u"backed "_s + name : u"unbacked %1 %2"_s.arg(name, report.error().detail));
        }));
        m_thread->start();
    }

private:
    void finish()
    {
        if (m_thread)
            m_thread->wait();
    }
    QString m_log;
    std::unique_ptr<QThread> m_thread;
};

/// One opening of the bench. False: it did not open.
bool session(const QString& log, Hands& hands, SteppedClock& clock, std::mt19937& random,
             const std::function<void(int)>& between)
{
    const CureEngine engine;
    tell(u"phase opening"_s);
    {
        Recorder recorder(log);
        const auto book = recorder.open(u"0000-00-00"_s);
        if (!book) {
            tell(u"trouble the log does not open: %1 (%2)"_s.arg(book.error().detail).arg(int(book.error().trouble)));
            return false;
        }
        Bench bench({recorder, clock, {builtInTable(), demoCatalogue(), builtInSteps(), Assumptions{}, engine}});
        if (const auto fault = bench.load(*book)) {
            tell(u"trouble the log does not fold: %1 %2"_s.arg(fault->field, fault->value));
            return false;
        }
        hands.knowUpTo(book->lastSeq);
        tell(u"phase working"_s);
        hands.work(bench, clock, 1 + int(random() % 30), between);
        tell(u"phase closing"_s);
    }
    return true;
}

int run(const QStringList& given)
{
    std::mt19937 random(given[2].toUInt());
    Hands hands({given[3], given.value(4) == u"lie"_s}, random);
    SteppedClock clock;
    Backups backups(given[1]);
    for (int opening = 1; opening <= 200; ++opening) {
        const int backupAt = int(random() % 40); // of up to 30 acts: some sessions have none
        const auto between = [&](int act) {
            if (act == backupAt)
                backups.start(u"%1-%2.backup"_s.arg(given[3]).arg(opening));
        };
        if (!session(given[1], hands, clock, random, between))
            return 1;
    }
    return 0;
}

} // namespace
} // namespace strandbench::test

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    const QStringList given = QCoreApplication::arguments();
    return given.size() < 4 ? 2 : strandbench::test::run(given);
}
