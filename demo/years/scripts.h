// SPDX-License-Identifier: GPL-3.0-or-later
// What repairs are made of: some real walks and stops, planned and folded once, to be told again with other jobs,
// people, lots, times and readings.
#pragma once

#include "repair/repair.h"

namespace strandbench::years {

/// When an act is told.
enum class Pace {
    After,       ///< so long after the act before
    NextMorning, ///< on the next day
    EdgesClear,  ///< since 'hardener in' of its batch; so the next two
    Gelled,
    Sands,
};

struct Act {
    Event event;      ///< its payload as walked; who, when and where is filled in as it is told
    QByteArray bytes; ///< the payload's, with scriptJob() and scriptPanel() in their places; empty: encoded as told
    std::vector<QByteArray> blobs;
    Pace pace = Pace::After;
    Duration after;
};

/// One repair from taking in to handing over, or to where it is parked.
struct Script {
    QString name;
    std::vector<Act> acts;
    bool whole = false; ///< handed over
};

/// Stand in the bytes of a plan for the repair's own.
[[nodiscard]] QByteArray scriptJob();
[[nodiscard]] QByteArray scriptPanel();

struct Scripts {
    std::vector<Script> whole;
    std::vector<Script> stops;
};

/// All of them, planned with the demo sheets: takes seconds, once. Throws std::logic_error where one does not fold.
[[nodiscard]] const Scripts& everyScript();

} // namespace strandbench::years
