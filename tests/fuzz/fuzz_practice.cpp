// SPDX-License-Identifier: GPL-3.0-or-later
// Practice panels: what was taken is solved by what it shows, has its traps in it, and is the same when written and
// read again.
#include "fuzz.h"
#include "practice/inference.h"
#include "practice/panel_json.h"

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace strandbench;
    const Checked<PracticePanel> read = readPracticePanel(fuzz::bytesOf(data, size));
    if (!read) {
        fuzz::requireTold(read.error());
        return 0;
    }
    fuzz::require(unanswered(*read).isEmpty(), "what is shown solves it");
    for (const TrapKind each : read->traps)
        fuzz::require(isLaid(each, *read), "its traps are laid");
    const QByteArray written = writePracticePanel(*read);
    const Checked<PracticePanel> again = readPracticePanel(written);
    fuzz::require(again.has_value(), "what was written reads without a fault");
    fuzz::require(writePracticePanel(*again) == written, "written again it is the same");
    return 0;
}
