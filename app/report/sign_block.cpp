// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/sign_block.h"

#include "words/event_words.h"
#include "words/role_words.h"

#include <QCoreApplication>
#include <QDateTime>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(JobSheet)
};

constexpr double lineRoom = 8;   // mm above what is printed in a row: a hand's writing
constexpr double keepWhole = 62; // mm: heading, sentences and lines stay on one page

/// "2026-11-25 08:12": a signature stands by itself, so with its day.
QString dayAndTime(const Instant& at)
{
    return localDay(at) + u' ' +
           QDateTime::fromMSecsSinceEpoch(at.utcMs + at.utcOffsetSeconds * 1000LL, Qt::UTC).toString(u"HH:mm"_s);
}

QString idOf(const QUuid& repair) { return repair.toString(QUuid::WithoutBraces); }

void signatureLines(PaperDocument& paper)
{
    const PaperColumn whose{{}, 1.3};
    paper.table({whose, {Says::tr("Name"), 2.4}, {Says::tr("Date"), 1.3}, {Says::tr("Signature"), 3}},
                {{Says::tr("Technician")}, {Says::tr("Supervisor")}}, lineRoom);
}

} // namespace

QStringList signingTold(const JobRecord& record)
{
    QStringList told;
    if (record.signedOff)
        //: %1 is a person, %2 a day and a time
        told << Says::tr("Signed off by %1, %2")
                    .arg(personText(record.signedOff->person), dayAndTime(record.signedOff->at));
    if (record.returned && record.repair.returned) {
        //: %1 is a person, %2 a day and a time, %3 why
        told << Says::tr("Returned by %1, %2: %3")
                    .arg(personText(record.returned->person), dayAndTime(record.returned->at),
                         returnText(record.repair.returned->what));
        //: %1 is the id of a repair
        told << (record.repair.rework.isNull() ? Says::tr("Its rework is not taken in yet")
                                               : Says::tr("Done again as repair %1").arg(idOf(record.repair.rework)));
    }
    if (told.isEmpty())
        told << Says::tr("Not signed yet");
    if (!record.repair.reworkOf.isNull())
        //: %1 is the id of a repair
        told << Says::tr("Rework of repair %1").arg(idOf(record.repair.reworkOf));
    return told;
}

void writeSignBlock(PaperDocument& paper, const JobRecord& record)
{
    paper.heading(Says::tr("Sign-off"), keepWhole);
    const QStringList told = signingTold(record);
    for (const QString& each : told)
        paper.line(each);
    signatureLines(paper);
}

void writeSignBlock(PaperDocument& paper, const std::vector<JobRecord>& records)
{
    paper.heading(Says::tr("Sign-off"), keepWhole);
    std::vector<QStringList> rows;
    for (const JobRecord& each : records)
        rows.push_back({each.repair.job, each.repair.panel, signingTold(each).join(u'\n')});
    paper.table({{Says::tr("Job"), 0.8}, {Says::tr("Panel"), 1.8}, {Says::tr("What the log says"), 5}}, rows);
    signatureLines(paper);
}

} // namespace strandbench
