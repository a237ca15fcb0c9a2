// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/station_screens.h"

#include "repair/photos.h"
#include "screens/job/ask_screen.h"
#include "screens/job/assess.h"
#include "screens/frame/choice_screen.h"
#include "screens/job/clock_screen.h"
#include "screens/beside/harm_screen.h"
#include "screens/job/measure_screens.h"
#include "screens/frame/message_screen.h"
#include "screens/job/mix_screen.h"
#include "screens/frame/phrases.h"
#include "screens/job/plan_screen.h"
#include "screens/job/refusal_screen.h"
#include "screens/job/replan_screen.h"
#include "screens/frame/side_key.h"
#include "screens/job/step_screen.h"
#include "screens/set_up/supervisor_screens.h"
#include "words/event_words.h"
#include "words/notes.h"
#include "words/role_words.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(StationScreens)
};

const std::vector<Step>& stepsOf(const Repair& repair, Stage stage)
{
    return stage == Stage::Finish ? repair.plan->finishing : repair.plan->prep;
}

/// The photo that belongs to a step: bare at the last cleaning before filling, and the guide coat.
std::optional<PhotoMoment> photoOfStep(const QString& code)
{
    if (code == u"dust_off"_s || code == u"wipe_metal"_s)
        return PhotoMoment::Bare;
    if (code == u"guide_coat"_s)
        return PhotoMoment::GuideCoat;
    return std::nullopt;
}

bool isReadingStep(const Step& step) { return step.code.startsWith(u"read_panel"_s); }

Screen* stepScreen(const Surroundings& around, const Repair& repair, Stage stage, int index, bool looking,
                   const Ways& ways, QWidget* parent)
{
    StepScreen::Spec spec;
    QString code;
    std::size_t all = 0;
    if (stage == Stage::HandOver) {
        code = handOverTests().at(static_cast<std::size_t>(index));
        spec.text = around.words.handOverTest(code);
        all = handOverTests().size();
    } else {
        const Step& step = stepsOf(repair, stage).at(static_cast<std::size_t>(index));
        if (isReadingStep(step) && !looking)
            return makeReadAgainScreen(around, repair, index, parent, ways.changeUnits);
        code = step.code;
        spec.text = around.words.step(step);
        all = stepsOf(repair, stage).size();
    }
    spec.name = u"screen_%1_%2"_s.arg(codeOf(stage), code);
    spec.context = contextOf(repair, around.words) + u" · "_s + phrases::stepOf(index + 1, static_cast<int>(all));
    spec.stepCode = code;
    spec.looking = looking;
    if (const auto key = harmKey(harmHere(around, repair, code, std::nullopt), ways))
        spec.side.push_back(*key);
    if (const auto moment = photoOfStep(code))
        if (const auto key = photoKey(around, repair, *moment, ways))
            spec.side.push_back(*key);
    auto screen = std::make_shared<StepScreen*>(nullptr);
    spec.done = [screen, stage, index, code] { Q_EMIT(*screen)->acts({StepDone{stage, index, code}}); };
    *screen = new StepScreen(around, repair, std::move(spec), parent);
    QObject::connect(*screen, &StepScreen::presentWanted, *screen, ways.present);
    return *screen;
}

Screen* planScreen(const Surroundings& around, const Repair& repair, const RepairPlan& plan, bool accepted,
                   const Ways& ways, QWidget* parent)
{
    auto* screen = new PlanScreen(around, repair, plan, accepted, parent);
    QObject::connect(screen, &PlanScreen::whyWanted, screen, ways.why);
    QObject::connect(screen, &PlanScreen::presentWanted, screen, ways.present);
    QObject::connect(screen, &PlanScreen::answersWanted, screen, ways.answers);
    QObject::connect(screen, &PlanScreen::stockWanted, screen, ways.stock);
    return screen;
}

Screen* decideScreen(const Surroundings& around, const Repair& repair, const Ways& ways, QWidget* parent)
{
    const RepairPlan plan = around.bench.plan(repair);
    if (!plan.fill) {
        auto* screen = new RefusalScreen(around, repair, plan.stops, canOverride(around, repair, plan.stops), parent);
        QObject::connect(screen, &RefusalScreen::overrideWanted, screen, ways.overrideStops);
        return screen;
    }
    if (repair.plan)
        return new ReplanScreen(around, repair, plan, ways, parent);
    return planScreen(around, repair, plan, false, ways, parent);
}

Screen* questionScreen(const Surroundings& around, const Repair& repair, Question question, const Ways& ways,
                       QWidget* parent)
{
    Screen* screen = AssessScreens(around, repair)
                         .make(
                             question, parent, [ways, question] { ways.howToTell(question); }, ways.present,
                             ways.changeUnits, ways.foundBy);
    auto* choice = qobject_cast<ChoiceScreen*>(screen);
    const auto key = photoKey(around, repair, PhotoMoment::AsFound, ways);
    if (question == Question::Substrate && choice && key)
        choice->setSideKey(*key);
    return screen;
}

