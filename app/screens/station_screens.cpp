// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/station_screens.h"

#include "screens/assess.h"
#include "screens/clock_screen.h"
#include "screens/measure_screens.h"
#include "screens/message_screen.h"
#include "screens/mix_screen.h"
#include "screens/phrases.h"
#include "screens/plan_screen.h"
#include "screens/refusal_screen.h"
#include "screens/replan_screen.h"
#include "screens/step_screen.h"

#include <QCoreApplication>

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
    return screen;
}

Screen* decideScreen(const Surroundings& around, const Repair& repair, const Ways& ways, QWidget* parent)
{
    const RepairPlan plan = around.bench.plan(repair);
    if (!plan.fill)
        return new RefusalScreen(around, repair, plan.stops, parent);
    if (repair.plan)
        return new ReplanScreen(around, repair, plan, ways, parent);
    return planScreen(around, repair, plan, false, ways, parent);
}

Screen* questionScreen(const Surroundings& around, const Repair& repair, Question question, const Ways& ways,
                       QWidget* parent)
{
    return AssessScreens(around, repair)
        .make(
            question, parent, [ways, question] { ways.howToTell(question); }, ways.present, ways.changeUnits);
}

/// A message with an act behind its way on.
Screen* actScreen(const Surroundings& around, MessageScreen::Spec spec, const Payload& payload, QWidget* parent)
{
    auto screen = std::make_shared<MessageScreen*>(nullptr);
    spec.go = [screen, payload] { Q_EMIT(*screen)->acts({payload}); };
    *screen = new MessageScreen(around, std::move(spec), parent);
    return *screen;
}

Screen* sandScreen(const Surroundings& around, const Repair& repair, BatchRef batch, QWidget* parent)
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
    return actScreen(around, std::move(spec), Sanded{batch}, parent);
}

Screen* turnScreen(const Surroundings& around, const Repair& repair, QWidget* parent)
{
    MessageScreen::Spec spec;
    spec.name = u"screen_turn"_s;
    spec.context = contextOf(repair, around.words);
    spec.sign = Pictogram::Turn;
    spec.signName = Says::tr("Turn the panel");
    spec.sentence = Says::tr("Strip the dam, then turn the panel over");
    spec.headline = Says::tr("Residue of the dam off, 80 grit, dust off.");
    spec.text = Says::tr("The other face is filled the same way.");
    spec.cautions = around.words.cautionsAt(Station::Turn);
    spec.wayOn = Says::tr("Turned and clean");
    return actScreen(around, std::move(spec), Turned{}, parent);
}

Screen* handOverScreen(const Surroundings& around, const Repair& repair, QWidget* parent)
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

Screen* parkedScreen(const Surroundings& around, const Repair& repair, const Ways& ways, QWidget* parent)
{
    Q_UNUSED(ways);
    const Parked& parked = *repair.parked;
    MessageScreen::Spec spec;
    spec.name = u"screen_parked"_s;
    spec.context = contextOf(repair, around.words);
    spec.sign = Pictogram::Parked;
    spec.signName = Says::tr("Parked");
    const QString place = parked.to.isEmpty() ? QString() : around.words.place(parked.to);
    spec.sentence = place.isEmpty() ? Says::tr("Parked") : Says::tr("Parked: %1").arg(place);
    auto screen = std::make_shared<MessageScreen*>(nullptr);
    if (parked.because.empty()) {
        spec.headline = Says::tr("It was parked to ask.");
        spec.text = Says::tr("Go on only when the answer is there.");
        spec.wayOn = Says::tr("Take it up again");
        spec.go = [screen] { Q_EMIT(*screen)->acts({TakenUpAgain{}}); };
    } else {
        spec.refuses = true;
        spec.headline = around.words.stopHeadline(parked.because.front());
        spec.text = Says::tr("When what was wrong has been put right, assess it again from the first question.");
        spec.wayOn = Says::tr("Leave it parked");
        spec.go = ways.home;
        spec.holdName = u"assess_again"_s;
        spec.holdTitle = Says::tr("Assess again");
        spec.held = [screen] { Q_EMIT(*screen)->acts({AssessAgain{}}); };
    }
    *screen = new MessageScreen(around, std::move(spec), parent);
    return *screen;
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
        return sandScreen(around, repair, *next.batch, parent);
    case Station::Turn:
        return turnScreen(around, repair, parent);
    case Station::HandOver:
        if (next.index < static_cast<int>(handOverTests().size()))
            return stepScreen(around, repair, Stage::HandOver, next.index, false, ways, parent);
        return handOverScreen(around, repair, parent);
    case Station::Parked:
        return parkedScreen(around, repair, ways, parent);
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

Screen* askScreenOf(const Surroundings& around, const Repair& repair, const Ways& ways, QWidget* parent)
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
    spec.text = running ? Says::tr("The mix on this panel goes on curing and its clock runs on.")
                        : Says::tr("Nothing is lost: parked, it waits on the rail at this very step.");
    spec.small = Says::tr("The safety data sheet and the maker’s repair manual come first.");
    spec.refuses = true;
    spec.wayOn = Says::tr("Answered: go on");
    spec.go = ways.present;
    auto screen = std::make_shared<MessageScreen*>(nullptr);
    if (!running) {
        spec.holdName = u"park_it"_s;
        spec.holdTitle = Says::tr("Park it");
        spec.held = [screen] { Q_EMIT(*screen)->acts({Parked{u"supervisor"_s, {}}}); };
    }
    *screen = new MessageScreen(around, std::move(spec), parent);
    return *screen;
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
