// SPDX-License-Identifier: GPL-3.0-or-later
// Events of one log put behind what another has of their bench, as they are stored, with their blobs; and the summaries
// of the repairs that they change. Inside core/repairlog only.
#pragma once

#include "repairlog/chain.h"
#include "repairlog/connection.h"

#include <set>

namespace strandbench {

/// Within a transaction of the receiving log, which the caller begins and commits.
class Transfer {
public:
    Transfer(const SqlConnection& from, const SqlConnection& to) : m_from(from), m_to(to) {}

    /// The caller has seen that the event follows on the receiving log's chain. Blobs that the sending log cannot give
    /// are counted, and left out.
    [[nodiscard]] Logged<void> take(const EventRecord& record);
    /// Folds every repair that was changed, and writes its summary; how many photos or sheets have no bytes any more is
    /// kept, so that verifying knows of them. Damaged when its events do not fold.
    [[nodiscard]] Logged<void> finish();

    [[nodiscard]] qint64 events() const { return m_events; }
    [[nodiscard]] qint64 repairs() const { return static_cast<qint64>(m_changed.size()); }
    [[nodiscard]] qint64 blobsMissing() const { return m_blobsMissing; }

private:
    [[nodiscard]] Logged<void> noteLostPhotos();
    [[nodiscard]] std::vector<QByteArray> blobsOf(const EventRecord& record);
    [[nodiscard]] Logged<void> takeBlob(const EventRecord& record, const QByteArray& hash);

    const SqlConnection& m_from;
    const SqlConnection& m_to;
    std::set<QString> m_changed; ///< repairs, by the text of their id
    qint64 m_events = 0;
    qint64 m_blobsMissing = 0;
    qint64 m_photosLost = 0;
};

} // namespace strandbench
