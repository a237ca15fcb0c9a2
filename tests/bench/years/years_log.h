// SPDX-License-Identifier: GPL-3.0-or-later
// A log of years under measurement: what is asked of it through the program, and the same through plain SQL.
#pragma once

#include "question.h"

#include "repairlog/find_index.h"

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
    [[nodiscard]] std::vector<QString> days() const;
    [[nodiscard]] std::vector<QString> jobs() const;
    [[nodiscard]] std::vector<StockLot> lots(const char* which) const;
    [[nodiscard]] Question dayOfRepairs() const;
    [[nodiscard]] Question dayWithEvents() const;
    [[nodiscard]] Question dayReview() const;
    [[nodiscard]] Question lotReview(const std::string& name, const char* which) const;
    [[nodiscard]] Question search(const std::string& name, const std::vector<QString>& texts) const;
    [[nodiscard]] Question uses(const std::string& name, const char* which) const;
    [[nodiscard]] Question products() const;

    QString m_path;
    std::unique_ptr<RepairLog> m_log;
    std::unique_ptr<FindIndex> m_index;
    std::unique_ptr<PlainFile> m_plainLog;
    std::unique_ptr<PlainFile> m_plainIndex;
    IndexMade m_made;
    DigestsMade m_digested;
    QString m_mark; ///< of digests
    qint64 m_repairs = 0;
    qint64 m_events = 0;
};

} // namespace strandbench::yearsbench
