// SPDX-License-Identifier: GPL-3.0-or-later
// Who heard what was confirmed of one log, and holds the log to it after each kill.
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>

#include <map>
#include <optional>
#include <set>
#include <vector>

namespace strandbench::test {

class Witness {
public:
    explicit Witness(QString log) : m_log(std::move(log)) {}

    /// Takes in what a worker told (told.h).
    void hear(const std::vector<QByteArray>& lines);
    /// Reads the log as it lies and says what is wrong; empty: nothing is. Every act that was confirmed is there at its
    /// place, none twice, none that was there before is gone or another.
    [[nodiscard]] QString faultOfLog();
    /// The same of the backups beside it, each of which is then taken away: whole, with all that was confirmed before
    /// it began; and a half-made one has a name that no backup has.
    [[nodiscard]] QString faultOfBackups();

    [[nodiscard]] std::size_t confirmed() const { return m_owed.size(); }
    [[nodiscard]] int backups() const { return m_backups; }   ///< found whole
    [[nodiscard]] int halfMade() const { return m_halfMade; } ///< found left behind
    [[nodiscard]] int refused() const { return m_refused; }   ///< backups that were refused while the bench worked on
    [[nodiscard]] const QStringList& refusals() const { return m_refusals; }

private:
    struct Place {
        qint64 seq = 0;
        QByteArray hash;
        bool operator==(const Place&) const = default;
    };
    void take(const QByteArray& line);
    [[nodiscard]] QString holdToWhatWasSaid(const std::map<QString, Place>& found) const;
    [[nodiscard]] QString faultOfBackup(const QString& path, const std::set<QString>& owed) const;

    QString m_log;
    std::map<QString, qint64> m_owed;             ///< confirmed, by mark; seq 0: not said
    std::map<QString, Place> m_told;              ///< places read back by a worker
    std::map<QString, Place> m_seen;              ///< what stood there after the kill before
    std::map<QString, std::set<QString>> m_begun; ///< backups, with what was confirmed before they began
    std::set<QString> m_made;                     ///< backups that were said to be there
    QString m_trouble;
    int m_backups = 0;
    int m_halfMade = 0;
    int m_refused = 0;
    QStringList m_refusals;
};

} // namespace strandbench::test
