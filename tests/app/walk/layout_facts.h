// SPDX-License-Identifier: GPL-3.0-or-later
// The layout of screens as facts: what stands where, in millimetres. All of a screen for whoever wants to look, and of
// its keys as much as is kept in the tree, so that a change of layout shows as a change of a file.
#pragma once

#include "theme/theme.h"

#include <QJsonObject>
#include <QMap>
#include <QRect>
#include <QStringList>
#include <QWidget>

#include <optional>

namespace strandbench::test {

/// Everything visible below a window that has a name: role, accessible name, what is read, x, y, width and height in
/// millimetres to the tenth.
[[nodiscard]] QJsonObject factsOf(const QWidget& window, const Theme& theme);

/// The keys of a screen by name, each a rectangle in halves of a millimetre.
using Keys = QMap<QString, QRect>;
[[nodiscard]] Keys keysOf(const QWidget& window, const Theme& theme);

/// Of each screen the layouts of its keys that a test met, in their order, each once.
class Layouts {
public:
    void note(const QString& screen, const Keys& keys);
    [[nodiscard]] bool isEmpty() const { return m_of.isEmpty(); }
    /// A line a layout.
    [[nodiscard]] QByteArray toJson() const;
    /// Empty when it is no file of layouts.
    [[nodiscard]] static std::optional<Layouts> fromJson(const QByteArray& json);
    /// A sentence for each key that moved, grew, came or went, and for each screen; a half of a millimetre is none.
    [[nodiscard]] static QStringList changes(const Layouts& accepted, const Layouts& now);

private:
    QMap<QString, QList<Keys>> m_of;
};

} // namespace strandbench::test
