// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/measure_screens.h"

#include "air/gate.h"
#include "gear/instruments.h"
#include "repair/read_again.h"
#include "screens/figures/figure_wiring.h"
#include "screens/job/outlooks.h"
#include "screens/frame/phrases.h"
#include "substrate/decision.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(MeasureScreen)
};

/// Checks a figure that was read against what is allowed; the fault is in the person's units.
Checked<double> within(double value, const FigureSpec& figure, const QString& typed)
{
    if (value >= figure.lowest - 1e-9 && value <= figure.highest + 1e-9)
        return value;
    const auto low = figure.print(figure.lowest);
    const auto high = figure.print(figure.highest);
    return tl::unexpected(Faults{{figure.name, typed, FaultKind::OutOfRange, {low.figure, high.figure, low.unit}}});
}

/// A length in metres. fine: panels and depths, to a tenth of a millimetre.
FigureSpec lengthFigure(const QString& name, const QString& caption, const QString& sentence, Length lowest,
                        Length highest, bool fine, const Words& words)
{
    FigureSpec figure;
    figure.name = name;
    figure.caption = caption;
    figure.keyPadSentence = sentence;
    figure.lowest = inMetres(lowest);
    figure.highest = inMetres(highest);
    const bool us = words.units() == UnitSystem::UsCustomary;
    figure.step = inMetres(us ? inches(fine ? 0.01 : 1.0 / 16.0) : millimetres(fine ? 0.5 : 1.0));
    figure.start = std::max(figure.lowest, inMetres(fine ? millimetres(3) : millimetres(20)));
    figure.print = [words, fine](double metre) {
        return fine ? printFineLength(metres(metre), words.units(), words.locale())
                    : printLength(metres(metre), words.units(), words.locale());
    };
    figure.unit = [us] { return us ? u"in"_s : u"mm"_s; };
    figure.read = [figure, words](const QString& text) -> Checked<double> {
        return parseLength(text, words.units(), figure.name).map(inMetres).and_then([&](double value) {
            return within(value, figure, text);
        });
    };
    return figure;
}

FigureSpec temperatureFigure(const QString& name, const QString& caption, const QString& sentence, const Words& words)
{
    FigureSpec figure;
    figure.name = name;
    figure.caption = caption;
    figure.keyPadSentence = sentence;
    figure.lowest = inKelvin(celsius(-30));
    figure.highest = inKelvin(celsius(60));
    figure.start = inKelvin(celsius(20));
    inTemperatures(figure, words);
    figure.print = [words](double k) { return printTemperature(kelvin(k), words.units(), words.locale()); };
    figure.read = [figure, words](const QString& text) -> Checked<double> {
        return parseTemperature(text, words.units(), figure.name).map(inKelvin).and_then([&](double value) {
            return within(value, figure, text);
        });
    };
    return figure;
}

FigureSpec humidityFigure(const Words& words)
{
    FigureSpec figure;
    figure.name = u"humidity_percent"_s;
    figure.caption = Says::tr("Humidity");
    figure.keyPadSentence = Says::tr("Key in the humidity of the air");
    figure.lowest = 0.01;
    figure.highest = 1.0;
    figure.step = 0.01;
    figure.start = 0.5;
    figure.print = [words](double share) { return printPercent(Fraction::ofOne(share), words.locale()); };
    figure.unit = [] { return u"%"_s; };
    figure.read = [figure](const QString& text) -> Checked<double> {
        return parsePercent(text, figure.name).map([](Fraction f) { return f.value(); }).and_then([&](double value) {
            return within(value, figure, text);
        });
    };
    return figure;
}

FigureSpec bevelFigure(const Words& words)
{
    FigureSpec figure;
    figure.name = u"bevel_ratio"_s;
    figure.caption = Says::tr("Bevel");
    figure.keyPadSentence = Says::tr("Key in the bevel, run to depth");
    figure.lowest = 1;
    figure.highest = 60;
    figure.step = 1;
    figure.start = 4;
    figure.print = [words](double ratio) { return Printed{printNumber(ratio, 1, words.locale()), u": 1"_s}; };
    figure.unit = [] { return u": 1"_s; };
    figure.read = [figure](const QString& text) -> Checked<double> {
        return parseNumber(text, figure.name).and_then([&](double value) { return within(value, figure, text); });
    };
    return figure;
}

