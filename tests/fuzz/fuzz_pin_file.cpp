// SPDX-License-Identifier: GPL-3.0-or-later
// The file of the supervisor's PIN: what reads is the same when written and read again; all else keeps the door shut.
#include "roles/pin_file.h"
#include "scratch_file.h"

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace strandbench;
    const QString path = fuzz::scratch().filePath(QStringLiteral("pin"));
    const QString copy = fuzz::scratch().filePath(QStringLiteral("copy"));
    fuzz::writeFile(path, fuzz::bytesOf(data, size));
    const ReadPin read = readPinFile(path);
    fuzz::require(read.is != ReadPin::Is::Missing, "a file that is there is not missing");
    if (read.is != ReadPin::Is::Read) {
        fuzz::require(read.state == PinState(), "of an unreadable file nothing is taken");
        return 0;
    }
    fuzz::require(read.state.wrong >= 0 && read.state.wrong <= mostWrong, "the count is within its range");
    fuzz::require(read.state.lastWrong.boottimeMs >= 0, "the boot clock is not below 0");
    fuzz::require(writePinFile(copy, read.state), "it is written");
    const ReadPin again = readPinFile(copy);
    fuzz::require(again.is == ReadPin::Is::Read && again.state == read.state, "written and read again it is the same");
    return 0;
}
