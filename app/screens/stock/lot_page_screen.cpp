// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/stock/lot_page_screen.h"

#include "learning/learning_rules.h"
#include "screens/frame/choice_screen.h"
#include "screens/job/in_hand.h"
#include "screens/stock/lot_list_screen.h"
#include "screens/frame/phrases.h"
#include "theme/sizes.h"
#include "touch/fit_column.h"
#include "touch/hold_button.h"
#include "words/lot_words.h"
#include "words/role_words.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double rowWide = 20;    // mm: four lines
constexpr double rowUpright = 24; // five
constexpr double keyHeight = 20;

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(LotPageScreen)
};

} // namespace

LotPageScreen::LotPageScreen(const Surroundings& around, const LotOfProduct& lot, QWidget* parent)
    : Screen(around, u"screen_lot_page"_s, parent), m_lot(lot)
{
    buildFrame(lotTitle(lot, around), tr("What this lot taught"));
    answers()->stop()->hide();
    if (const ProductSheet* sheet = around.bench.planning().catalogue.byId(lot.sheetId)) {
        buildBatches(*sheet);
        buildBelief(*sheet);
        answers()->setWayOn(around.bench.lots().patOf(lot) ? tr("To the test pat") : tr("Make a test pat"));
        connect(answers(), &AnswerBar::wayOnTapped, this, &LotPageScreen::patWanted);
        return;
    }
    content()->addWidget(label(u"lot_page_none"_s, TextRole::Body, tr("The sheet of this product is not loaded.")));
    answers()->setWayOn({});
}

std::vector<LotPageScreen::Row> LotPageScreen::rows(const ProductSheet& sheet) const
{
    const LotBook& book = around().bench.lots();
    const LotLearnt learnt = book.learnt(sheet, m_lot.hardenerLot);
    const std::vector<BatchOfLot> batches = book.batchesOf(m_lot);
    std::vector<Row> all;
    std::size_t lesson = 0;
    for (const BatchOfLot& each : batches) {
        const BatchTold told = each.told();
        const QString taught = each.forgotten    ? tr("forgotten")
                               : !each.by(sheet) ? tr("by an earlier version of the sheet: it does not count")
                                                 : lessonText(learnt.lessons.at(lesson++));
        const std::optional<LogRate> rate = told.gel() ? told.gel() : told.sandsBy;
        all.push_back({u"lot_batch_%1"_s.arg(all.size()),
                       localDay(each.hardenerIn).mid(5) + u' ' + words().clockTime(each.hardenerIn),
                       batchOfLotName(each, words()), batchOfLotTold(each, words()),
                       rate ? Words::title(rateText(*rate, words())) + u": "_s + taught : Words::title(taught)});
    }
    std::ranges::reverse(all); // the newest first
    return all;
}

QWidget* LotPageScreen::makeRow(const Row& row, QWidget* parent)
{
    auto* made = new Card(theme(), parent);
    made->setObjectName(row.name);
    auto* lines = new QVBoxLayout(made);
    lines->setContentsMargins(px(2), px(0.6), px(2), px(0.6));
    lines->setSpacing(0);
    const auto line = [&](const QString& name, const QString& text, bool bold, Role ink, int share = 1) {
        if (text.isEmpty())
            return;
        auto* shown = new FitLabel(theme(), row.name + name, TextRole::Small, made);
        shown->setRole(ink);
        shown->setBold(bold);
        shown->setText(text);
        lines->addWidget(shown, share);
    };
    line(u"_what"_s, row.when + u" · "_s + row.what, false, Role::MutedInk);
    line(u"_told"_s, row.told, false, Role::Ink);
    line(u"_lesson"_s, row.lesson, true, Role::Ink, 2);
    return made;
}

void LotPageScreen::buildBatches(const ProductSheet& sheet)
{
    const std::vector<Row> all = rows(sheet);
    if (all.empty()) {
        content()->addWidget(label(u"lot_page_empty"_s, TextRole::Body, tr("Nothing was mixed of this lot yet.")), 3);
        return;
    }
    auto* shown = new PagedRows(around(), around().upright ? rowUpright : rowWide, this);
    std::vector<PagedRows::MakeRow> made;
    for (const Row& each : all)
        made.push_back([this, each](QWidget* parent) { return makeRow(each, parent); });
    shown->setRows(std::move(made));
    content()->addWidget(shown, 3);
}

