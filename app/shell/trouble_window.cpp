// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/trouble_window.h"

#include "repairlog/rescue.h"
#include "screens/frame/sign_widget.h"
#include "theme/sizes.h"
#include "touch/card.h"
#include "touch/fit_label.h"
#include "touch/tap_button.h"
#include "words/log_trouble.h"

#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QGridLayout>
#include <QPainter>
#include <QVBoxLayout>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

struct Offer {
    bool again = false;
    bool look = false;
    bool save = false; ///< what holds
    bool restore = false;
    bool bringUp = false;
};

Offer offerOf(LogTrouble trouble)
{
    switch (trouble) {
    case LogTrouble::InUse:
    case LogTrouble::ReadOnly:
        return {.again = true, .look = true};
    case LogTrouble::Damaged:
        return {.look = true, .save = true, .restore = true};
    case LogTrouble::CutShort:
        return {.again = true, .save = true, .restore = true};
    case LogTrouble::NotADatabase:
        return {.again = true, .restore = true};
    case LogTrouble::OlderVersion:
        return {.look = true, .bringUp = true};
    case LogTrouble::CannotOpen:
    case LogTrouble::Gone:
    case LogTrouble::OtherLog:
    case LogTrouble::Locked:
    case LogTrouble::DiskFull:
    case LogTrouble::IoError:
        return {.again = true};
    case LogTrouble::NotALog:
    case LogTrouble::NewerVersion:
    case LogTrouble::NeedsPin:
    case LogTrouble::AlreadyOpen:
    case LogTrouble::DoesNotFollow:
        break;
    }
    return {};
}

QString sentenceOf(LogTrouble trouble)
{
    switch (trouble) {
    case LogTrouble::InUse:
        return TroubleWindow::tr("This bench is in use");
    case LogTrouble::OlderVersion:
        return TroubleWindow::tr("The log is of an older version");
    default:
        return TroubleWindow::tr("The log cannot be opened");
    }
}

/// Where what holds is saved: in the folder of the backups if it is there, else beside the log.
QString savePathFor(const QString& log, const QString& backupFolder)
{
    const QFileInfo info(log);
    const bool folder = !backupFolder.isEmpty() && QFileInfo(backupFolder).isDir();
    const QString stamp = QDateTime::currentDateTimeUtc().toString(u"yyyyMMdd-HHmmss"_s);
    return QDir(folder ? backupFolder : info.absolutePath())
        .filePath(u"%1.saved-%2.sqlite"_s.arg(info.fileName(), stamp));
}

} // namespace

TroubleWindow::TroubleWindow(const LogFailure& failure, const QString& path, const Settings& settings,
                             double screenPixelsPerMillimetre, Worker::Runs runs)
    : m_path(path),
      m_backupFolder(settings.backupFolder),
      m_theme(std::make_unique<Theme>(
          Metrics(settings.pixelsPerMillimetre > 0 ? settings.pixelsPerMillimetre : screenPixelsPerMillimetre),
          settings.dayNight, settings.hand)),
      m_rescuing(runs)
{
    setObjectName(u"trouble_window"_s);
    const Theme& theme = *m_theme;
    const LogTroubleText text = strandbench::logTrouble(failure.trouble);
    auto* column = new QVBoxLayout(this);
    const int margin = theme.px(sizes::margin);
    column->setContentsMargins(margin, margin, margin, margin);
    column->setSpacing(theme.px(sizes::gap));
    const auto label = [&](const QString& name, TextRole role, const QString& words, Role ink, bool bold) {
        auto* made = new FitLabel(theme, name, role, this);
        made->setRole(ink);
        made->setBold(bold);
        made->setText(words);
        return made;
    };
    column->addWidget(label(u"sentence"_s, TextRole::Sentence, sentenceOf(failure.trouble), Role::Stop, true));
    auto* card = new Card(theme, this);
    card->setEdge(Role::Stop);
    auto* row = new QHBoxLayout(card);
    row->setContentsMargins(margin, margin, margin, margin);
    row->setSpacing(theme.px(4));
    row->addWidget(new SignWidget(theme, Pictogram::StopHand, tr("Stop"), card), 1);
    auto* words = new QVBoxLayout;
    words->addWidget(label(u"trouble_headline"_s, TextRole::Title, text.headline, Role::Ink, true));
    m_whatToDo = label(u"trouble_what_to_do"_s, TextRole::Body, text.whatToDo, Role::Ink, false);
    words->addWidget(m_whatToDo);
    if (failure.trouble == LogTrouble::InUse) // which program has it, in the system's own terms
        words->addWidget(label(u"trouble_who"_s, TextRole::Body, failure.detail, Role::Ink, false));
    words->addWidget(label(u"trouble_path"_s, TextRole::Small, path, Role::MutedInk, false));
    row->addLayout(words, 3);
    column->addWidget(card, 1);
    const Offer offer = offerOf(failure.trouble);
    key(u"close_program"_s, tr("Close the program"), Way::Close);
    if (offer.again)
        key(u"try_again"_s, tr("Try again"), Way::Again);
    if (offer.look)
        key(u"look_only"_s, tr("Look only"), Way::Look);
    if (offer.save) {
        TapButton* save = plainKey(u"save_what_holds"_s, tr("Save what holds"));
        connect(save, &TapButton::clicked, this, &TroubleWindow::saveWhatHolds);
    }
    if (offer.restore)
        key(u"restore_backup"_s, tr("Restore a backup"), Way::Restore);
    if (offer.bringUp)
        key(u"bring_up"_s, tr("Bring it up"), Way::BringUp);
    // Two below each other where there are many: on an upright glass four would not fit beside each other.
    auto* keys = new QGridLayout;
    keys->setSpacing(theme.px(sizes::gap));
    const std::size_t across = m_keys.size() > 3 ? 2 : m_keys.size();
    for (std::size_t i = 0; i < m_keys.size(); ++i)
        keys->addWidget(m_keys[i], int(i / across), int(i % across));
    column->addLayout(keys);
}

TroubleWindow::~TroubleWindow() = default;

TapButton* TroubleWindow::plainKey(const QString& name, const QString& title)
{
    auto* made = new TapButton(*m_theme, name, TapButton::Kind::Way, this);
    made->setTitle(title);
    made->setFixedHeight(m_theme->px(sizes::answer));
    m_keys.push_back(made);
    return made;
}

TapButton* TroubleWindow::key(const QString& name, const QString& title, Way way)
{
    TapButton* made = plainKey(name, title);
    connect(made, &TapButton::clicked, this, [this, way] {
        m_chosen = way;
        close();
    });
    return made;
}

void TroubleWindow::saveWhatHolds()
{
    for (TapButton* each : m_keys)
        each->setEnabled(false);
    m_whatToDo->setText(tr("One moment …"));
    const QString to = savePathFor(m_path, m_backupFolder);
    m_rescuing.ask([this, path = m_path, to]() -> Worker::Show {
        return [this, to, report = rescueLog(path, to)] {
            if (!report)
                return tellSaved(tr("Nothing could be saved: %1").arg(logTrouble(report.error().trouble).headline));
            tellSaved(tr("%n entries that hold are saved in %1.", nullptr, int(report->rescued.events)).arg(to) +
                      (report->loose > 0
                           ? u' ' + tr("%n more can be read and stand as text beside it.", nullptr, int(report->loose))
                           : QString()));
        };
    });
}

void TroubleWindow::tellSaved(const QString& text)
{
    m_whatToDo->setText(text);
    for (TapButton* each : m_keys)
        each->setEnabled(true);
}

void TroubleWindow::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme->color(Role::Ground));
}

} // namespace strandbench
