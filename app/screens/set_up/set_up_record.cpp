// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/set_up/set_up_record.h"

#include "theme/sizes.h"
#include "words/log_trouble.h"

#include <QDir>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double captionWidth = 27; // mm

QString intervalName(int minutes)
{
    return minutes == 0 ? SetUpRecordScreen::tr("By hand") : QString::number(minutes / 60) + u" h"_s;
}

} // namespace

SetUpRecordScreen::SetUpRecordScreen(const Surroundings& around, const SetUpPlace& place, const Keeper* keeper,
                                     QWidget* parent)
    : SetUpScreen(around, u"screen_set_up_record"_s, place, parent), m_keeper(keeper)
{
    auto* column = new QVBoxLayout(buildPage({}, tr("How is the record kept safe?"), 2));
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(px(sizes::gap));
    if (page() == 0) {
        addFolder(column);
        addChoices(column);
    } else {
        addKeys(column);
    }
    if (keeper)
        connect(keeper, &Keeper::changed, this, &SetUpRecordScreen::tick);
    tick();
}

void SetUpRecordScreen::addFolder(QBoxLayout* column)
{
    const QString folder = around().settings.backupFolder;
    auto* row = new QHBoxLayout;
    row->setSpacing(px(sizes::gap));
    TapButton* choose = wish(u"backup_folder"_s, tr("Folder for backups"), Keeping::Folder);
    choose->setSecondLine(folder.isEmpty() ? tr("none yet: a stick is best") : QDir::toNativeSeparators(folder));
    m_backUp = wish(u"back_up_now"_s, tr("Back up now"), Keeping::BackUp);
    row->addWidget(choose, 1);
    row->addWidget(m_backUp, 1);
    column->addLayout(row, 1);
}

void SetUpRecordScreen::addChoices(QBoxLayout* column)
{
    const auto captioned = [this](const QString& name, const QString& caption) {
        auto* row = new QHBoxLayout;
        row->setSpacing(px(sizes::gap));
        FitLabel* text = label(u"caption_"_s + name, TextRole::Small, caption, Role::MutedInk);
        text->setFixedWidth(px(captionWidth));
        row->addWidget(text);
        return row;
    };
    const Settings& now = around().settings;
    QHBoxLayout* often = captioned(u"backup_every"_s, tr("How often"));
    for (int minutes : backupIntervals()) {
        Settings wanted = now;
        wanted.backupMinutes = minutes;
        often->addWidget(
            choice(u"backup_every_%1"_s.arg(minutes), intervalName(minutes), now.backupMinutes == minutes, wanted), 1);
    }
    QHBoxLayout* many = captioned(u"backups_kept"_s, tr("How many stay"));
    for (int count : backupCounts()) {
        Settings wanted = now;
        wanted.backupsKept = count;
        many->addWidget(
            choice(u"backups_kept_%1"_s.arg(count), QString::number(count), now.backupsKept == count, wanted), 1);
    }
    column->addLayout(often, 1);
    column->addLayout(many, 1);
}

void SetUpRecordScreen::addKeys(QBoxLayout* column)
{
    auto* row = new QBoxLayout(around().upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    row->setSpacing(px(sizes::gap));
    m_check = wish(u"check_log"_s, tr("Check the log"), Keeping::Check);
    row->addWidget(m_check, 1);
    TapButton* merge = wish(u"bring_in"_s, tr("Bring in a log"), Keeping::Merge);
    merge->setSecondLine(tr("of another bench"));
    row->addWidget(merge, 1);
    TapButton* restore = wish(u"restore"_s, tr("Restore"), Keeping::Restore);
    restore->setSecondLine(tr("from a backup"));
    row->addWidget(restore, 1);
    column->addLayout(row, 1);
}

TapButton* SetUpRecordScreen::wish(const QString& name, const QString& title, Keeping what)
{
    TapButton* made = key(name, TapButton::Kind::Plain, title);
    made->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    connect(made, &TapButton::clicked, this, [this, what] { Q_EMIT keepingWanted(what); });
    m_wishes.push_back(made);
    return made;
}

QString SetUpRecordScreen::backupText() const
{
    const Keeper::State& state = m_keeper->state();
    if (around().settings.backupFolder.isEmpty())
        return tr("choose a folder first");
    if (state.backupFailure)
        return logTrouble(state.backupFailure->trouble).headline;
    if (state.backup)
        return tr("newest: %1").arg(momentText(state.backup->utcMs, words()));
    return tr("none in this session yet");
}

QString SetUpRecordScreen::checkText() const
{
    const Keeper::State& state = m_keeper->state();
    if (state.checkFailure)
        return logTrouble(state.checkFailure->trouble).headline;
    if (!state.checked)
        return tr("every entry, by its hash");
    if (!state.checked->clean)
        return breakName(state.checked->breaksAt);
    return tr("%1: it holds, %2 entries")
        .arg(words().clockTime(*state.checkedAt))
        .arg(words().number(double(state.checked->events), 0));
}

void SetUpRecordScreen::tick()
{
    const bool busy = m_keeper && m_keeper->busy();
    for (TapButton* each : m_wishes)
        each->setEnabled(m_keeper && !busy);
    if (!m_keeper)
        return;
    if (m_backUp) {
        m_backUp->setSecondLine(busy ? tr("one moment …") : backupText());
        m_backUp->setEnabled(!busy && !around().settings.backupFolder.isEmpty());
    }
    if (m_check)
        m_check->setSecondLine(busy ? tr("one moment …") : checkText());
}

} // namespace strandbench
