// SPDX-License-Identifier: GPL-3.0-or-later
// A whole repair by touches, each of them measured.
#pragma once

#include "watched_glass.h"

#include "walk/demo_jobs.h"

namespace strandbench::tapbench {

/// One tap, and what it took.
struct Tap {
    QString control;
    QString screen;          ///< on which it was tapped
    QString answer;          ///< the screen that it led to
    bool written = false;    ///< an act went to the disk in between
    Spent pressed;           ///< from the touch to the pressed look
    Spent changed;           ///< from letting go to the first picture after it
    Spent answered;          ///< from letting go to the first whole picture of the screen that it led to
    Spent repaint;           ///< of the window as it stood then, once
    bool pressShown = false; ///< the control looks pressed
};

class TappedWalk {
public:
    TappedWalk(WatchedGlass& glass, ScriptedBench& bench, DemoJob job);
    ~TappedWalk() { m_glass.look = {}; }
    TappedWalk(const TappedWalk&) = delete;
    TappedWalk& operator=(const TappedWalk&) = delete;
    /// From taking in to handing over. Ends the program where a tap is not answered.
    [[nodiscard]] std::vector<Tap> all();

private:
    void letTimePass(const Touch& touch);
    [[nodiscard]] QPoint placeOf(const QString& control);
    [[nodiscard]] Tap measure(const QString& control);
    void press(Tap& tap, QPoint at);
    void letGo(Tap& tap, QPoint at);
    [[nodiscard]] Spent repaint();

    WatchedGlass& m_glass;
    ScriptedBench& m_bench;
    QString m_job;
    Walk m_walk;
    bool m_written = false; ///< since the finger was lifted last
    QObject m_ear;
};

} // namespace strandbench::tapbench
