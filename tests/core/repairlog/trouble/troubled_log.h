// SPDX-License-Identifier: GPL-3.0-or-later
// A log on a troubled disk, with what a test of one asks again and again.
#pragma once

#include "../whole_repair.h"
#include "troubled_disk.h"

namespace strandbench::test {

class TroubledLog : public QuickLogTest {
protected:
    TroubledLog();

    [[nodiscard]] QString place() const { return quick(QStringLiteral("bench.db")); }
    [[nodiscard]] Logged<std::unique_ptr<RepairLog>> openPlace(LogMode mode = LogMode::ReadWrite) const;
    /// The log and its WAL as they lie now, and laid there again; what else lay beside them is gone.
    [[nodiscard]] std::map<QString, QByteArray> filesNow() const;
    void lay(const std::map<QString, QByteArray>& files) const;
    /// A failure that a disk in trouble explains, and no other.
    static void expectOfTheDisk(const LogFailure& failure, Trouble trouble);
    /// So many acts of the repair are there, each once, in order.
    void expectActs(const RepairLog& log, std::size_t count) const;
    void expectSound(std::size_t count) const;

    std::vector<EventDraft> acts = wholeRepair();
    TroubledDisk disk;
};

} // namespace strandbench::test
