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

/// True when the window never opens: a command, help or the version is asked for. A word that is no command
/// and an option that the bench does not have count too, so that they are refused by name even where there is
/// no display. The bench's own options are --log and --glass; those with one dash are left to Qt.
[[nodiscard]] bool wanted(int argc, char** argv);

/// Runs the command and gives the exit status. Makes the application object; needs no display.
[[nodiscard]] int run(int argc, char** argv);

} // namespace strandbench::headless
