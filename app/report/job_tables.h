// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of a job sheet, each from the record to the paper. Inside app/report only.
#pragma once

#include "report/job_sheet.h"

#include <QCoreApplication>

namespace strandbench {

class JobTables {
    Q_DECLARE_TR_FUNCTIONS(JobSheet)
public:
    JobTables(PaperDocument& paper, const JobRecord& record, const SheetFacts& facts, const Words& words)
        : m_paper(paper), m_record(record), m_facts(facts), m_words(words)
    {}

    void identity();
    void deviations();
    void section();
    void found();
    void plans();
    void readings();
    void batches();
    void layers();
    void steps();
    void parkings();
    void notes();
    void photos();
    void handOverTests();

    /// "SMC · through hole": what the panel is, as far as it is known.
    [[nodiscard]] static QString partOf(const JobRecord& record, const Words& words);

private:
    void plan(const PlanRecord& plan);
    void planFigures(const RepairPlan& plan);
    void lifts(const RepairPlan& plan);
    void batchesPlanned(const RepairPlan& plan);
    void reasons(const RepairPlan& plan);
    void clocks();
    [[nodiscard]] QString when(const Instant& at) const; ///< with its day where there are several
    [[nodiscard]] QString told(const Told& told) const;  ///< "08:12, Ada"
    /// "lift 2, front face"; a coat has no face.
    [[nodiscard]] QString layerName(int index, const std::optional<Face>& face) const;
    [[nodiscard]] QString against(Duration predicted, const std::optional<Duration>& told) const;
    [[nodiscard]] QString sheetName(const QString& id, const QByteArray& hash) const;

    PaperDocument& m_paper;
    const JobRecord& m_record;
    const SheetFacts& m_facts;
    const Words& m_words;
};

} // namespace strandbench
