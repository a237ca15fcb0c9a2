// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/set_up/keeping_screens.h"

#include "screens/frame/message_screen.h"
#include "theme/sizes.h"
#include "words/log_trouble.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QFileInfo>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(KeepingScreens)
};

QString count(qint64 number, const Words& words) { return words.number(double(number), 0); }

/// What would be lost, or stays in the earlier log alone.
QStringList losses(const RestoreReport& report, const Words& words)
{
    QStringList lines;
    if (report.logThere && !report.logWhole)
        lines << Says::tr("The log there is damaged.");
    if (report.loose > 0)
        lines << Says::tr("%1 of its entries can be read and do not follow.").arg(count(report.loose, words));
    if (!report.parted.empty())
        lines << Says::tr("From one entry on it tells other things than the backup.");
    return lines;
}

MessageScreen::Spec frame(const QString& name, const QString& path, bool asks, const std::function<void()>& go,
                          const std::function<void()>& done)
{
    MessageScreen::Spec spec;
    spec.name = name;
    spec.context = QFileInfo(path).fileName();
    spec.ofARepair = false;
    spec.go = asks ? go : done;
    if (!asks)
        spec.wayOn = Says::tr("Go on");
    return spec;
}

} // namespace

QString momentText(qint64 utcMs, const Words& words)
{
    return words.locale().toString(QDateTime::fromMSecsSinceEpoch(utcMs), QLocale::ShortFormat);
}

LogPickScreen::LogPickScreen(const Surroundings& around, Keeping what, const QString& folder, const QString& log,
                             QWidget* parent)
    : Screen(around, u"screen_log_pick"_s, parent), m_folder(folder)
{
    const bool restore = what == Keeping::Restore;
    buildFrame(QDir::toNativeSeparators(folder),
               restore ? Says::tr("Which backup?") : Says::tr("Which log is to be brought in?"));
    const std::vector<Offer> offers = restore ? backups() : logs(log);
    auto* column = new QVBoxLayout;
    column->setSpacing(px(sizes::gap));
    if (offers.empty()) {
        column->addWidget(label(u"log_pick_none"_s, TextRole::Body, Says::tr("There is none in this folder.")), 1);
    } else {
        auto* rows = new PagedRows(around, sizes::target, this);
        std::vector<PagedRows::MakeRow> all;
        for (const Offer& each : offers)
            all.push_back([this, each, index = all.size()](QWidget* inside) -> QWidget* {
                auto* row = new TapButton(theme(), u"log_%1"_s.arg(index), TapButton::Kind::Plain, inside);
                row->setTitle(each.title);
                row->setSecondLine(each.second);
                row->setTitleSize({4.6, 3.4});
                connect(row, &TapButton::clicked, this, [this, each] { Q_EMIT chosen(each.path); });
                return row;
            });
        rows->setRows(std::move(all));
        column->addWidget(rows, 1);
    }
    content()->addLayout(column, 1);
    answers()->stop()->hide();
    answers()->setWayOn(Says::tr("Another folder"));
    connect(answers(), &AnswerBar::wayOnTapped, this, &LogPickScreen::folderWanted);
}

std::vector<LogPickScreen::Offer> LogPickScreen::backups() const
{
    std::vector<Offer> offers;
    for (const BackupFile& each : backupsIn(m_folder))
        offers.push_back({each.path, momentText(each.utcMs, words()),
                          //: %1 is a bench's name, %2 a number
                          Says::tr("bench %1 · %2 entries").arg(each.bench, count(each.count, words()))});
    return offers;
}

std::vector<LogPickScreen::Offer> LogPickScreen::logs(const QString& own) const
{
    const QString ours = QFileInfo(own).canonicalFilePath();
    QFileInfoList files = QDir(m_folder).entryInfoList({u"*.sqlite"_s, u"*.db"_s}, QDir::Files, QDir::Time);
    std::vector<Offer> offers;
    for (const QFileInfo& each : files)
        if (each.canonicalFilePath() != ours)
            offers.push_back({each.absoluteFilePath(), each.fileName(),
                              momentText(each.lastModified().toMSecsSinceEpoch(), words())});
    return offers;
}

