// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/stock/pat_screen.h"

#include "pictures/puddle_picture.h"
#include "repair/test_pat.h"
#include "screens/job/caution_list.h"
#include "screens/job/in_hand.h"
#include "screens/stock/lot_list_screen.h"
#include "screens/frame/phrases.h"
#include "screens/job/picture_labels.h"
#include "touch/fit_column.h"
#include "touch/hold_button.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double keyHeight = 20; // mm

} // namespace

PatScreen::PatScreen(const Surroundings& around, const LotOfProduct& lot, QWidget* parent)
    : Screen(around, u"screen_pat"_s, parent), m_lot(lot), m_pat(around.bench.lots().patOf(lot))
{
    buildFrame(lotTitle(lot, around), m_pat ? tr("Watch the pat: tap when it pulls and will not smear")
                                            : tr("Knead both, then lay this puddle and bead"));
    answers()->stop()->hide();
    if (m_pat)
        buildClock();
    else
        buildMix(*around.bench.planning().catalogue.byId(lot.sheetId));
    tick();
}

void PatScreen::buildMix(const ProductSheet& sheet)
{
    const Mix mix = patMix(sheet);
    auto* column = new QVBoxLayout;
    column->setSpacing(px(2));
    const std::vector<CautionText> cautions = words().cautionsAt(Station::Mix);
    column->addWidget(cautionStrip(cautions, theme(), this, around().upright ? 2 : static_cast<int>(cautions.size())));
    auto* across = new QBoxLayout(around().upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    across->setSpacing(px(3));
    auto* picture = new PuddlePicture(theme(), u"puddle"_s, this);
    picture->setMix(mix, puddleLabels(mix, words()));
    picture->setAccessibleName(tr("Puddle and bead, drawn to size"));
    across->addWidget(picture, 1);
    auto* box = card(u"pat_card"_s);
    auto* lines = new FitColumn;
    box->setLayout(lines);
    lines->setContentsMargins(px(3), px(1.5), px(3), px(1.5));
    lines->addText(label(u"pat_why"_s, TextRole::Body,
                         tr("A pat on the board tells how fast this lot gels before a panel hangs on it.")));
    lines->addText(label(u"pat_weigh"_s, TextRole::Title, phrases::massPair(mix, words()), Role::Ink, true));
    const auto reading = around().bench.newestReading();
    const QString air = reading ? tr("Reckoned for air of %1, read %2 ago.")
                                      .arg(words().temperature(reading->reading.air),
                                           words().age(elapsed(reading->at, around().bench.clock().now())))
                                : tr("No air was read yet: read it at a repair first.");
    lines->addText(label(u"pat_air"_s, TextRole::Small, air, Role::MutedInk));
    across->addWidget(box, 1);
    column->addLayout(across, 1);
    content()->addLayout(column, 1);
    answers()->setWayOn(tr("Hardener in: start"));
    answers()->setWayOnEnabled(reading.has_value());
    connect(answers(), &AnswerBar::wayOnTapped, this, [this, &sheet] { mixed(sheet); });
}

void PatScreen::mixed(const ProductSheet& sheet)
{
    const Bench& bench = around().bench;
    const auto pat = patMixed(sheet, m_lot.hardenerLot, inhand::lotInUse(around().settings, m_lot.sheetId),
                              bench.newestReading()->reading.air, bench.planning().engine,
                              bench.lots().beliefOf(sheet, m_lot.hardenerLot));
    if (!pat)
        return showTrouble(words().reason(pat.error()), {});
    Q_EMIT told(*pat);
}

void PatScreen::buildClock()
{
    auto* box = card(u"pat_clock"_s);
    auto* lines = new QVBoxLayout(box);
    lines->setContentsMargins(px(4), px(2), px(4), px(2));
    m_figure = label(u"pat_figure"_s, TextRole::Figure, {}, Role::Ink, true);
    m_figure->setLines(1);
    m_until = label(u"pat_until"_s, TextRole::Title);
    lines->addWidget(m_figure, 2);
    lines->addWidget(m_until, 1);
    lines->addWidget(label(u"pat_expected"_s, TextRole::Body,
                           tr("Expected between %1 and %2; by the sheet after %3.")
                               .arg(words().duration(m_pat->mixed.early), words().duration(m_pat->mixed.late),
                                    words().duration(m_pat->mixed.bySheet)),
                           Role::MutedInk),
                     1);
    content()->addWidget(box, 3);
    auto* again = new HoldButton(theme(), u"pat_again"_s, TapButton::Kind::Plain, this);
    again->setTitle(tr("It was thrown away: mix a new one"));
    again->setSecondLine(tr("hold 1 s"));
    again->setTitleSize({5, 3.4});
    again->setMinimumHeight(px(keyHeight));
    connect(again, &HoldButton::held, this, [this] {
        if (const ProductSheet* sheet = around().bench.planning().catalogue.byId(m_lot.sheetId))
            mixed(*sheet);
    });
    content()->addWidget(again, 1);
    answers()->setBackNote(tr("clock runs on"));
    answers()->setWayOn(tr("It has gelled"));
    connect(answers(), &AnswerBar::wayOnTapped, this, [this] {
        Q_EMIT told(PatGelled{m_lot.sheetId, m_lot.hardenerLot});
    });
}

void PatScreen::tick()
{
    if (!m_pat)
        return;
    m_figure->setText(words().duration(elapsed(m_pat->hardenerIn, around().bench.clock().now())));
    m_until->setText(tr("since hardener in"));
}

} // namespace strandbench
