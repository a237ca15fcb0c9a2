// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/stock/stock_forms.h"

#include "screens/frame/choice_screen.h"
#include "screens/figures/figure_wiring.h"
#include "screens/job/in_hand.h"
#include "words/stock_words.h"

#include <QCoreApplication>
#include <QDate>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

// What an act of stock takes.
constexpr double mostGrams = 100'000;
constexpr double mostCountedGrams = 1e8;
constexpr double leastGrams = 1;
constexpr int mostPackages = 1000;
constexpr int firstYear = 2000;
constexpr int lastYear = 2100;
const Range<Temperature> places{celsius(-40), celsius(70)};

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(StockForms)
};

QString nameOf(const StockLot& lot, const Surroundings& around)
{
    return stockLotName({lot.product, inhand::shownLot(lot.lot)}, around.bench.planning().catalogue);
}

FiguresScreen::Spec specOf(const QString& name, const StockLot& lot, const Surroundings& around)
{
    FiguresScreen::Spec spec;
    spec.name = name;
    spec.context = nameOf(lot, around);
    spec.ofARepair = false;
    return spec;
}

FigureSpec massFigure(const QString& name, const QString& caption, const QString& sentence, const Range<Mass>& allowed,
                      Mass start, const Words& words)
{
    FigureSpec figure;
    figure.name = name;
    figure.caption = caption;
    figure.keyPadSentence = sentence;
    figure.start = std::max(start, allowed.lowest).value();
    inMasses(figure, words, false);
    figure.step = (words.units() == UnitSystem::UsCustomary ? ounces(1) : grams(10)).value();
    wire<Mass>(figure, allowed, words, printMass, parseMass);
    return figure;
}

/// A figure that is counted: no unit.
FigureSpec countFigure(const QString& name, const QString& caption, const QString& sentence, int lowest, int highest,
                       int start)
{
    FigureSpec figure;
    figure.name = name;
    figure.caption = caption;
    figure.keyPadSentence = sentence;
    figure.lowest = lowest;
    figure.highest = highest;
    figure.start = start;
    figure.print = [](double value) { return Printed{QString::number(std::lround(value)), {}}; };
    figure.unit = [] { return QString(); };
    figure.read = [name, lowest, highest](const QString& text) -> Checked<double> {
        return parseNumber(text, name, {double(lowest), double(highest)})
            .and_then([&](double value) -> Checked<double> {
                if (value != std::round(value))
                    return tl::unexpected(Faults{{name, text, FaultKind::NotReadable, {QString::number(lowest)}}});
                return value;
            });
    };
    return figure;
}

/// Of figures that are whole; invalid where there is no such day.
QDate dateOf(double year, double month, double day)
{
    return {int(std::lround(year)), int(std::lround(month)), int(std::lround(day))};
}

/// A screen that asks for one amount.
Screen* askMass(const Surroundings& around, FiguresScreen::Spec spec, const FigureSpec& figure,
                const std::function<void(Mass)>& done, std::function<void()> changeUnits, QWidget* parent)
{
    spec.changeUnits = std::move(changeUnits);
    spec.figures = {figure};
    spec.done = [done](const std::vector<double>& values) { done(Mass::from_value(values[0])); };
    return new FiguresScreen(around, std::move(spec), parent);
}

ChoiceScreen::Spec choiceOf(const QString& name, const QString& context, const QString& sentence)
{
    ChoiceScreen::Spec spec;
    spec.name = name;
    spec.context = context;
    spec.sentence = sentence;
    spec.ofARepair = false;
    return spec;
}

} // namespace

Screen* makeStockProductScreen(const Surroundings& around, const std::function<void(const QString&)>& chosen,
                               QWidget* parent)
{
    ChoiceScreen::Spec spec =
        choiceOf(u"screen_stock_product"_s, Says::tr("Stock of filler and hardener"), Says::tr("What is booked in?"));
    spec.moreTitle = Says::tr("More products");
    const Catalogue& catalogue = around.bench.planning().catalogue;
    const auto tile = [&](const QString& product) {
        spec.tiles.push_back(
            {u"product_"_s + product, stockProductName(product, catalogue), {}, {}, false, false, [chosen, product] {
                 chosen(product);
             }});
    };
    tile(hardenerProduct);
    for (const ProductSheet& each : catalogue.sheets())
        tile(each.id);
    return new ChoiceScreen(around, std::move(spec), parent);
}

