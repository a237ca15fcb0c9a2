// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/help/quick_card_screen.h"

#include "report/quick_card.h"
#include "words/event_words.h"

using namespace Qt::StringLiterals;

namespace strandbench {

QuickCardScreen::QuickCardScreen(const Surroundings& around, QWidget* parent, Printing printing)
    : PaperScreen(around, u"screen_quick_card"_s, tr("Choose where the quick card goes"), parent, std::move(printing))
{
    // All that it is made of, its own: the bench may change meanwhile.
    const auto facts = std::make_shared<const QuickCardFacts>(QuickCardFacts{around.bench.planning().catalogue.sheets(),
                                                                             around.bench.assumptions(), around.words,
                                                                             localDay(around.bench.clock().now())});
    Papers papers;
    papers.stem = u"quick-card-"_s + facts->day;
    papers.pdf = [facts](Paper paper, const std::stop_token& stop) { return quickCardPdf(paper, *facts, stop); };
    papers.print = [facts](QPagedPaintDevice& device, Paper, const std::stop_token& stop) {
        return printQuickCard(device, *facts, stop);
    };
    ready(std::move(papers));
}

} // namespace strandbench
