// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/sheet_hazards.h"

#include <QRegularExpression>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int longestCode = 40;  // four statements joined
constexpr int longestLine = 160; // of the shop's own words: what a page has room for
constexpr qsizetype mostCodes = 12;

bool matches(const QString& code, const QString& one)
{
    const QString joined = QRegularExpression::anchoredPattern(u"(?:%1)(?:\\+(?:%1)){0,3}"_s.arg(one));
    return QRegularExpression(joined).match(code).hasMatch();
}

std::vector<QString> readCodes(StrictObject& object, const QString& key, bool (*fits)(const QString&),
                               const QString& example)
{
    const QStringList codes = object.texts(key, longestCode);
    if (codes.size() > mostCodes)
        object.fault(key, QString::number(codes.size()), FaultKind::OutOfRange,
                     {u"0"_s, QString::number(mostCodes), {}});
    for (qsizetype i = 0; i < codes.size(); ++i) {
        const QString item = u"%1[%2]"_s.arg(key).arg(i);
        if (!codes.at(i).isEmpty() && !fits(codes.at(i)))
            object.fault(item, codes.at(i), FaultKind::NotReadable, {example});
        if (const qsizetype first = codes.indexOf(codes.at(i)); first < i)
            object.fault(item, codes.at(i), FaultKind::Conflicts,
                         {object.pathOf(u"%1[%2]"_s.arg(key).arg(first)), codes.at(i)});
    }
    return {codes.cbegin(), codes.cend()};
}

std::vector<GhsPictogram> readPictograms(StrictObject& object)
{
    std::vector<GhsPictogram> pictograms;
    const QString key = u"pictograms"_s;
    const QStringList codes = object.texts(key, longestCode);
    for (qsizetype i = 0; i < codes.size(); ++i) {
        const auto pictogram = fromCode<GhsPictogram>(codes.at(i));
        const QString item = u"%1[%2]"_s.arg(key).arg(i);
        if (!pictogram && !codes.at(i).isEmpty())
            object.fault(item, codes.at(i), FaultKind::NotOneOf, allCodes<GhsPictogram>());
        else if (pictogram && std::ranges::find(pictograms, *pictogram) != pictograms.end())
            object.fault(item, codes.at(i), FaultKind::Conflicts,
                         {object.pathOf(u"%1[%2]"_s.arg(key).arg(codes.indexOf(codes.at(i)))), codes.at(i)});
        else if (pictogram)
            pictograms.push_back(*pictogram);
    }
    return pictograms;
}

SheetHazards readHazards(StrictObject& object)
{
    SheetHazards hazards;
    hazards.signal = object.oneOf<SignalWord>(u"signal"_s);
    hazards.pictograms = readPictograms(object);
    hazards.hazards = readCodes(object, u"h"_s, isHazardCode, u"H226"_s);
    hazards.precautions = readCodes(object, u"p"_s, isPrecautionCode, u"P305+P351+P338"_s);
    hazards.gloves = object.optionalText(u"gloves"_s, longestLine).value_or(QString());
    hazards.respirator = object.optionalText(u"respirator"_s, longestLine).value_or(QString());
    hazards.firstAid = object.optionalText(u"first_aid"_s, longestLine).value_or(QString());
    hazards.waste = object.optionalText(u"waste"_s, longestLine).value_or(QString());
    return hazards;
}

} // namespace

bool isHazardCode(const QString& code) { return matches(code, u"(?:H[234]\\d\\d|EUH\\d\\d\\d)[A-Za-z]{0,3}"_s); }

bool isPrecautionCode(const QString& code) { return matches(code, u"P[1-5]\\d\\d"_s); }

void readSheetHazards(StrictObject& sheet, ProductSheet& into)
{
    const QString key = u"hazards"_s;
    sheet.known(key);
    if (!sheet.has(key))
        return;
    sheet.nested(key, [&](StrictObject& object) {
        into.hazards = readHazards(object);
        const QString hardener = u"hardener"_s;
        object.known(hardener);
        if (object.has(hardener))
            object.nested(hardener, [&](StrictObject& inner) { into.hardenerHazards = readHazards(inner); });
    });
}

} // namespace strandbench