/// A message with an act behind its way on.
Screen* actScreen(const Surroundings& around, MessageScreen::Spec spec, const Payload& payload, QWidget* parent)
{
    auto screen = std::make_shared<MessageScreen*>(nullptr);
    spec.go = [screen, payload] { Q_EMIT(*screen)->acts({payload}); };
    *screen = new MessageScreen(around, std::move(spec), parent);
    return *screen;
}

Screen* sandScreen(const Surroundings& around, const Repair& repair, BatchRef batch, const Ways& ways, QWidget* parent)
{
    MessageScreen::Spec spec;
    spec.name = u"screen_sand"_s;
    spec.context = contextOf(repair, around.words) + u" · "_s + batchContext(repair, batch, around.words);
    spec.sign = Pictogram::SandingBlock;
    spec.signName = Says::tr("Sanding block");
    spec.sentence = batch.finishing ? Says::tr("Sand the skim to the contour, 180 grit")
                                    : Says::tr("Sand level, 80 grit, extraction on");
    spec.headline = batch.finishing ? Says::tr("Feather it out beyond the filler.")
                                    : Says::tr("Coarser paper only inside the filled area. Then dust off.");
    spec.cautions = around.words.cautionsAt(Station::Sand);
    spec.wayOn = Says::tr("Sanded and dusted off");
    if (const auto key = harmKey(harmHere(around, repair, codeOf(Station::Sand), batch), ways))
        spec.keys.push_back(*key);
    spec.keysAside = true;
    const bool lastFill = !batch.finishing && batch.index + 1 == static_cast<int>(repair.plan->batches.size());
    if (const auto key = photoKey(around, repair, PhotoMoment::Filled, ways); key && lastFill)
        spec.keys.push_back(*key);
    return actScreen(around, std::move(spec), Sanded{batch}, parent);
}

/// A bonded backing stays where it is; a dam comes off before the other face is filled.
bool hasDam(const Repair& repair)
{
    return std::ranges::any_of(repair.plan->prep, [](const Step& each) { return each.code == u"dam"_s; });
}

Screen* turnScreen(const Surroundings& around, const Repair& repair, const Ways& ways, QWidget* parent)
{
    MessageScreen::Spec spec;
    spec.name = u"screen_turn"_s;
    spec.context = contextOf(repair, around.words);
    spec.sign = Pictogram::Turn;
    spec.signName = Says::tr("Turn the panel");
    if (hasDam(repair)) {
        spec.sentence = Says::tr("Strip the dam, then turn the panel over");
        spec.headline = Says::tr("Residue of the dam off, 80 grit, dust off.");
    } else {
        spec.sentence = Says::tr("Turn the panel over");
        spec.headline = Says::tr("80 grit, dust off.");
    }
    spec.text = Says::tr("The other face is filled the same way.");
    spec.cautions = around.words.cautionsAt(Station::Turn);
    spec.wayOn = Says::tr("Turned and clean");
    if (const auto key = harmKey(harmHere(around, repair, codeOf(Station::Turn), std::nullopt), ways))
        spec.keys.push_back(*key);
    return actScreen(around, std::move(spec), Turned{}, parent);
}

/// "No photo yet: bare, filled."; empty when there is one of each.
QString photosMissing(const Repair& repair)
{
    QStringList missing;
    for (const PhotoMoment each : missingPhotos(repair))
        missing << photoMomentInList(each);
    //: %1 is a list of photos: "as found, bare"
    return missing.isEmpty() ? QString() : Says::tr("No photo yet: %1.").arg(missing.join(u", "_s));
}

Screen* handOverScreen(const Surroundings& around, const Repair& repair, const Ways& ways, QWidget* parent)
{
    MessageScreen::Spec spec;
    spec.name = u"screen_hand_over"_s;
    spec.context = contextOf(repair, around.words);
    spec.sign = Pictogram::HandOver;
    spec.signName = Says::tr("Hand over");
    spec.sentence = Says::tr("Hand over for primer");
    spec.headline = Says::tr("All six tests are passed and in the log.");
    Mass fibre = grams(0);
    Mass finishing = grams(0);
    for (const BatchRun& run : repair.runs)
        (run.batch.finishing ? finishing : fibre) += run.mixed.filler;
    spec.text = Says::tr("Mixed: %1 of fibre filler, %2 of finishing filler, in %3.")
                    .arg(around.words.mass(fibre), around.words.mass(finishing),
                         around.words.batches(static_cast<int>(repair.runs.size())));
    if (const QString missing = photosMissing(repair); !missing.isEmpty())
        spec.text += u'\n' + missing;
    if (ways.photos)
        spec.keys.push_back({u"photos"_s, Says::tr("Photos"), {}, Pictogram::None, ways.photos});
    spec.small = Says::tr("The paint system’s data sheet says when it may be primed.");
    spec.wayOn = Says::tr("Handed over");
    spec.wayOnKind = TapButton::Kind::Go;
    return actScreen(around, std::move(spec), HandedOver{}, parent);
}

