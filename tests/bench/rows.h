// SPDX-License-Identifier: GPL-3.0-or-later
// What a benchmark found, told as rows that table.py makes the one table of.
#pragma once

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace strandbench::bench {

/// One question, what it took, and what its referee took. Numbers are over 0, both in `unit`.
struct Row {
    QString bench; ///< "commit"
    QString what;  ///< the question, the same words at each size
    double ours = 0;
    QString unit; ///< "ms"
    QString referee;
    double theirs = 0;
    std::optional<double> aim = {};  ///< the most that ours : theirs is to be
    std::optional<qint64> size = {}; ///< of what is asked about
    QString of = {};                 ///< what is counted by it: "repairs"
};

class Rows {
public:
    /// Takes `--rows FILE` out of the arguments; without it rows go nowhere. Ends the program with status 2 where the
    /// file cannot be written to.
    static Rows takenFrom(QStringList& arguments);
    /// Puts a line of JSON behind what the file holds. Ends the program where the row is none: empty words, or a number
    /// that is not over 0.
    void add(const Row& row) const;

private:
    QString m_file;
};

/// The value below which so large a share (0 to 1) of them lies; of none std::out_of_range is thrown.
[[nodiscard]] double at(std::vector<double> values, double share);
[[nodiscard]] inline double medianOf(std::vector<double> values) { return at(std::move(values), 0.5); }

} // namespace strandbench::bench
