// SPDX-License-Identifier: GPL-3.0-or-later
// How an event comes to stand at the end of a log: its place in the chain, and whether it may follow what is stored.
#pragma once

#include "repairlog/rows.h"

#include <functional>
#include <map>
#include <optional>

namespace strandbench {

/// Of one connection that writes. Remembers the end of the chain and the open repairs as folded, for as long as nobody
/// but this connection has written: SQLite's data_version tells (sqlite.org/pragma.html).
class Appender {
public:
    Appender(const SqlConnection& sql, const QString& origin) : m_sql(sql), m_origin(origin) {}

    using Check = std::function<Logged<void>()>;

    /// See RepairLog::append(). Asks `stillThere` before it begins, and again before a commit counts.
    [[nodiscard]] Logged<Event> append(const EventDraft& draft, const Check& stillThere);

private:
    struct Written {
        Event event;
        std::optional<Repair> repair; ///< empty for an event of a lot, and for one that was there
    };

    /// Within the transaction: what is remembered holds, or is forgotten.
    [[nodiscard]] Logged<void> catchUp();
    void forget();
    [[nodiscard]] Logged<ChainHead> head() const;
    /// A repair of this bench, as folded, or one without an event; taken from what is remembered, and kept again
    /// (remember()) only when all went well.
    [[nodiscard]] Logged<Repair> takeRepair(const QUuid& id);
    [[nodiscard]] Logged<void> refuseOpenPanel(const TakenIn& taken) const;
    [[nodiscard]] Logged<void> refuseStrayRework(const TakenIn& taken) const;
    [[nodiscard]] Logged<void> refuseOfAnotherBench(const QUuid& repair) const;
    [[nodiscard]] Logged<void> refuseStrayCorrection(const Event& event, const Corrected& correction) const;
    /// What depends on more than the repair itself.
    [[nodiscard]] Logged<void> refuse(const Event& event) const;
    /// The newest event when it is this very act, told again.
    [[nodiscard]] Logged<std::optional<Event>> toldBefore(const EventDraft& draft, const EventRecord& record) const;
    [[nodiscard]] Logged<Event> follow(EventRecord& record) const;
    /// The repair as it is after the event; empty for an event of a lot. DoesNotFollow when it cannot follow.
    [[nodiscard]] Logged<std::vector<Event>> ownEventsOf(const QUuid& subject) const;
    [[nodiscard]] Logged<std::optional<Repair>> after(const Event& event);
    [[nodiscard]] Logged<Written> write(const EventDraft& draft, EventRecord& record);
    void remember(const Event& event, std::optional<Repair> repair);

    const SqlConnection& m_sql;
    const QString m_origin;
    bool m_doubtful = true; ///< after opening, or a failure: the newest event may be of the draft that is told again
    std::optional<qint64> m_dataVersion; ///< of what is remembered
    std::optional<ChainHead> m_head;
    std::map<QUuid, Repair> m_folded;
};

} // namespace strandbench
