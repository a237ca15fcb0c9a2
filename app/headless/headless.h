// SPDX-License-Identifier: GPL-3.0-or-later
// The program without a window: JSON in, JSON out, messages on standard error, an exit status.
#pragma once

#include <QString>

namespace strandbench::headless {

/// Exit statuses of every command.
enum Status : int {
    Done = 0,       ///< a 'stop' verdict included
    Trouble = 1,    ///< anything but the two below: a file that cannot be read, an output that cannot be written
    Refused = 2,    ///< the input; one line a fault on standard error
    LogDamaged = 3, ///< the log is damaged or cannot be opened
};

/// True when the first argument asks for a command, for help or for the version: the window never opens.
/// A word that is no command counts too, so that it is refused by name instead of opening a window.
[[nodiscard]] bool wanted(int argc, char** argv);

/// Runs the command and gives the exit status. Makes the application object; needs no display.
[[nodiscard]] int run(int argc, char** argv);

} // namespace strandbench::headless
