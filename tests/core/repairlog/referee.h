// SPDX-License-Identifier: GPL-3.0-or-later
// SQLite's own C library, to look at a log and to do to it what our code never does.
#pragma once

#include <QByteArray>
#include <QString>

#include <vector>

struct sqlite3;

namespace strandbench::test {

class Referee {
public:
    explicit Referee(const QString& path);
    /// Looks through a handle that somebody else owns.
    explicit Referee(sqlite3* handle);
    ~Referee();
    Referee(const Referee&) = delete;
    Referee& operator=(const Referee&) = delete;

    /// Runs one or more statements; SQLite's message when it fails, else empty.
    QByteArray run(const QByteArray& sql) const;
    /// The first column of the first row as text.
    [[nodiscard]] QByteArray value(const QByteArray& sql) const;
    /// Every row, byte for byte: of each column its type, its length and its bytes. Throws when the SQL does not run.
    [[nodiscard]] std::vector<QByteArray> rows(const QByteArray& sql) const;

private:
    sqlite3* m_handle = nullptr;
    bool m_owns = false;
};

} // namespace strandbench::test
