// SPDX-License-Identifier: GPL-3.0-or-later
// A confirmed act, from the draft to its acknowledgement, beside the same rows through SQLite's own C library and
// through Qt SQL, by which the program writes too: act by act in turns, on one disk, with the same schema, guards and
// pragmas. Beside all one write of a page with its sync. Prints one table; judges nothing.
//
// bench_commit [FOLDER] [--rows FILE]    a folder on the disk that is measured; that of this program when none is given
#include "qt_log.h"
#include "rows.h"

#include "repair/repair_script.h"

#include "repairlog/repair_log.h"

#include <QCoreApplication>
#include <QFile>
#include <QTemporaryDir>

#include <array>
#include <chrono>
#include <cstdio>
#include <ctime>
#include <functional>

#include <fcntl.h>
#include <linux/magic.h>
#include <sys/vfs.h>
#include <unistd.h>

using namespace Qt::StringLiterals;

namespace strandbench::commitbench {
namespace {

using bench::at;
using bench::medianOf;
using bench::Rows;

constexpr int repairs = 24; ///< of some 45 acts each
constexpr int page = 4096;
constexpr double aim = 1.3; ///< of each referee

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
    std::printf("%-34s %9.0f %9.0f %9.0f %11.0f\n", name, medianOf(times.wall), at(times.wall, 0.1),
                at(times.wall, 0.9), medianOf(times.processor));
}

struct AllTimes {
    Times ours;
    Times c;
    Times qt;
    Times pages;
};

void tell(const AllTimes& times, const Rows& rows)
{
    std::printf("%zu acts of %d repairs; microseconds; SQLite %s\n\n", times.ours.wall.size(), repairs,
                sqlite3_libversion());
    std::printf("%-34s %9s %9s %9s %11s\n", "", "median", "10 %", "90 %", "processor");
    print("a confirmed act", times.ours);
    print("its rows through the C library", times.c);
    print("its rows through Qt SQL", times.qt);
    print("a page written and synced", times.pages);
    const double ours = medianOf(times.ours.wall);
    for (const auto& [referee, theirs] : {std::pair{u"SQLite's C library"_s, medianOf(times.c.wall)},
                                          std::pair{u"Qt SQL by hand"_s, medianOf(times.qt.wall)}}) {
        std::printf("ratio of the medians to %s: %.2f\n", qPrintable(referee), ours / theirs);
        rows.add({u"commit"_s, u"a confirmed act, on the disk"_s, ours, u"µs"_s, referee, theirs, aim});
    }
}

QTemporaryDir placeIn(const QString& folder)
{
    QTemporaryDir place(folder + u"/bench_commit-XXXXXX"_s);
    struct statfs disk {};
    if (!place.isValid() || ::statfs(QFile::encodeName(place.path()).constData(), &disk) != 0)
        qFatal("%s takes no file", qPrintable(folder));
    if (disk.f_type == TMPFS_MAGIC)
        qFatal("%s lies in memory, where a sync costs nothing; name a folder on a disk", qPrintable(folder));
    return place;
}

/// An empty log, as the program makes it.
QString emptyLog(const QTemporaryDir& place, const QString& name)
{
    const QString path = place.filePath(name);
    openLog(path).reset();
    return path;
}

void run(const QString& folder, const Rows& rows)
{
    const QTemporaryDir place = placeIn(folder);
    const std::vector<ActRows> acts = rowsOfTheScript(place.filePath(u"script.sqlite"_s));
    const PlainLog plain(emptyLog(place, u"plain.sqlite"_s).toStdString());
    QtLog qt(emptyLog(place, u"qt.sqlite"_s));
    const auto log = openLog(place.filePath(u"ours.sqlite"_s));
    const PageFile file(place.filePath(u"pages"_s));
    Script script(*log);
    AllTimes times;
    for (std::size_t i = 0; i < acts.size(); ++i) {
        const EventDraft draft = script.next();
        const QtActRows forQtSql = forQt(acts[i]);
        const std::array<std::function<void()>, 3> turns{[&] { measure(times.ours, [&] { script.write(draft); }); },
                                                         [&] { measure(times.c, [&] { plain.write(acts[i]); }); },
                                                         [&] { measure(times.qt, [&] { qt.write(forQtSql); }); }};
        for (std::size_t turn = 0; turn < turns.size(); ++turn)
            turns[(i + turn) % turns.size()]();
        measure(times.pages, [&] { file.write(); });
        script.follow();
    }
    tell(times, rows);
    if (plain.value("SELECT count(*) FROM event") != std::to_string(acts.size()) || qt.events() != qint64(acts.size()))
        qFatal("the rows are not all there");
}

} // namespace
} // namespace strandbench::commitbench

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    QStringList given = QCoreApplication::arguments().mid(1);
    const auto rows = strandbench::bench::Rows::takenFrom(given);
    if (given.size() > 1) {
        std::fputs("Usage: bench_commit [FOLDER] [--rows FILE]\n", stderr);
        return 2;
    }
    strandbench::commitbench::run(given.value(0, QCoreApplication::applicationDirPath()), rows);
    return 0;
}