void LotPageScreen::buildBelief(const ProductSheet& sheet)
{
    const LotBook& book = around().bench.lots();
    const LearningRules rules;
    const LotBelief belief = book.beliefOf(sheet, m_lot.hardenerLot);
    auto* side = new QVBoxLayout;
    side->setSpacing(px(3));
    auto* box = card(u"lot_belief"_s);
    auto* lines = new FitColumn;
    box->setLayout(lines);
    lines->setContentsMargins(px(3), px(1.5), px(3), px(1.5));
    lines->addText(label(u"lot_next"_s, TextRole::Body, tr("The next batch, most likely:"), Role::MutedInk));
    lines->addText(
        label(u"lot_rate"_s, TextRole::Title, Words::title(rateText(belief.rate.mean, words())), Role::Ink, true));
    const LogRateRange range = middleOf(ofTheNext(belief.rate, rules.batch), rules.shown);
    lines->addText(label(u"lot_range"_s, TextRole::Body,
                         tr("%1 of batches: %2").arg(words().percent(rules.shown), rateRangeText(range, words()))));
    lines->addText(label(u"lot_source"_s, TextRole::Small,
                         Words::title(phrases::source(belief.batches, belief.otherLots)), Role::MutedInk));
    if (const auto forgotten = book.forgottenOf(m_lot))
        lines->addText(
            label(u"lot_forgotten"_s, TextRole::Small,
                  tr("Forgotten on %1 by %2: %3")
                      .arg(localDay(forgotten->at), forgotten->person.isEmpty() ? tr("nobody told") : forgotten->person,
                           forgetReasonText(forgotten->reason)),
                  Role::MutedInk));
    side->addWidget(box, 1);
    auto* row = new QHBoxLayout;
    row->setSpacing(px(sizes::gap));
    side->addLayout(row);
    row->addWidget(beadKey(), 1);
    if (belief.batches > 0) {
        auto* forget = new HoldButton(theme(), u"forget_lot"_s, TapButton::Kind::Stop, this);
        forget->setTitle(tr("Forget these"));
        forget->setSecondLine(tr("supervisor: hold 1 s"));
        forget->setFixedHeight(px(keyHeight));
        connect(forget, &HoldButton::held, this, &LotPageScreen::forgetWanted);
        row->addWidget(forget, 1);
    }
    content()->addLayout(side, 2);
}

TapButton* LotPageScreen::beadKey()
{
    auto* key = new TapButton(theme(), u"calibrate_bead"_s, TapButton::Kind::Plain, this);
    key->setTitle(tr("Calibrate its bead"));
    key->setTitleSize({5, 3.6});
    const auto bead = around().bench.beadOf(m_lot.hardenerLot);
    key->setSecondLine(bead ? beadMassText(bead->bead.mean, words()) : tr("not yet"));
    key->setFixedHeight(px(keyHeight));
    key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    connect(key, &TapButton::clicked, this, &LotPageScreen::beadWanted);
    return key;
}

TapButton* makeLotPageKey(const Surroundings& around, const BatchInHand& batch, QWidget* parent,
                          const std::function<void(const LotOfProduct&)>& tapped)
{
    const QString hardener = inhand::lotInUse(around.settings, hardenerKey);
    auto* key = new TapButton(around.theme, u"lot_page"_s, TapButton::Kind::Plain, parent);
    key->setTitle(Says::tr("What it taught"));
    key->setTitleSize({4.6, 3.4});
    key->setFixedHeight(around.theme.px(sizes::target));
    key->setEnabled(batch.sheet && !hardener.isEmpty());
    if (!key->isEnabled())
        return key;
    const LotBelief belief = around.bench.lots().beliefOf(*batch.sheet, hardener);
    key->setSecondLine(phrases::source(belief.batches, belief.otherLots));
    QObject::connect(key, &TapButton::clicked, key,
                     [tapped, lot = LotOfProduct{batch.sheet->id, hardener}] { tapped(lot); });
    return key;
}

Screen* makeForgetScreen(const Surroundings& around, const LotOfProduct& lot,
                         const std::function<void(const LotForgotten&)>& forget, QWidget* parent)
{
    ChoiceScreen::Spec spec;
    spec.name = u"screen_forget_lot"_s;
    spec.context = lotTitle(lot, around);
    spec.sentence = Says::tr("Why is it to be forgotten?");
    for (const QString& code : forgetReasons())
        spec.tiles.push_back({u"forget_"_s + code, forgetReasonText(code), {}, {}, false, false, [forget, lot, code] {
                                  forget(LotForgotten{lot.sheetId, lot.hardenerLot, code});
                              }});
    return new ChoiceScreen(around, std::move(spec), parent);
}

} // namespace strandbench
