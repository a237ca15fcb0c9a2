// SPDX-License-Identifier: GPL-3.0-or-later
// A log of one whole repair, a lot and the bench, to be tampered with at every place that there is.
#pragma once

#include "../whole_repair.h"
#include "hand.h"

namespace strandbench::test {

class TamperedLog : public QuickLogTest {
protected:
    /// With so many acts of the repair, all of them as a rule; then a second repair taken in, two acts of a lot and two
    /// of the bench.
    explicit TamperedLog(std::size_t actsOfRepair = 1000);

    [[nodiscard]] QString place() const { return quick(QStringLiteral("bench.db")); }
    /// Verifying must name a break; it says where the test is.
    void expectFound(const std::string& what);
    void expectClean(const std::string& what);
    [[nodiscard]] QString headHex() const { return QString::fromLatin1(head.hash.toHex()); }

    ChainHead head;
    /// The summaries as they were when so many events had been written.
    std::vector<std::vector<CellRow>> summariesAfter;
    int found = 0;  ///< changes that were named
    int missed = 0; ///< and that were not
};

} // namespace strandbench::test
