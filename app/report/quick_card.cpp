// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/quick_card.h"

#include "pictures/pictogram.h"
#include "plan/assumption_table.h"
#include "words/assumption_words.h"
#include "words/help_words.h"
#include "words/sheet_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double signMm = 11;
constexpr double stepWidthMm = 34; // five in a row on both papers

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(QuickCard)
};

PageFrame frameOf(const QuickCardFacts& facts)
{
    PageFrame frame;
    frame.title = Says::tr("Quick card");
    //: %1 is a day
    frame.head = Says::tr("Limits as they were set on %1; the glass shows those of now.").arg(facts.day);
    frame.foot = Says::tr("The safety data sheets, the vehicle maker’s repair manual, local codes and licensed "
                          "practice come before this card.");
    //: a page of several: "1 of 3"
    frame.number = [](int page, int of) { return Says::tr("%1 of %2").arg(page).arg(of); };
    return frame;
}

/// A sign in a square, with its caption.
PaperDocument::Captioned captioned(const PaperDocument& document, Pictogram sign, const QString& caption)
{
    const Theme theme(Metrics(document.px(1)), DayNight::Day, Hand::Right);
    return {[theme, sign](QPainter& painter, const QRectF& rect) {
                const double side = std::min(rect.width(), rect.height());
                paintPictogram(painter, QRectF(rect.left(), rect.top(), side, side), sign, theme, Qt::black);
            },
            caption};
}

void writeSteps(PaperDocument& document, const Words& words)
{
    constexpr std::pair<Station, HelpTopic> steps[] = {
        {Station::Assess, HelpTopic::AskMaterial}, {Station::Decide, HelpTopic::Plan},
        {Station::Prepare, HelpTopic::Clean},      {Station::Mix, HelpTopic::Mix},
        {Station::Spread, HelpTopic::Spread},      {Station::Wait, HelpTopic::Cure},
        {Station::Sand, HelpTopic::Sand},          {Station::Turn, HelpTopic::Turn},
        {Station::Finish, HelpTopic::Contour},     {Station::HandOver, HelpTopic::HandOver},
    };
    std::vector<PaperDocument::Captioned> drawn;
    for (const auto& [station, topic] : steps) {
        const QString number = QString::number(drawn.size() + 1);
        drawn.push_back(
            captioned(document, signOf(station),
                      number + u" · "_s + Words::title(words.station(station)) + u": "_s + helpText(topic).how));
    }
    document.heading(Says::tr("The job in steps"));
    document.drawings(stepWidthMm, signMm, drawn);
}

void writeLimits(PaperDocument& document, const QuickCardFacts& facts)
{
    const AssumptionWords say(facts.words);
    std::vector<QStringList> rows;
    for (const QString& code :
         {u"panel_low_c"_s, u"panel_caution_below_c"_s, u"panel_high_c"_s, u"air_low_c"_s, u"air_high_c"_s,
          u"dew_margin_k"_s, u"hole_greatest_mm"_s, u"dent_deepest_mm"_s, u"before_primer_min"_s}) {
        const AssumptionEntry* entry = findAssumption(code);
        if (!entry)
            throw std::logic_error("the quick card names an assumption that is none");
        rows.push_back({AssumptionWords::name(code), say.figure(*entry, entry->numberOf(facts.assumptions))});
    }
    document.heading(Says::tr("Limits of this bench; a product’s own apply where they are narrower"));
    document.table({{Says::tr("Limit"), 5}, {Says::tr("Set to"), 2}}, rows);
}

QStringList productRow(const ProductSheet& sheet, const Words& words)
{
    //: a range: "1 % to 3 %"
    const auto range = [](const QString& low, const QString& high) { return Says::tr("%1 to %2").arg(low, high); };
    return {SheetWords::sheetName(sheet), range(words.percent(sheet.hardenerLow), words.percent(sheet.hardenerHigh)),
            words.fineLength(sheet.greatestLift),
            range(words.temperature(sheet.panelLow), words.temperature(sheet.panelHigh))};
}

void writeProducts(PaperDocument& document, const QuickCardFacts& facts)
{
    document.heading(Says::tr("Products in use, by their sheets"));
    std::vector<QStringList> rows;
    for (std::size_t i = 0; i < std::min(facts.sheets.size(), productsOnCard); ++i)
        rows.push_back(productRow(facts.sheets[i], facts.words));
    document.table({{Says::tr("Product"), 4},
                    {Says::tr("Hardener, of the filler’s mass"), 3},
                    {Says::tr("Greatest lift"), 2},
                    {Says::tr("Panel"), 3}},
                   rows);
    if (facts.sheets.size() > productsOnCard)
        document.small(Says::tr("%n more product(s) under bench set-up.", nullptr,
                                static_cast<int>(facts.sheets.size() - productsOnCard)));
}

void writeSigns(PaperDocument& document)
{
    document.heading(Says::tr("Signs"));
    document.drawings(stepWidthMm, signMm,
                      {captioned(document, Pictogram::StopHand, Says::tr("Stop: do not go on here.")),
                       captioned(document, Pictogram::Caution, Says::tr("Caution: it can hurt, or spoil the work.")),
                       captioned(document, Pictogram::Tick, Says::tr("Done: it was told and is in the log."))});
}

void writeCard(PaperDocument& document, const QuickCardFacts& facts)
{
    document.title(Says::tr("Quick card"));
    writeSteps(document, facts.words);
    writeLimits(document, facts);
    writeProducts(document, facts);
    writeSigns(document);
}

} // namespace

QByteArray quickCardPdf(Paper paper, const QuickCardFacts& facts, const std::stop_token& stop)
{
    return printPdf(
        paper, frameOf(facts), [&](PaperDocument& document) { writeCard(document, facts); }, stop);
}

PrintEnd printQuickCard(QPagedPaintDevice& device, const QuickCardFacts& facts, const std::stop_token& stop)
{
    return printPages(
        device, frameOf(facts), [&](PaperDocument& document) { writeCard(document, facts); }, stop);
}

} // namespace strandbench