Screen* makeKeepingWait(const Surroundings& around, Keeping what, bool dry, QWidget* parent)
{
    MessageScreen::Spec spec;
    spec.name = u"screen_keeping_wait"_s;
    spec.ofARepair = false;
    spec.sentence = Says::tr("One moment …");
    spec.sign = Pictogram::Wait;
    spec.headline = dry                        ? Says::tr("Looking through both logs")
                    : what == Keeping::Restore ? Says::tr("The backup takes the log’s place")
                                               : Says::tr("The log is brought in");
    spec.text = dry ? Says::tr("Nothing is changed yet.") : Says::tr("Do not switch off. Running clocks go on.");
    return new MessageScreen(around, std::move(spec), parent);
}

Screen* makeMergeScreen(const Surroundings& around, const MergeReport& report, const QString& from,
                        const std::function<void()>& go, const std::function<void()>& done, QWidget* parent)
{
    const bool asks = static_cast<bool>(go) && report.added > 0;
    MessageScreen::Spec spec = frame(u"screen_merge"_s, from, asks, go, done);
    if (asks)
        spec.wayOn = Says::tr("Bring it in");
    spec.sentence = asks               ? Says::tr("Bring this log in?")
                    : report.added > 0 ? Says::tr("It was brought in")
                                       : Says::tr("There is nothing new in it");
    spec.sign = report.conflicts() ? Pictogram::Caution : Pictogram::Tick;
    spec.headline =
        Says::tr("%1 entries, %2 repairs").arg(count(report.added, around.words), count(report.repairs, around.words));
    QStringList lines;
    for (const MergedChain& each : report.chains)
        if (each.partsAt != 0)
            lines << Says::tr("Bench %1: both logs go on differently from entry %2. Its entries stay as they are here.")
                         .arg(each.origin.left(8), count(each.partsAt, around.words));
    for (const OpenTwice& each : report.openTwice)
        lines << Says::tr("Open at two benches: %1, %2.").arg(around.words.jobLabel(each.job), each.panel);
    spec.text = lines.mid(0, 3).join(u'\n');
    spec.small = Says::tr("Nothing that is here is changed. Repairs of another bench go on at that bench.");
    return new MessageScreen(around, std::move(spec), parent);
}

Screen* makeRestoreScreen(const Surroundings& around, const RestoreReport& report, const QString& from,
                          const std::function<void()>& go, const std::function<void()>& done, QWidget* parent)
{
    const bool asks = static_cast<bool>(go);
    MessageScreen::Spec spec = frame(u"screen_restore"_s, from, asks, go, done);
    if (asks)
        spec.wayOn = Says::tr("Restore it");
    spec.sentence = asks ? Says::tr("Put this backup in the log’s place?") : Says::tr("The backup is in its place");
    spec.sign = report.complete() ? Pictogram::Tick : Pictogram::Caution;
    spec.headline = report.complete()
                        ? Says::tr("Nothing is lost: %1 entries").arg(count(report.after.events, around.words))
                        : Says::tr("Not all can be kept: %1 entries").arg(count(report.after.events, around.words));
    QStringList lines{Says::tr("The backup has %1 entries.").arg(count(report.backup.events, around.words))};
    if (report.fetched > 0)
        lines << Says::tr("%1 newer ones come along from the log.").arg(count(report.fetched, around.words));
    spec.text = (lines + losses(report, around.words)).join(u'\n');
    spec.small = report.earlier.isEmpty()
                     ? Says::tr("The log that is there now is kept in a folder beside it, whole.")
                     : Says::tr("The earlier log lies in %1.").arg(QDir::toNativeSeparators(report.earlier));
    return new MessageScreen(around, std::move(spec), parent);
}

Screen* makeKeepingTrouble(const Surroundings& around, Keeping what, const LogFailure& failure, const QString& path,
                           const std::function<void()>& done, QWidget* parent)
{
    MessageScreen::Spec spec = frame(u"screen_keeping_trouble"_s, path, false, {}, done);
    spec.sentence = what == Keeping::Restore ? Says::tr("It was not restored") : Says::tr("It was not brought in");
    spec.sign = Pictogram::StopHand;
    spec.refuses = true;
    const LogTroubleText text = logTrouble(failure.trouble);
    spec.headline = text.headline;
    spec.text = text.whatToDo;
    spec.small = failure.detail;
    return new MessageScreen(around, std::move(spec), parent);
}

} // namespace strandbench
