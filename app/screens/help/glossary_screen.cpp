// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/help/glossary_screen.h"

#include "screens/frame/pair_pages.h"
#include "words/glossary.h"

using namespace Qt::StringLiterals;

namespace strandbench {

GlossaryScreen::GlossaryScreen(const Surroundings& around, QWidget* parent)
    : Screen(around, u"screen_glossary"_s, parent)
{
    buildFrame(tr("Help"), tr("Words of the trade"));
    answers()->stop()->hide();
    answers()->setWayOn(tr("Back to the job"));
    connect(answers(), &AnswerBar::wayOnTapped, this, &GlossaryScreen::jobWanted);
    std::vector<PairOnPage> pairs;
    for (const std::vector<GlossaryEntry> entries = glossary(words().locale()); const GlossaryEntry& each : entries)
        pairs.push_back({u"term_"_s + each.id, Words::title(each.term), each.definition, {}});
    content()->addWidget(pairPages(around, u"glossary_card"_s, around.upright ? 4 : 3, pairs, this), 1);
}

} // namespace strandbench