StockLotNumberScreen::StockLotNumberScreen(const Surroundings& around, const QString& product, const QString& typed,
                                           QWidget* parent)
    : Screen(around, u"screen_stock_lot_number"_s, parent)
{
    buildFrame(stockProductName(product, around.bench.planning().catalogue), tr("Key in or scan its lot"));
    answers()->stop()->hide();
    answers()->setWayOn(tr("This is its lot"));
    m_keys = new LotKeys(around, this);
    content()->addWidget(m_keys, 1);
    connect(m_keys, &LotKeys::textChanged, this, [this](const QString& text) {
        showTrouble({}, {});
        answers()->setWayOnEnabled(!text.trimmed().isEmpty());
    });
    connect(m_keys, &LotKeys::entered, this, [this] { give(m_keys->text()); });
    connect(answers(), &AnswerBar::wayOnTapped, this, [this] { give(m_keys->text()); });
    m_keys->setText(typed);
    m_keys->setFocus();
}

void StockLotNumberScreen::give(const QString& text)
{
    const Checked<QString> lot = inhand::readLot(text);
    if (!lot)
        return showTrouble(words().fault(lot.error().front()), {});
    Q_EMIT given(*lot);
}

bool StockLotNumberScreen::scanned(const QString& text)
{
    give(text);
    return true;
}

Screen* makeBookInScreen(const Surroundings& around, const StockLot& lot, const std::function<void(int, Mass)>& done,
                         std::function<void()> changeUnits, QWidget* parent)
{
    FiguresScreen::Spec spec = specOf(u"screen_stock_book_in"_s, lot, around);
    spec.sentence = Says::tr("How many packages, and how much in each?");
    spec.wayOn = Says::tr("So many came in");
    spec.changeUnits = std::move(changeUnits);
    const StockState* known = around.bench.stock().ledger().of(lot);
    const Mass usual = known && known->each > grams(0)  ? known->each
                       : lot.product == hardenerProduct ? grams(40)
                                                        : grams(1000);
    spec.figures = {countFigure(u"stock_packages"_s, Says::tr("Packages"), Says::tr("Key in how many packages"), 1,
                                mostPackages, 1),
                    massFigure(u"stock_each"_s, Says::tr("Net mass of one"), Says::tr("Key in the net mass of one"),
                               {grams(leastGrams), grams(mostGrams)}, usual, around.words)};
    spec.done = [done](const std::vector<double>& values) {
        done(static_cast<int>(std::lround(values[0])), Mass::from_value(values[1]));
    };
    return new FiguresScreen(around, std::move(spec), parent);
}

Screen* makeDatedScreen(const Surroundings& around, const StockLot& lot, const std::function<void()>& printed,
                        const std::function<void()>& notPrinted, QWidget* parent)
{
    ChoiceScreen::Spec spec =
        choiceOf(u"screen_stock_dated"_s, nameOf(lot, around), Says::tr("Is a date printed on it?"));
    spec.tiles = {
        {u"stock_dated"_s, Says::tr("Yes, a date"), Says::tr("best before, or use by"), {}, false, false, printed},
        {u"stock_not_dated"_s,
         Says::tr("No date"),
         Says::tr("its sheet’s months count from today"),
         {},
         false,
         false,
         notPrinted}};
    return new ChoiceScreen(around, std::move(spec), parent);
}

