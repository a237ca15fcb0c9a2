// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/beside/harm_screen.h"

#include "exchange/harm.h"
#include "screens/beside/ghs_sign.h"
#include "screens/frame/page_column.h"
#include "screens/frame/paged_rows.h"
#include "theme/sizes.h"
#include "words/harm_words.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double pictogramMm = 14;
constexpr double smallPictogramMm = 9;
constexpr std::size_t statementsOnAPage = 4; // as many as a low glass has room for, in every language

/// A sheet's own line, else the general one.
QString lineOf(const QString& own, const QString& general) { return own.isEmpty() ? general : own; }

} // namespace

HarmScreen::HarmScreen(const Surroundings& around, const Repair& repair, const HarmHere& here, QWidget* parent)
    : Screen(around, u"screen_harm"_s, parent), m_here(here)
{
    buildFrame(contextOf(repair, words()), tr("What can hurt here"));
    auto* column = new QVBoxLayout;
    column->setSpacing(px(1));
    auto* pages = new PagedRows(around, PagedRows::wholePages, this);
    std::vector<PagedRows::MakeRow> rows{[this](QWidget* into) { return overviewPage(into); }};
    for (const HarmShown& each : m_here.met) {
        if (each.bySheet && each.hazards.empty()) // that there is none is the sheet's word too
            rows.push_back([this, each](QWidget* into) { return labelPage(each, 0, into); });
        for (std::size_t from = 0; from < each.hazards.size(); from += statementsOnAPage)
            rows.push_back([this, each, from](QWidget* into) { return labelPage(each, from, into); });
        rows.push_back([this, each](QWidget* into) { return doPage(each, into); });
        for (std::size_t from = 0; from < each.precautions.size(); from += statementsOnAPage)
            rows.push_back([this, each, from](QWidget* into) { return precautionsPage(each, from, into); });
    }
    pages->setRows(std::move(rows));
    column->addWidget(pages, 1);
    column->addWidget(label(u"harm_first"_s, TextRole::Small,
                            tr("The safety data sheet, local codes and licensed practice come first."),
                            Role::MutedInk));
    content()->addLayout(column, 1);
    answers()->setWayOn(tr("Back to the step"));
    connect(answers(), &AnswerBar::wayOnTapped, this, &Screen::backTapped);
}

QWidget* HarmScreen::overviewPage(QWidget* parent)
{
    auto* page = new QWidget(parent);
    QBoxLayout* row = columnsIn(page, around());
    const PageColumn first(theme(), u"harm_measures"_s, page);
    const HarmPlace* place = builtInHarm().place(m_here.place);
    for (std::size_t i = 0; place && i < place->first.size(); ++i) {
        const CautionText text = words::measure(place->first[i]);
        first.addPair(u"harm_measure_%1"_s.arg(i), text.lead, text.rest, first.cautionSign(text.code, tr("Caution")));
    }
    row->addWidget(first.card, 1);
    const PageColumn met(theme(), u"harm_met"_s, page);
    for (std::size_t i = 0; i < m_here.met.size(); ++i) {
        const HarmShown& each = m_here.met[i];
        auto* sign =
            each.pictograms.empty() ? nullptr : new GhsSign(theme(), each.pictograms, smallPictogramMm, met.card);
        FitLabel* name =
            textIn(theme(), u"harm_met_%1"_s.arg(i), TextRole::Body, words::harmMaterial(each.material), met.card);
        name->setBold(true);
        FitLabel* signal =
            textIn(theme(), u"harm_met_%1_signal"_s.arg(i), TextRole::Small, words::signalWord(each.signal), met.card);
        met.lines->addRow({name, signal}, sign, px(2), px(PageColumn::rowGapMm));
    }
    row->addWidget(met.card, 1);
    return page;
}

QWidget* HarmScreen::labelPage(const HarmShown& shown, std::size_t from, QWidget* parent)
{
    auto* page = new QWidget(parent);
    QBoxLayout* row = columnsIn(page, around());
    auto* left = new Card(theme(), page);
    left->setObjectName(u"harm_label"_s);
    auto* column = new QVBoxLayout(left);
    column->setContentsMargins(px(2), px(1), px(2), px(1));
    column->setSpacing(px(0.5));
    if (!shown.pictograms.empty())
        column->addWidget(new GhsSign(theme(), shown.pictograms, pictogramMm, left), 0, Qt::AlignHCenter);
    FitLabel* name = textIn(theme(), u"harm_name"_s, TextRole::Title, words::harmMaterial(shown.material), left);
    name->setBold(true);
    column->addWidget(name, 2);
    if (const QString signal = words::signalWord(shown.signal); !signal.isEmpty()) {
        FitLabel* told = textIn(theme(), u"harm_signal"_s, TextRole::Title, signal, left);
        told->setBold(true);
        told->setRole(Role::Stop);
        column->addWidget(told, 1);
    }
    //: %1 is a product as the shop calls it
    const QString whose = shown.bySheet ? tr("By the safety data sheet of %1").arg(m_here.product)
                                        : tr("In general; the product’s own sheet may say more.");
    FitLabel* told = textIn(theme(), u"harm_whose"_s, TextRole::Small, whose, left);
    told->setRole(Role::MutedInk);
    column->addWidget(told, 1);
    row->addWidget(left, 2);
    const PageColumn right(theme(), u"harm_statements"_s, page);
    for (std::size_t i = from; i < std::min(shown.hazards.size(), from + statementsOnAPage); ++i)
        right.add(u"harm_h_%1"_s.arg(i), TextRole::Body, words::statement(shown.hazards[i]));
    if (shown.hazards.empty())
        right.add(u"harm_no_h"_s, TextRole::Body, tr("Its sheet states no hazard."));
    row->addWidget(right.card, 3);
    return page;
}

QWidget* HarmScreen::doPage(const HarmShown& shown, QWidget* parent)
{
    auto* page = new QWidget(parent);
    QBoxLayout* row = columnsIn(page, around());
    const PageColumn left(theme(), u"harm_keeps"_s, page);
    left.add(u"harm_name"_s, TextRole::Body, words::harmMaterial(shown.material), true);
    const auto line = [&](const QString& name, const QString& text) { left.add(name, TextRole::Body, text); };
    line(u"harm_gloves"_s, tr("Gloves: %1").arg(lineOf(shown.ownGloves, words::gloves(shown.gloves))));
    line(u"harm_respirator"_s, tr("Mask: %1").arg(lineOf(shown.ownRespirator, words::respirator(shown.respirator))));
    line(u"harm_first_aid"_s, tr("First aid: %1").arg(lineOf(shown.ownFirstAid, words::firstAid(shown.firstAid))));
    line(u"harm_waste"_s, tr("Waste: %1").arg(lineOf(shown.ownWaste, words::harmWaste(shown.waste))));
    row->addWidget(left.card, 1);
    return page;
}

QWidget* HarmScreen::precautionsPage(const HarmShown& shown, std::size_t from, QWidget* parent)
{
    auto* page = new QWidget(parent);
    QBoxLayout* row = columnsIn(page, around());
    const PageColumn column(theme(), u"harm_precautions"_s, page);
    column.add(u"harm_name"_s, TextRole::Body, words::harmMaterial(shown.material), true);
    for (std::size_t i = from; i < std::min(shown.precautions.size(), from + statementsOnAPage); ++i)
        column.add(u"harm_p_%1"_s.arg(i), TextRole::Body, words::statement(shown.precautions[i]));
    row->addWidget(column.card, 1);
    return page;
}

} // namespace strandbench
