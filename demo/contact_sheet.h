// SPDX-License-Identifier: GPL-3.0-or-later
// All screens of a run on one page: reduced, each with its name, a row or more for each walk.
#pragma once

#include <QImage>
#include <QString>

#include <vector>

namespace strandbench {

class ContactSheet {
public:
    /// What comes after stands under this heading.
    void begin(const QString& heading);
    /// Keeps a reduced copy.
    void add(const QString& name, const QImage& screen);
    /// Writes the page with its title. False when it cannot be written or nothing was added.
    [[nodiscard]] bool write(const QString& file, const QString& title) const;

private:
    struct Screen {
        QString name;
        QImage reduced;
    };
    struct Row {
        QString heading;
        std::vector<Screen> screens;
    };
    std::vector<Row> m_rows;
};

} // namespace strandbench
