// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/ask_screen.h"

#include "screens/frame/choice_screen.h"
#include "screens/frame/message_screen.h"
#include "screens/job/take_in_screen.h"
#include "words/notes.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(AskScreen)
};

std::vector<SideKey> keysOf(const Repair& repair, const Ways& ways)
{
    std::vector<SideKey> keys;
    if (repair.handedOverAt)
        return keys;
    if (ways.photos)
        keys.push_back({u"photos"_s, Says::tr("Photos"), {}, Pictogram::None, ways.photos});
    if (ways.notes)
        keys.push_back({u"notes"_s, Says::tr("Notes"), {}, Pictogram::None, ways.notes});
    if (ways.answers)
        keys.push_back({u"change_answer"_s, Says::tr("Change an answer"), {}, Pictogram::None, ways.answers});
    return keys;
}

QString stays(const Repair& repair, bool running)
{
    if (repair.parked || repair.handedOverAt)
        return {};
    return running ? Says::tr("The mix on this panel goes on curing and its clock runs on.")
                   : Says::tr("Nothing is lost: parked, it waits on the rail at this very step.");
}

} // namespace

Screen* askScreenOf(const Surroundings& around, const Repair& repair, const Ways& ways,
                    const std::function<void()>& park, QWidget* parent)
{
    MessageScreen::Spec spec;
    spec.name = u"screen_ask"_s;
    spec.context = contextOf(repair, around.words);
    spec.sign = Pictogram::StopHand;
    spec.signName = Says::tr("Stop");
    spec.sentence = Says::tr("Stop here and ask");
    spec.headline = Says::tr("Ask the supervisor before you go on.");
    const bool running =
        std::any_of(repair.runs.begin(), repair.runs.end(), [](const BatchRun& r) { return r.running(); });
    spec.text = stays(repair, running);
    spec.small = Says::tr("The safety data sheet and the maker’s repair manual come first.");
    spec.refuses = true;
    spec.wayOn = Says::tr("Answered: go on");
    spec.go = ways.present;
    spec.keys = keysOf(repair, ways);
    if (!running && !repair.parked && !repair.handedOverAt) {
        spec.holdName = u"park_it"_s;
        spec.holdTitle = Says::tr("Park it");
        spec.held = park;
    }
    return new MessageScreen(around, std::move(spec), parent);
}

Screen* parkWhyScreen(const Surroundings& around, const Repair& repair,
                      const std::function<void(const QString&)>& chosen, QWidget* parent)
{
    ChoiceScreen::Spec spec;
    spec.name = u"screen_park_why"_s;
    spec.context = contextOf(repair, around.words);
    spec.sentence = Says::tr("Why is it parked?");
    for (const QString& code : parkReasons())
        spec.tiles.push_back(
            {u"why_"_s + code, Words::title(parkReason(code)), {}, {}, false, false, [chosen, code] { chosen(code); }});
    spec.moreTitle = Says::tr("More");
    return new ChoiceScreen(around, std::move(spec), parent);
}

Screen* parkToScreen(const Surroundings& around, const Repair& repair, const QString& reason, QWidget* parent)
{
    ChoiceScreen::Spec spec;
    spec.name = u"screen_park_to"_s;
    spec.context = contextOf(repair, around.words) + u" · "_s + parkReason(reason);
    spec.sentence = Says::tr("Park it: where, or with whom?");
    spec.moreTitle = Says::tr("More");
    auto screen = std::make_shared<ChoiceScreen*>(nullptr);
    const auto add = [&](const QString& name, const QString& to) {
        spec.tiles.push_back(
            {u"to_"_s + name, Words::title(parkedWhere(to)), {}, {}, false, false, [screen, to, reason] {
                 Q_EMIT(*screen)->acts({Parked{to, {}, reason}});
             }});
    };
    // The likely place first, then what needs no other shop; the other shops last.
    const std::vector<QString> places = parkPlaces(reason);
    add(places.front(), places.front());
    if (places.front() != u"supervisor"_s)
        add(u"supervisor"_s, u"supervisor"_s);
    add(u"nobody"_s, {});
    int number = 0;
    for (const QString& person : peopleOf(around.settings))
        add(u"person_%1"_s.arg(number++), person);
    for (std::size_t i = 1; i < places.size(); ++i)
        if (places[i] != u"supervisor"_s)
            add(places[i], places[i]);
    *screen = new ChoiceScreen(around, std::move(spec), parent);
    return *screen;
}

Screen* parkedScreenOf(const Surroundings& around, const Repair& repair, const Ways& ways, QWidget* parent)
{
    const Parked& parked = *repair.parked;
    MessageScreen::Spec spec;
    spec.name = u"screen_parked"_s;
    spec.context = contextOf(repair, around.words);
    spec.sign = Pictogram::Parked;
    spec.signName = Says::tr("Parked");
    const bool told = !parked.to.isEmpty() || !parked.reason.isEmpty();
    spec.sentence = told ? Says::tr("Parked: %1").arg(parkedWhere(parked.to)) : Says::tr("Parked");
    auto screen = std::make_shared<MessageScreen*>(nullptr);
    if (parked.because.empty()) {
        spec.headline = parked.reason.isEmpty() ? Says::tr("It was parked to ask.")
                                                : Words::title(parkReason(parked.reason)) + u'.';
        spec.text = parked.reason.isEmpty() || parked.reason == u"waits_for_answer"_s
                        ? Says::tr("Go on only when the answer is there.")
                        : Says::tr("Taken up again, it goes on at the very step where it was.");
        spec.wayOn = Says::tr("Take it up again");
        spec.go = [screen] { Q_EMIT(*screen)->acts({TakenUpAgain{}}); };
    } else {
        spec.refuses = true;
        spec.headline = around.words.stopHeadline(parked.because.front());
        spec.text = Says::tr("When what was wrong has been put right, assess it again from the first question.");
        spec.wayOn = Says::tr("Leave it parked");
        spec.go = ways.home;
    }
    spec.holdName = u"assess_again"_s;
    spec.holdTitle = Says::tr("Assess again");
    spec.held = [screen] { Q_EMIT(*screen)->acts({AssessAgain{}}); };
    *screen = new MessageScreen(around, std::move(spec), parent);
    return *screen;
}

} // namespace strandbench
