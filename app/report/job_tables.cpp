// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/job_tables.h"

#include "words/deviation_words.h"
#include "words/event_words.h"
#include "words/found_words.h"
#include "words/notes.h"

#include <algorithm>
#include <map>

using namespace Qt::StringLiterals;

namespace strandbench {

QString JobTables::when(const Instant& at) const
{
    const QString time = m_words.clockTime(at);
    return m_record.days.size() > 1 ? localDay(at) + u' ' + time : time;
}

QString JobTables::told(const Told& told) const { return when(told.at) + u", "_s + personText(told.person); }

QString JobTables::partOf(const JobRecord& record, const Words& words)
{
    QStringList parts;
    if (record.repair.assessment.substrate)
        parts << Words::title(words.substrate(*record.repair.assessment.substrate));
    if (record.repair.assessment.damage)
        parts << words.damage(record.repair.assessment.damage->kind);
    return parts.join(u" · "_s);
}

void JobTables::identity()
{
    m_paper.title(m_words.jobLabel(m_record.repair.job) + u" · "_s + m_record.repair.panel);
    const Told takenIn{m_record.repair.takenInAt, m_record.repair.takenInBy, 1};
    std::vector<std::pair<QString, QString>> rows{
        {tr("Panel"), partOf(m_record, m_words)},
        {tr("State"), Words::title(m_words.station(nextStep(m_record.repair).station))},
        {tr("Days"), QStringList(m_record.days.begin(), m_record.days.end()).join(u", "_s)},
        {tr("People"), m_record.people.isEmpty() ? personText({}) : m_record.people.join(u", "_s)},
        {tr("Taken in"), told(takenIn)}};
    if (m_record.handedOver)
        rows.emplace_back(tr("Handed over"), told(*m_record.handedOver));
    rows.emplace_back(tr("From first to last act"), m_words.longDuration(m_record.lasted));
    m_paper.pairs(rows);
}

void JobTables::deviations()
{
    const auto found = deviationsOf(m_record, m_facts.catalogue, limitsFrom(m_facts.assumptions));
    if (found.empty())
        return;
    std::vector<QStringList> rows;
    for (const Deviation& each : found)
        rows.push_back({when(each.told.at), personText(each.told.person), deviationText(each, m_words)});
    m_paper.heading(tr("Deviations"));
    m_paper.table({{tr("When"), 1.4}, {tr("Who"), 1.4}, {tr("What"), 6}}, rows);
}

void JobTables::found()
{
    std::vector<QStringList> rows;
    for (const AnswerRecord& each : m_record.answers) {
        QString answer = withFoundBy(Words::title(answerText(each.question, each.value, m_words)), each.foundBy);
        if (each.before)
            answer = tr("%1 (before: %2)").arg(answer, answerText(each.question, *each.before, m_words));
        if (!each.stands)
            answer = tr("%1 (asked again later)").arg(answer);
        rows.push_back({Words::title(m_words.questionName(each.question)), answer, when(each.told.at),
                        personText(each.told.person)});
    }
    if (rows.empty())
        return;
    m_paper.heading(tr("What was found"));
    m_paper.table({{tr("Question"), 2.6}, {tr("Answer"), 4}, {tr("When"), 1.4}, {tr("Who"), 1.4}}, rows);
}

void JobTables::readings()
{
    std::vector<QStringList> rows;
    for (const ReadingRecord& each : m_record.readings)
        rows.push_back({when(each.told.at), personText(each.told.person), m_words.temperature(each.reading.air),
                        m_words.temperature(each.reading.panel), m_words.percent(each.reading.humidity),
                        m_words.temperature(each.dewPoint), m_words.temperatureStep(each.margin)});
    if (rows.empty())
        return;
    m_paper.heading(tr("Readings"));
    m_paper.table({{tr("When"), 1.4},
                   {tr("Who"), 1.4},
                   {tr("Air"), 1},
                   {tr("Panel"), 1},
                   {tr("Humidity"), 1.1},
                   {tr("Dew point"), 1.2},
                   {tr("Panel above it"), 1.4}},
                  rows);
}

QString JobTables::layerName(int index, const std::optional<Face>& face) const
{
    return face ? tr("lift %1, %2").arg(QString::number(index + 1), m_words.face(*face)) : tr("coat %1").arg(index + 1);
}

QString JobTables::sheetName(const QString& id, const QByteArray& hash) const
{
    const ProductSheet* sheet = m_facts.catalogue.version(id, hash);
    if (!sheet)
        return id;
    return sheet->demo ? tr("%1 (demo sheet)").arg(id) : id;
}

void JobTables::batches()
{
    std::vector<QStringList> rows;
    for (const BatchRecord& each : m_record.batches) {
        const auto lot = [](const QString& of) { return of.isEmpty() ? tr("not told") : of; };
        rows.push_back({batchName(each.batch) + u", "_s + layerName(each.lift, each.face),
                        sheetName(each.mixed.sheetId, each.mixed.sheetHash), lot(each.mixed.lot),
                        lot(each.mixed.hardenerLot),
                        m_words.mass(each.planned.filler) + u" + "_s + m_words.hardener(each.planned.hardener),
                        m_words.mass(each.mixed.filler) + u" + "_s + m_words.hardener(each.mixed.hardener),
                        m_words.percent(each.hardenerShare), told(each.hardenerIn)});
    }
    if (rows.empty())
        return;
    m_paper.heading(tr("Batches: what was mixed"));
    m_paper.table({{tr("Batch"), 1.9},
                   {tr("Sheet"), 2.2},
                   {tr("Filler lot"), 1.1},
                   {tr("Hardener lot"), 1.2},
                   {tr("Planned"), 1.3},
                   {tr("Mixed"), 1.3},
                   {tr("Hardener"), 1.2},
                   {tr("Hardener in"), 1.5}},
                  rows);
    clocks();
}

QString JobTables::against(Duration predicted, const std::optional<Duration>& told) const
{
    return (told ? m_words.duration(*told) : u"–"_s) + u" / "_s + m_words.duration(predicted);
}

void JobTables::clocks()
{
    std::vector<QStringList> rows;
    for (const BatchRecord& each : m_record.batches) {
        const auto since = [&](const std::optional<Told>& told) {
            return told ? std::optional(each.since(*told)) : std::nullopt;
        };
        const BatchTimes& predicted = each.mixed.times;
        rows.push_back({batchName(each.batch), against(predicted.boardGel, since(each.boardGelled)),
                        against(predicted.gel * m_facts.assumptions.edgesAtGel.value(), since(each.edgesClear)),
                        against(predicted.gel, since(each.panelGelled)), against(predicted.sand, since(each.sands)),
                        each.sanded ? told(*each.sanded) : QString(u"–"_s)});
    }
    m_paper.heading(tr("Batches: their clocks"));
    m_paper.line(tr("From 'hardener in', as told / as predicted when it was mixed."));
    m_paper.table({{tr("Batch"), 1.5},
                   {tr("Set on the board"), 1.4},
                   {tr("Edges clear"), 1.4},
                   {tr("Set on the panel"), 1.4},
                   {tr("Sands"), 1.4},
                   {tr("Sanded"), 1.5}},
                  rows);
}

void JobTables::layers()
{
    std::vector<QStringList> rows;
    for (const LayerRecord& each : m_record.layers) {
        rows.push_back({Words::title(layerName(each.index, each.face)), m_words.filler(each.filler),
                        each.finishing ? m_words.thickness(each.thickness) : m_words.fineLength(each.thickness),
                        m_words.mass(each.mixed), m_words.batches(each.batches), when(each.laidFrom),
                        each.laidUntil ? when(*each.laidUntil) : QString(u"–"_s),
                        each.sanded ? when(*each.sanded) : QString(u"–"_s)});
    }
    if (rows.empty())
        return;
    m_paper.heading(tr("What was laid"));
    m_paper.table({{tr("Layer"), 1.7},
                   {tr("Filler"), 1.8},
                   {tr("Planned"), 1},
                   {tr("Mixed"), 1},
                   {tr("Batches"), 1.1},
                   {tr("From"), 1},
                   {tr("Edges clear"), 1},
                   {tr("Sanded"), 1}},
                  rows);
}

void JobTables::steps()
{
    std::map<qint64, QStringList> bySeq;
    for (const StepRecord& each : m_record.steps) {
        if (each.stage == Stage::HandOver)
            continue; // they stand with the tests
        const StepText text = m_words.step(each.step);
        bySeq[each.told.seq] = {when(each.told.at), personText(each.told.person), text.sentence, text.wayOn};
    }
    if (m_record.turned)
        bySeq[m_record.turned->seq] = {when(m_record.turned->at), personText(m_record.turned->person),
                                       tr("Turn the panel"), tr("Panel turned")};
    if (bySeq.empty())
        return;
    std::vector<QStringList> rows;
    for (const auto& [seq, row] : bySeq)
        rows.push_back(row);
    m_paper.heading(tr("Steps"));
    m_paper.table({{tr("When"), 1.4}, {tr("Who"), 1.4}, {tr("Step"), 4}, {tr("Told"), 3}}, rows);
}

void JobTables::parkings()
{
    std::vector<QStringList> rows;
    for (const ParkRecord& each : m_record.parkings) {
        QStringList why;
        for (const QString& code : each.parked.because)
            why << m_words.stopHeadline(code);
        if (!each.parked.reason.isEmpty())
            why << parkReason(each.parked.reason);
        const QString left = !each.left ? tr("still parked")
                                        : (each.assessedAgain ? tr("assessed again") : tr("taken up again")) + u", "_s +
                                              told(*each.left);
        rows.push_back({told(each.told), parkedWhere(each.parked.to), why.join(u". "_s), left});
    }
    if (rows.empty())
        return;
    m_paper.heading(tr("Parked"));
    m_paper.table({{tr("When, who"), 2}, {tr("Where"), 2}, {tr("Why"), 4}, {tr("Until"), 2.4}}, rows);
}

void JobTables::notes()
{
    std::vector<QStringList> rows;
    for (const Kept<Noted>& each : m_record.repair.notes)
        rows.push_back({when(each.at), personText(each.person), noteText(each.what)});
    if (rows.empty())
        return;
    m_paper.heading(tr("Notes"));
    m_paper.table({{tr("When"), 1.4}, {tr("Who"), 1.4}, {tr("Note"), 6}}, rows);
}

void JobTables::handOverTests()
{
    if (m_record.plans.empty())
        return;
    std::vector<QStringList> rows;
    for (const QString& code : strandbench::handOverTests()) {
        const auto done = std::ranges::find_if(m_record.steps, [&](const StepRecord& each) {
            return each.stage == Stage::HandOver && each.step.code == code;
        });
        const StepText text = m_words.handOverTest(code);
        rows.push_back(done == m_record.steps.end() ? QStringList{text.sentence, tr("not done"), {}, {}}
                                                    : QStringList{text.sentence, text.wayOn, when(done->told.at),
                                                                  personText(done->told.person)});
    }
    m_paper.heading(tr("Hand-over tests"));
    m_paper.table({{tr("Test"), 4}, {tr("Told"), 3}, {tr("When"), 1.4}, {tr("Who"), 1.4}}, rows);
}

} // namespace strandbench
