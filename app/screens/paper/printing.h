// SPDX-License-Identifier: GPL-3.0-or-later
// The printers of the machine, and the system's own dialog to choose one; passed in, so that a test can answer.
#pragma once

#include <QStringList>

#include <functional>
#include <memory>

class QPrinter;
class QWidget;

namespace strandbench {

struct Printing {
    /// The names of all that the machine knows; empty: none is set up.
    std::function<QStringList()> printers;
    /// Asks how to print and sets the printer so. `answered` is called once, on the glass's thread, with whether to
    /// print; never, when `over` goes meanwhile.
    std::function<void(const std::shared_ptr<QPrinter>& printer, QWidget* over,
                       const std::function<void(bool print)>& answered)>
        ask;

    [[nodiscard]] static Printing bySystem();
};

} // namespace strandbench
