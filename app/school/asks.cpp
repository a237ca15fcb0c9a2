// SPDX-License-Identifier: GPL-3.0-or-later
#include "school/asks.h"

#include "school/options.h"
#include "school/pick_screen.h"
#include "screens/frame/choice_screen.h"
#include "screens/job/choices.h"
#include "screens/figures/figure_wiring.h"
#include "screens/job/measure_screens.h"
#include "words/practice_words.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(PracticeAsk)
};

using Tile = ChoiceScreen::Tile;

/// A question of the practice with tiles; the way on leads to the panel, and tells nothing.
Screen* choices(const Surroundings& around, const PracticeRun& run, const PracticeWays& ways, const QString& name,
                const QString& sentence, std::vector<Tile> tiles, QWidget* parent)
{
    ChoiceScreen::Spec spec;
    spec.name = u"screen_practice_"_s + name;
    spec.context = practiceContext(run, around.words);
    spec.sentence = sentence;
    spec.tiles = std::move(tiles);
    spec.wayOn = Says::tr("Look at the panel");
    spec.moreTitle = Says::tr("More answers");
    spec.ofARepair = false;
    auto* screen = new ChoiceScreen(around, std::move(spec), parent);
    QObject::connect(screen, &ChoiceScreen::wayOnTapped, screen, ways.look);
    return screen;
}

/// The bench's question, with its names and pictures, and without what tells its answers apart.
Screen* questionOf(const Surroundings& around, PracticeRun& run, Question question, const PracticeWays& ways,
                   QWidget* parent)
{
    if (question == Question::Size)
        return makeSizeScreen(around, run.repair(), parent, ways.changeUnits);
    std::vector<Tile> tiles;
    for (const Choice& each : choicesOf(question, run.repair(), around)) {
        const auto tapped = [&run, &around, ways, question, value = each.value] {
            if (!run.answer(Answered{question, value, {}}, around.bench.clock().now()))
                ways.changed();
        };
        tiles.push_back({u"answer_"_s + each.code, each.title, {}, each.picture, false, false, tapped});
    }
    return choices(around, run, ways, codeOf(question), around.words.question(question), std::move(tiles), parent);
}

Screen* fillOrStop(const Surroundings& around, PracticeRun& run, const PracticeWays& ways, QWidget* parent)
{
    const auto decide = [&run, ways](bool fill) {
        return [&run, ways, fill] {
            run.decide(fill);
            ways.changed();
        };
    };
    return choices(around, run, ways, u"fill_or_stop"_s, Says::tr("Fill it, or stop?"),
                   {{u"fill_it"_s, Says::tr("Fill it"), {}, {}, false, false, decide(true)},
                    {u"stop_here"_s, Says::tr("Stop here"), {}, {}, false, false, decide(false)}},
                   parent);
}

SideKey lookKey(const PracticeWays& ways)
{
    return {u"look_at_panel"_s, Says::tr("Look at the panel"), {}, Pictogram::None, ways.look};
}

Screen* whyStop(const Surroundings& around, PracticeRun& run, const PracticeWays& ways, QWidget* parent)
{
    PickScreen::Spec spec;
    spec.name = u"screen_practice_why_stop"_s;
    spec.context = practiceContext(run, around.words);
    spec.sentence = Says::tr("What speaks against filling? All of it");
    for (const QString& each : stopOptions(run, around.bench.planning()))
        spec.items.push_back({each, stopTold(each)});
    spec.wayOn = Says::tr("That is all");
    spec.side = lookKey(ways);
    spec.done = [&run, ways](const std::vector<QString>& codes) {
        run.giveStops(codes);
        ways.changed();
    };
    return new PickScreen(around, std::move(spec), parent);
}

Screen* instead(const Surroundings& around, PracticeRun& run, const PracticeWays& ways, QWidget* parent)
{
    std::vector<Tile> tiles;
    for (const QString& each : insteadOptions(run, around.bench.planning()))
        tiles.push_back({u"instead_"_s + each, insteadTold(each), {}, {}, false, false, [&run, ways, each] {
                             run.giveInstead(each);
                             ways.changed();
                         }});
    return choices(around, run, ways, u"instead"_s, Says::tr("What is done instead?"), std::move(tiles), parent);
}

