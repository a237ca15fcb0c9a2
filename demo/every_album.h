// SPDX-License-Identifier: GPL-3.0-or-later
// Every screen of every walk and of every refusal, kept as pictures: a folder for each.
#pragma once

#include "contact_sheet.h"
#include "shell/bench_window.h"

namespace strandbench {

/// How the program stands on the glass while its screens are kept.
struct AlbumLook {
    Settings settings;
    QSize glass;
    double pixelsPerMillimetre = 5.87;
    QString only; ///< a walk's name or a stop's code; all when empty
};

/// Walks everything, each job on a bench of its own. What it could not do is on standard error; false then.
[[nodiscard]] bool keepEveryScreen(const QString& folder, const AlbumLook& look, ContactSheet& sheet);

/// Adds the pictures of one glass ("1024x600_...png") that lie in the folders of a folder, a heading for each.
void addPictures(const QString& folder, const QString& glass, ContactSheet& sheet);

} // namespace strandbench
