// SPDX-License-Identifier: GPL-3.0-or-later
// Keeps a picture of every screen that a walk comes by.
#pragma once

#include "walk/scripted_bench.h"

#include <QDir>
#include <QSet>

namespace strandbench {

class Pictures {
public:
    /// The folder must exist.
    explicit Pictures(const QString& folder) : m_folder(folder) {}

    /// Keeps the window as it stands as "NN_name.png", once a name. False when it cannot be written.
    [[nodiscard]] bool keep(BenchWindow& window, const QString& name);
    /// Called with the name and the picture of each screen that is kept.
    std::function<void(const QString&, const QImage&)> kept;
    /// Keeps the present screen under its own name, the key pad of a screen apart.
    [[nodiscard]] bool keepScreen(BenchWindow& window);

private:
    QDir m_folder;
    QSet<QString> m_kept;
};

} // namespace strandbench
