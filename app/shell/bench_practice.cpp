// SPDX-License-Identifier: GPL-3.0-or-later
// Practice below the ribbon: mixes that run stay a tap away, and nothing of it reaches the log.
#include "school/practice_flow.h"
#include "shell/bench_window.h"

namespace strandbench {

void BenchWindow::wirePractice()
{
    connect(m_parts.practice, &PracticeFlow::changed, this, [this] {
        if (workedAt() == Place::Practice)
            showAnew();
    });
    connect(m_parts.practice, &PracticeFlow::unitsWanted, this, &BenchWindow::changeUnits);
    connect(m_parts.practice, &PracticeFlow::troubled, this,
            [this](const QString& headline, const QString& whatToDo) { m_screen->showTrouble(headline, whatToDo); });
}

Screen* BenchWindow::makePractice() { return m_parts.practice->makeScreen(*m_around, this); }

void BenchWindow::practise(const std::vector<Payload>& payloads) { m_parts.practice->act(payloads); }

void BenchWindow::backInPractice()
{
    if (!m_parts.practice->back())
        showHome();
}

} // namespace strandbench
