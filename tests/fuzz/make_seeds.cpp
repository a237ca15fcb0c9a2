// SPDX-License-Identifier: GPL-3.0-or-later
// fuzz_make_seeds FOLDER: writes the seeds that are no text of a person's hand into FOLDER/event, FOLDER/fold and
// FOLDER/log.
#include "exchange/events.h"
#include "exchange/sample_payloads.h"
#include "repair/repair_script.h"
#include "repairlog/repair_log.h"

#include <QCoreApplication>
#include <QDir>
#include <QTemporaryDir>

#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// As fuzz_event reads it: kind, version, payload.
void makeEvents(const QDir& folder)
{
    int number = 0;
    for (const Payload& each : samplePayloads()) {
        QFile file(folder.filePath(u"%1_%2"_s.arg(kindOf(each)).arg(++number)));
        if (!file.open(QIODevice::WriteOnly))
            throw std::runtime_error("cannot write " + file.fileName().toStdString());
        file.putChar(char('A' + each.index()));
        file.putChar(char('0' + kindVersionOf(each)));
        file.write(encodePayload(each));
    }
}

void append(RepairLog& log, const QUuid& repair, const Payload& payload, int atSeconds, Repair& into)
{
    const auto event = log.append({repair, u"R. Quist"_s, payload, test::moment(atSeconds), {}});
    if (!event)
        throw std::runtime_error(event.error().detail.toStdString());
    if (subjectOf(payload) == Subject::Repair && apply(into, *event))
        throw std::runtime_error("what was stored does not fold");
}

/// As fuzz_fold reads it: a repair from taking in to hand-over, and what a supervisor does then.
void makeRepair(const QDir& folder)
{
    QFile file(folder.filePath(u"whole_repair"_s));
    if (!file.open(QIODevice::WriteOnly))
        throw std::runtime_error("cannot write " + file.fileName().toStdString());
    test::RepairScript script;
    script.walkTo(Station::Done);
    std::vector<Payload> payloads;
    for (const Event& each : script.events())
        payloads.push_back(each.payload);
    payloads.emplace_back(SignedOff{});
    payloads.emplace_back(Corrected{2, u"it was wider"_s});
    for (const Payload& each : payloads)
        file.write(QByteArray(1, char('A' + each.index())) + '1' + encodePayload(each) + '\n');
}

/// A repair taken in, planned, and walked until its first batch cures; and a jump of the clock.
void makeLog(const QDir& folder)
{
    const QTemporaryDir scratch;
    const QString path = scratch.filePath(u"log.db"_s);
    auto log = RepairLog::open(path, LogMode::ReadWrite);
    if (!log)
        throw std::runtime_error(log.error().detail.toStdString());
    const QUuid id = QUuid::createUuid();
    Repair repair;
    append(**log, id, TakenIn{u"4421"_s, u"skirt panel"_s}, 0, repair);
    for (int at = 30; nextStep(repair).station != Station::Wait; at += 30)
        append(**log, id, test::actAt(repair), at, repair);
    append(**log, benchSubject(), ClockJumped{}, 3600, repair);
    log->reset(); // the WAL goes back into the file
    const auto copied = backupLog(path, folder.filePath(u"walked_to_the_first_cure"_s));
    if (!copied)
        throw std::runtime_error(copied.error().detail.toStdString());
}

} // namespace
} // namespace strandbench

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv); // Qt finds its SQL drivers through one
    if (argc != 2)
        return 2;
    const QDir folder(QString::fromLocal8Bit(argv[1]));
    if (!folder.mkpath(QStringLiteral("event")) || !folder.mkpath(QStringLiteral("fold")) ||
        !folder.mkpath(QStringLiteral("log")))
        return 1;
    strandbench::makeEvents(QDir(folder.filePath(QStringLiteral("event"))));
    strandbench::makeRepair(QDir(folder.filePath(QStringLiteral("fold"))));
    strandbench::makeLog(QDir(folder.filePath(QStringLiteral("log"))));
    return 0;
}