Screen* filler(const Surroundings& around, PracticeRun& run, const PracticeWays& ways, QWidget* parent)
{
    std::vector<Tile> tiles;
    for (const auto& [each, code] : Codes<FillerClass>::table)
        if (isFibreReinforced(each))
            tiles.push_back({u"filler_"_s + QString::fromLatin1(code),
                             Words::title(around.words.filler(each)),
                             {},
                             {},
                             false,
                             false,
                             [&run, ways, value = each] {
                                 run.choose(value);
                                 ways.changed();
                             }});
    return choices(around, run, ways, u"filler"_s, Says::tr("Which filler is put on first?"), std::move(tiles), parent);
}

Screen* steps(const Surroundings& around, PracticeRun& run, const PracticeWays& ways, QWidget* parent)
{
    PickScreen::Spec spec;
    spec.name = u"screen_practice_steps"_s;
    spec.context = practiceContext(run, around.words);
    spec.sentence = Says::tr("Tap what is done, in its order");
    for (const QString& each : stepOptions(run))
        spec.items.push_back({each, stepTold(each, run.own().plan, around.words)});
    spec.inOrder = true;
    spec.wayOn = Says::tr("Prepared");
    spec.done = [&run, ways](const std::vector<QString>& codes) {
        run.putSteps(codes);
        ways.changed();
    };
    return new PickScreen(around, std::move(spec), parent);
}

FigureSpec lengthFigure(const QString& name, const QString& caption, const QString& sentence,
                        const Range<Length>& range, const Words& words)
{
    FigureSpec figure;
    figure.name = name;
    figure.caption = caption;
    figure.keyPadSentence = sentence;
    wire<Length>(figure, range, words, printFineLength, parseLength);
    inLengths(figure, words);
    figure.step /= words.units() == UnitSystem::UsCustomary ? 1 : 2;
    figure.start = inMetres(millimetres(2));
    return figure;
}

/// A figure that counts things or minutes.
FigureSpec countFigure(const QString& name, const QString& caption, const QString& sentence, int most, int step,
                       const QString& unit)
{
    FigureSpec figure;
    figure.name = name;
    figure.caption = caption;
    figure.keyPadSentence = sentence;
    figure.lowest = 0;
    figure.highest = most;
    figure.step = step;
    figure.start = step;
    figure.print = [unit](double value) { return Printed{QString::number(qRound(value)), unit}; };
    figure.unit = [unit] { return unit; };
    figure.read = [name, most](const QString& text) -> Checked<double> {
        bool whole = false;
        const int value = text.toInt(&whole);
        if (whole && value >= 0 && value <= most)
            return double(value);
        return tl::unexpected(
            Faults{{name, text, FaultKind::OutOfRange, {QString::number(0), QString::number(most), QString()}}});
    };
    return figure;
}

Screen* figures(const Surroundings& around, const PracticeRun& run, const PracticeWays& ways, const QString& name,
                const QString& sentence, std::vector<FigureSpec> all, const QString& wayOn,
                const std::function<void(const std::vector<double>&)>& done, QWidget* parent)
{
    FiguresScreen::Spec spec;
    spec.name = u"screen_practice_"_s + name;
    spec.context = practiceContext(run, around.words);
    spec.sentence = sentence;
    spec.figures = std::move(all);
    spec.wayOn = wayOn;
    spec.changeUnits = ways.changeUnits;
    spec.ofARepair = false;
    spec.done = [done, ways](const std::vector<double>& values) {
        done(values);
        ways.changed();
    };
    return new FiguresScreen(around, std::move(spec), parent);
}

Screen* lift(const Surroundings& around, PracticeRun& run, const PracticeWays& ways, QWidget* parent)
{
    return figures(
        around, run, ways, u"lift"_s, Says::tr("How thick is the next lift?"),
        {lengthFigure(u"lift_mm"_s, Says::tr("Lift"), Says::tr("Key in its thickness"),
                      {millimetres(0.5), millimetres(60)}, around.words)},
        Says::tr("Mix for it"), [&run](const std::vector<double>& values) { run.beginLift(metres(values.front())); },
        parent);
}

