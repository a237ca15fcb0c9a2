// SPDX-License-Identifier: GPL-3.0-or-later
// What the file of a PIN holds, and what a damaged one opens: nothing.
#include "roles/pin_door.h"

#include "set_clock.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <sodium.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

constexpr PinCost cheap{1, 8192};

class PinFile : public ::testing::Test {
protected:
    [[nodiscard]] QString path() const { return m_folder.filePath(u"supervisor.pin"_s); }
    [[nodiscard]] QByteArray held() const
    {
        QFile file(path());
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    void put(const QByteArray& bytes) const
    {
        QFile file(path());
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
    }
    SetClock clock;
    QTemporaryDir m_folder;
    const QString pin = u"271828"_s;
};

TEST_F(PinFile, HoldsNothingThatRevealsThePin)
{
    ASSERT_TRUE(PinDoor(path(), clock, cheap).set(pin).empty());
    (void)PinDoor(path(), clock, cheap).open(u"314159"_s); // the wrong one neither
    const QByteArray bytes = held();
    ASSERT_FALSE(bytes.isEmpty());
    for (const QByteArray& plain : {pin.toUtf8(), QByteArray("314159")}) {
        std::vector<QByteArray> forms{plain, plain.toHex(), plain.toBase64(QByteArray::OmitTrailingEquals)};
        for (const auto fast : {QCryptographicHash::Md5, QCryptographicHash::Sha1, QCryptographicHash::Sha256,
                                QCryptographicHash::Sha512, QCryptographicHash::Blake2b_256}) {
            const QByteArray hash = QCryptographicHash::hash(plain, fast);
            forms.push_back(hash.toHex());
            forms.push_back(hash.toBase64(QByteArray::OmitTrailingEquals));
        }
        for (const QByteArray& form : forms)
            EXPECT_FALSE(bytes.toLower().contains(form.toLower())) << form.toStdString();
    }
    const QString other = m_folder.filePath(u"other.pin"_s);
    ASSERT_TRUE(PinDoor(other, clock, cheap).set(pin).empty());
    QFile file(other);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const auto hashIn = [](const QByteArray& json) { return QJsonDocument::fromJson(json)[u"hash"_s].toString(); };
    EXPECT_NE(hashIn(file.readAll()), hashIn(bytes)); // salted
}

TEST_F(PinFile, HashesAtTheCostThatIsDocumented)
{
    ASSERT_TRUE(PinDoor(path(), clock).set(pin).empty());
    const QByteArray hash = QJsonDocument::fromJson(held())[u"hash"_s].toString().toLatin1();
    EXPECT_TRUE(hash.startsWith("$argon2id$v=19$m=65536,t=3,p=1$")) << hash.toStdString(); // KiB, passes
    EXPECT_EQ(crypto_pwhash_str_needs_rehash(hash.constData(), PinCost{}.passes, PinCost{}.memoryBytes), 0);
    // By the library itself, and not by the door.
    EXPECT_EQ(crypto_pwhash_str_verify(hash.constData(), "271828", 6), 0);
    EXPECT_TRUE(PinDoor(path(), clock).open(pin));
}

TEST_F(PinFile, IsItsOwnersAlone)
{
    ASSERT_TRUE(PinDoor(path(), clock, cheap).set(pin).empty());
    const auto owner = QFile::ReadOwner | QFile::WriteOwner;
    const auto user = QFile::ReadUser | QFile::WriteUser; // whoever asks, here its owner
    EXPECT_EQ(QFileInfo(path()).permissions() & ~user, owner);
    ASSERT_TRUE(PinDoor(path(), clock, cheap).open(pin));
    EXPECT_EQ(QFileInfo(path()).permissions() & ~user, owner);
    for (const QFileInfo& each : QDir(m_folder.path()).entryInfoList(QDir::Files | QDir::Hidden))
        EXPECT_EQ(each.permissions() & ~user, owner) << each.fileName().toStdString();
}

TEST_F(PinFile, ThatDoesNotReadKeepsTheDoorShutAndStaysAsItIs)
{
    ASSERT_TRUE(PinDoor(path(), clock, cheap).set(pin).empty());
    const QByteArray whole = held();
    std::vector<QByteArray> damaged{{},
                                    "{}",
                                    "[]",
                                    "null",
                                    QByteArray(5000, ' '),
                                    QByteArray(whole).replace("argon2id", "argon2ix"),
                                    QByteArray(whole).replace("$argon2id$v=19", "$argon2id$v=99"),
                                    QByteArray(whole).replace("t=1,p=1$", "t=1,p=1$!"),
                                    QByteArray(whole).replace("\"wrong\": 0", "\"wrong\": 0.5"),
                                    QByteArray(whole).replace("\"wrong\": 0", "\"wrong\": 10000000000"),
                                    QByteArray(whole).replace("\"wrong\": 0", "\"wrong\": -1"),
                                    QByteArray(whole).replace("\"wrong\": 0", "\"wrong\": \"0\""),
                                    QByteArray(whole).replace("\"wrong\": 0", "\"wrong\": 0, \"more\": 1")};
    QJsonObject cut = QJsonDocument::fromJson(whole).object(); // a hash that is not whole
    cut[u"hash"_s] = cut[u"hash"_s].toString().chopped(10);
    damaged.push_back(QJsonDocument(cut).toJson());
    for (qsizetype size = 1; size + 3 < whole.size(); size += 7)
        damaged.push_back(whole.left(size));
    for (const QByteArray& bytes : damaged) {
        put(bytes);
        PinDoor door(path(), clock, cheap);
        EXPECT_TRUE(door.isSet()) << bytes.toStdString();
        const auto opened = door.open(pin);
        ASSERT_FALSE(opened) << bytes.toStdString();
        EXPECT_EQ(opened.error().why, ActRefusal::NotCounted) << bytes.toStdString();
        EXPECT_EQ(held(), bytes);
    }
    put(whole);
    EXPECT_TRUE(PinDoor(path(), clock, cheap).open(pin));
}

TEST_F(PinFile, OfWhichALetterIsAnotherOpensToNothing)
{
    ASSERT_TRUE(PinDoor(path(), clock, cheap).set(pin).empty());
    QJsonObject json = QJsonDocument::fromJson(held()).object();
    QString hash = json[u"hash"_s].toString();
    hash[hash.size() - 3] = hash[hash.size() - 3] == u'A' ? u'B' : u'A';
    json[u"hash"_s] = hash;
    put(QJsonDocument(json).toJson());
    EXPECT_EQ(PinDoor(path(), clock, cheap).open(pin).error().why, ActRefusal::WrongPin);
}

TEST_F(PinFile, BehindWhatIsNoFolderIsNotMissing)
{
    put("{}");
    PinDoor door(path() + u"/supervisor.pin"_s, clock, cheap); // as in a folder that may not be entered
    EXPECT_TRUE(door.isSet());
    EXPECT_EQ(door.open(pin).error().why, ActRefusal::NotCounted);
}

TEST_F(PinFile, WhoseLinkLeadsNowhereIsNotMissing)
{
    ASSERT_TRUE(QFile::link(m_folder.filePath(u"gone"_s), path()));
    PinDoor door(path(), clock, cheap);
    EXPECT_TRUE(door.isSet());
    EXPECT_EQ(door.open(pin).error().why, ActRefusal::NotCounted);
}

TEST_F(PinFile, WhereAFolderStandsKeepsTheDoorShut)
{
    ASSERT_TRUE(QDir().mkpath(path()));
    PinDoor door(path(), clock, cheap);
    EXPECT_TRUE(door.isSet());
    EXPECT_EQ(door.open(pin).error().why, ActRefusal::NotCounted);
    const Faults faults = door.set(pin);
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_EQ(faults.front().kind, FaultKind::NotFound);
}

TEST_F(PinFile, ThatCannotBeWrittenIsAFault)
{
    PinDoor door(m_folder.filePath(u"no such folder/supervisor.pin"_s), clock, cheap);
    EXPECT_EQ(door.set(pin).front().kind, FaultKind::NotFound);
    EXPECT_FALSE(door.isSet());
}

} // namespace
} // namespace strandbench::test