/// Which figures a damage needs, in the order of the screen: each also says where it goes.
struct SizePart {
    FigureSpec figure;
    std::function<void(DamageSize&, double)> put;
    std::function<double(const Damage&)> get;
};

std::vector<SizePart> sizeParts(DamageKind kind, const Words& words)
{
    std::vector<SizePart> parts;
    parts.push_back({lengthFigure(u"length_mm"_s, Says::tr("Length"), Says::tr("Key in the length"), millimetres(1),
                                  millimetres(3000), false, words),
                     [](DamageSize& size, double v) { size.length = metres(v); },
                     [](const Damage& damage) { return inMetres(damage.length); }});
    if (kind != DamageKind::Crack)
        parts.push_back({lengthFigure(u"width_mm"_s, Says::tr("Width"), Says::tr("Key in the width"), millimetres(0.5),
                                      millimetres(1000), false, words),
                         [](DamageSize& size, double v) { size.width = metres(v); },
                         [](const Damage& damage) { return inMetres(damage.width); }});
    if (kind != DamageKind::Hole)
        parts.push_back({lengthFigure(u"depth_mm"_s, Says::tr("Depth"), Says::tr("Key in the depth"), millimetres(0.1),
                                      millimetres(60), true, words),
                         [](DamageSize& size, double v) { size.depth = metres(v); },
                         [](const Damage& damage) { return inMetres(damage.depth); }});
    parts.push_back(
        {lengthFigure(u"panel_thickness_mm"_s, Says::tr("Panel thickness"), Says::tr("Key in the panel’s thickness"),
                      millimetres(0.3), millimetres(60), true, words),
         [](DamageSize& size, double v) { size.panelThickness = metres(v); },
         [](const Damage& damage) { return inMetres(damage.panelThickness); }});
    if (kind == DamageKind::Hole || kind == DamageKind::Crack)
        parts.push_back({bevelFigure(words), [](DamageSize& size, double v) { size.bevelRatio = v; },
                         [](const Damage& damage) { return damage.bevelRatio; }});
    return parts;
}

std::optional<qint64> corrected(const Repair& repair, Question question)
{
    const auto before = repair.answeredBy.find(question);
    return before == repair.answeredBy.end() ? std::nullopt : std::optional<qint64>(before->second);
}

/// What the size comes to: a gouge or a crack deeper than the panel is thick is a hole.
FiguresScreen::Spec::Verdict judgeSize(DamageKind kind, const std::vector<std::optional<double>>& values)
{
    const bool within = kind == DamageKind::Gouge || kind == DamageKind::Crack;
    const std::size_t depth = kind == DamageKind::Crack ? 1 : 2;
    if (within && values[depth] && values[depth + 1] && *values[depth] > *values[depth + 1] + 1e-9)
        return {Says::tr("Deeper than the panel is thick: that is a hole."), false};
    return {{}, true};
}

std::vector<FigureSpec> readingFigures(const std::optional<Reading>& before, const Words& words)
{
    std::vector<FigureSpec> figures{
        temperatureFigure(u"air_c"_s, Says::tr("Air"), Says::tr("Key in the air’s temperature"), words),
        temperatureFigure(u"panel_c"_s, Says::tr("Panel"), Says::tr("Key in the panel’s temperature"), words),
        humidityFigure(words)};
    if (before) {
        figures[0].value = inKelvin(before->air);
        figures[1].value = inKelvin(before->panel);
        figures[2].value = before->humidity.value();
    }
    return figures;
}

Reading readingOf(const std::vector<double>& values)
{
    return {kelvin(values[0]), kelvin(values[1]), Fraction::ofOne(values[2])};
}

