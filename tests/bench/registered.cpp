// SPDX-License-Identifier: GPL-3.0-or-later
#include "registered.h"

#include <benchmark/benchmark.h>

#include <array>

namespace strandbench::bench {
namespace {

constexpr int repetitions = 11;

class Medians final : public benchmark::ConsoleReporter {
public:
    explicit Medians(std::map<std::string, double>& medians) : ConsoleReporter(OO_Tabular), m_medians(medians) {}
    void ReportRuns(const std::vector<Run>& runs) override
    {
        for (const Run& each : runs)
            if (each.run_type == Run::RT_Aggregate && each.aggregate_name == "median")
                m_medians[each.run_name.function_name] = each.GetAdjustedRealTime();
        ConsoleReporter::ReportRuns(runs);
    }

private:
    std::map<std::string, double>& m_medians;
};

} // namespace

std::map<std::string, double> medianMilliseconds(const Works& works)
{
    for (const auto& [name, work] : works)
        benchmark::RegisterBenchmark(name.c_str(),
                                     [work = work](benchmark::State& state) {
                                         for (auto turn : state) {
                                             static_cast<void>(turn);
                                             work();
                                         }
                                     })
            ->Unit(benchmark::kMillisecond)
            ->UseRealTime()
            ->MinTime(0.05)
            ->Repetitions(repetitions)
            ->DisplayAggregatesOnly();
    std::string program = "bench";
    std::string mixed = "--benchmark_enable_random_interleaving=true";
    std::array<char*, 3> arguments{program.data(), mixed.data(), nullptr};
    int count = 2;
    benchmark::Initialize(&count, arguments.data());
    std::map<std::string, double> medians;
    Medians reporter(medians);
    benchmark::RunSpecifiedBenchmarks(&reporter);
    return medians;
}

} // namespace strandbench::bench
