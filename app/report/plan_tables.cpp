// SPDX-License-Identifier: GPL-3.0-or-later
// The plan, the section and the pictures of a job sheet.
#include "report/job_tables.h"

#include "pictures/section_picture.h"
#include "words/event_words.h"
#include "words/notes.h"

#include <QImage>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double sectionHeight = 34; // mm
constexpr double photoWidth = 54;
constexpr double photoHeight = 40;
constexpr double longestTheSide = 1000; // pixels of a photo on paper

/// How far the repair in the picture is.
SectionProgress progressOf(const JobRecord& record)
{
    SectionProgress progress;
    progress.prepared = record.repair.plan && record.repair.prepDone >= int(record.repair.plan->prep.size());
    for (const LayerRecord& each : record.layers)
        if (each.laidUntil && each.finishing)
            progress.finished = true;
        else if (each.laidUntil)
            progress.liftsLaid = std::max(progress.liftsLaid, each.index + 1);
    return progress;
}

/// Draws a picture as large as fits, upright as taken.
void drawPhoto(QPainter& painter, const QRectF& room, const QImage& image)
{
    const QSizeF size = QSizeF(image.size()).scaled(room.size(), Qt::KeepAspectRatio);
    painter.drawImage(QRectF(room.topLeft(), size), image);
}

} // namespace

void JobTables::section()
{
    if (!m_record.repair.assessment.damage || !m_record.repair.assessment.substrate)
        return;
    const RepairPlan* plan = m_record.repair.plan ? &*m_record.repair.plan : nullptr;
    SectionDrawing drawing = plan ? SectionDrawing::of(m_record.repair.assessment, *plan, m_facts.assumptions)
                                  : SectionDrawing::of(m_record.repair.assessment);
    drawing.progress = progressOf(m_record);
    const double width = m_paper.width();
    const Theme theme(Metrics(m_paper.px(1)), DayNight::Day, Hand::Right);
    // Drawn once beside the paper to learn how much depth is exaggerated.
    QImage beside(1, 1, QImage::Format_ARGB32);
    QPainter learner(&beside);
    const double exaggeration =
        paintSection(learner, QRectF(0, 0, m_paper.px(width), m_paper.px(sectionHeight)), drawing, theme);
    m_paper.heading(tr("Section"), sectionHeight + 20);
    m_paper.drawing(width, sectionHeight, [drawing, theme](QPainter& painter, const QRectF& rect) {
        painter.setRenderHint(QPainter::Antialiasing);
        paintSection(painter, rect, drawing, theme);
    });
    m_paper.small(tr("To scale; depth drawn %1 times as large as width.").arg(m_words.number(exaggeration, 1)));
}

void JobTables::plans()
{
    for (const PlanRecord& each : m_record.plans)
        plan(each);
}

void JobTables::plan(const PlanRecord& record)
{
    const bool last = &record == m_record.plan();
    m_paper.heading(m_record.plans.size() == 1 ? tr("Plan") : tr("Plan %1").arg(record.version));
    m_paper.line(tr("Accepted %1").arg(told(record.told)));
    if (!last)
        m_paper.line(tr("Another plan took its place."));
    planFigures(record.accepted.plan);
    lifts(record.accepted.plan);
    batchesPlanned(record.accepted.plan);
    reasons(record.accepted.plan);
}

void JobTables::planFigures(const RepairPlan& plan)
{
    std::vector<std::pair<QString, QString>> rows{
        {tr("Filler"),
         (plan.filler ? m_words.filler(*plan.filler) + u", "_s : QString()) + sheetName(plan.sheetId, plan.sheetHash)},
        {tr("Filler in all"), m_words.mass(plan.fillerTotal)},
        {tr("Hardener in all"), m_words.hardener(plan.hardenerTotal)},
        {tr("Cavity"), m_words.volume(plan.cavity)},
        {tr("Built proud"), m_words.volume(plan.allowances.proud)},
        {tr("Cure shrinkage"), m_words.volume(plan.allowances.shrinkage)},
        {tr("Left on the board"), m_words.mass(plan.allowances.boardLoss)}};
    if (plan.peakLimit)
        rows.emplace_back(tr("Heat limit"), m_words.temperature(*plan.peakLimit));
    if (plan.finish.coats > 0)
        rows.emplace_back(tr("Finish"),
                          tr("%1, %2 in all; coats: %3; at most %4 a coat and %5 in all; %6")
                              .arg(m_words.filler(plan.finish.filler), m_words.thickness(plan.finish.thickness),
                                   QString::number(plan.finish.coats), m_words.thickness(plan.finish.limitACoat),
                                   m_words.thickness(plan.finish.limitInAll),
                                   sheetName(plan.finishSheetId, plan.finishSheetHash)));
    rows.emplace_back(tr("Ready for primer"), tr("%1 after accepting").arg(m_words.longDuration(plan.readyForPrimer)));
    rows.emplace_back(tr("Times from"), plan.engine);
    m_paper.pairs(rows);
}

