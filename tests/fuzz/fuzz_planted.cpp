// SPDX-License-Identifier: GPL-3.0-or-later
// The target that must find something: see planted_fault.sh.
#include "fuzz.h"
#include "planted_fault.h"

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const QByteArray text = strandbench::fuzz::bytesOf(data, size);
    // Something is done with it, or the compiler may leave it out.
    if (strandbench::fuzz::plantedParse(text.constData(), std::size_t(text.size())) > 1000)
        std::puts("more");
    return 0;
}
