// SPDX-License-Identifier: GPL-3.0-or-later
// An apprentice's way through practice: which of its screens is shown, and what a tap leads to. It knows the bench's
// sheets and clock, and never its record.
#pragma once

#include "school/asks.h"
#include "practice/marking.h"
#include "practice/paced_time.h"
#include "school/practice_file.h"
#include "school/practice_home.h"
#include "words/evidence_words.h"

#include "bench/worker.h"

#include <QObject>

namespace strandbench {

class PracticeFlow final : public QObject {
    Q_OBJECT
public:
    /// The file is read once somebody practises. The bench outlives it.
    PracticeFlow(const Bench& bench, PracticeFile file, QObject* parent = nullptr);

    /// The screen of where the apprentice is.
    [[nodiscard]] Screen* makeScreen(const Surroundings& around, QWidget* parent);
    /// An answer of a screen that practice shares with the bench.
    void act(const std::vector<Payload>& payloads);
    /// One screen back; false: out of practice.
    [[nodiscard]] bool back();
    /// Begins a panel, whatever was begun.
    void begin(const PracticePanel& panel);
    [[nodiscard]] const std::optional<PracticeRun>& run() const { return m_run; }
    [[nodiscard]] const std::optional<Marking>& marking() const { return m_marking; }

Q_SIGNALS:
    void changed();     ///< another screen is to be shown
    void unitsWanted(); ///< the other system of units
    void troubled(const QString& headline, const QString& whatToDo);

private:
    enum class At { Tour, Home, Look, Asking, Marks, Mark, Replay, Skills, Paper };
    void go(At at);
    void next();
    void readOnce();
    void beginNext();
    void beginMade();
    [[nodiscard]] Screen* home(const Surroundings& around, QWidget* parent);
    [[nodiscard]] Screen* asking(const Surroundings& around, QWidget* parent);
    [[nodiscard]] Screen* mixing(const Surroundings& around, QWidget* parent);
    [[nodiscard]] Screen* clocking(const Surroundings& around, QWidget* parent);
    [[nodiscard]] Screen* marks(const Surroundings& around, QWidget* parent);
    [[nodiscard]] Screen* skills(const Surroundings& around, QWidget* parent);
    [[nodiscard]] Screen* looking(const Surroundings& around, QWidget* parent);
    void markIt();

    const Bench& m_bench;
    PracticeFile m_file;
    bool m_read = false;
    std::vector<PracticeEntry> m_entries;
    Faults m_faults; ///< of the file
    At m_at = At::Home;
    int m_tourPage = 0;
    std::optional<PracticeRun> m_run;
    std::vector<PanelTry> m_tried;
    PacedTime m_time;
    std::optional<Marking> m_marking;
    std::size_t m_mark = 0;
    QString m_person;   ///< at the bench
    QString m_skillsOf; ///< whose skills are shown
    Worker m_worker;
};

} // namespace strandbench