Screen* afterSanding(const Surroundings& around, PracticeRun& run, const PracticeWays& ways, QWidget* parent)
{
    const auto go = [&run, ways](void (PracticeRun::*act)()) {
        return [&run, ways, act] {
            (run.*act)();
            ways.changed();
        };
    };
    std::vector<Tile> tiles{
        {u"next_lift"_s, Says::tr("Another lift on this face"), {}, {}, false, false, go(&PracticeRun::nextLift)}};
    if (run.face() == Face::Front)
        tiles.push_back(
            {u"turn_it"_s, Says::tr("Turn the panel, fill the back"), {}, {}, false, false, go(&PracticeRun::turn)});
    tiles.push_back(
        {u"to_finish"_s, Says::tr("Finishing filler"), {}, {}, false, false, go(&PracticeRun::beginFinish)});
    return choices(around, run, ways, u"after_sanding"_s, Says::tr("It is sanded. What comes next?"), std::move(tiles),
                   parent);
}

Screen* coats(const Surroundings& around, PracticeRun& run, const PracticeWays& ways, QWidget* parent)
{
    return figures(
        around, run, ways, u"coats"_s, Says::tr("Finishing filler: how many coats, how thick?"),
        {countFigure(u"coats"_s, Says::tr("Coats"), Says::tr("Key in how many"), 9, 1, {}),
         lengthFigure(u"coat_mm"_s, Says::tr("Each coat"), Says::tr("Key in its thickness"),
                      {millimetres(0), millimetres(20)}, around.words)},
        Says::tr("Finished"),
        [&run](const std::vector<double>& values) { run.layFinish(qRound(values.front()), metres(values.back())); },
        parent);
}

Screen* tests(const Surroundings& around, PracticeRun& run, const PracticeWays& ways, QWidget* parent)
{
    PickScreen::Spec spec;
    spec.name = u"screen_practice_tests"_s;
    spec.context = practiceContext(run, around.words);
    spec.sentence = Says::tr("What do you look for before primer?");
    for (const auto& [each, code] : Codes<InspectionTest>::table)
        spec.items.push_back({QString::fromLatin1(code), testTold(each)});
    spec.mayBeNone = true;
    spec.wayOn = Says::tr("That is all");
    spec.done = [&run, ways](const std::vector<QString>& codes) {
        std::vector<InspectionTest> all;
        for (const QString& each : codes)
            all.push_back(*fromCode<InspectionTest>(each));
        run.test(all);
        ways.changed();
    };
    return new PickScreen(around, std::move(spec), parent);
}

Screen* primer(const Surroundings& around, PracticeRun& run, const PracticeWays& ways, QWidget* parent)
{
    return figures(
        around, run, ways, u"primer"_s, Says::tr("How long after the last sanding comes primer?"),
        {countFigure(u"wait_min"_s, Says::tr("Wait"), Says::tr("Key in the minutes"), 600, 15, Says::tr("min"))},
        Says::tr("Hand it over"),
        [&run](const std::vector<double>& values) { run.waitForPrimer(minutes(values.front())); }, parent);
}

} // namespace

QString practiceContext(const PracticeRun& run, const Words& words)
{
    const QString panel = Says::tr("Practice panel");
    return run.attempt().lifts.empty() ? panel : panel + u" · "_s + words.face(run.face());
}

Screen* askOf(const Surroundings& around, PracticeRun& run, const PracticeWays& ways, QWidget* parent)
{
    switch (run.asks()) {
    case PracticeAsks::Question:
        return questionOf(around, run, *run.question(), ways, parent);
    case PracticeAsks::FillOrStop:
        return fillOrStop(around, run, ways, parent);
    case PracticeAsks::WhyStop:
        return whyStop(around, run, ways, parent);
    case PracticeAsks::Instead:
        return instead(around, run, ways, parent);
    case PracticeAsks::Filler:
        return filler(around, run, ways, parent);
    case PracticeAsks::Steps:
        return steps(around, run, ways, parent);
    case PracticeAsks::Lift:
        return lift(around, run, ways, parent);
    case PracticeAsks::AfterSanding:
        return afterSanding(around, run, ways, parent);
    case PracticeAsks::Coats:
        return coats(around, run, ways, parent);
    case PracticeAsks::Tests:
        return tests(around, run, ways, parent);
    case PracticeAsks::Primer:
        return primer(around, run, ways, parent);
    case PracticeAsks::Mix:
    case PracticeAsks::Spread:
    case PracticeAsks::Sand:
    case PracticeAsks::Done:
        break;
    }
    Q_UNREACHABLE();
}

} // namespace strandbench