Screen* makeBestBeforeScreen(const Surroundings& around, const StockLot& lot,
                             const std::function<void(const QDate&)>& done, QWidget* parent)
{
    const QDate today = QDate::fromString(localDay(around.bench.clock().now()), Qt::ISODate);
    FiguresScreen::Spec spec = specOf(u"screen_stock_best_before"_s, lot, around);
    spec.sentence = Says::tr("Which date is printed?");
    spec.wayOn = Says::tr("This date");
    spec.figures = {countFigure(u"stock_year"_s, Says::tr("Year"), Says::tr("Key in the year"), firstYear, lastYear,
                                today.year() + 1),
                    countFigure(u"stock_month"_s, Says::tr("Month"), Says::tr("Key in the month"), 1, 12, 6),
                    countFigure(u"stock_day"_s, Says::tr("Day"),
                                Says::tr("Key in the day; where none is printed, the last of the month"), 1, 31, 28)};
    spec.verdict = [words = around.words, today](const std::vector<std::optional<double>>& values) {
        using Verdict = FiguresScreen::Spec::Verdict;
        if (!values[0] || !values[1] || !values[2])
            return Verdict{Says::tr("Where no day is printed it is the last of the month."), true};
        const QDate day = dateOf(*values[0], *values[1], *values[2]);
        if (!day.isValid())
            return Verdict{Says::tr("There is no such day."), false};
        const QString shown = words.locale().toString(day, QLocale::LongFormat);
        return Verdict{day < today ? Says::tr("%1: past already").arg(shown) : shown, true};
    };
    spec.done = [done](const std::vector<double>& values) { done(dateOf(values[0], values[1], values[2])); };
    return new FiguresScreen(around, std::move(spec), parent);
}

Screen* makeCountScreen(const Surroundings& around, const StockLot& lot, const std::function<void(Mass)>& done,
                        std::function<void()> changeUnits, QWidget* parent)
{
    FiguresScreen::Spec spec = specOf(u"screen_stock_count"_s, lot, around);
    const StockState* known = around.bench.stock().ledger().of(lot);
    const Mass left = known ? known->left() : grams(0);
    spec.sentence = Says::tr("How much of this lot is there, without the tubs?");
    spec.wayOn = Says::tr("So much is there");
    spec.verdict = [words = around.words, left](const std::vector<std::optional<double>>& values) {
        const QString thought = Says::tr("Thought to be there: %1.").arg(stockMass(left, words));
        if (!values[0])
            return FiguresScreen::Spec::Verdict{thought, true};
        const Mass off = Mass::from_value(*values[0]) - left;
        const QString more = off < grams(0) ? Says::tr("%1 less than thought") : Says::tr("%1 more than thought");
        return FiguresScreen::Spec::Verdict{
            inMicrograms(off) == 0 ? Says::tr("As thought.")
                                   : thought + u' ' + more.arg(stockMass(off < grams(0) ? -off : off, words)),
            true};
    };
    return askMass(around, std::move(spec),
                   massFigure(u"stock_there"_s, Says::tr("There"), Says::tr("Key in how much is there"),
                              {grams(0), grams(mostCountedGrams)}, left, around.words),
                   done, std::move(changeUnits), parent);
}

Screen* makeChangeWhyScreen(const Surroundings& around, const StockLot& lot,
                            const std::function<void(StockChange, bool)>& chosen, QWidget* parent)
{
    ChoiceScreen::Spec spec =
        choiceOf(u"screen_stock_change_why"_s, nameOf(lot, around), Says::tr("Why is there more or less of it?"));
    const auto tile = [&](StockChange reason, bool less) {
        spec.tiles.push_back({u"change_%1_%2"_s.arg(codeOf(reason), less ? u"less"_s : u"more"_s),
                              stockChangeText(reason),
                              less ? Says::tr("there is less") : Says::tr("there is more"),
                              {},
                              false,
                              false,
                              [chosen, reason, less] { chosen(reason, less); }});
    };
    tile(StockChange::Spilled, true);
    tile(StockChange::ToAnotherBench, true);
    tile(StockChange::FromAnotherBench, false);
    tile(StockChange::KeyedInWrong, true);
    tile(StockChange::KeyedInWrong, false);
    return new ChoiceScreen(around, std::move(spec), parent);
}

Screen* makeChangeByScreen(const Surroundings& around, const StockLot& lot, StockChange reason, bool less,
                           const std::function<void(Mass)>& done, std::function<void()> changeUnits, QWidget* parent)
{
    FiguresScreen::Spec spec = specOf(u"screen_stock_change_by"_s, lot, around);
    spec.sentence = less ? Says::tr("%1: how much less is there?").arg(stockChangeText(reason))
                         : Says::tr("%1: how much more is there?").arg(stockChangeText(reason));
    spec.wayOn = Says::tr("By so much");
    return askMass(around, std::move(spec),
                   massFigure(u"stock_by"_s, less ? Says::tr("Less by") : Says::tr("More by"),
                              Says::tr("Key in by how much"), {grams(0.1), grams(mostGrams)}, grams(10), around.words),
                   done, std::move(changeUnits), parent);
}

