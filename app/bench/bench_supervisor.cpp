// SPDX-License-Identifier: GPL-3.0-or-later
// The door to the supervisor's acts: opened by the PIN, and every refusal is written.
#include "bench/bench.h"

namespace strandbench {

void Bench::refuseAct(SupervisorAct act, const QString& person, ActRefusal why, std::function<void()> then)
{
    write({benchSubject(), person, ActRefused{act, why}, m_parts.clock.now(), {}},
          [then = std::move(then)](const std::optional<LogFailure>& failure) {
              if (failure)
                  qWarning("a refused act was not written: %s", qPrintable(failure->detail));
              then();
          });
}

void Bench::refuseAct(SupervisorAct act, const QString& person, const PinRefused& why, const Supervised& done)
{
    refuseAct(act, person, why.why, [done, why] { done(why, std::nullopt); });
}

void Bench::submitAsSupervisor(const QUuid& subject, const QString& person, const Payload& payload, const QString& pin,
                               Supervised done, const std::vector<QByteArray>& kept)
{
    const auto act = supervisorActOf(payload);
    if (looksOnly() || !act)
        return done(std::nullopt, LogFailure{looksOnly() ? LogTrouble::InUse : LogTrouble::DoesNotFollow, {}});
    if (!m_parts.door)
        return refuseAct(*act, person, PinRefused{ActRefusal::NotSet, seconds(0)}, done);
    const auto finish = [this, subject, person, payload, kept, act,
                         done](const tl::expected<void, PinRefused>& opened) {
        if (!opened)
            return refuseAct(*act, person, opened.error(), done);
        write(draftOf(subject, person, payload, kept),
              [done](const std::optional<LogFailure>& failure) { done(std::nullopt, failure); });
    };
    m_pinWorker.ask([door = m_parts.door, pin, finish]() -> Worker::Show {
        return [finish, opened = door->open(pin)] { finish(opened); };
    });
}

void Bench::openDoor(SupervisorAct act, const QString& person, const QString& pin, Supervised done)
{
    if (looksOnly())
        return done(std::nullopt, LogFailure{LogTrouble::InUse, {}});
    if (!m_parts.door || !m_parts.door->isSet())
        return done(std::nullopt, std::nullopt);
    const auto finish = [this, act, person, done](const tl::expected<void, PinRefused>& opened) {
        if (!opened)
            return refuseAct(act, person, opened.error(), done);
        done(std::nullopt, std::nullopt);
    };
    m_pinWorker.ask([door = m_parts.door, pin, finish]() -> Worker::Show {
        return [finish, opened = door->open(pin)] { finish(opened); };
    });
}

void Bench::changePin(const QString& person, const QString& old, const QString& next, Supervised done)
{
    if (looksOnly() || !m_parts.door)
        return done(std::nullopt, LogFailure{LogTrouble::InUse, {}});
    const auto finish = [this, person, done](const tl::expected<void, PinRefused>& opened, const Faults& faults) {
        if (!opened)
            return refuseAct(SupervisorAct::ChangePin, person, opened.error(), done);
        if (!faults.empty()) // what the person can mend, or what the disk must
            return done(std::nullopt, LogFailure{faults.front().kind == FaultKind::NotFound ? LogTrouble::IoError
                                                                                            : LogTrouble::DoesNotFollow,
                                                 {}});
        write({benchSubject(), person, PinSet{false}, m_parts.clock.now(), {}},
              [done](const std::optional<LogFailure>& failure) { done(std::nullopt, failure); });
    };
    m_pinWorker.ask([door = m_parts.door, old, next, finish]() -> Worker::Show {
        const auto opened = door->isSet() ? door->open(old) : tl::expected<void, PinRefused>();
        const Faults faults = opened ? door->set(next) : Faults{};
        return [finish, opened, faults] { finish(opened, faults); };
    });
}

void Bench::followWriter()
{
    if (!looksOnly() || m_following)
        return;
    m_following = true;
    m_parts.recorder.readAfter(m_lastSeq, [this](const Logged<std::vector<Event>>& written) {
        m_following = false;
        if (!written)
            return; // asked again in a second; what is shown stays as it was
        for (const Event& each : *written) {
            fetchSheet(each);
            fold(each);
        }
    });
}

} // namespace strandbench
