// SPDX-License-Identifier: GPL-3.0-or-later
// A supervisor's acts on the command line: refused and written without the PIN, done with it.
#include "program.h"

#include "repair/lot_book.h"
#include "repair_script.h"
#include "repairlog/writer_lock.h"
#include "roles/pin_door.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QFile>
#include <QTemporaryDir>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const QByteArray right = "271828";

class Supervise : public testing::Test {
protected:
    void SetUp() override
    {
        auto log = RepairLog::open(path(), LogMode::ReadWrite);
        ASSERT_TRUE(log);
        Repair folded;
        int seconds = 0;
        const auto append = [&](const Payload& payload) {
            const auto written =
                (*log)->append({m_repair, u"Technician 1"_s, payload, test::moment(++seconds * 60), {}});
            ASSERT_TRUE(written) << written.error().detail.toStdString();
            ASSERT_FALSE(apply(folded, *written));
        };
        append(TakenIn{u"4421"_s, u"skirt panel"_s});
        for (const Answered& each : test::sampleAnswers())
            append(each);
        while (nextStep(folded).station != Station::Done)
            append(test::actAt(folded));
    }
    [[nodiscard]] QString path() const { return m_folder.filePath(u"bench.sqlite"_s); }
    [[nodiscard]] QString repair() const { return m_repair.toString(QUuid::WithoutBraces); }
    [[nodiscard]] Ran supervise(const QStringList& more, const QByteArray& pin) const
    {
        return program(QStringList{u"supervise"_s, u"--log"_s, path(), u"--person"_s, u"R. Quist"_s} + more,
                       pin + '\n');
    }
    [[nodiscard]] std::vector<Event> ofBench() const
    {
        const auto log = RepairLog::open(path(), LogMode::ReadOnly);
        return *(*log)->events(benchSubject());
    }
    void setPin() { ASSERT_EQ(supervise({u"--act"_s, u"new_pin"_s}, right).status, 0); }
    /// Every act that there is, as one would try it.
    [[nodiscard]] std::vector<std::pair<SupervisorAct, QStringList>> acts() const
    {
        return {{SupervisorAct::SignOff, {u"--act"_s, u"sign_off"_s, u"--repair"_s, repair()}},
                {SupervisorAct::Override,
                 {u"--act"_s, u"override"_s, u"--repair"_s, repair(), u"--stop"_s, u"moisture_damp"_s, u"--reason"_s,
                  u"maker_allows"_s}},
                {SupervisorAct::Correct,
                 {u"--act"_s, u"correct"_s, u"--repair"_s, repair(), u"--seq"_s, u"1"_s, u"--text"_s, u"left"_s}},
                {SupervisorAct::Forget,
                 {u"--act"_s, u"forget"_s, u"--sheet"_s, u"demo_mixed"_s, u"--lot"_s, u"H1"_s, u"--reason"_s,
                  u"told_wrong"_s}}};
    }

    QTemporaryDir m_folder;
    QUuid m_repair = QUuid::createUuid();
};

TEST_F(Supervise, EveryActWithoutThePinIsRefusedAndWritten)
{
    std::vector<Payload> expected;
    for (const auto& [act, options] : acts()) {
        const Ran ran = supervise(options, {});
        EXPECT_EQ(ran.status, 2);
        EXPECT_EQ(ran.messages().size(), 1);
        expected.push_back(ActRefused{act, ActRefusal::NotSet});
    }
    setPin();
    expected.push_back(PinSet{true});
    for (const auto& [act, options] : acts()) {
        EXPECT_EQ(supervise(options, {}).status, 2);
        expected.push_back(ActRefused{act, ActRefusal::NoPin});
    }
    for (std::size_t i = 0; i < 4; ++i) {
        const Ran ran = supervise(acts()[i].second, "314159");
        EXPECT_EQ(ran.status, 2);
        EXPECT_FALSE(ran.err.contains("314159")) << "what was given is never repeated";
        expected.push_back(ActRefused{acts()[i].first, i < 3 ? ActRefusal::WrongPin : ActRefusal::MustWait});
    }
    const auto events = ofBench();
    ASSERT_EQ(events.size(), expected.size());
    for (std::size_t i = 0; i < events.size(); ++i)
        EXPECT_EQ(events[i].payload, expected[i]) << i;
    const auto log = RepairLog::open(path(), LogMode::ReadOnly);
    const auto ofRepair = (*log)->events(m_repair);
    ASSERT_TRUE(ofRepair);
    for (const Event& each : *ofRepair)
        EXPECT_FALSE(supervisorActOf(each.payload));
    EXPECT_TRUE((*log)->events(lotSubject({u"demo_mixed"_s, u"H1"_s}))->empty());
}

