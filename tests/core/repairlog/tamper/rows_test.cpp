// SPDX-License-Identifier: GPL-3.0-or-later
// Rows taken away, swapped, and cut from the end, each as tidily as can be.
#include "tampered_log.h"

#include <iostream>
#include <memory>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

class TamperedRows : public TamperedLog {
protected:
    TamperedRows() : hand(std::make_unique<Hand>(place())), before(everythingIn(place())) {}
    ~TamperedRows() override
    {
        hand.reset();
        EXPECT_TRUE(everythingIn(place()) == before) << "all was put back";
        EXPECT_EQ(missed, 0);
        std::cout << found << " changes found\n";
    }
    [[nodiscard]] static Cell number(qint64 n) { return {Cell::Kind::Number, n, {}}; }

    /// Puts rows into a table, as they were read from it.
    void put(const QByteArray& table, const std::vector<CellRow>& rows) const
    {
        for (const CellRow& row : rows) {
            const QByteArray marks = QByteArray("?,").repeated(qsizetype(row.size())).chopped(1);
            ASSERT_EQ(hand->change("INSERT INTO " + table + " VALUES (" + marks + ")", row), 1);
        }
    }

    /// Everything but the place in the chain changes over from one row to the other.
    void swap(qint64 one, qint64 other) const
    {
        const CellRow binds{number(one), number(other)};
        hand->change("UPDATE event SET seq = 1000000 WHERE seq = ?1", {number(one)});
        hand->change("UPDATE event SET seq = ?1 WHERE seq = ?2", binds);
        hand->change("UPDATE event SET seq = ?2 WHERE seq = 1000000", binds);
    }

    std::unique_ptr<Hand> hand;
    std::vector<CellRow> before;
};

TEST_F(TamperedRows, EachRowTakenAwayIsFound)
{
    int rows = 0;
    for (const QByteArray table : {"event", "blob", "event_blob", "summary", "meta"})
        for (const CellRow& row : hand->rows("SELECT * FROM " + table)) {
            const auto kept = hand->rows("SELECT * FROM " + table);
            hand->change("DELETE FROM " + table);
            for (const CellRow& each : kept)
                if (each != row) {
                    ASSERT_NO_FATAL_FAILURE(put(table, {each}));
                }
            // The last event is the bench's: without it the chain is a shorter one, and no summary knows.
            if (table == "event" && row[1] == number(head.count))
                expectClean("without the last");
            else
                expectFound("a row taken from " + table.toStdString());
            hand->change("DELETE FROM " + table);
            ASSERT_NO_FATAL_FAILURE(put(table, kept));
            ++rows;
        }
    EXPECT_EQ(found, rows - 1);
    EXPECT_GT(rows, 53);
}

/// With its links, and the blobs that are nobody's then: only the chain and the summary tell.
TEST_F(TamperedRows, EachEventTakenAwayWithAllThatHangsOnItIsFound)
{
    for (qint64 seq = 1; seq <= head.count; ++seq) {
        const auto event = hand->rows("SELECT * FROM event WHERE seq = ?", {number(seq)});
        const auto links = hand->rows("SELECT * FROM event_blob WHERE seq = ?", {number(seq)});
        const auto blobs = hand->rows("SELECT * FROM blob");
        hand->change("DELETE FROM event WHERE seq = ?", {number(seq)});
        hand->change("DELETE FROM event_blob WHERE seq = ?", {number(seq)});
        hand->change("DELETE FROM blob WHERE hash NOT IN (SELECT hash FROM event_blob)");
        if (seq == head.count)
            expectClean("the end of the chain, of the bench: see ACutAtAnyLength...");
        else
            expectFound("event " + std::to_string(seq));
        ASSERT_NO_FATAL_FAILURE(put("event", event));
        ASSERT_NO_FATAL_FAILURE(put("event_blob", links));
        hand->change("DELETE FROM blob");
        ASSERT_NO_FATAL_FAILURE(put("blob", blobs));
    }
    EXPECT_EQ(found, head.count - 1);
}

TEST_F(TamperedRows, AnyTwoEventsThatChangePlacesAreFound)
{
    for (qint64 one = 1; one <= head.count; ++one)
        for (qint64 other = one + 1; other <= head.count; ++other) {
            swap(one, other);
            expectFound("events " + std::to_string(one) + " and " + std::to_string(other));
            swap(one, other);
        }
    EXPECT_EQ(found, head.count * (head.count - 1) / 2);
}

/// Whoever cuts and makes the summaries anew is seen only beside a head that was written down.
TEST_F(TamperedRows, ACutAtAnyLengthIsFoundBesideTheHead)
{
    const auto events = hand->rows("SELECT * FROM event ORDER BY seq");
    const auto links = hand->rows("SELECT * FROM event_blob");
    const auto blobs = hand->rows("SELECT * FROM blob");
    for (qint64 left = head.count - 1; left >= 0; --left) {
        hand->change("DELETE FROM event WHERE seq > ?", {number(left)});
        hand->change("DELETE FROM event_blob WHERE seq > ?", {number(left)});
        hand->change("DELETE FROM blob WHERE hash NOT IN (SELECT hash FROM event_blob)");
        hand->change("DELETE FROM summary");
        if (left > 0) {
            ASSERT_NO_FATAL_FAILURE(put("summary", summariesAfter[std::size_t(left) - 1]));
        }
        expectClean("a chain without a key cannot know");
        const auto report = verifyLog(place(), headHex());
        ASSERT_TRUE(report);
        ASSERT_FALSE(report->clean) << left;
        ASSERT_EQ(report->breaksAt, u"expected_head"_s) << left;
        ++found;
    }
    EXPECT_EQ(found, head.count);
    put("event", events);
    put("event_blob", links);
    put("blob", blobs);
    put("summary", summariesAfter.back());
}

/// As above, but the summaries stay as they were: every cut into a repair shows without a head.
TEST_F(TamperedRows, ACutIntoTheRepairShowsInItsSummary)
{
    const auto events = hand->rows("SELECT * FROM event ORDER BY seq");
    const auto links = hand->rows("SELECT * FROM event_blob");
    const auto blobs = hand->rows("SELECT * FROM blob");
    const auto ofRepair = qint64(wholeRepair().size());
    for (qint64 left = ofRepair - 1; left >= 0; --left) {
        hand->change("DELETE FROM event WHERE seq > ?", {number(left)});
        hand->change("DELETE FROM event_blob WHERE seq > ?", {number(left)});
        hand->change("DELETE FROM blob WHERE hash NOT IN (SELECT hash FROM event_blob)");
        expectFound("cut to " + std::to_string(left));
    }
    EXPECT_EQ(found, ofRepair);
    put("event", events);
    put("event_blob", links);
    put("blob", blobs);
}

} // namespace
