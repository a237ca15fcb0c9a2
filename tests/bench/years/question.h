// SPDX-License-Identifier: GPL-3.0-or-later
// One kind of question, asked of the program and of both ways of plain SQL by turns.
#pragma once

#include "qt_sql.h"

#include <array>
#include <chrono>
#include <functional>
#include <string>
#include <vector>

namespace strandbench::yearsbench {

/// Who is asked.
enum Asked { Ours, ByC, ByQt };
inline constexpr int allAsked = 3;

/// One question asked of each.
struct Turn {
    std::array<double, allAsked> microseconds{};
    bool alike = false; ///< all have found the same values
    bool empty = false; ///< and these are none
};

/// A kind of question, asked of several days, jobs, people or lots by turns.
struct Question {
    std::string name;
    std::size_t count = 0; ///< of days, jobs, people, lots
    /// Asks of one of them; `first`, counted on from round to round, says who is asked first.
    std::function<Turn(std::size_t which, int first)> ask;
};

/// One log, or one index, through both libraries.
struct PlainFile {
    PlainFile(const QString& path, Reading reading) : c(path, reading), qt(path, reading) {}
    PlainSql c;
    QtSql qt;
};

/// Statements prepared through both, in the same order.
struct Prepared {
    Prepared(const PlainFile& file, std::initializer_list<const char*> statements)
    {
        for (const char* each : statements) {
            c.push_back(file.c.prepare(each));
            qt.push_back(file.qt.prepare(each));
        }
    }
    std::vector<PlainSql::Statement> c;
    std::vector<QtSql::Statement> qt;
};

/// program: gives the values of a key. plain: the same of a list of statements of either library and a key.
template <class Key, class Program, class Plain>
Question questionOf(std::string name, std::vector<Key> keys, Prepared prepared, const Program& program,
                    const Plain& plain)
{
    const std::size_t count = keys.size();
    const auto statements = std::make_shared<Prepared>(std::move(prepared));
    const auto ask = [keys = std::move(keys), statements, program, plain](std::size_t which, int first) {
        const Key& key = keys[which];
        std::array<decltype(program(key)), allAsked> found;
        Turn turn;
        for (int i = 0; i < allAsked; ++i) {
            const int asked = (first + i) % allAsked;
            const auto start = std::chrono::steady_clock::now();
            if (asked == Ours)
                found[Ours] = program(key);
            else if (asked == ByC)
                found[ByC] = plain(statements->c, key);
            else
                found[ByQt] = plain(statements->qt, key);
            turn.microseconds[std::size_t(asked)] =
                std::chrono::duration<double, std::micro>(std::chrono::steady_clock::now() - start).count();
        }
        turn.alike = found[Ours] == found[ByC] && found[Ours] == found[ByQt];
        turn.empty = found[Ours].empty();
        return turn;
    };
    return {std::move(name), count, ask};
}

} // namespace strandbench::yearsbench