TEST_F(Supervise, WithThePinTheActIsDone)
{
    setPin();
    for (const auto& [act, options] : acts()) {
        if (act == SupervisorAct::Override)
            continue; // of a repair that was handed over nothing is overridden
        const Ran ran = supervise(options, right);
        EXPECT_EQ(ran.status, 0) << ran.err.toStdString();
        EXPECT_EQ(ran.json()[u"act"_s].toString(), options[1]);
        EXPECT_GT(ran.json()[u"seq"_s].toInt(), 1);
    }
    EXPECT_EQ(supervise(acts()[1].second, right).status, 2);
    EXPECT_EQ(supervise(acts()[0].second, right).status, 2) << "signed off once";
    const auto report = verifyLog(path());
    ASSERT_TRUE(report);
    EXPECT_TRUE(report->clean) << report->where.toStdString();
}

TEST_F(Supervise, NamesWhatIsMissingOrNotAllowed)
{
    setPin();
    const std::pair<QStringList, QByteArray> rows[] = {
        {{u"--act"_s, u"dance"_s}, "--act"},
        {{u"--act"_s, u"sign_off"_s}, "--repair"},
        {{u"--act"_s, u"sign_off"_s, u"--repair"_s, u"4421"_s}, "4421"},
        {{u"--act"_s, u"override"_s, u"--repair"_s, repair(), u"--reason"_s, u"maker_allows"_s}, "--stop"},
        {{u"--act"_s, u"override"_s, u"--repair"_s, repair(), u"--stop"_s, u"moisture_damp"_s}, "--reason"},
        {{u"--act"_s, u"correct"_s, u"--repair"_s, repair(), u"--seq"_s, u"0"_s, u"--text"_s, u"x"_s}, "--seq"},
        {{u"--act"_s, u"forget"_s, u"--sheet"_s, u"a"_s, u"--lot"_s, u"b"_s, u"--reason"_s, u"c"_s}, "told_wrong"}};
    for (const auto& [options, named] : rows) {
        const Ran ran = supervise(options, right);
        EXPECT_EQ(ran.status, 2) << named.toStdString();
        EXPECT_TRUE(ran.err.contains(named)) << ran.err.toStdString();
    }
    const Ran easy = supervise({u"--act"_s, u"new_pin"_s}, "111111");
    EXPECT_EQ(easy.status, 2);
    EXPECT_FALSE(easy.err.contains("111111"));
    EXPECT_EQ(ofBench().size(), 1U) << "none of these was an act";
}

TEST_F(Supervise, DoesNothingWhileABenchHasTheLog)
{
    setPin();
    const auto lock = WriterLock::take(path());
    ASSERT_TRUE(lock);
    const Ran ran = supervise(acts()[0].second, right);
    EXPECT_EQ(ran.status, 3);
    EXPECT_TRUE(ran.err.contains(QByteArray::number(QCoreApplication::applicationPid()))) << ran.err.toStdString();
}

TEST_F(Supervise, MakesNoLogAndNoPinWhereThereIsNone)
{
    const QString nowhere = m_folder.filePath(u"other.sqlite"_s);
    const Ran ran =
        program({u"supervise"_s, u"--log"_s, nowhere, u"--person"_s, u"R"_s, u"--act"_s, u"new_pin"_s}, right);
    EXPECT_EQ(ran.status, 3);
    EXPECT_FALSE(QFile::exists(nowhere));
    EXPECT_FALSE(QFile::exists(pinPathOf(nowhere)));
}

} // namespace
} // namespace strandbench
