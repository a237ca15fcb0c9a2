// SPDX-License-Identifier: GPL-3.0-or-later
#include "school/tour.h"

#include "screens/frame/message_screen.h"

#include <QCoreApplication>

#include <array>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(Tour)
};

struct Page {
    Pictogram sign;
    const char* sentence;
    const char* text;
};

constexpr std::array<Page, 8> pages{{
    {Pictogram::TakeIn, QT_TRANSLATE_NOOP("Tour", "One panel, one card, one step at a time"),
     QT_TRANSLATE_NOOP("Tour", "Every repair hangs on the rail as a card. Tap it: the glass shows the one step that is "
                               "next. Several run at once; none is lost.")},
    {Pictogram::Assess, QT_TRANSLATE_NOOP("Tour", "First find out what it is"),
     QT_TRANSLATE_NOOP("Tour",
                       "Magnet, gauge, edge and sound tell the material. What nobody can tell stays unknown, and "
                       "unknown is a stop.")},
    {Pictogram::StopHand, QT_TRANSLATE_NOOP("Tour", "A stop is an answer too"),
     QT_TRANSLATE_NOOP("Tour", "Where filler does not belong, the glass says why, and what to do instead. You leave a "
                               "stop by putting it right and assessing again.")},
    {Pictogram::Prepare, QT_TRANSLATE_NOOP("Tour", "Prepare in order, gear first"),
     QT_TRANSLATE_NOOP("Tour", "Each step is confirmed when it is done. Most repairs that fail were lost here.")},
    {Pictogram::Mix, QT_TRANSLATE_NOOP("Tour", "Puddle and bead are drawn at true size"),
     QT_TRANSLATE_NOOP("Tour", "Lay filler and hardener as drawn, or weigh them. The clock starts when the hardener "
                               "meets the filler: tap 'Hardener in'.")},
    {Pictogram::ClearEdges, QT_TRANSLATE_NOOP("Tour", "The clock counts to the next act"),
     QT_TRANSLATE_NOOP("Tour",
                       "Spread, clear the edges before it gels, then hands off. Every mix that runs stays in the "
                       "dark bar at the top: tap it to go there.")},
    {Pictogram::SandingBlock, QT_TRANSLATE_NOOP("Tour", "Sand when nail and paper say so"),
     QT_TRANSLATE_NOOP("Tour", "No mark by the nail, powder on the paper. Then the next lift, the other face, or the "
                               "finish.")},
    {Pictogram::Inspect, QT_TRANSLATE_NOOP("Tour", "Now practise: nothing here is in the shop’s record"),
     QT_TRANSLATE_NOOP("Tour", "On a practice panel you decide alone, and see what it would have come to. Safety data "
                               "sheet and the vehicle maker’s manual come first, at the bench as here.")},
}};

} // namespace

int tourPages() { return static_cast<int>(pages.size()); }

Screen* tourPage(const Surroundings& around, int page, const std::function<void()>& next,
                 const std::function<void()>& skip, QWidget* parent)
{
    const Page& shown = pages.at(static_cast<std::size_t>(page));
    const bool last = page + 1 == tourPages();
    MessageScreen::Spec spec;
    spec.name = u"screen_tour"_s;
    spec.context = Says::tr("Tour, %1 of %2").arg(page + 1).arg(tourPages());
    spec.sign = shown.sign;
    spec.signName = QCoreApplication::translate("Tour", shown.sentence);
    spec.sentence = QCoreApplication::translate("Tour", shown.sentence);
    spec.headline = QCoreApplication::translate("Tour", shown.text);
    spec.wayOn = last ? Says::tr("Begin") : Says::tr("Next");
    spec.go = next;
    if (!last)
        spec.keys.push_back({u"skip_tour"_s, Says::tr("Skip the tour"), {}, Pictogram::None, skip});
    spec.ofARepair = false;
    return new MessageScreen(around, std::move(spec), parent);
}

} // namespace strandbench
