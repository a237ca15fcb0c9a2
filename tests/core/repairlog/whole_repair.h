// SPDX-License-Identifier: GPL-3.0-or-later
// One whole repair as drafts, for tests that write it again and again; and a folder where that is quick.
#pragma once

#include "log_fixture.h"

namespace strandbench::test {

/// Every act of one repair from taking in to hand-over, with two photos and two notes in between, each draft with what
/// it stores beside itself: the first photo of so many bytes, and three things that are smaller.
[[nodiscard]] std::vector<EventDraft> wholeRepair(qsizetype bytes = 9000);

/// An act that may follow on a whole repair, or on any other.
[[nodiscard]] EventDraft oneMore();

/// Where files are quickly written: the machine's memory when it has a folder there, else where others are.
[[nodiscard]] QString quickFolderTemplate();

/// A test with a log in such a folder.
class QuickLogTest : public LogTest {
protected:
    QuickLogTest();
    [[nodiscard]] QString quick(const QString& name) const { return m_quick.filePath(name); }

private:
    QTemporaryDir m_quick;
};

} // namespace strandbench::test
