// SPDX-License-Identifier: GPL-3.0-or-later
// The program's own window on a log, with a clock that is set: opened, closed and opened again as a bench is.
#pragma once

#include "bench/assumptions_file.h"
#include "gear/instruments.h"
#include "shell/bench_window.h"
#include "shell/language.h"
#include "walk/set_clock.h"
#include "walk/thumb.h"

namespace strandbench {

class PracticeFlow;

class ScriptedBench {
public:
    struct Spec {
        QString log;   ///< path of the log; the settings lie beside it
        Instant start; ///< what the clock shows when the bench opens
        Settings settings;
        QSize glass{1280, 800};              ///< pixels
        double pixelsPerMillimetre = 5.87;   ///< 1280 pixels on 217 mm
        std::optional<PlanningSet> planning; ///< the program's own when empty
        Worker::Runs computing = Worker::Runs::Inline;
        Player* player = nullptr;      ///< of tones
        CameraFeed* cameras = nullptr; ///< of photos
        Bell* bell = nullptr;          ///< of alarms
        bool looks = false;            ///< beside another copy that has the bench
        bool keeps = false;            ///< the log is kept: backups, checks, other logs
        bool restoring = false;        ///< the log could not be opened: only a backup is to be chosen
        bool practises = false;        ///< on the panels that the program carries
        Thumb::Means means = Thumb::Means::Touch;
        bool moves = false;           ///< one screen moves in after another; else each stands at once
        Instruments::Look ports = {}; ///< of scale and thermo-hygrometer; empty: none can be connected
    };
    /// Opens the log and shows the window. trouble() says why when the log does not open.
    explicit ScriptedBench(Spec spec);
    ~ScriptedBench();
    ScriptedBench(const ScriptedBench&) = delete;
    ScriptedBench& operator=(const ScriptedBench&) = delete;

    [[nodiscard]] const std::optional<LogFailure>& trouble() const { return m_trouble; }
    [[nodiscard]] BenchWindow& window() { return *m_window; }
    [[nodiscard]] Bench& bench() { return *m_bench; }
    [[nodiscard]] SetClock& clock() { return m_clock; }
    /// To the supervisor's acts; its PIN costs as little as can be.
    [[nodiscard]] PinDoor& door() { return m_door; }
    [[nodiscard]] Thumb thumb() { return Thumb(*m_window, m_means); }
    [[nodiscard]] Keeper& keeper() { return *m_keeper; }
    /// That Spec::practises asked for.
    [[nodiscard]] PracticeFlow& practice() { return *m_practice; }
    /// Those that Spec::ports asked for.
    [[nodiscard]] Instruments& instruments() { return *m_instruments; }
    /// True once the window wants to begin anew with the log as it lies there.
    [[nodiscard]] bool wantsToStartAgain() const { return m_again; }
    /// What of the file beside the log was not taken.
    [[nodiscard]] const Faults& assumptionFaults() const { return m_assumptionFaults; }
    /// The newest open repair of a job and panel; null when there is none.
    [[nodiscard]] const Repair* repair(const QString& job) const;

private:
    SetClock m_clock;
    Thumb::Means m_means;
    CureEngine m_engine;
    Language m_language;
    PinDoor m_door;
    std::unique_ptr<Recorder> m_recorder;
    std::unique_ptr<Bench> m_bench;
    std::unique_ptr<Keeper> m_keeper;
    bool m_again = false;
    std::unique_ptr<Instruments> m_instruments;
    std::unique_ptr<PracticeFlow> m_practice;
    std::unique_ptr<BenchWindow> m_window;
    AssumptionsFile m_assumptions;
    Faults m_assumptionFaults;
    std::optional<LogFailure> m_trouble;
};

/// A moment on a working morning, local time 08:00 at UTC, of an invented boot.
[[nodiscard]] Instant workingMorning();

} // namespace strandbench
