// SPDX-License-Identifier: GPL-3.0-or-later
// A log of years under measurement: what is asked of it through the program, and the same through plain SQL.
#pragma once

#include "plain_sql.h"

#include "repairlog/find_index.h"

#include <functional>

namespace strandbench::yearsbench {

inline constexpr int allOfThem = 10'000'000;
inline constexpr const char* filler = "demo*"; ///< products
inline constexpr const char* hardener = "hardener";

template <class T> T orEnd(Logged<T> made)
{
    if (!made)
        qFatal("%s", qPrintable(made.error().detail));
    return *std::move(made);
}

/// From "lot, tabulator, product".
inline StockLot lotOf(const std::string& both)
{
    const QStringList parts = QString::fromStdString(both).split(u'\t');
    return {parts.at(1), parts.at(0)};
}

/// What was found: says the keys of it, one after another, which is no part of finding it.
using Answer = std::function<std::string()>;

/// One kind of question, asked of several days, jobs, people or lots by turns. The two answers must agree.
struct Question {
    std::string name;
    std::vector<std::string> of;
    std::function<Answer(const std::string&)> ours;
    std::function<Answer(const std::string&)> plain;
};

struct IndexMade {
    double seconds = 0; ///< 0: it was there
    double mebibytes = 0;
};

struct DigestsMade {
    int repairs = 0;
    double seconds = 0;
};

class YearsLog {
public:
    /// Makes the index of the log where it is not whole. Ends the program when something does not open.
    explicit YearsLog(const QString& path);
    [[nodiscard]] qint64 repairs() const { return m_repairs; }
    [[nodiscard]] qint64 events() const { return m_events; }
    [[nodiscard]] double mebibytes() const;
    [[nodiscard]] const IndexMade& indexMade() const { return m_made; }
    /// Of the days and lots that are asked for, of which none was kept yet.
    [[nodiscard]] const DigestsMade& digestsMade() const { return m_digested; }
    /// The same kinds in the same order of every log.
    [[nodiscard]] std::vector<Question> questions() const;

private:
    void makeIndex();
    void digest(const std::vector<QUuid>& repairs);
    void digestAll();
    [[nodiscard]] std::vector<std::string> days() const;
    [[nodiscard]] std::vector<std::string> jobs() const;
    [[nodiscard]] std::vector<std::string> lots(const char* which) const;
    [[nodiscard]] Question dayOfRepairs() const;
    [[nodiscard]] Question dayWithEvents() const;
    [[nodiscard]] Question dayReview() const;
    [[nodiscard]] Question lotReview(const std::string& name, const char* which) const;
    [[nodiscard]] Question search(const std::string& name, const std::vector<std::string>& texts) const;
    [[nodiscard]] Question uses(const std::string& name, const char* which) const;
    [[nodiscard]] Question products() const;

    QString m_path;
    std::unique_ptr<RepairLog> m_log;
    std::unique_ptr<FindIndex> m_index;
    std::unique_ptr<PlainSql> m_plainLog;
    std::unique_ptr<PlainSql> m_plainIndex;
    IndexMade m_made;
    DigestsMade m_digested;
    QString m_mark; ///< of digests
    qint64 m_repairs = 0;
    qint64 m_events = 0;
};

} // namespace strandbench::yearsbench