void JobTables::lifts(const RepairPlan& plan)
{
    std::vector<QStringList> rows;
    for (std::size_t i = 0; i < plan.lifts.size(); ++i) {
        const Lift& each = plan.lifts[i];
        rows.push_back({layerName(int(i), each.face), m_words.filler(each.filler), m_words.fineLength(each.thickness),
                        each.peak ? m_words.temperature(*each.peak) : QString(u"–"_s)});
    }
    m_paper.table({{tr("Lift"), 2}, {tr("Filler"), 2}, {tr("Thickness"), 1}, {tr("Hottest"), 1}}, rows);
}

void JobTables::batchesPlanned(const RepairPlan& plan)
{
    std::vector<QStringList> rows;
    const auto add = [&](const std::vector<Batch>& batches, bool finishing) {
        for (std::size_t i = 0; i < batches.size(); ++i) {
            const Batch& each = batches[i];
            rows.push_back({batchName({finishing, static_cast<int>(i)}), m_words.mass(each.mix.filler),
                            m_words.hardener(each.mix.hardener), m_words.length(each.mix.puddle),
                            m_words.fineLength(each.mix.puddleHeight), m_words.length(each.mix.bead),
                            m_words.duration(each.times.boardGel), m_words.duration(each.times.gel),
                            m_words.duration(each.times.sand)});
        }
    };
    add(plan.batches, false);
    add(plan.finish.batches, true);
    m_paper.table({{tr("Batch"), 1.7},
                   {tr("Filler"), 1},
                   {tr("Hardener"), 1.1},
                   {tr("Puddle"), 1},
                   {tr("Height"), 1},
                   {tr("Bead"), 1},
                   {tr("Board sets"), 1},
                   {tr("Panel sets"), 1},
                   {tr("Sands"), 1}},
                  rows);
}

void JobTables::reasons(const RepairPlan& plan)
{
    for (const Reason& each : plan.reasons)
        m_paper.line(m_words.reason(each));
    for (const RejectedFiller& each : plan.rejected)
        m_paper.small(tr("Not %1: %2").arg(m_words.filler(each.filler), m_words.reason(each.reason)));
}

void JobTables::photos()
{
    std::vector<PaperDocument::Captioned> all;
    for (const Kept<PhotoTaken>& each : m_record.repair.photos) {
        if (m_facts.stop.stop_requested())
            return; // a picture is what takes longest
        const QString caption = photoMomentName(each.what.moment) + u", "_s + told({each.at, each.person, 0});
        QImage image = QImage::fromData(m_facts.picture ? m_facts.picture(each.what.hash) : QByteArray());
        if (image.isNull()) {
            all.push_back({[](QPainter& painter, const QRectF& rect) { painter.drawRect(rect); },
                           tr("%1: the picture cannot be read").arg(caption)});
            continue;
        }
        if (std::max(image.width(), image.height()) > longestTheSide)
            image = image.scaled(QSize(int(longestTheSide), int(longestTheSide)), Qt::KeepAspectRatio,
                                 Qt::SmoothTransformation);
        all.push_back({[image](QPainter& painter, const QRectF& rect) { drawPhoto(painter, rect, image); }, caption});
    }
    QStringList missing;
    for (const PhotoMoment each : m_record.photosMissing)
        missing << photoMomentInList(each);
    if (all.empty() && !m_record.handedOver)
        return;
    m_paper.heading(tr("Photos"), photoHeight + 20);
    m_paper.drawings(photoWidth, photoHeight, all);
    if (!missing.isEmpty())
        m_paper.line(tr("No photo: %1").arg(missing.join(u", "_s)));
}

} // namespace strandbench
