// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/recorder.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

Logged<std::vector<std::vector<Event>>> openRepairsOf(const RepairLog& log)
{
    const auto summaries = log.openRepairs();
    if (!summaries)
        return tl::unexpected(summaries.error());
    std::vector<std::vector<Event>> repairs;
    for (const RepairSummary& each : *summaries) {
        auto events = log.events(each.repair);
        if (!events)
            return tl::unexpected(events.error());
        repairs.push_back(std::move(*events));
    }
    return repairs;
}

} // namespace

Recorder::Recorder(QString path, QObject* parent) : QObject(parent), m_path(std::move(path)), m_writer(new QObject)
{
    m_thread.setObjectName(u"log writer"_s);
    m_writer->moveToThread(&m_thread);
    m_thread.start();
}

Recorder::~Recorder()
{
    QMetaObject::invokeMethod(
        m_writer, [this] { m_log.reset(); }, Qt::BlockingQueuedConnection);
    m_thread.quit();
    m_thread.wait();
    delete m_writer;
}

Logged<std::vector<std::vector<Event>>> Recorder::open()
{
    Logged<std::vector<std::vector<Event>>> result;
    const auto work = [&] {
        auto log = RepairLog::open(m_path, LogMode::ReadWrite);
        if (!log) {
            result = tl::unexpected(log.error());
            return;
        }
        m_log = std::move(*log);
        result = openRepairsOf(*m_log);
    };
    QMetaObject::invokeMethod(m_writer, work, Qt::BlockingQueuedConnection);
    return result;
}

void Recorder::append(const EventDraft& draft, std::function<void(const Logged<Event>&)> then)
{
    const auto work = [this, draft, then = std::move(then)] {
        const Logged<Event> written =
            m_log ? m_log->append(draft) : Logged<Event>(tl::unexpected(LogFailure{LogTrouble::CannotOpen, m_path}));
        QMetaObject::invokeMethod(
            this, [then, written] { then(written); }, Qt::QueuedConnection);
    };
    QMetaObject::invokeMethod(m_writer, work, Qt::QueuedConnection);
}

void Recorder::blob(const QByteArray& hash, std::function<void(const Logged<QByteArray>&)> then)
{
    const auto work = [this, hash, then = std::move(then)] {
        const Logged<QByteArray> read =
            m_log ? m_log->blob(hash) : Logged<QByteArray>(tl::unexpected(LogFailure{LogTrouble::CannotOpen, m_path}));
        QMetaObject::invokeMethod(
            this, [then, read] { then(read); }, Qt::QueuedConnection);
    };
    QMetaObject::invokeMethod(m_writer, work, Qt::QueuedConnection);
}

} // namespace strandbench
