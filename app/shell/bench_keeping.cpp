// SPDX-License-Identifier: GPL-3.0-or-later
// The ways of keeping the record: where backups go, which log is brought in or restored, what would come of it, and
// what came of it.
#include "screens/set_up/pin_screen.h"
#include "screens/beside/photo_screens.h"
#include "screens/set_up/set_up_record.h"
#include "shell/bench_window.h"

#include <QDir>
#include <QPointer>

using namespace Qt::StringLiterals;

namespace strandbench {

QString BenchWindow::folderOfBackups() const
{
    const QString folder = m_parts.settings.backupFolder;
    return !folder.isEmpty() && QDir(folder).exists() ? folder : QDir::homePath();
}

void BenchWindow::beginKeeping(Keeping what)
{
    if (!m_parts.keeper || m_parts.keeper->busy())
        return;
    m_folderLookedAt = folderOfBackups();
    m_keeping = {};
    m_keeping.what = what;
    switch (what) {
    case Keeping::BackUp:
        return m_parts.keeper->backUp();
    case Keeping::Check:
        return m_parts.keeper->check();
    case Keeping::Folder:
        return place(Place::KeepFolder);
    case Keeping::Merge:
    case Keeping::Restore:
        return place(Place::LogPick);
    }
}

Screen* BenchWindow::makeKeeping()
{
    switch (m_place) {
    case Place::KeepFolder:
    case Place::LogFolder:
        return makeKeepFolder();
    case Place::LogPick: {
        auto* screen = new LogPickScreen(*m_around, m_keeping.what, m_folderLookedAt, m_parts.keeper->log(), this);
        connect(screen, &LogPickScreen::chosen, this, &BenchWindow::weighLog);
        connect(screen, &LogPickScreen::folderWanted, this, [this] { place(Place::LogFolder); });
        return screen;
    }
    case Place::KeepPin:
        return makeKeepPin();
    case Place::KeepWait:
        return makeKeepingWait(*m_around, m_keeping.what, !m_keeping.doing, this);
    default:
        break;
    }
    return makeKept();
}

Screen* BenchWindow::makeKeepFolder()
{
    const bool backups = m_place == Place::KeepFolder;
    return makeFolderScreen(
        *m_around, backups ? tr("Into which folder do backups go?") : tr("In which folder is it?"), m_folderLookedAt,
        [this](const QString& folder) {
            m_folderLookedAt = folder;
            place(m_place);
        },
        [this, backups](const QString& folder) {
            m_folderLookedAt = folder;
            if (!backups)
                return place(Place::LogPick);
            Settings wanted = m_parts.settings;
            wanted.backupFolder = folder;
            if (wanted.backupMinutes == 0)
                wanted.backupMinutes = 1440; // who names a folder wants backups
            remember(wanted, Place::SetUp);
        },
        this);
}

void BenchWindow::weighLog(const QString& path)
{
    if (m_parts.keeper->busy())
        return m_screen->showTrouble(tr("Something is being kept just now."), tr("Try again in a moment."));
    m_keeping.path = path;
    m_keeping.doing = false;
    place(Place::KeepWait);
    if (m_keeping.what == Keeping::Restore)
        m_parts.keeper->restore(path, MergeMode::DryRun, {},
                                [this](const Logged<RestoreReport>& report) { showKept(report, m_keeping.restore); });
    else
        m_parts.keeper->merge(path, MergeMode::DryRun, {},
                              [this](const Logged<MergeReport>& report) { showKept(report, m_keeping.merge); });
}

template <class T> void BenchWindow::showKept(const Logged<T>& report, std::optional<T>& into)
{
    if (!m_keeping.doing && workedAt() != Place::KeepWait)
        return; // left with 'back'
    m_keeping.failure = report ? std::nullopt : std::optional(report.error());
    into = report ? std::optional(*report) : std::nullopt;
    m_keeping.done = m_keeping.doing;
    m_keeping.doing = false;
    place(Place::Kept);
}

Screen* BenchWindow::makeKept()
{
    // After the log was changed, or closed for it, the bench begins with what lies there now.
    const std::function<void()> done = m_keeping.done ? m_parts.startAgain : [this] { place(Place::LogPick); };
    if (m_keeping.failure)
        return makeKeepingTrouble(*m_around, m_keeping.what, *m_keeping.failure, m_keeping.path, done, this);
    std::function<void()> go;
    if (!m_keeping.done)
        go = [this] { askToKeep(); };
    if (m_keeping.what == Keeping::Restore)
        return makeRestoreScreen(*m_around, *m_keeping.restore, m_keeping.path, go, done, this);
    return makeMergeScreen(*m_around, *m_keeping.merge, m_keeping.path, go, done, this);
}

void BenchWindow::askToKeep()
{
    const bool pin = m_keeping.what == Keeping::Restore && m_parts.bench.door() && m_parts.bench.door()->isSet();
    if (m_parts.settings.person.isEmpty()) { // an act of nobody is no evidence
        m_afterPerson = Place::Kept;
        return place(Place::Person);
    }
    if (pin)
        return place(Place::KeepPin);
    doKeep();
}

Screen* BenchWindow::makeKeepPin()
{
    PinScreen* screen = pinScreen(u"screen_pin"_s, tr("Supervisor’s PIN, to restore"), tr("Give the PIN"), true);
    connect(screen, &PinScreen::given, this, [this, screen](const QString& pin) {
        if (m_writing)
            return;
        m_writing = true;
        screen->setBusy(true);
        m_parts.bench.openDoor(SupervisorAct::Restore, m_parts.settings.person, pin,
                               [this, screen = QPointer<PinScreen>(screen)](const std::optional<PinRefused>& refused,
                                                                            const std::optional<LogFailure>& failure) {
                                   m_writing = false;
                                   if (!screen)
                                       return; // left with 'back'
                                   screen->setBusy(false);
                                   if (refused)
                                       return screen->refused(*refused);
                                   if (failure)
                                       return tellTrouble(*failure);
                                   doKeep();
                               });
    });
    return screen;
}

void BenchWindow::doKeep()
{
    if (m_parts.keeper->busy())
        return m_screen->showTrouble(tr("Something is being kept just now."), tr("Try again in a moment."));
    m_keeping.doing = true;
    place(Place::KeepWait);
    const QString person = m_parts.settings.person;
    if (m_keeping.what != Keeping::Restore)
        return m_parts.keeper->merge(m_keeping.path, MergeMode::Write, person,
                                     [this](const Logged<MergeReport>& report) { showKept(report, m_keeping.merge); });
    m_parts.bench.recorder().close();
    m_parts.keeper->restore(m_keeping.path, MergeMode::Write, person,
                            [this](const Logged<RestoreReport>& report) { showKept(report, m_keeping.restore); });
}

} // namespace strandbench
