// SPDX-License-Identifier: GPL-3.0-or-later
// A confirmed act, from the draft to its acknowledgement, beside the same rows through SQLite's own C library: act by
// act in turns, on one disk, with the same schema, guards and pragmas. Beside both one write of a page with its sync.
// Prints one table; judges nothing.
//
// bench_commit [FOLDER]    a folder on the disk that is measured; that of this program when none is given
#include "plain_log.h"

#include "repair/repair_script.h"

#include "repairlog/repair_log.h"

#include <QCoreApplication>
#include <QFile>
#include <QTemporaryDir>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <ctime>

#include <fcntl.h>
#include <linux/magic.h>
#include <sys/vfs.h>
#include <unistd.h>

using namespace Qt::StringLiterals;

namespace strandbench::commitbench {
namespace {

constexpr int repairs = 24; ///< of some 45 acts each
constexpr int page = 4096;

/// Wall and processor time of each call, in microseconds.
struct Times {
    std::vector<double> wall;
    std::vector<double> processor;
};

double processorNow()
{
    timespec now{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
    return double(now.tv_sec) * 1e6 + double(now.tv_nsec) / 1e3;
}

template <class Work> void measure(Times& times, const Work& work)
{
    const double processor = processorNow();
    const auto start = std::chrono::steady_clock::now();
    work();
    times.wall.push_back(std::chrono::duration<double, std::micro>(std::chrono::steady_clock::now() - start).count());
    times.processor.push_back(processorNow() - processor);
}

double at(std::vector<double> values, double share)
{
    std::sort(values.begin(), values.end());
    return values[std::size_t(double(values.size() - 1) * share)];
}

std::unique_ptr<RepairLog> openLog(const QString& path)
{
    auto log = RepairLog::open(path, LogMode::ReadWrite);
    if (!log)
        qFatal("%s: %s", qPrintable(path), qPrintable(log.error().detail));
    return *std::move(log);
}

/// The acts of many repairs, one after another; what accepting a plan keeps is kept with it.
class Script {
public:
    explicit Script(RepairLog& log) : m_log(log) {}
    [[nodiscard]] bool over() const { return m_taken == repairs && !m_repair.open(); }
    [[nodiscard]] EventDraft next()
    {
        if (m_taken == 0 || !m_repair.open()) {
            m_repair = {};
            m_id = QUuid::createUuid();
            return {m_id, u"R. Quist"_s, TakenIn{QString::number(++m_taken), u"door"_s}, test::moment(0), {}};
        }
        EventDraft draft{m_id, u"R. Quist"_s, test::actAt(m_repair), test::moment(30), {}};
        if (std::holds_alternative<PlanAccepted>(draft.payload))
            draft.blobs = {QByteArray(9000, 't'), QByteArray(6000, char('a' + m_taken))};
        return draft;
    }
    void write(const EventDraft& draft)
    {
        const auto event = m_log.append(draft);
        if (!event)
            qFatal("%s", qPrintable(event.error().detail));
        m_event = *event;
    }
    void follow()
    {
        if (apply(m_repair, m_event))
            qFatal("what was stored does not fold");
    }

private:
    RepairLog& m_log;
    Repair m_repair;
    QUuid m_id;
    int m_taken = 0;
    Event m_event;
};

/// The rows that the script leaves, act by act, from a log written before.
std::vector<ActRows> rowsOfTheScript(const QString& path)
{
    const auto log = openLog(path);
    const PlainLog reader(path.toStdString());
    Script script(*log);
    std::vector<ActRows> acts;
    while (!script.over()) {
        script.write(script.next());
        script.follow();
        acts.push_back(reader.newest());
    }
    return acts;
}

/// A page written at the end of a file, and synced.
class PageFile {
public:
    explicit PageFile(const QString& path) : m_file(::open(QFile::encodeName(path).constData(), O_RDWR | O_CREAT, 0600))
    {}
    ~PageFile() { ::close(m_file); }
    PageFile(const PageFile&) = delete;
    PageFile& operator=(const PageFile&) = delete;
    void write() const
    {
        static const QByteArray bytes(page, 'p');
        if (::write(m_file, bytes.constData(), page) != page || ::fdatasync(m_file) != 0)
            qFatal("a page was not written");
    }

private:
    int m_file;
};

void print(const char* name, const Times& times)
{
    std::printf("%-34s %9.0f %9.0f %9.0f %11.0f\n", name, at(times.wall, 0.5), at(times.wall, 0.1), at(times.wall, 0.9),
                at(times.processor, 0.5));
}

void run(const QString& folder)
{
    const QTemporaryDir place(folder + u"/bench_commit-XXXXXX"_s);
    struct statfs disk {};
    if (!place.isValid() || ::statfs(QFile::encodeName(place.path()).constData(), &disk) != 0)
        qFatal("%s takes no file", qPrintable(folder));
    if (disk.f_type == TMPFS_MAGIC)
        qFatal("%s lies in memory, where a sync costs nothing; name a folder on a disk", qPrintable(folder));
    const std::vector<ActRows> acts = rowsOfTheScript(place.filePath(u"script.sqlite"_s));
    const QString plainPath = place.filePath(u"plain.sqlite"_s);
    openLog(plainPath).reset();
    const PlainLog plain(plainPath.toStdString());
    const auto log = openLog(place.filePath(u"ours.sqlite"_s));
    const PageFile file(place.filePath(u"pages"_s));
    Script script(*log);
    Times ours;
    Times theirs;
    Times pages;
    for (std::size_t i = 0; i < acts.size(); ++i) {
        const EventDraft draft = script.next();
        const auto takeOurs = [&] { measure(ours, [&] { script.write(draft); }); };
        if (i % 2 == 0)
            takeOurs();
        measure(theirs, [&] { plain.write(acts[i]); });
        if (i % 2 == 1)
            takeOurs();
        measure(pages, [&] { file.write(); });
        script.follow();
    }
    std::vector<double> ratios;
    for (std::size_t i = 0; i < acts.size(); ++i)
        ratios.push_back(ours.wall[i] / theirs.wall[i]);
    std::printf("%zu acts of %d repairs; microseconds; SQLite %s\n\n", acts.size(), repairs, sqlite3_libversion());
    std::printf("%-34s %9s %9s %9s %11s\n", "", "median", "10 %", "90 %", "processor");
    print("a confirmed act", ours);
    print("its rows through the C library", theirs);
    print("a page written and synced", pages);
    std::printf("\nratio of the medians %.2f, median of the ratios %.2f\n", at(ours.wall, 0.5) / at(theirs.wall, 0.5),
                at(ratios, 0.5));
    if (plain.value("SELECT count(*) FROM event") != std::to_string(acts.size()))
        qFatal("the rows are not all there");
}

} // namespace
} // namespace strandbench::commitbench

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    const QStringList given = QCoreApplication::arguments();
    if (given.size() > 2) {
        std::fputs("Usage: bench_commit [FOLDER]\n", stderr);
        return 2;
    }
    strandbench::commitbench::run(given.value(1, QCoreApplication::applicationDirPath()));
    return 0;
}