Screen* doneScreen(const Surroundings& around, const Repair& repair, const Ways& ways, QWidget* parent)
{
    MessageScreen::Spec spec;
    spec.name = u"screen_done"_s;
    spec.context = contextOf(repair, around.words);
    spec.sign = Pictogram::Tick;
    spec.signName = Says::tr("Done");
    spec.sentence = Says::tr("Handed over");
    spec.headline = Says::tr("This repair is closed and in the log.");
    spec.text = Says::tr("The supervisor signs it off with the day’s work.");
    spec.wayOn = Says::tr("To the rail");
    spec.go = ways.home;
    return new MessageScreen(around, std::move(spec), parent);
}

Screen* returnedScreen(const Surroundings& around, const Repair& repair, const Ways& ways, QWidget* parent)
{
    const Kept<Returned>& returned = *repair.returned;
    MessageScreen::Spec spec;
    spec.name = u"screen_returned"_s;
    spec.context = contextOf(repair, around.words);
    spec.sign = Pictogram::Caution;
    spec.signName = Says::tr("Returned");
    spec.sentence = Says::tr("Returned by the supervisor");
    spec.headline = returnText(returned.what);
    //: %1 is a day, %2 a person
    spec.text = Says::tr("%1, %2. The record of this repair stays as it is; its rework is taken in as a repair of its "
                         "own, from the first question on.")
                    .arg(localDay(returned.at), personText(returned.person));
    spec.wayOn = Says::tr("Begin the rework");
    spec.go = ways.rework;
    return new MessageScreen(around, std::move(spec), parent);
}

} // namespace

Screen* screenOf(const Surroundings& around, const Repair& repair, const Ways& ways, QWidget* parent)
{
    const NextStep next = nextStep(repair);
    switch (next.station) {
    case Station::Assess:
        return questionScreen(around, repair, *next.question, ways, parent);
    case Station::Decide:
        return decideScreen(around, repair, ways, parent);
    case Station::Prepare:
        return stepScreen(around, repair, Stage::Prepare, next.index, false, ways, parent);
    case Station::Finish:
        return stepScreen(around, repair, Stage::Finish, next.index, false, ways, parent);
    case Station::Mix:
        return new MixScreen(around, repair, *next.batch, ways, parent);
    case Station::Spread:
        return new ClockScreen(around, repair, *repair.run(*next.batch), ClockScreen::Part::Spread, ways, parent);
    case Station::Wait:
        return new ClockScreen(around, repair, *repair.run(*next.batch), ClockScreen::Part::Wait, ways, parent);
    case Station::Sand:
        return sandScreen(around, repair, *next.batch, ways, parent);
    case Station::Turn:
        return turnScreen(around, repair, ways, parent);
    case Station::HandOver:
        if (next.index < static_cast<int>(handOverTests().size()))
            return stepScreen(around, repair, Stage::HandOver, next.index, false, ways, parent);
        return handOverScreen(around, repair, ways, parent);
    case Station::Parked:
        return parkedScreenOf(around, repair, ways, parent);
    case Station::Returned:
        return returnedScreen(around, repair, ways, parent);
    case Station::Done:
        break;
    }
    return doneScreen(around, repair, ways, parent);
}

Screen* lookScreenOf(const Surroundings& around, const Repair& repair, const Look& look, const Ways& ways,
                     QWidget* parent)
{
    switch (look.at) {
    case Look::At::Question:
        return questionScreen(around, repair, look.question, ways, parent);
    case Look::At::Plan:
        return planScreen(around, repair, *repair.plan, true, ways, parent);
    case Look::At::Step:
        break;
    }
    return stepScreen(around, repair, look.stage, look.index, true, ways, parent);
}

std::optional<Look> lookBefore(const Repair& repair, const std::optional<Look>& from)
{
    const NextStep next = nextStep(repair);
    // Where the present step, or the look, stands.
    const Look::At at = from                                                                   ? from->at
                        : (next.station == Station::Assess || next.station == Station::Decide) ? Look::At::Question
                                                                                               : Look::At::Step;
    if (at == Look::At::Plan)
        return std::nullopt;
    if (at == Look::At::Question) {
        std::optional<Look> before;
        const std::optional<Question> here = from ? std::optional(from->question) : next.question;
        for (const auto& [question, seq] : repair.answeredBy)
            if (!here || question < *here)
                before = Look{Look::At::Question, question, 0, Stage::Prepare};
        return before;
    }
    const bool inSteps = from || next.station == Station::Prepare || next.station == Station::Finish ||
                         next.station == Station::HandOver;
    if (!inSteps)
        return repair.plan ? std::optional(Look{}) : std::nullopt;
    const Stage stage = from                                ? from->stage
                        : next.station == Station::Finish   ? Stage::Finish
                        : next.station == Station::HandOver ? Stage::HandOver
                                                            : Stage::Prepare;
    const int index = from ? from->index : next.index;
    if (index > 0)
        return Look{Look::At::Step, Question::Substrate, index - 1, stage};
    return Look{};
}

} // namespace strandbench
