// SPDX-License-Identifier: GPL-3.0-or-later
// A whole repair recorded on a disk, cut at any step, and looked at through the log.
#pragma once

#include "../whole_repair.h"
#include "recorded_disk.h"

#include <memory>
#include <optional>
#include <random>

namespace strandbench::test {

/// How many ways of losing what was not synced are tried at each cut.
struct Width {
    bool eachAlone = false; ///< each thing not synced lost alone, torn alone, and kept alone
    int byChance = 2;       ///< everything torn, with so many seeds
};

/// A disk that reports a sync as done and does nothing: for a test of the test.
enum class Syncs { Real, Lies };

class CutRepair : public QuickLogTest {
protected:
    struct Counts {
        int cuts = 0;
        int variants = 0;
        int disks = 0; ///< variants that differ
        int lost = 0;  ///< variants that are not as they must be
        std::string firstLoss;
    };

    CutRepair();
    /// Cuts at every step whose number leaves `part` when divided by `of`.
    Counts cutAt(int part, int of, const Width& width, Syncs syncs = Syncs::Real);

    [[nodiscard]] const std::vector<DiskStep>& steps() const { return m_steps; }
    [[nodiscard]] const std::vector<EventDraft>& acts() const { return m_acts; }

private:
    /// What a disk turned out to hold: so many acts, or what is wrong with it.
    struct Found {
        int acts = 0;
        bool log = false; ///< false: there was none yet
        std::string wrong;
    };

    void cut(const RecordedDisk& disk, int step, int acknowledged, const Width& width, Counts& counts);
    void one(const Files& files, const std::string& how, int acknowledged, Counts& counts);
    const Found& look(const Files& files, Counts& counts);
    [[nodiscard]] Found open(const Files& files) const;
    void read(RepairLog& log, Found& found) const;
    void goOn(Found& found) const;

    std::vector<EventDraft> m_acts;
    std::vector<DiskStep> m_steps;
    std::map<QByteArray, Found> m_known;
};

} // namespace strandbench::test
