// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/stock_words.h"

#include "words/sheet_words.h"
#include "words/table.h"

#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using words::Line;

constexpr Line ends[] = {
    {"used_up", QT_TRANSLATE_NOOP("Stock", "Used up")},
    {"skin", QT_TRANSLATE_NOOP("Stock", "Skin on it")},
    {"separated", QT_TRANSLATE_NOOP("Stock", "Separated, kneading does not help")},
    {"hard_hardener", QT_TRANSLATE_NOOP("Stock", "Hard or crumbly")},
    {"past_its_date", QT_TRANSLATE_NOOP("Stock", "Past its date")},
    {"open_too_long", QT_TRANSLATE_NOOP("Stock", "Open for too long")},
    {"spoilt", QT_TRANSLATE_NOOP("Stock", "Spoilt otherwise")},
};

constexpr Line changes[] = {
    {"spilled", QT_TRANSLATE_NOOP("Stock", "Spilled")},
    {"to_another_bench", QT_TRANSLATE_NOOP("Stock", "Gone to another bench")},
    {"from_another_bench", QT_TRANSLATE_NOOP("Stock", "Come from another bench")},
    {"keyed_in_wrong", QT_TRANSLATE_NOOP("Stock", "Keyed in wrong")},
};

constexpr Line notes[] = {
    //: %1 is why: "Skin on it"
    {"stock_has_ended", QT_TRANSLATE_NOOP("Stock", "It was ended (%1): take another lot.")},
    {"stock_overdrawn", QT_TRANSLATE_NOOP("Stock", "%1 more was used than was there: count it.")},
    {"stock_short", QT_TRANSLATE_NOOP("Stock", "Too little: %1 is needed, %2 is left.")},
    //: %1 is a day
    {"stock_past_its_date", QT_TRANSLATE_NOOP("Stock", "Its date is past: it was good until %1.")},
    //: %1 is a day, %2 a number of months
    {"stock_open_too_long", QT_TRANSLATE_NOOP("Stock", "Open too long: since %1, its sheet allows %2 months.")},
    {"stock_evens_out", QT_TRANSLATE_NOOP("Stock", "It still evens out with the air: %1 to go.")},
    {"stock_air_unknown", QT_TRANSLATE_NOOP("Stock", "It came from a colder or hotter place: read the air first.")},
    {"stock_probe_off", QT_TRANSLATE_NOOP("Stock", "Its middle was at %1: it is mixed from %2 to %3.")},
    {"stock_untried", QT_TRANSLATE_NOOP("Stock", "New lot: make a test pat before the first batch.")},
};

QString say(const char* text, const QStringList& arguments = {})
{
    return words::fillIn(words::inLanguage("Stock", text), arguments);
}

/// An argument of a note; a text is a day or why a package ended.
class NoteArgument {
public:
    explicit NoteArgument(const Words& words) : m_words(words) {}
    QString operator()(Mass value) const { return stockMass(value, m_words); }
    QString operator()(Temperature value) const { return m_words.temperature(value); }
    QString operator()(Duration value) const { return m_words.longDuration(value); }
    QString operator()(Count value) const { return QString::number(value.value); }
    QString operator()(const QString& text) const
    {
        if (const auto end = fromCode<StockEnd>(text))
            return stockEndText(*end);
        return stockDay(QDate::fromString(text, Qt::ISODate), m_words);
    }
    QString operator()(Length value) const { return m_words.length(value); }
    QString operator()(Volume value) const { return m_words.volume(value); }
    QString operator()(TemperatureStep value) const { return m_words.temperatureStep(value); }
    QString operator()(Fraction value) const { return m_words.percent(value); }

private:
    const Words& m_words;
};

QString inSentence(QString name)
{
    name[0] = name.at(0).toLower();
    return name;
}

} // namespace

QString stockProductName(const QString& product, const Catalogue& catalogue)
{
    if (product == hardenerProduct)
        return say(QT_TRANSLATE_NOOP("Stock", "Hardener"));
    const ProductSheet* sheet = catalogue.byId(product);
    return sheet ? SheetWords::sheetName(*sheet) : product;
}

QString stockLotName(const StockLot& lot, const Catalogue& catalogue)
{
    //: %1 is a product, %2 a lot
    return say(QT_TRANSLATE_NOOP("Stock", "%1 · lot %2"), {stockProductName(lot.product, catalogue), lot.lot});
}

QString stockEndText(StockEnd end) { return words::lookUp("Stock", ends, codeOf(end)); }
QString stockChangeText(StockChange change) { return words::lookUp("Stock", changes, codeOf(change)); }

QString stockMoveText(const StockMovement& movement)
{
    switch (movement.move) {
    case StockMove::Received:
        return say(QT_TRANSLATE_NOOP("Stock", "Came in"));
    case StockMove::Counted:
        return say(QT_TRANSLATE_NOOP("Stock", "Counted"));
    case StockMove::Adjusted:
        return stockChangeText(fromCode<StockChange>(movement.note).value_or(StockChange::KeyedInWrong));
    case StockMove::ThrownAway:
        //: %1 is why: "skin on it"
        return say(QT_TRANSLATE_NOOP("Stock", "Package ended: %1"),
                   {inSentence(stockEndText(fromCode<StockEnd>(movement.note).value_or(StockEnd::Spoilt)))});
    case StockMove::Mixed:
        return movement.note.isEmpty() ? say(QT_TRANSLATE_NOOP("Stock", "A batch"))
                                       //: %1 is a job's number
                                       : say(QT_TRANSLATE_NOOP("Stock", "Batch of job %1"), {movement.note});
    case StockMove::TestPat:
        return say(QT_TRANSLATE_NOOP("Stock", "Test pat"));
    }
    Q_UNREACHABLE();
}

QString stockNoteText(const Reason& reason, const Words& words)
{
    QStringList arguments;
    for (const Argument& each : reason.arguments)
        arguments << std::visit(NoteArgument(words), each);
    return words::fillIn(words::lookUp("Stock", notes, reason.code), arguments);
}

QString stockMass(Mass mass, const Words& words)
{
    const bool us = words.units() == UnitSystem::UsCustomary;
    const double large = us ? inPounds(mass) : inGrams(mass) / 1000;
    if (std::abs(large) < 1)
        return words.mass(mass);
    return words.number(large, 2) + QChar(QChar::Nbsp) + (us ? u"lb"_s : u"kg"_s);
}

QString stockDay(const QDate& day, const Words& words) { return words.locale().toString(day, QLocale::ShortFormat); }

} // namespace strandbench
