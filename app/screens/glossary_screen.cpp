// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/glossary_screen.h"

#include "screens/page_column.h"
#include "screens/paged_rows.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr std::size_t cardsOnAPage = 2;

} // namespace

GlossaryScreen::GlossaryScreen(const Surroundings& around, QWidget* parent)
    : Screen(around, u"screen_glossary"_s, parent)
{
    buildFrame(tr("Help"), tr("Words of the trade"));
    answers()->stop()->hide();
    answers()->setWayOn(tr("Back to the job"));
    connect(answers(), &AnswerBar::wayOnTapped, this, &GlossaryScreen::jobWanted);
    const std::vector<GlossaryEntry> entries = glossary(words().locale());
    std::vector<PagedRows::MakeRow> pages;
    for (std::size_t from = 0; from < entries.size(); from += cardsOnAPage * perCard())
        pages.push_back([this, entries, from](QWidget* into) { return page(entries, from, into); });
    auto* rows = new PagedRows(around, PagedRows::wholePages, this);
    content()->addWidget(rows, 1);
    rows->setRows(std::move(pages));
}

QWidget* GlossaryScreen::page(const std::vector<GlossaryEntry>& entries, std::size_t from, QWidget* parent)
{
    auto* made = new QWidget(parent);
    QBoxLayout* row = columnsIn(made, around());
    for (std::size_t card = 0; card < cardsOnAPage; ++card) {
        const std::size_t first = from + card * perCard();
        if (first >= entries.size())
            break; // the last page may hold one card alone
        const PageColumn column(theme(), u"glossary_card_%1"_s.arg(card), made);
        for (std::size_t i = first; i < std::min(entries.size(), first + perCard()); ++i)
            column.addPair(u"term_"_s + entries[i].id, Words::title(entries[i].term), entries[i].definition);
        row->addWidget(column.card, 1);
    }
    return made;
}

} // namespace strandbench
