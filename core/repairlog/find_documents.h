// SPDX-License-Identifier: GPL-3.0-or-later
// What events add to the index of repairs: gathered by repair, then written once each.
#pragma once

#include "repairlog/connection.h"

#include <map>

namespace strandbench {

class FindDocuments {
public:
    /// Places go by the time of taking in: so many in the same millisecond keep their order.
    static constexpr qint64 placesInAMillisecond = 1024;

    /// sql: of the index, in a transaction; outlives this.
    explicit FindDocuments(const SqlConnection& sql) : m_sql(sql) {}

    /// In the order of a chain. Events of no repair add nothing.
    [[nodiscard]] Logged<void> take(const Event& event);
    /// Writes every repair that was changed.
    [[nodiscard]] Logged<void> put();

private:
    struct Document {
        qint64 id = 0; ///< 0: not in the index yet
        qint64 takenInUtcMs = 0;
        QString job;
        QString panel;
        QStringList people;
        QStringList lots;
        QStringList notes;
        bool operator==(const Document&) const = default;
    };
    struct Held {
        Document before;
        Document now;
        QStringList days; ///< local days with an act that was taken
    };
    [[nodiscard]] Logged<Held*> of(const QUuid& repair);
    [[nodiscard]] Logged<void> takeUse(const Event& event, const QString& product, const QString& lot, Mass amount,
                                       BatchRef batch);
    [[nodiscard]] Logged<qint64> nextPlace(qint64 utcMs) const;
    [[nodiscard]] Logged<void> putDocument(const QUuid& repair, Held& held) const;
    /// The days of what was taken; a digest that was made before is of a repair that has gone on since.
    [[nodiscard]] Logged<void> putDays(const Held& held) const;

    const SqlConnection& m_sql;
    std::map<QUuid, Held> m_held;
};

} // namespace strandbench