Screen* makeEndWhyScreen(const Surroundings& around, const StockLot& lot, const std::function<void(StockEnd)>& chosen,
                         QWidget* parent)
{
    ChoiceScreen::Spec spec =
        choiceOf(u"screen_stock_end_why"_s, nameOf(lot, around), Says::tr("Why does the open one end?"));
    spec.moreTitle = Says::tr("More reasons");
    for (const QString& code : allCodes<StockEnd>()) {
        const StockEnd reason = *fromCode<StockEnd>(code);
        spec.tiles.push_back(
            {u"end_"_s + code, stockEndText(reason), {}, {}, false, false, [chosen, reason] { chosen(reason); }});
    }
    return new ChoiceScreen(around, std::move(spec), parent);
}

Screen* makeThrownAwayScreen(const Surroundings& around, const StockLot& lot, StockEnd reason,
                             const std::function<void(Mass)>& done, std::function<void()> changeUnits, QWidget* parent)
{
    FiguresScreen::Spec spec = specOf(u"screen_stock_thrown_away"_s, lot, around);
    const StockState* known = around.bench.stock().ledger().of(lot);
    spec.context += u" · "_s + stockEndText(reason);
    spec.sentence = Says::tr("How much is thrown away with it?");
    spec.wayOn = Says::tr("End this package");
    spec.verdict = [](const auto&) {
        return FiguresScreen::Spec::Verdict{
            Says::tr("Waste of its kind, by the safety data sheet and local codes: never down the drain."), true};
    };
    return askMass(around, std::move(spec),
                   massFigure(u"stock_thrown_away"_s, Says::tr("Thrown away"), Says::tr("Key in how much"),
                              {grams(0), grams(mostGrams)}, known ? known->inTheOpenOne() : grams(0), around.words),
                   done, std::move(changeUnits), parent);
}

Screen* makeStockTemperatureScreen(const Surroundings& around, const StockLot& lot, bool probe,
                                   const std::function<void(Temperature)>& done, std::function<void()> changeUnits,
                                   QWidget* parent)
{
    FiguresScreen::Spec spec = specOf(probe ? u"screen_stock_probe"_s : u"screen_stock_moved"_s, lot, around);
    spec.sentence = probe ? Says::tr("What does the probe in its middle read?")
                          : Says::tr("How cold or hot was the place it came from?");
    spec.wayOn = probe ? Says::tr("It reads this") : Says::tr("It came from there");
    spec.changeUnits = std::move(changeUnits);
    FigureSpec figure;
    figure.name = u"stock_temperature"_s;
    figure.caption = probe ? Says::tr("Its middle") : Says::tr("That place");
    figure.keyPadSentence = Says::tr("Key in the temperature");
    figure.start = inKelvin(celsius(probe ? 18 : 5));
    inTemperatures(figure, around.words);
    wire<Temperature>(figure, places, around.words, printTemperature, parseTemperature);
    spec.figures = {figure};
    spec.done = [done](const std::vector<double>& values) { done(kelvin(values[0])); };
    return new FiguresScreen(around, std::move(spec), parent);
}

Screen* makeReorderLevelScreen(const Surroundings& around, const QString& product,
                               const std::function<void(Mass)>& done, std::function<void()> changeUnits,
                               QWidget* parent)
{
    FiguresScreen::Spec spec = specOf(u"screen_reorder_level"_s, {}, around);
    spec.context = stockProductName(product, around.bench.planning().catalogue);
    spec.sentence = Says::tr("Below how much is it reordered? Nothing: never");
    spec.wayOn = Says::tr("This is the level");
    return askMass(around, std::move(spec),
                   massFigure(u"reorder_below"_s, Says::tr("Level"), Says::tr("Key in the level"),
                              {grams(0), grams(mostCountedGrams)}, grams(1000), around.words),
                   done, std::move(changeUnits), parent);
}

} // namespace strandbench
