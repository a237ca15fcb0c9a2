// SPDX-License-Identifier: GPL-3.0-or-later
// A day looked through: narrowed down, a repair opened, signed off or returned.
#include "screens/record/closing_screen.h"
#include "screens/beside/note_screens.h"
#include "screens/record/repair_lots_screen.h"
#include "screens/record/review_choices.h"
#include "screens/paper/sheet_screen.h"
#include "screens/record/timeline_screen.h"
#include "shell/bench_window.h"

#include <QPointer>

using namespace Qt::StringLiterals;

namespace strandbench {

void BenchWindow::reviewDay(const QString& day)
{
    m_review.wish.day = day;
    m_review.read.clear();
    place(Place::Review);
}

Screen* BenchWindow::makeDayReview()
{
    auto* screen = new DayReviewScreen(*m_around, m_review.wish, this);
    connect(screen, &DayReviewScreen::wasRead, this,
            [this](const std::vector<RepairDigest>& repairs) { m_review.read = repairs; });
    connect(screen, &DayReviewScreen::repairTapped, this, [this](const QUuid& id) { showRecord(id, Place::Review); });
    connect(screen, &DayReviewScreen::dayWanted, this, &BenchWindow::reviewDay);
    connect(screen, &DayReviewScreen::narrowWanted, this, [this] { place(Place::ReviewBy); });
    connect(screen, &DayReviewScreen::figuresWanted, this, [this] { place(Place::Figures); });
    connect(screen, &DayReviewScreen::filesWanted, this, [this] { place(Place::DayFiles); });
    if (m_review.ownBench.isEmpty())
        m_parts.bench.recorder().readHead([window = QPointer<BenchWindow>(this)](const Logged<ChainHead>& head) {
            if (window && head)
                window->m_review.ownBench = head->origin;
        });
    return screen;
}

Place BenchWindow::afterClosing() const { return m_afterRecord == Place::Review ? Place::Review : Place::Record; }

Screen* BenchWindow::makeClosing()
{
    auto* screen = new ClosingScreen(*m_around, m_recordOf, this);
    connect(screen, &ClosingScreen::signOffWanted, this,
            [this] { askSupervisor(m_recordOf, SignedOff{}, afterClosing()); });
    connect(screen, &ClosingScreen::returnWanted, this, [this] { place(Place::ReturnWhy); });
    connect(screen, &ClosingScreen::correctWanted, this, [this] { place(Place::CorrectWhich); });
    connect(screen, &ClosingScreen::otherWanted, this, [this](const QUuid& id) { showRecord(id, m_afterRecord); });
    return screen;
}

Screen* BenchWindow::makeReturnText()
{
    auto* screen = new NoteTextScreen(
        *m_around,
        {u"screen_return_text"_s, tr("Returned by the supervisor"), tr("What is to be mended?"), tr("Return it")},
        this);
    connect(screen, &NoteTextScreen::written, this, [this](const Noted& note) {
        askSupervisor(m_recordOf, Returned{u"other"_s, note.text}, afterClosing());
    });
    return screen;
}

Screen* BenchWindow::makeReview()
{
    switch (m_place) {
    case Place::ReviewBy:
        return makeNarrowByScreen(
            *m_around, m_review.wish.day,
            [this](NarrowBy by) {
                m_review.by = by;
                if (by != NarrowBy::Nothing)
                    return place(Place::ReviewValue);
                m_review.wish.narrowing = {};
                m_review.wish.narrowed.clear();
                place(Place::Review);
            },
            this);
    case Place::ReviewValue: {
        auto* screen =
            new NarrowValueScreen(*m_around, m_review.wish.day, m_review.by, m_review.read, m_review.ownBench, this);
        connect(screen, &NarrowValueScreen::chosen, this, [this](const Narrowing& narrowing, const QString& inWords) {
            m_review.wish.narrowing = narrowing;
            m_review.wish.narrowed = inWords;
            place(Place::Review);
        });
        return screen;
    }
    case Place::Closing:
        return makeClosing();
    case Place::ReturnWhy:
        return makeReturnWhyScreen(
            *m_around, tr("Returned by the supervisor"),
            [this](const QString& reason) {
                if (reason == u"other"_s)
                    return place(Place::ReturnText);
                askSupervisor(m_recordOf, Returned{reason}, afterClosing());
            },
            this);
    case Place::ReturnText:
        return makeReturnText();
    case Place::Timeline:
        return new TimelineScreen(*m_around, m_recordOf, this);
    case Place::RepairLots: {
        auto* screen = new RepairLotsScreen(*m_around, m_recordOf, this);
        connect(screen, &RepairLotsScreen::lotTapped, this,
                [this](const StockLot& lot) { traceLot(lot, Place::RepairLots); });
        return screen;
    }
    case Place::DayFiles:
        return new DaySheetsScreen(*m_around, m_review.wish.day, this);
    default:
        break;
    }
    return makeDayReview();
}

} // namespace strandbench
