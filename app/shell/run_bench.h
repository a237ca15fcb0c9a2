// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace strandbench {

/// Opens the bench on the glass and runs until it is closed. Options: --log FILE, --glass WxH (a window of
/// that size instead of the full screen), --help. Returns the exit status: 0 closed, 2 refused arguments.
int runBench(int argc, char** argv);

} // namespace strandbench