/// Dew point and margin as soon as all three are there; with stopsCount also what forbids filling.
FiguresScreen::Spec::Verdict judgeReading(const std::vector<std::optional<double>>& values, const Surroundings& around,
                                          bool mustAllow, const std::vector<QString>& overridden = {})
{
    if (!values[0] || !values[1] || !values[2])
        return {Says::tr("Dew point: not yet known"), true};
    const AirVerdict air =
        judgeAir(readingOf({*values[0], *values[1], *values[2]}), around.bench.assumptions().decision.filling);
    QStringList lines{Says::tr("Dew point %1, panel %2 above it")
                          .arg(around.words.temperature(air.dewPoint), around.words.temperatureStep(air.margin))};
    for (const Reason& each : air.stops)
        lines << around.words.reason(each);
    for (const Reason& each : air.cautions)
        lines << around.words.reason(each);
    const bool allowed = std::ranges::all_of(
        air.stops, [&](const Reason& each) { return std::ranges::count(overridden, each.code) > 0; });
    return {lines.join(u'\n'), allowed || !mustAllow};
}

} // namespace

Screen* makeSizeScreen(const Surroundings& around, const Repair& repair, QWidget* parent,
                       std::function<void()> changeUnits)
{
    const DamageKind kind = repair.assessment.damage->kind;
    const std::vector<SizePart> parts = sizeParts(kind, around.words);
    FiguresScreen::Spec spec;
    spec.name = u"screen_assess_size"_s;
    spec.context = contextOf(repair, around.words);
    spec.sentence = around.words.question(Question::Size);
    spec.wayOn = Says::tr("Measured: go on");
    spec.changeUnits = std::move(changeUnits);
    for (const SizePart& each : parts) {
        spec.figures.push_back(each.figure);
        if (repair.assessment.damage->measured())
            spec.figures.back().value = each.get(*repair.assessment.damage);
    }
    if (kind == DamageKind::Gouge || kind == DamageKind::Crack)
        spec.verdict = [kind](const auto& values) { return judgeSize(kind, values); };
    auto screen = std::make_shared<FiguresScreen*>(nullptr);
    spec.done = [screen, parts, kind, corrects = corrected(repair, Question::Size)](const std::vector<double>& values) {
        DamageSize size;
        for (std::size_t i = 0; i < parts.size(); ++i)
            parts[i].put(size, values[i]);
        if (kind == DamageKind::Hole)
            size.depth = size.panelThickness;
        Q_EMIT(*screen)->acts({Answered{Question::Size, size, corrects}});
    };
    *screen = new FiguresScreen(around, std::move(spec), parent);
    return *screen;
}

namespace {

/// Air and humidity as the thermo-hygrometer says them; the panel has another instrument, and is keyed in.
std::vector<FiguresScreen::Spec::TakeOver> airTakeOver(const Surroundings& around)
{
    if (!around.instruments || !around.instruments->climate().isOn())
        return {};
    return {{u"take_air"_s, Says::tr("Air and humidity"), &around.instruments->climate(),
             [](const LineReading& line) -> std::vector<std::pair<std::size_t, double>> {
                 std::vector<std::pair<std::size_t, double>> figures;
                 if (line.temperature)
                     figures.emplace_back(0, inKelvin(*line.temperature));
                 if (line.humidity)
                     figures.emplace_back(2, line.humidity->value());
                 return figures;
             }}};
}

/// Who gave air and humidity; only what was taken over is told.
std::optional<EnteredBy> airBy(const FiguresScreen& screen)
{
    return screen.takenOver(0) && screen.takenOver(2) ? std::optional(EnteredBy::Instrument) : std::nullopt;
}

FiguresScreen::Spec readingSpec(const Surroundings& around, const Repair& repair, std::function<void()> changeUnits)
{
    FiguresScreen::Spec spec;
    spec.context = contextOf(repair, around.words);
    spec.changeUnits = std::move(changeUnits);
    spec.takeOvers = airTakeOver(around);
    return spec;
}

} // namespace

Screen* makeReadingScreen(const Surroundings& around, const Repair& repair, QWidget* parent,
                          std::function<void()> changeUnits)
{
    FiguresScreen::Spec spec = readingSpec(around, repair, std::move(changeUnits));
    spec.name = u"screen_assess_reading"_s;
    spec.sentence = around.words.question(Question::Reading);
    spec.wayOn = Says::tr("Read: go on");
    spec.figures = readingFigures(repair.assessment.reading, around.words);
    spec.verdict = [around](const auto& values) { return judgeReading(values, around, false); };
    spec.outlook = outlooks::ofReadingForPlan(around, repair);
    auto screen = std::make_shared<FiguresScreen*>(nullptr);
    spec.done = [screen, corrects = corrected(repair, Question::Reading)](const std::vector<double>& values) {
        Q_EMIT(*screen)->acts({Answered{Question::Reading, readingOf(values), corrects, airBy(**screen)}});
    };
    *screen = new FiguresScreen(around, std::move(spec), parent);
    return *screen;
}

