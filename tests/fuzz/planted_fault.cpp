// SPDX-License-Identifier: GPL-3.0-or-later
// Faults planted on purpose, built as core is: what has to be found to believe that nothing is found elsewhere.
#include "planted_fault.h"

#include <vector>

namespace strandbench::fuzz {

int plantedParse(const char* text, std::size_t size)
{
    const std::vector<char> read(text, text + size);
    const char* byte = read.data();
    if (size < 5 || byte[0] != 'l' || byte[1] != 'o' || byte[2] != 't' || byte[3] != '=')
        return 0;
    if (byte[4] == '+') // a sum that does not fit
        return 2'147'483'647 + static_cast<int>(size);
    return byte[4] == '!' ? byte[size] : byte[4]; // one beyond the end
}

} // namespace strandbench::fuzz
