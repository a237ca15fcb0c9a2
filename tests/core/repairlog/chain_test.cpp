// SPDX-License-Identifier: GPL-3.0-or-later
// The chain's byte layout against hashes made by other means.
#include "repairlog/chain.h"

#include "log_fixture.h"
#include "referee.h"

#include <QCryptographicHash>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

EventRecord sample()
{
    EventRecord record;
    record.previousHash = emptyChainHash();
    record.origin = u"5a0c52f4-3a0e-4bb4-8a43-6a1ad3a2a0a5"_s;
    record.seq = 1;
    record.repair = u"0f7c1b52-8f0e-4c53-9a55-6d3f3b1f0a11"_s;
    record.kind = u"taken_in"_s;
    record.kindVersion = 1;
    record.at = {1'768'000'000'123, 5'000'456, u"d2b1c7e0-0000-4000-8000-00000000beef"_s, -18'000};
    record.person = u"Renée Quist"_s;
    record.payload = R"({"job":"4421","panel":"skirt"})";
    return record;
}

/// Made with Python's hashlib and struct.pack('>I', '>q') from the layout in chain.h.
constexpr const char* sampleHash = "37915dd8c141ceb3988863d0f354e037612d94a1d29cd3e2693fd1f63114d8f6";

TEST(ChainLayout, IsTheDocumentedOne) { EXPECT_EQ(chainHash(sample()).toHex(), sampleHash); }

TEST(ChainLayout, CoversEveryField)
{
    const std::vector<std::function<void(EventRecord&)>> changes{
        [](EventRecord& r) { r.previousHash[31] = 1; },
        [](EventRecord& r) { r.origin[0] = u'6'; },
        [](EventRecord& r) { r.seq = 2; },
        [](EventRecord& r) { r.repair[0] = u'1'; },
        [](EventRecord& r) { r.kind = u"taken"_s; },
        [](EventRecord& r) { r.kindVersion = 2; },
        [](EventRecord& r) { ++r.at.utcMs; },
        [](EventRecord& r) { ++r.at.boottimeMs; },
        [](EventRecord& r) { r.at.bootId += u'0'; },
        [](EventRecord& r) { ++r.at.utcOffsetSeconds; },
        [](EventRecord& r) { r.person = u"Renee Quist"_s; },
        [](EventRecord& r) { r.payload += ' '; },
    };
    std::set<QByteArray> hashes{chainHash(sample())};
    for (const auto& change : changes) {
        EventRecord record = sample();
        change(record);
        hashes.insert(chainHash(record));
    }
    EXPECT_EQ(hashes.size(), changes.size() + 1);
}

TEST(ChainLayout, FieldsDoNotRunIntoEachOther)
{
    EventRecord one = sample();
    EventRecord other = sample();
    one.at.bootId = u"ab"_s;
    one.person = u"c"_s;
    other.at.bootId = u"a"_s;
    other.person = u"bc"_s;
    EXPECT_NE(chainHash(one), chainHash(other));
}

/// The stored rows hash to what is stored, by a second writing of the layout over what the referee reads.
TEST_F(LogTest, StoredRowsHashAsDocumented)
{
    makeLog(Station::Turn);
    const Referee referee(path());
    const int count = referee.value("SELECT count(*) FROM event").toInt();
    ASSERT_GT(count, 20);
    QByteArray previous(64, '0');
    for (int seq = 1; seq <= count; ++seq) {
        const QByteArray where = " FROM event WHERE seq = " + QByteArray::number(seq);
        QByteArray bytes = QByteArray::fromHex("00000020" + previous);
        const auto text = [&](const char* column) {
            const QByteArray field = referee.value("SELECT hex(CAST(" + QByteArray(column) + " AS BLOB))" + where);
            bytes += QByteArray::fromHex(QByteArray::number(field.size() / 2, 16).rightJustified(8, '0') + field);
        };
        const auto integer = [&](const char* column) {
            const QByteArray field = referee.value("SELECT printf('%016x', " + QByteArray(column) + ")" + where);
            bytes += QByteArray::fromHex("00000008" + field);
        };
        text("origin"), integer("seq"), text("repair"), text("kind"), integer("kind_version"), integer("utc_ms");
        integer("boottime_ms"), text("boot_id"), integer("utc_offset_s"), text("person"), text("payload");
        const QByteArray hash = QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex();
        ASSERT_EQ(referee.value("SELECT lower(hex(hash))" + where), hash) << seq;
        ASSERT_EQ(referee.value("SELECT lower(hex(prev_hash))" + where), previous) << seq;
        previous = hash;
    }
}

} // namespace
