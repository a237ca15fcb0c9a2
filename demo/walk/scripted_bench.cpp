// SPDX-License-Identifier: GPL-3.0-or-later
#include "walk/scripted_bench.h"

#include "exchange/rules.h"
#include "exchange/sheets.h"
#include "school/practice_flow.h"

#include <QDateTime>
#include <QFileInfo>
#include <QDir>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The least that libsodium takes: what a script waits for is not the hash.
constexpr PinCost cheap{1, 8192};

} // namespace

ScriptedBench::ScriptedBench(Spec spec)
    : m_clock(spec.start),
      m_means(spec.means),
      m_door(pinPathOf(spec.log), m_clock, cheap),
      m_recorder(std::make_unique<Recorder>(spec.log)),
      m_assumptions(AssumptionsFile::besideLog(spec.log))
{
    const QString from = lotsFromDay(spec.start);
    auto opened = spec.restoring ? Logged<BenchBook>(BenchBook{})
                  : spec.looks   ? m_recorder->openToLook(from)
                                 : m_recorder->open(from);
    PlanningSet planning = spec.planning
                               ? *spec.planning
                               : PlanningSet{builtInTable(), demoCatalogue(), builtInSteps(), Assumptions{}, m_engine};
    m_bench = std::make_unique<Bench>(Bench::Parts{*m_recorder, m_clock, std::move(planning), spec.computing, &m_door});
    const ReadAssumptions read = m_assumptions.load();
    m_assumptionFaults = read.faults;
    if (!spec.planning)
        m_bench->setAssumptions(read.book);
    if (!opened) {
        m_trouble = opened.error();
        return;
    }
    if (const auto fault = m_bench->load(*opened)) {
        m_trouble = LogFailure{LogTrouble::Damaged, fault->field + u": "_s + fault->value};
        return;
    }
    if (spec.keeps || spec.restoring)
        m_keeper = std::make_unique<Keeper>(spec.log, m_clock, spec.computing);
    if (spec.ports)
        m_instruments = std::make_unique<Instruments>(m_clock, spec.ports);
    if (spec.practises)
        m_practice = std::make_unique<PracticeFlow>(*m_bench, PracticeFile::besideLog(spec.log));
    m_window = std::make_unique<BenchWindow>(BenchWindow::Parts{
        *m_bench, SettingsFile(QFileInfo(spec.log).absoluteDir().filePath(u"bench.ini"_s)), spec.settings,
        spec.pixelsPerMillimetre, [this](const QString& language) { m_language.speak(language); },
        [this](const AssumptionBook& book) { return m_assumptions.save(book); }, spec.player, spec.cameras,
        m_instruments.get(), spec.bell, m_keeper.get(), [this] { m_again = true; }, spec.restoring, m_practice.get()});
    if (!spec.moves)
        m_window->passage().setLasting(0);
    m_window->setFixedSize(spec.glass);
    m_window->show();
    thumb().settle();
}

ScriptedBench::~ScriptedBench() = default;

const Repair* ScriptedBench::repair(const QString& job) const
{
    for (const Repair* each : m_bench->openRepairs())
        if (each->job == job)
            return each;
    return nullptr;
}

Instant workingMorning()
{
    const QDateTime eight(QDate(2026, 9, 14), QTime(8, 0), Qt::UTC);
    return {eight.toMSecsSinceEpoch(), 3'600'000, u"5f0c1c1e-demo"_s, 0};
}

} // namespace strandbench
