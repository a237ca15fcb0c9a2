// SPDX-License-Identifier: GPL-3.0-or-later
// A log with one repair, walked to its hand-over, to be reported of.
#pragma once

#include "program.h"
#include "repair_script.h"

#include "exchange/sheets.h"
#include "repairlog/repair_log.h"
#include "review/job_record.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>

namespace strandbench {

class Report : public testing::Test {
protected:
    void SetUp() override
    {
        ASSERT_TRUE(m_folder.isValid());
        auto log = RepairLog::open(path(), LogMode::ReadWrite);
        ASSERT_TRUE(log) << log.error().detail.toStdString();
        test::RepairScript script;
        script.walkTo(Station::Done);
        goOn(script);
        for (const Event& each : script.events()) {
            EventDraft draft{each.repair, each.person, each.payload, each.at, {}};
            if (auto* taken = std::get_if<TakenIn>(&draft.payload))
                taken->panel = m_panel;
            if (auto* accepted = std::get_if<PlanAccepted>(&draft.payload))
                accepted->assessment.panel = m_panel;
            const auto written = (*log)->append(draft);
            ASSERT_TRUE(written) << written.error().detail.toStdString();
        }
        m_day = localDay(script.events().front().at);
        m_repair = script.repair().id;
        const auto events = (*log)->events(m_repair);
        ASSERT_TRUE(events);
        m_record = *recordOf(*events, demoCatalogue());
        m_head = *(*log)->head();
    }

    /// What happens after the handing over.
    virtual void goOn(test::RepairScript&) {}

    const QString m_panel = QStringLiteral("skirt \"panel\",\nright rear"); ///< what CSV must quote
    [[nodiscard]] QString path() const { return m_folder.filePath(QStringLiteral("bench.sqlite")); }
    [[nodiscard]] QString inFolder(const QString& name) const { return m_folder.filePath(name); }
    [[nodiscard]] Ran report(const QStringList& more) const
    {
        return program(
            QStringList{QStringLiteral("report"), QStringLiteral("--log"), path(), QStringLiteral("--day"), m_day} +
            more);
    }
    /// Refused with one line that holds all of these.
    static void expectRefused(const Ran& ran, const QStringList& holds)
    {
        EXPECT_EQ(ran.status, 2);
        EXPECT_TRUE(ran.out.isEmpty());
        ASSERT_EQ(ran.messages().size(), 1) << ran.err.toStdString();
        for (const QString& each : holds)
            EXPECT_TRUE(ran.messages()[0].contains(each)) << ran.messages()[0].toStdString();
    }

    QTemporaryDir m_folder;
    QString m_day;
    QUuid m_repair;
    JobRecord m_record;
    ChainHead m_head;
};

} // namespace strandbench
