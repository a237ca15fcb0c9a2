// SPDX-License-Identifier: GPL-3.0-or-later
// The ways of the supervisor's acts: what they are of, then the PIN, then the act.
#include "screens/beside/note_screens.h"
#include "screens/set_up/pin_screen.h"
#include "screens/set_up/supervisor_screens.h"
#include "shell/bench_window.h"

#include <QPointer>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QString sentenceOf(SupervisorAct act)
{
    switch (act) {
    case SupervisorAct::SignOff:
        return BenchWindow::tr("Supervisor’s PIN, to sign off");
    case SupervisorAct::Return:
        return BenchWindow::tr("Supervisor’s PIN, to return it");
    case SupervisorAct::Override:
        return BenchWindow::tr("Supervisor’s PIN, to override");
    case SupervisorAct::Forget:
        return BenchWindow::tr("Supervisor’s PIN, to forget them");
    case SupervisorAct::Correct:
        return BenchWindow::tr("Supervisor’s PIN, to put it right");
    case SupervisorAct::Sheets:
        return BenchWindow::tr("Supervisor’s PIN, for the product sheet");
    case SupervisorAct::ChangePin:
    case SupervisorAct::Restore:
        break;
    }
    return BenchWindow::tr("The supervisor’s PIN");
}

} // namespace

void BenchWindow::askSupervisor(const QUuid& subject, const Payload& payload, Place after,
                                const std::vector<QByteArray>& bytes)
{
    m_asked = Asked{subject, payload, after, m_place, bytes};
    m_afterPerson = Place::Pin;
    place(m_parts.settings.person.isEmpty() ? Place::Person : Place::Pin); // an act of nobody is no evidence
}

PinScreen* BenchWindow::pinScreen(const QString& name, const QString& sentence, const QString& wayOn, bool counted)
{
    PinScreen::Spec spec;
    spec.name = name;
    spec.context = tr("signs as %1").arg(m_parts.settings.person);
    spec.sentence = sentence;
    spec.wayOn = wayOn;
    spec.waitLeft = [door = m_parts.bench.door(), counted] { return door && counted ? door->waitLeft() : seconds(0); };
    return new PinScreen(*m_around, spec, this);
}

Screen* BenchWindow::makePin()
{
    const auto act = supervisorActOf(m_asked->payload);
    PinScreen* screen = pinScreen(u"screen_pin"_s, sentenceOf(*act), tr("Give the PIN"), true);
    if (!m_parts.bench.door() || !m_parts.bench.door()->isSet())
        screen->refused({ActRefusal::NotSet, seconds(0)});
    connect(screen, &PinScreen::given, this, [this, screen](const QString& pin) {
        if (m_writing)
            return;
        m_writing = true;
        screen->setBusy(true);
        m_parts.bench.submitAsSupervisor(
            m_asked->subject, m_parts.settings.person, m_asked->payload, pin,
            [this, screen = QPointer<PinScreen>(screen)](const std::optional<PinRefused>& refused,
                                                         const std::optional<LogFailure>& failure) {
                m_writing = false;
                if (!screen)
                    return; // left with 'back' while the PIN was looked at: the act stands in the log, or its refusal
                screen->setBusy(false);
                if (refused)
                    return screen->refused(*refused);
                if (failure)
                    return tellTrouble(*failure);
                m_look.reset();
                place(m_asked->after);
            },
            m_asked->bytes);
    });
    return screen;
}

Screen* BenchWindow::makeSupervisors()
{
    switch (m_place) {
    case Place::Pin:
        return makePin();
    case Place::OverrideWhy:
        return makeOverrideScreen(
            *m_around, *current(), m_overriding,
            [this](const Overridden& act) { askSupervisor(*m_repair, act, Place::Repair); }, this);
    case Place::CorrectWhich: {
        auto* screen = new CorrectWhichScreen(*m_around, m_recordOf, this);
        connect(screen, &CorrectWhichScreen::chosen, this, [this](qint64 seq, const QString& text) {
            m_correcting = {seq, text};
            place(Place::CorrectText);
        });
        return screen;
    }
    case Place::CorrectText: {
        auto* screen = new NoteTextScreen(
            *m_around, {u"screen_correct_text"_s, m_correcting.second, tr("What is right?"), tr("Put it right")}, this);
        connect(screen, &NoteTextScreen::written, this, [this](const Noted& note) {
            askSupervisor(m_recordOf, Corrected{m_correcting.first, note.text}, Place::Record);
        });
        return screen;
    }
    case Place::BenchDay:
        return new BenchDayScreen(*m_around, this);
    default:
        break;
    }
    return makeNewPin();
}

void BenchWindow::beginRework()
{
    const Repair returned = *current();
    // Taken in already, where only the link was not written any more.
    for (const Repair* each : m_parts.bench.openRepairs())
        if (each->reworkOf == returned.id)
            return linkRework(returned.id, each->id);
    const QUuid rework = QUuid::createUuid();
    write(rework, TakenIn{returned.job, returned.panel, returned.id}, {},
          [this, id = returned.id, rework] { linkRework(id, rework); });
}

void BenchWindow::linkRework(const QUuid& returned, const QUuid& rework)
{
    write(returned, ReworkBegun{rework}, {}, [this, rework] { showRepair(rework); });
}

Screen* BenchWindow::makeNewPin()
{
    if (m_place == Place::OldPin) {
        PinScreen* screen = pinScreen(u"screen_pin_old"_s, tr("The PIN that holds now"), tr("Go on"), true);
        connect(screen, &PinScreen::given, this, [this](const QString& pin) {
            m_oldPin = pin;
            place(Place::NewPin);
        });
        return screen;
    }
    if (m_place == Place::NewPin) {
        PinScreen* screen = pinScreen(u"screen_pin_new"_s, tr("Key in the new PIN"), tr("Go on"), false);
        connect(screen, &PinScreen::given, this, [this](const QString& pin) {
            m_newPin = pin;
            place(Place::NewPinAgain);
        });
        return screen;
    }
    PinScreen* screen = pinScreen(u"screen_pin_again"_s, tr("Key in the new PIN again"), tr("Set this PIN"), false);
    connect(screen, &PinScreen::given, this, [this, screen](const QString& pin) { setPin(*screen, pin); });
    return screen;
}

void BenchWindow::setPin(PinScreen& screen, const QString& again)
{
    if (m_writing)
        return;
    if (again != m_newPin)
        return screen.showTrouble(tr("The two are not the same."), tr("Go back and key it in anew."));
    m_writing = true;
    screen.setBusy(true);
    m_parts.bench.changePin(m_parts.settings.person, m_oldPin, m_newPin,
                            [this, screen = QPointer<PinScreen>(&screen)](const std::optional<PinRefused>& refused,
                                                                          const std::optional<LogFailure>& failure) {
                                m_writing = false;
                                m_oldPin.fill(u'0');
                                m_newPin.fill(u'0');
                                screen->setBusy(false);
                                if (refused)
                                    return screen->refused(*refused);
                                if (failure && failure->trouble == LogTrouble::DoesNotFollow)
                                    return screen->showTrouble(tr("This PIN is too easy to guess."),
                                                               tr("Go back and choose another."));
                                if (failure)
                                    return tellTrouble(*failure);
                                m_setUp = {SetUpGroup::People, 0};
                                place(Place::SetUp);
                            });
}

} // namespace strandbench
