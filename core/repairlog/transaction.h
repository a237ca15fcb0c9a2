// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "repairlog/connection.h"

namespace strandbench {

/// A transaction that rolls back unless it was committed.
class Transaction {
public:
    enum class Kind {
        Write, ///< BEGIN IMMEDIATE: the lock is there before the first read, so nothing changes in between
        Read,  ///< one unchanging picture for all reads in it
    };
    [[nodiscard]] static Logged<Transaction> begin(const SqlConnection& connection, Kind kind);
    Transaction(Transaction&& other) noexcept;
    Transaction& operator=(Transaction&&) = delete;
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;
    ~Transaction();

    [[nodiscard]] Logged<void> commit();

private:
    explicit Transaction(const SqlConnection& connection) : m_connection(&connection) {}
    const SqlConnection* m_connection;
};

} // namespace strandbench
