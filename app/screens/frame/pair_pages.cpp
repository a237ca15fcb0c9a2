// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/frame/pair_pages.h"

#include "screens/frame/page_column.h"

#include <algorithm>
#include <span>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr std::size_t cardsOnAPage = 2;

QWidget* cardOf(const Theme& theme, const QString& name, std::span<const PairOnPage> pairs, QWidget* parent)
{
    const PageColumn column(theme, name, parent);
    for (const PairOnPage& each : pairs)
        column.addPair(each.name, each.lead, each.told, each.sign ? each.sign(column.card) : nullptr);
    return column.card;
}

} // namespace

PagedRows* pairPages(const Surroundings& around, const QString& cards, std::size_t perCard,
                     const std::vector<PairOnPage>& pairs, QWidget* parent)
{
    std::vector<PagedRows::MakeRow> pages;
    for (std::size_t from = 0; from < pairs.size(); from += cardsOnAPage * perCard)
        pages.push_back([around, cards, perCard, pairs, from](QWidget* into) {
            auto* page = new QWidget(into);
            QBoxLayout* row = columnsIn(page, around);
            for (std::size_t card = 0; card < cardsOnAPage; ++card) {
                const std::size_t first = from + card * perCard;
                if (first >= pairs.size())
                    break;
                const std::size_t count = std::min(perCard, pairs.size() - first);
                row->addWidget(
                    cardOf(around.theme, cards + u"_%1"_s.arg(card), std::span(pairs).subspan(first, count), page), 1);
            }
            return page;
        });
    auto* rows = new PagedRows(around, PagedRows::wholePages, parent);
    rows->setRows(std::move(pages));
    return rows;
}

} // namespace strandbench
