// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/mix_screen.h"

#include "gear/instruments.h"
#include "pictures/puddle_picture.h"
#include "screens/job/bead_trial.h"
#include "screens/job/caution_list.h"
#include "screens/beside/harm_screen.h"
#include "screens/job/hands_words.h"
#include "screens/job/in_hand.h"
#include "screens/set_up/instrument_words.h"
#include "screens/frame/phrases.h"
#include "screens/job/picture_labels.h"
#include "screens/frame/sign_widget.h"
#include "theme/sizes.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double noticeHeight = 10; // mm: two lines

bool weighed(const BatchInHand& batch) { return batch.sheet && batch.batch.mix.filler < smallestBeadMix(*batch.sheet); }

} // namespace

QString batchContext(const Repair& repair, BatchRef ref, const Words& words)
{
    const RepairPlan& plan = *repair.plan;
    const std::vector<Batch>& batches = ref.finishing ? plan.finish.batches : plan.batches;
    const QString which = phrases::batchOf(ref.index + 1, static_cast<int>(batches.size()));
    if (ref.finishing)
        return which + u" · "_s + words.filler(plan.finish.filler);
    const Lift& lift = plan.lifts.at(static_cast<std::size_t>(batchOf(plan, ref).lift));
    return which + u" · "_s + words.face(lift.face) + u" · "_s + words.filler(lift.filler);
}

HardenerIn hardenerIn(const Repair& repair, const BatchInHand& batch, Mass hardener,
                      const std::optional<BatchForecast>& forecast, const Settings& settings)
{
    HardenerIn act = hardenerIn(batch, sheetOf(*repair.plan, batch.ref), hardener, forecast);
    act.lot = inhand::lotInUse(settings, act.sheetId);
    act.hardenerLot = inhand::lotInUse(settings, hardenerKey);
    return act;
}

MixScreen::MixScreen(const Surroundings& around, const Repair& repair, BatchRef ref, const Ways& ways, QWidget* parent)
    : Screen(around, u"screen_mix"_s, parent),
      m_repair(repair),
      m_ways(ways),
      m_batch(inhand::batchInUse(repair, ref, around))
{
    forecast();
    buildFrame(contextOf(repair, words()) + u" · "_s + batchContext(repair, ref, words()),
               weighed(m_batch) ? tr("Knead both, then weigh these two")
                                : tr("Knead both, then lay this puddle and bead"));
    buildNotice();
    buildCards();
    connect(answers(), &AnswerBar::wayOnTapped, this, &MixScreen::act);
    tick();
}

void MixScreen::forecast()
{
    const PlanningSet& planning = around().bench.planning();
    m_forecast =
        forecastOf(m_repair, m_batch, m_batch.batch.mix.hardenerShare, planning, inhand::lotBelief(m_batch, around()));
    m_hold = holdOf(m_repair, m_batch, m_forecast, planning);
}

void MixScreen::act()
{
    Q_EMIT acts({hardenerIn(m_repair, m_batch, m_batch.batch.mix.hardener, m_forecast, around().settings)});
}

void MixScreen::buildNotice()
{
    m_notice = new QWidget(this);
    m_notice->setMinimumHeight(px(noticeHeight));
    auto* row = new QHBoxLayout(m_notice);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(px(2));
    auto* sign = new SignWidget(theme(), m_hold ? Pictogram::StopHand : Pictogram::Caution,
                                m_hold ? tr("Stop") : tr("Caution"), m_notice);
    sign->setFixedSize(px(noticeHeight), px(noticeHeight));
    m_noticeText = label(u"mix_notice"_s, TextRole::Body, {}, m_hold ? Role::Stop : Role::Ink, true);
    row->addWidget(sign);
    row->addWidget(m_noticeText, 1);
    auto* frame = static_cast<QVBoxLayout*>(layout());
    frame->insertWidget(frame->indexOf(sentence()), m_notice);
    m_notice->hide();
}

