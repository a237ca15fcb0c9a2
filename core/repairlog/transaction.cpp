// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/transaction.h"

#include <utility>

using namespace Qt::StringLiterals;

namespace strandbench {

Logged<Transaction> Transaction::begin(const SqlConnection& connection, Kind kind)
{
    if (auto begun = connection.run(kind == Kind::Write ? u"BEGIN IMMEDIATE"_s : u"BEGIN"_s); !begun)
        return tl::unexpected(begun.error());
    return Transaction(connection);
}

Transaction::Transaction(Transaction&& other) noexcept : m_connection(std::exchange(other.m_connection, nullptr)) {}

Transaction::~Transaction()
{
    // A full disk or a failing one has SQLite roll back by itself; then there is nothing left to do here.
    if (m_connection)
        (void)m_connection->run(u"ROLLBACK"_s);
}

Logged<void> Transaction::commit()
{
    auto done = m_connection->run(u"COMMIT"_s);
    if (done)
        m_connection = nullptr;
    return done;
}

} // namespace strandbench