Screen* makeReadAgainScreen(const Surroundings& around, const Repair& repair, int step, QWidget* parent,
                            std::function<void()> changeUnits)
{
    const Step& planned = repair.plan->prep.at(static_cast<std::size_t>(step));
    const StepText text = around.words.step(planned);
    FiguresScreen::Spec spec = readingSpec(around, repair, std::move(changeUnits));
    spec.name = u"screen_prepare_"_s + planned.code;
    spec.context += u" · "_s + phrases::stepOf(step + 1, static_cast<int>(repair.plan->prep.size()));
    spec.sentence = text.sentence;
    spec.wayOn = text.wayOn;
    spec.cautions = text.cautions;
    spec.figures = readingFigures(std::nullopt, around.words);
    spec.verdict = [around, overridden = repair.assessment.overridden](const auto& values) {
        return judgeReading(values, around, true, overridden);
    };
    spec.outlook = outlooks::ofReadingForBatch(around, repair);
    auto screen = std::make_shared<FiguresScreen*>(nullptr);
    spec.done = [screen, step, code = planned.code](const std::vector<double>& values) {
        Q_EMIT(*screen)->acts({ReadingTaken{readingOf(values), airBy(**screen)}, StepDone{Stage::Prepare, step, code}});
    };
    *screen = new FiguresScreen(around, std::move(spec), parent);
    return *screen;
}

Screen* makeReadBeforeMixScreen(const Surroundings& around, const Repair& repair, BatchRef batch, QWidget* parent,
                                std::function<void()> changeUnits)
{
    FiguresScreen::Spec spec = readingSpec(around, repair, std::move(changeUnits));
    spec.name = u"screen_read_again"_s;
    spec.sentence = Says::tr("Read air and panel again");
    spec.wayOn = Says::tr("Read: go on");
    spec.figures = readingFigures(std::nullopt, around.words);
    spec.verdict = [around, overridden = repair.assessment.overridden](const auto& values) {
        return judgeReading(values, around, true, overridden);
    };
    spec.outlook = outlooks::ofReadingForBatch(around, repair, batch);
    auto screen = std::make_shared<FiguresScreen*>(nullptr);
    spec.done = [screen](const std::vector<double>& values) {
        Q_EMIT(*screen)->acts({ReadingTaken{readingOf(values), airBy(**screen)}});
    };
    *screen = new FiguresScreen(around, std::move(spec), parent);
    return *screen;
}

Screen* makeReadWhileCuringScreen(const Surroundings& around, const Repair& repair, BatchRef batch, QWidget* parent,
                                  std::function<void()> changeUnits)
{
    FiguresScreen::Spec spec = readingSpec(around, repair, std::move(changeUnits));
    spec.name = u"screen_read_while_curing"_s;
    spec.sentence = Says::tr("Read air, and the panel beside the filler");
    spec.wayOn = Says::tr("Read: go on");
    spec.figures = readingFigures(std::nullopt, around.words);
    spec.verdict = [around](const auto& values) { return judgeReading(values, around, false); };
    spec.outlook = outlooks::ofReadingWhileCuring(around, *repair.run(batch));
    auto screen = std::make_shared<FiguresScreen*>(nullptr);
    spec.done = [screen, repair, &bench = around.bench](const std::vector<double>& values) {
        auto acts = readWhileCuring(repair, readingOf(values), bench.clock().now(), bench.planning());
        for (Payload& each : acts)
            if (auto* taken = std::get_if<ReadingTaken>(&each))
                taken->by = airBy(**screen);
        Q_EMIT(*screen)->acts(acts);
    };
    *screen = new FiguresScreen(around, std::move(spec), parent);
    return *screen;
}

} // namespace strandbench