void MixScreen::buildCards()
{
    constexpr double lowStrip = 11; // mm: the keys below keep their height when a caution is long
    const bool upright = around().upright;
    auto* mix = new QWidget(this);
    content()->addWidget(mix, 1);
    auto* column = new QVBoxLayout(mix);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(px(2));
    const std::vector<CautionText> cautions = words().cautionsAt(Station::Mix);
    QWidget* strip = cautionStrip(cautions, theme(), mix, upright ? 2 : static_cast<int>(cautions.size()));
    if (isLow())
        strip->setMaximumHeight(px(lowStrip));
    column->addWidget(strip);
    auto* cards = new QBoxLayout(upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    cards->setSpacing(px(sizes::gap));
    cards->addWidget(puddleCard(), upright ? 5 : 4);
    auto* row = upright ? new QHBoxLayout : nullptr;
    if (row)
        row->setSpacing(px(sizes::gap));
    (row ? row : cards)->addWidget(figuresCard(), upright ? 5 : 6);
    (row ? row : cards)->addLayout(keys(), upright ? 5 : 6);
    if (row)
        cards->addLayout(row, 5);
    column->addLayout(cards, 1);
}

bool MixScreen::isLow() const
{
    constexpr double lowGlass = 133; // mm: three figures with their captions have no room for large ones
    return parentWidget() && theme().metrics().mm(parentWidget()->height()) < lowGlass;
}

QLayout* MixScreen::keys()
{
    auto* keys = new QVBoxLayout;
    keys->setSpacing(px(sizes::gap));
    auto* first = new QHBoxLayout;
    first->setSpacing(px(sizes::gap));
    // Product and lots have the longer words, and a low glass fewer lines for them.
    const bool low = isLow();
    first->addWidget(productKey(), low ? 8 : 7);
    if (m_forecast && m_batch.sheet)
        first->addWidget(beadKey(), 7);
    keys->addLayout(first, 1);
    m_waysOut = waysOut();
    m_more = new QWidget(this);
    auto* more = new QHBoxLayout(m_more);
    more->setContentsMargins(0, 0, 0, 0);
    more->setSpacing(px(sizes::gap));
    if (m_forecast && m_batch.sheet)
        more->addWidget(weighKey(), 1);
    if (TapButton* harm =
            makeHarmKey(theme(), harmHere(around(), m_repair, codeOf(Station::Mix), m_batch.ref), m_ways, m_more)) {
        harm->setTitleSize({4.6, 3.4});
        harm->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
        more->addWidget(harm, 1);
    }
    keys->addWidget(m_waysOut, 1);
    keys->addWidget(m_more, 1);
    return keys;
}

TapButton* MixScreen::productKey()
{
    auto* key = new TapButton(theme(), u"in_hand"_s, TapButton::Kind::Plain, this);
    const QString lot = m_batch.sheet ? inhand::lotInUse(around().settings, m_batch.sheet->id) : QString();
    const QString hardener = inhand::lotInUse(around().settings, hardenerKey);
    const QString product = inhand::productName(m_batch, m_repair, around());
    if (lot.isEmpty() && hardener.isEmpty())
        key->setTitle(tr("%1 · lot not told: tap").arg(product));
    else if (lot.isEmpty())
        //: %1 is a product, %2 a lot of hardener; the filler's lot is asked for: a key of 29 mm
        key->setTitle(tr("%1 · lot? · hardener %2").arg(product, inhand::shownLot(hardener)));
    else
        key->setTitle(
            tr("%1 · lot %2 · hardener %3")
                .arg(product, inhand::shownLot(lot), hardener.isEmpty() ? tr("not told") : inhand::shownLot(hardener)));
    if (!m_batch.planned)
        key->setSecondLine(tr("not the product planned with"));
    key->setTitleSize({4.6, 3.4});
    key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    connect(key, &TapButton::clicked, this, [this] { m_ways.lots(m_batch.ref); });
    return key;
}

TapButton* MixScreen::beadKey()
{
    auto* key = new TapButton(theme(), u"bead_as_laid"_s, TapButton::Kind::Plain, this);
    key->setTitle(tr("More or less hardener?"));
    key->setTitleSize({4.6, 3.4});
    key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    connect(key, &TapButton::clicked, this, [this] { m_ways.beadAsLaid(); });
    return key;
}

TapButton* MixScreen::weighKey()
{
    m_weigh = new TapButton(theme(), u"weigh_mix"_s, TapButton::Kind::Plain, this);
    m_weigh->setTitleSize({4.6, 3.4});
    m_weigh->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    if (around().instruments)
        connect(&around().instruments->scale(), &InstrumentFeed::changed, this, &MixScreen::showScale);
    connect(m_weigh, &TapButton::clicked, this, [this] {
        const auto steady =
            around().instruments ? around().instruments->scale().view().steady : std::optional<LineReading>();
        m_ways.weigh(steady ? steady->weight : std::nullopt);
    });
    showScale();
    return m_weigh;
}

void MixScreen::showScale()
{
    if (!m_weigh)
        return;
    const InstrumentView view = around().instruments ? around().instruments->scale().view() : InstrumentView{};
    if (view.live && view.live->weight) {
        const QString weight = instruments::weight(*view.live->weight, words());
        m_weigh->setTitle(weight);
        m_weigh->setAccessibleName(tr("Scale: %1").arg(weight));
        m_weigh->setSecondLine(view.steady ? tr("steady: take as filler") : tr("not steady yet"));
        return;
    }
    m_weigh->setTitle(tr("Weighed?"));
    m_weigh->setSecondLine(view.is == InstrumentView::Is::Off ? QString() : tr("nothing from the scale"));
}

QWidget* MixScreen::waysOut()
{
    auto* box = new QWidget(this);
    auto* keys = new QHBoxLayout(box);
    keys->setContentsMargins(0, 0, 0, 0);
    keys->setSpacing(px(sizes::gap));
    const auto key = [&](const QString& name, const QString& title, auto tapped) {
        auto* made = new TapButton(theme(), name, TapButton::Kind::Plain, box);
        made->setTitle(title);
        made->setTitleSize({5, 4});
        connect(made, &TapButton::clicked, this, tapped);
        keys->addWidget(made, 1);
        return made;
    };
    if (!m_hold) {
        m_holdBack = key(u"hold_back"_s, tr("Hold it back"), [this] { m_ways.repair(m_other); });
        return box;
    }
    if (m_hold->code != u"too_hot_for_lift"_s)
        return box;
    key(u"read_again"_s, tr("Read again"), [this] { m_ways.readAgain(); });
    if (m_batch.planned && replanHelps(m_repair, m_batch.ref))
        key(u"plan_again"_s, tr("Plan again as read"), [this] {
            Q_EMIT acts(
                {Answered{Question::Reading, *m_repair.lastReading, m_repair.answeredBy.at(Question::Reading)}});
        });
    return box;
}

void MixScreen::showNotice(const QString& text, bool offers)
{
    const bool told = !text.isEmpty();
    if (told)
        m_noticeText->setText(text);
    m_notice->setVisible(told && troubleShown().isEmpty());
    sentence()->setVisible(!told && troubleShown().isEmpty());
    m_waysOut->setVisible(offers);
    m_more->setVisible(!offers);
}

void MixScreen::tick()
{
    showScale();
    if (!m_hold)
        return showHands();
    answers()->setWayOn(tr("Hardener in: start"), TapButton::Kind::Way);
    answers()->setWayOnEnabled(false);
    showNotice(hands::mixHold(*m_hold, words()), m_hold->code == u"too_hot_for_lift"_s);
}

void MixScreen::showHands()
{
    const BatchTimes& times = m_forecast ? m_forecast->howSure.early : m_batch.batch.times;
    const HandsOf next{m_repair.id, m_batch.ref,
                       handActs(m_batch.batch.mix.filler, times, around().bench.assumptions())};
    const auto hold = judgeHands(hands::onBench(around().bench), next);
    answers()->setWayOn(hold && !hold->collision.soft() ? tr("Hardener in anyway") : tr("Hardener in: start"),
                        TapButton::Kind::Way);
    if (!hold)
        return showNotice({}, false);
    m_other = hands::otherOf(hold->collision, m_repair.id);
    m_holdBack->setSecondLine(tr("go to job %1").arg(around().bench.repair(m_other)->job));
    showNotice(hands::holdBack(*hold, m_repair.id, around()), true);
}

bool MixScreen::scanned(const QString& text)
{
    const Checked<QString> lot = inhand::readLot(text);
    if (!lot) {
        showTrouble(words().fault(lot.error().front()), {});
        return true;
    }
    const QString of = inhand::knownAs(*lot, m_batch, around());
    if (of.isEmpty()) {
        m_ways.whichLot(*lot);
        return true;
    }
    Settings wanted = around().settings;
    inhand::useLot(wanted, of, *lot);
    if (of != hardenerKey)
        wanted.products[codeOf(fillerOf(*m_repair.plan, m_batch.ref))] = of;
    m_ways.remember(wanted);
    return true;
}

QWidget* MixScreen::puddleCard()
{
    const Mix& mix = m_batch.batch.mix;
    auto* box = card(u"puddle_card"_s);
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(px(2), px(1), px(2), px(1));
    column->setSpacing(px(1));
    auto* picture = new PuddlePicture(theme(), u"puddle"_s, box);
    picture->setMix(mix, puddleLabels(mix, words()));
    picture->setAccessibleName(tr("Puddle and bead, drawn to size"));
    column->addWidget(picture, 1);
    if (!weighed(m_batch) && m_batch.sheet)
        column->addWidget(
            label(u"mix_bead_by"_s, TextRole::Small, beadSource(around(), *m_batch.sheet), Role::MutedInk));
    column->addWidget(label(
        u"mix_how"_s, TextRole::Small,
        tr("Hold the board beside the glass. Straight bead, puddle %1 high.").arg(words().fineLength(mix.puddleHeight)),
        Role::MutedInk));
    return box;
}

QWidget* MixScreen::figuresCard()
{
    auto* box = card(u"mix_card"_s);
    auto* lines = new QVBoxLayout(box);
    lines->setContentsMargins(px(3), px(1.5), px(3), px(1.5));
    lines->setSpacing(px(0.2));
    const Mix& mix = m_batch.batch.mix;
    const bool low = isLow();
    const auto figure = [&](const QString& name, const QString& caption, const QString& value, Role ink) {
        lines->addWidget(label(name + u"_caption"_s, TextRole::Small, caption, Role::MutedInk));
        const bool small = low || name == u"mix_weigh"_s; // two masses side by side
        lines->addWidget(label(name, small ? TextRole::Title : TextRole::BigFigure, value, ink, true), 1);
    };
    if (weighed(m_batch)) {
        figure(u"mix_weigh"_s, tr("Weigh: filler + hardener"), phrases::massPair(mix, words()), Role::Ink);
        lines->addWidget(label(u"mix_small"_s, TextRole::Small,
                               tr("Under %1: bead too coarse").arg(words().mass(smallestBeadMix(*m_batch.sheet))),
                               Role::MutedInk));
        figure(u"mix_puddle"_s, tr("Puddle across"), words().length(mix.puddle), Role::Ink);
    } else {
        figure(u"mix_puddle"_s, tr("Puddle across"), words().length(mix.puddle), Role::Ink);
        figure(u"mix_bead"_s,
               m_batch.sheet ? tr("Hardener bead (%1)").arg(phrases::beadBand(mix, *m_batch.sheet, words()))
                             : tr("Hardener bead"),
               words().length(mix.bead), Role::HardenerFill);
        figure(u"mix_weigh"_s, tr("or weigh"), phrases::massPair(mix, words()), Role::Ink);
    }
    const Duration board = m_forecast ? m_forecast->times.boardGel : m_batch.batch.times.boardGel;
    lines->addWidget(label(u"mix_gel"_s, TextRole::Small, tr("board sets in about %1").arg(words().longDuration(board)),
                           Role::MutedInk));
    return box;
}

} // namespace strandbench
