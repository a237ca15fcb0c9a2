// SPDX-License-Identifier: GPL-3.0-or-later
// Runs the built program as a script would: arguments, standard input, no display.
#pragma once

#include <QByteArray>
#include <QJsonObject>
#include <QString>
#include <QStringList>

#include <ostream>

/// GoogleTest shows a text as text (it looks for this beside the type, in the global namespace).
inline void PrintTo(const QString& text, std::ostream* stream) { *stream << '"' << text.toStdString() << '"'; }

namespace strandbench {

struct Ran {
    int status = -1; ///< of the exit; -1 when it crashed or did not end
    QByteArray out;
    QByteArray err;

    [[nodiscard]] QJsonObject json() const;     ///< of standard output; empty when it is no object
    [[nodiscard]] QStringList messages() const; ///< the lines of standard error
};

/// Runs `strandbench` with these arguments, in an environment without a display.
[[nodiscard]] Ran program(const QStringList& arguments, const QByteArray& input = {});
/// The same, its standard output going to a file.
[[nodiscard]] Ran programInto(const QString& file, const QStringList& arguments);

} // namespace strandbench
