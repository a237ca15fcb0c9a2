// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/bench_window.h"

#include "gear/instruments.h"
#include "screens/job/home_screen.h"
#include "screens/job/in_hand.h"
#include "theme/sizes.h"
#include "touch/keyboard_order.h"
#include "words/log_trouble.h"

#include <QKeyEvent>
#include <QPainter>
#include <QVBoxLayout>

using namespace Qt::StringLiterals;

namespace strandbench {

BenchWindow::BenchWindow(Parts parts)
    : m_parts(std::move(parts)), m_column(new QVBoxLayout(this)), m_scanGate(*this, m_parts.bench.clock())
{
    setObjectName(u"bench_window"_s);
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(0);
    m_column->setSizeConstraint(
        QLayout::SetNoConstraint); // the glass is as large as it is: nothing on it makes it grow
    m_tick.setSingleShot(true);
    m_tick.setTimerType(Qt::PreciseTimer);
    connect(&m_tick, &QTimer::timeout, this, [this] {
        tick();
        scheduleTick();
    });
    connect(&m_parts.bench, &Bench::unsavedChanged, this, &BenchWindow::showUnsaved);
    connect(&m_parts.bench, &Bench::changed, this, [this] {
        if (m_screen && m_parts.bench.looksOnly() && m_screen->draft().isEmpty())
            showAnew();
    });
    connect(&m_scanGate, &ScanGate::scanned, this, &BenchWindow::takeScan);
    connect(&m_scanGate, &ScanGate::cutShort, this,
            [this] { tellScan(tr("A scan came without its Enter. Set the scanner to end with Enter.")); });
    if (m_parts.keeper)
        connect(m_parts.keeper, &Keeper::foundDamaged, &m_parts.bench, &Bench::logIsDamaged);
    if (m_parts.restoring) {
        m_keeping.what = Keeping::Restore;
        m_folderLookedAt = folderOfBackups();
        m_place = Place::LogPick;
    }
    if (m_parts.practice)
        wirePractice();
    apply(m_parts.settings);
    scheduleTick();
}

BenchWindow::~BenchWindow()
{
    // The screens hold references to theme and words: they go first.
    delete m_help.waiting;
    delete m_screen;
    delete m_ribbon;
    delete m_alarmBar;
    delete m_unsaved;
}

void BenchWindow::apply(const Settings& settings)
{
    m_parts.settings = settings;
    m_parts.bench.setHardenerLot(inhand::lotInUse(settings, hardenerKey));
    m_anyKey.setFootSwitch(settings.footSwitchKey);
    m_parts.speak(settings.language);
    planBackups();
    if (m_parts.instruments && !m_parts.bench.looksOnly()) { // the ports are the other copy's
        m_parts.instruments->scale().setUp(settings.scale);
        m_parts.instruments->climate().setUp(settings.climate);
    }
    rebuild();
}

void BenchWindow::planBackups()
{
    const Settings& settings = m_parts.settings;
    if (m_parts.keeper)
        m_parts.keeper->setPlan({settings.backupFolder, minutes(settings.backupMinutes), settings.backupsKept});
}

void BenchWindow::rebuild()
{
    keepDraft();
    delete m_help.waiting; // its draft is kept since help was opened
    m_help.waiting = nullptr;
    delete m_screen;
    m_screen = nullptr;
    delete m_ribbon;
    delete m_alarmBar;
    delete m_unsaved;
    const Settings& settings = m_parts.settings;
    const double ppmm =
        settings.pixelsPerMillimetre > 0 ? settings.pixelsPerMillimetre : m_parts.screenPixelsPerMillimetre;
    m_theme = std::make_unique<Theme>(Metrics(ppmm), settings.dayNight, settings.hand, settings.reducedMotion);
    m_words = std::make_unique<Words>(settings.units, QLocale(settings.language));
    m_around = std::make_unique<Surroundings>(
        Surroundings{*m_theme, *m_words, m_parts.bench, m_parts.settings, height() > width(), m_parts.instruments});

    m_unsaved = new FitLabel(*m_theme, u"unsaved_bar"_s, TextRole::Body, this);
    m_unsaved->setRole(Role::OnStop);
    m_unsaved->setBold(true);
    m_unsaved->setAlignment(Qt::AlignCenter);
    m_unsaved->setAutoFillBackground(true);
    QPalette red;
    red.setColor(QPalette::Window, m_theme->color(Role::Stop));
    m_unsaved->setPalette(red);
    m_unsaved->setFixedHeight(m_theme->px(6));
    m_ribbon = new Ribbon(*m_theme, *m_words, m_parts.bench, this);
    connect(m_ribbon, &Ribbon::repairTapped, this, [this](const QUuid& repair) {
        if (!alarmJustAnswered()) // a finger that bounced on an alarm meant no block
            showRepair(repair);
    });
    connect(m_ribbon, &Ribbon::restTapped, this, [this] {
        m_repair.reset();
        m_look.reset();
        place(Place::Mixes);
    });
    connect(m_ribbon, &Ribbon::airTapped, this, [this] {
        if (!alarmJustAnswered())
            showAir();
    });
    connect(m_ribbon, &Ribbon::helpTapped, this, [this] {
        if (!alarmJustAnswered())
            isHelp(m_place) ? leaveHelp() : openHelp(Place::Help, false);
    });
    m_alarmBar = new AlarmBar(*m_theme, this);
    m_alarmBar->hide();
    connect(m_alarmBar, &AlarmBar::answered, this, &BenchWindow::answerAlarm);
    m_column->addWidget(m_unsaved);
    m_column->addWidget(m_alarmBar); // in the ribbon's place while something rings
    m_column->addWidget(m_ribbon);
    showUnsaved();
    place(m_place);
}

const Repair* BenchWindow::current() const { return m_repair ? m_parts.bench.repair(*m_repair) : nullptr; }

void BenchWindow::showHome()
{
    if (m_parts.restoring) // there is no bench yet
        return place(Place::LogPick);
    m_repair.reset();
    m_look.reset();
    place(Place::Home);
}

void BenchWindow::showRepair(const QUuid& id)
{
    m_repair = id;
    m_look.reset();
    place(Place::Repair);
}

void BenchWindow::place(Place place)
{
    if (!isHelp(place))
        forgetWaiting();
    m_place = place;
    setScreen(makeScreen());
}

void BenchWindow::keepDraft()
{
    if (!m_screen || m_draftKey.isEmpty())
        return;
    const QVariantMap draft = m_screen->draft();
    if (draft.isEmpty())
        m_drafts.remove(m_draftKey);
    else
        m_drafts[m_draftKey] = draft;
}

void BenchWindow::dropDraft()
{
    m_drafts.remove(m_draftKey);
    m_draftKey.clear(); // what the screen still shows is recorded
}

void BenchWindow::setScreen(Screen* screen)
{
    keepDraft();
    // What is entered on one practice panel is nothing to start from on the next.
    m_draftKey = m_place == Place::Practice ? QString() : draftOwner() + u'/' + screen->objectName();
    if (m_drafts.contains(m_draftKey))
        screen->setDraft(m_drafts.value(m_draftKey));
    const bool same = m_screen && m_screen->objectName() == screen->objectName();
    if (m_screen) {
        // It may be the one whose tap is being handled.
        m_screen->hide();
        m_screen->deleteLater();
    }
    m_screen = screen;
    m_column->addWidget(screen, 1);
    connect(screen, &Screen::acts, this, &BenchWindow::act);
    connect(screen, &Screen::backTapped, this, &BenchWindow::back);
    connect(screen, &Screen::homeWanted, this, &BenchWindow::showHome);
    connect(screen, &Screen::stopTapped, this, [this] {
        if (m_repair)
            place(Place::Ask);
        else
            showHome();
    });
    bringIn(screen, headingTo(m_cameFrom, m_place, m_goesBack, same));
}

void BenchWindow::bringIn(Screen* screen, Heading heading)
{
    m_cameFrom = m_place;
    screen->show();
    tick();
    m_column->activate(); // it moves from where it belongs
    m_passage.begin(screen, heading, *m_theme);
}

void BenchWindow::act(std::vector<Payload> payloads)
{
    if (m_place == Place::Practice)
        return practise(payloads);
    if (m_writing)
        return;
    m_writing = true;
    m_screen->setWriting(true);
    m_screen->showTrouble({}, {});
    submitNext(std::make_shared<std::vector<Payload>>(std::move(payloads)), 0);
}

void BenchWindow::submitNext(std::shared_ptr<std::vector<Payload>> payloads, std::size_t at)
{
    if (at == payloads->size()) {
        m_writing = false;
        m_look.reset();
        dropDraft();
        return place(Place::Repair);
    }
    m_parts.bench.submit(*m_repair, m_parts.settings.person, payloads->at(at),
                         [this, payloads, at](const std::optional<LogFailure>& failure) {
                             if (!failure)
                                 return submitNext(payloads, at + 1);
                             m_writing = false;
                             m_screen->setWriting(false);
                             tellTrouble(*failure);
                         });
}

void BenchWindow::takeIn(const QString& panel)
{
    const QUuid id = QUuid::createUuid();
    write(id, TakenIn{m_job, panel}, {}, [this, id, panel] {
        m_drafts.remove(u"/screen_job_number"_s);
        showRepair(id);
        keepPanel(panel);
    });
}

void BenchWindow::write(const QUuid& repair, const Payload& payload, const std::vector<QByteArray>& bytes,
                        const std::function<void()>& written)
{
    if (m_writing)
        return;
    m_writing = true;
    m_screen->setWriting(true);
    m_screen->showTrouble({}, {});
    m_parts.bench.submit(
        repair, m_parts.settings.person, payload,
        [this, written](const std::optional<LogFailure>& failure) {
            m_writing = false;
            m_screen->setWriting(false);
            if (failure)
                return tellTrouble(*failure);
            written();
        },
        bytes);
}

void BenchWindow::choosePerson(const QString& person)
{
    Settings wanted = m_parts.settings;
    wanted.person = person;
    remember(wanted, m_afterPerson);
}

void BenchWindow::tellTrouble(const LogFailure& failure) { m_screen->showTrouble(failure); }

void BenchWindow::showUnsaved()
{
    if (m_parts.bench.looksOnly()) {
        m_unsaved->setText(m_parts.bench.recorder().lookReason() == LogTrouble::InUse
                               ? tr("Only looking: another copy of the program has this bench.")
                               : tr("Only looking: the log cannot be written."));
        return m_unsaved->show();
    }
    const auto refusal = m_parts.bench.refusal();
    const int count = static_cast<int>(m_parts.bench.unsaved());
    const bool damaged = refusal == LogTrouble::Damaged || refusal == LogTrouble::CutShort;
    QStringList parts;
    if (damaged)
        parts << tr("Log damaged, nothing is written: restore a backup.");
    else if (refusal)
        parts << logTrouble(*refusal).headline;
    if (count > 0)
        parts << tr("%n act(s) wait.", nullptr, count);
    m_unsaved->setText(parts.join(u' '));
    m_unsaved->setVisible(count > 0 || damaged);
}

void BenchWindow::tick()
{
    m_parts.bench.watchClock();
    m_parts.bench.followWriter();
    m_ribbon->tick();
    if (m_parts.keeper && !m_parts.restoring)
        m_parts.keeper->tick();
    if (auto* home = qobject_cast<HomeScreen*>(m_screen))
        home->setBackupOverdue(m_parts.keeper && m_parts.keeper->overdue());
    tellJump();
    ring();
    forgetScan();
    if (m_screen)
        m_screen->tick();
}

void BenchWindow::scheduleTick()
{
    // On the second, so that every clock of the glass turns together.
    m_tick.start(static_cast<int>(1000 - m_parts.bench.clock().now().utcMs % 1000));
}

void BenchWindow::keyPressEvent(QKeyEvent* event)
{
    const Instant now = m_parts.bench.clock().now();
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (m_footSwitch.resting(now) || (enter && !m_enter.passes(*event, now)))
        return;
    if (auto* chosen = qobject_cast<QAbstractButton*>(focusWidget()); chosen && enter)
        chosen->click(); // whoever goes by Tab means the control in focus
    else if (m_anyKey.meansWayOn(*event, now))
        m_screen->tapWayOn();
    else
        QWidget::keyPressEvent(event);
}

bool BenchWindow::focusNextPrevChild(bool next)
{
    // Controls come and go with pages and answers: their order is put right when it is asked for.
    orderKeyboard(*this);
    return QWidget::focusNextPrevChild(next);
}

void BenchWindow::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    if (m_around && m_around->upright != (height() > width()))
        rebuild();
}

void BenchWindow::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme->color(Role::Ground));
}

} // namespace strandbench
