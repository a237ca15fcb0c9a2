// SPDX-License-Identifier: GPL-3.0-or-later
// Help over what is shown: the screen below waits as it was left, with all that was entered.
#include "pictures/section_picture.h"
#include "pictures/step_picture.h"
#include "screens/help/glossary_screen.h"
#include "screens/help/help_screen.h"
#include "screens/help/legend_screen.h"
#include "screens/help/quick_card_screen.h"
#include "shell/bench_window.h"
#include "shell/help_topic.h"

#include <QMouseEvent>

namespace strandbench {

HelpTopic BenchWindow::helpTopic() const
{
    if (const Repair* repair = current(); repair && m_place == Place::Repair)
        return m_look ? topicOf(*m_look, *repair) : topicOf(nextStep(*repair), *repair, m_screen->objectName());
    return topicOf(m_place);
}

void BenchWindow::openHelp(Place page, bool straight)
{
    if (m_writing || !m_screen)
        return; // the screen is about to move on
    keepDraft();
    m_help = {m_screen, m_draftKey, m_place, helpTopic(), straight, false};
    m_screen->hide();
    m_screen = nullptr;
    m_draftKey.clear();
    place(page);
}

void BenchWindow::leaveHelp()
{
    if (!m_help.waiting || m_help.changed)
        return place(m_help.from);
    m_screen->hide(); // it may be the one whose tap is being handled
    m_screen->deleteLater();
    m_screen = std::exchange(m_help.waiting, nullptr);
    m_draftKey = m_help.waitingDraft;
    m_place = m_help.from;
    bringIn(m_screen, Heading::Out);
}

void BenchWindow::forgetWaiting()
{
    if (m_help.waiting)
        m_help.waiting->deleteLater();
    m_help.waiting = nullptr;
    m_help.changed = false;
}

void BenchWindow::showAnew()
{
    if (isHelp(m_place))
        m_help.changed = true;
    else
        place(m_place);
}

Screen* BenchWindow::makeHelp()
{
    switch (m_place) {
    case Place::Glossary: {
        auto* screen = new GlossaryScreen(*m_around, this);
        connect(screen, &GlossaryScreen::jobWanted, this, &BenchWindow::leaveHelp);
        return screen;
    }
    case Place::Legend: {
        auto* screen = new LegendScreen(*m_around, this);
        connect(screen, &LegendScreen::jobWanted, this, &BenchWindow::leaveHelp);
        return screen;
    }
    case Place::QuickCard:
        return new QuickCardScreen(*m_around, this);
    default:
        return makeHelpPage();
    }
}

Screen* BenchWindow::makeHelpPage()
{
    const Repair* repair = current();
    HelpScreen::Spec spec;
    spec.topic = m_help.topic;
    spec.ofARepair = repair != nullptr;
    if (repair)
        spec.context = contextOf(*repair, *m_words);
    spec.offersCard = m_help.from != Place::Practice; // its limits are asked there
    auto* screen = new HelpScreen(*m_around, spec, this);
    connect(screen, &HelpScreen::pageWanted, this, [this](HelpPage page) {
        switch (page) {
        case HelpPage::Words:
            return place(Place::Glossary);
        case HelpPage::Legend:
            return place(Place::Legend);
        case HelpPage::QuickCard:
            return place(Place::QuickCard);
        }
    });
    return screen;
}

void BenchWindow::mouseReleaseEvent(QMouseEvent* event)
{
    // A picture takes no tap itself: it comes through to the window.
    const QWidget* tapped = childAt(event->position().toPoint());
    if (!isHelp(m_place) && (qobject_cast<const SectionPicture*>(tapped) || qobject_cast<const StepPicture*>(tapped)))
        openHelp(Place::Legend, true);
}

} // namespace strandbench
