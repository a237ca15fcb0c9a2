// SPDX-License-Identifier: GPL-3.0-or-later
// A screen of what many repairs say: they are read beside the glass, with progress and a way to stop, for a period that
// a key changes.
#pragma once

#include "bench/worker.h"
#include "screens/figures/figure_found.h"
#include "screens/frame/screen.h"

#include <atomic>
#include <memory>

namespace strandbench {

class RepairsScreen : public Screen {
    Q_OBJECT
public:
    ~RepairsScreen() override; ///< what is still being read is stopped
    [[nodiscard]] FigurePeriod period() const { return m_period; }

Q_SIGNALS:
    void periodChosen(strandbench::FigurePeriod period);
    void readingStopped(); ///< by a tap, before anything could be shown

protected:
    using Repairs = std::shared_ptr<const Digests>;
    RepairsScreen(const Surroundings& around, const QString& name, FigurePeriod period, QWidget* parent);

    /// The frame with the body, the wait in its place, and the keys beside.
    void buildAround(const QString& sentence);
    /// Reads the period's repairs: the wait, then workOn() beside the glass, then what that shows.
    void read();
    /// Computes of the repairs, away from the glass: touches no widget. What it answers shows it.
    [[nodiscard]] virtual Worker::Work workOn(const Repairs& repairs) = 0;
    [[nodiscard]] QVBoxLayout* body() const { return m_bodyColumn; }
    void addKey(QWidget* key) { m_keys->addWidget(key); }
    /// "Repairs worked on from 16/08/2026 to 14/09/2026"
    [[nodiscard]] QString daysText() const;

private:
    void stop();
    void wait(bool waiting);
    void tellProgress(int done, int of);
    void take(const Logged<Digests>& found);
    void choose(FigurePeriod period);
    void namePeriod();
    [[nodiscard]] QWidget* makeWait();

    FigurePeriod m_period;
    QWidget* m_wait = nullptr;
    FitLabel* m_progress = nullptr;
    QWidget* m_body = nullptr;
    QVBoxLayout* m_bodyColumn = nullptr;
    QBoxLayout* m_keys = nullptr;
    TapButton* m_periodKey = nullptr;
    std::shared_ptr<std::atomic<bool>> m_cancelled;
    Worker m_worker;
};

} // namespace strandbench
