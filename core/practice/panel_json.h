// SPDX-License-Identifier: GPL-3.0-or-later
// Practice panels as JSON, read strictly; the format stands in demo/practice/SCHEMA.md.
#pragma once

#include "practice/panel.h"
#include "quantity/fault.h"

#include <QByteArray>

namespace strandbench {

/// Reads one panel. Every fault at once: unknown, missing and repeated keys, wrong kinds, ranges, codes that are none.
/// A panel that is whole but cannot be solved from what it shows is a Conflicts fault at "shown", whose value names
/// the question and whose allowed is what the truth has; a trap that the panel has not in it, one at "traps[i]".
[[nodiscard]] Checked<PracticePanel> readPracticePanel(const QByteArray& json);

/// Reads every *.json of a folder, by file name. Faults name the file before the field: "dew.json: shown.film".
/// NotFound where the folder holds none; Conflicts where two panels have one id.
[[nodiscard]] Checked<std::vector<PracticePanel>> readPracticePanels(const QString& folder);

/// The panels that the program carries, read when they are first asked for. Throws std::logic_error where one does not
/// read, which a test excludes.
[[nodiscard]] const std::vector<PracticePanel>& builtInPanels();

/// A panel as readPracticePanel() takes it: readPracticePanel(writePracticePanel(p)) is p.
[[nodiscard]] QByteArray writePracticePanel(const PracticePanel& panel);

} // namespace strandbench
