// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/clock_screen.h"

#include "pictures/drawing_widget.h"
#include "screens/job/hands_words.h"
#include "screens/beside/harm_screen.h"
#include "screens/job/mix_screen.h"
#include "screens/frame/phrases.h"
#include "screens/frame/sign_widget.h"
#include "repair/run_clock.h"
#include "theme/sizes.h"
#include "touch/fit_column.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double handsHeight = 9;     // mm: two lines
constexpr double figureHeight = 23.5; // mm: the running figure at its least size
constexpr double actSide = 22;        // mm: read at a metre
constexpr double figureWidth = 62;    // mm: four digits and the colon at 18 mm

} // namespace

ClockScreen::ClockScreen(const Surroundings& around, const Repair& repair, const BatchRun& run, Part part,
                         const Ways& ways, QWidget* parent)
    : Screen(around, part == Part::Spread ? u"screen_spread"_s : u"screen_wait"_s, parent),
      m_repair(repair),
      m_run(run),
      m_part(part),
      m_ways(ways)
{
    buildFrame(contextOf(repair, words()) + u" · "_s + batchContext(repair, run.batch, words()), {});
    auto* column = new QVBoxLayout;
    column->setSpacing(px(sizes::gap));
    auto* row = new QBoxLayout(around.upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    row->setSpacing(px(sizes::gap));
    column->addLayout(row, 5);
    content()->addLayout(column, 1);
    buildFigure(row);
    buildKeys(row);
    buildRibbon(column);
    answers()->setBackNote(tr("clock runs on"));
    connect(answers(), &AnswerBar::wayOnTapped, this, [this] {
        if (m_part == Part::Spread)
            Q_EMIT acts({EdgesClear{m_run.batch}});
        else
            Q_EMIT acts({Sands{m_run.batch}});
    });
    tick();
}

void ClockScreen::buildFigure(QBoxLayout* row)
{
    auto* box = card(u"clock_card"_s);
    auto* lines = new QVBoxLayout(box);
    lines->setContentsMargins(px(4), px(0.5), px(3), px(1));
    lines->setSpacing(0);
    auto* across = new QHBoxLayout;
    across->setSpacing(px(4));
    m_figure = label(u"clock_figure"_s, TextRole::Figure, {}, Role::Ink, true);
    m_figure->setLines(1);
    auto* beside = new FitColumn;
    m_until = label(u"clock_until"_s, TextRole::Title);
    m_board = label(u"clock_board"_s, TextRole::Title, {}, Role::Stop, true);
    m_source = label(u"clock_source"_s, TextRole::Small, sourceText(), Role::MutedInk);
    beside->addText(m_until);
    beside->addText(m_board);
    m_figure->setMinimumSize(px(figureWidth), px(figureHeight));
    across->addWidget(m_figure);
    across->addLayout(beside, 1);
    lines->addLayout(across, 1);
    lines->addWidget(m_source);
    m_hands = new QWidget(box);
    auto* told = new QHBoxLayout(m_hands);
    told->setContentsMargins(0, 0, 0, 0);
    told->setSpacing(px(2));
    auto* sign = new SignWidget(theme(), Pictogram::Caution, tr("Caution"), m_hands);
    sign->setFixedSize(px(handsHeight), px(handsHeight));
    m_handsText = label(u"clock_hands"_s, TextRole::Body, {}, Role::Ink, true);
    told->addWidget(sign);
    told->addWidget(m_handsText, 1);
    m_hands->hide();
    lines->addWidget(m_hands);
    row->addWidget(box, 4);
}

QString ClockScreen::sourceText() const
{
    const HowSure* howSure = m_run.howSure();
    if (!howSure)
        return m_run.cureCase() ? tr("from the sheet, for this layer on this panel")
                                : tr("from the sheet, not yet from this panel’s heat");
    const bool spreading = m_part == Part::Spread;
    const auto of = [&](const BatchTimes& times) { return words().duration(spreading ? times.gel : times.sand); };
    const QString from = of(howSure->early);
    const QString to = of(howSure->late);
    const QString range =
        spreading ? tr("gels between %1 and %2").arg(from, to) : tr("sands from between %1 and %2").arg(from, to);
    QString text = range + u", "_s + phrases::source(howSure->batches, howSure->otherLots);
    if (m_run.timesBefore)
        text = tr("As read at %1, before: %2.").arg(words().clockTime(*m_run.readAgainAt), of(*m_run.timesBefore)) +
               u' ' + Words::title(text);
    return text;
}

TapButton* ClockScreen::gelKey(const QString& name, const QString& title, GelPlace place, bool told)
{
    auto* key = new TapButton(theme(), name, TapButton::Kind::Plain, m_places);
    key->setTitle(title);
    key->setEnabled(!told);
    connect(key, &TapButton::clicked, this, [this, place] { Q_EMIT acts({Gelled{m_run.batch, place}}); });
    return key;
}

void ClockScreen::buildKeys(QBoxLayout* row)
{
    m_keys = new QWidget(this);
    auto* keys = new QHBoxLayout(m_keys);
    keys->setContentsMargins(0, 0, 0, 0);
    keys->setSpacing(px(sizes::gap));
    if (m_part == Part::Spread) {
        m_act = new DrawingWidget(theme(), u"acts/knead"_s, {}, m_keys);
        m_act->setObjectName(u"act_picture"_s);
        m_act->setMinimumSize(px(actSide), px(actSide));
        keys->addWidget(m_act, 2);
    }
    m_gelled = new TapButton(theme(), u"it_has_gelled"_s, TapButton::Kind::Plain, m_keys);
    m_gelled->setTitle(tr("It has gelled"));
    m_gelled->setSecondLine(tr("tap when it pulls and will not smear"));
    m_gelled->setEnabled(!m_run.boardGelled || !m_run.panelGelled);
    connect(m_gelled, &TapButton::clicked, this, [this] { askWhere(true); });
    keys->addWidget(m_gelled, 3);
    if (m_part == Part::Wait) {
        m_early = new HoldButton(theme(), u"sands_early"_s, TapButton::Kind::Plain, m_keys);
        m_early->setTitle(tr("It sands already"));
        m_early->setSecondLine(tr("hold 1 s"));
        connect(m_early, &HoldButton::held, this, [this] { Q_EMIT acts({Sands{m_run.batch}}); });
        keys->addWidget(m_early, 3);
    }
    m_places = new QWidget(this);
    auto* places = new QHBoxLayout(m_places);
    places->setContentsMargins(0, 0, 0, 0);
    places->setSpacing(px(sizes::gap));
    places->addWidget(gelKey(u"gelled_board"_s, tr("On the board"), GelPlace::Board, m_run.boardGelled.has_value()), 1);
    places->addWidget(gelKey(u"gelled_panel"_s, tr("On the panel"), GelPlace::Panel, m_run.panelGelled.has_value()), 1);
    m_places->hide();
    const int share = m_part == Part::Wait ? 3 : 2;
    row->addWidget(m_keys, share);
    row->addWidget(m_places, 3);
}

void ClockScreen::askWhere(bool ask)
{
    m_keys->setVisible(!ask);
    m_places->setVisible(ask);
}

void ClockScreen::buildRibbon(QBoxLayout* column)
{
    auto* box = card(u"phases_card"_s);
    auto* inside = new QVBoxLayout(box);
    inside->setContentsMargins(px(3), px(1.5), px(3), px(1.5));
    m_ribbon = new PhaseRibbon(theme(), u"phases"_s, box);
    const std::vector<PhaseSpan> spans = phasesOf(m_run, around().bench.assumptionsOf(m_run));
    QStringList names;
    for (const PhaseSpan& each : spans)
        names << words().phase(each.phase);
    m_ribbon->setPhases(spans, names, [this](int minute) { return phrases::minuteTick(minute); });
    m_ribbon->setAccessibleName(tr("Phases of this batch to time scale"));
    inside->addWidget(m_ribbon);
    auto* row = new QHBoxLayout;
    row->setSpacing(px(sizes::gap));
    const bool upright = around().upright;
    auto* keys = upright ? new QHBoxLayout : row; // an upright glass is too narrow for all of them beside the phases
    keys->setSpacing(px(sizes::gap));
    row->addWidget(box, 5);
    const HarmHere here =
        harmHere(around(), m_repair, codeOf(m_part == Part::Spread ? Station::Spread : Station::Wait), m_run.batch);
    if (TapButton* harm = makeHarmKey(theme(), here, m_ways, this)) {
        harm->setTitleSize({5, 3.4});
        harm->setLeastSize(sizes::target, sizes::target);
        keys->addWidget(harm, 1);
    }
    if (m_run.cureCase()) {
        const auto key = [&](const QString& name, const QString& title, const std::function<void(BatchRef)>& way) {
            auto* made = new TapButton(theme(), name, TapButton::Kind::Plain, this);
            made->setTitle(title);
            made->setTitleSize({5, 3.4});
            connect(made, &TapButton::clicked, this, [this, way] { way(m_run.batch); });
            keys->addWidget(made, 1);
        };
        if (m_run.howSure() && !m_run.sands)
            key(u"read_while_curing"_s, tr("Read again"), m_ways.readWhileCuring);
        key(u"curve_key"_s, tr("Curve"), m_ways.curve);
    }
    column->addLayout(row, 2);
    if (upright)
        column->addLayout(keys, 1);
}

void ClockScreen::tick()
{
    const ClockFace face = around().bench.runningMix(m_repair, m_run).face;
    m_ribbon->setNow(face.sinceHardener);
    showHands();
    if (m_part == Part::Spread)
        showSpreading(face);
    else
        showWaiting(face);
}

void ClockScreen::showHands()
{
    const auto collision = nextCollision(hands::onBench(around().bench));
    m_hands->setVisible(collision.has_value());
    m_source->setVisible(!collision);
    if (collision)
        m_handsText->setText(hands::collision(*collision, around()));
}

void ClockScreen::showSpreading(const ClockFace& face)
{
    m_figure->setText(words().duration(face.toNextPhase));
    const bool boardSet = face.boardSetsIn.value() <= 0.0;
    m_board->setText(boardSet ? tr("the board has set")
                              : tr("board sets in %1").arg(words().duration(face.boardSetsIn)));
    answers()->setWayOn(tr("Edges are clear"));
    switch (face.phase) {
    case Phase::Knead:
        setSentence(tr("Knead firmly: no air, no streaks"));
        m_until->setText(tr("until you spread"));
        showAct(u"acts/knead"_s);
        return;
    case Phase::Spread:
        setSentence(tr("Press in firmly, wet the edges, fill to level"));
        m_until->setText(tr("until the edges must be clear"));
        showAct(u"acts/press_in"_s);
        return;
    case Phase::ClearEdges:
        setSentence(tr("Clear the edges now"));
        m_until->setText(tr("until it gels"));
        showAct({});
        return;
    case Phase::HandsOff:
    case Phase::Sand:
    case Phase::Harder:
        setSentence(tr("It may have gelled: hands off"));
        m_figure->setText(words().duration(face.sinceHardener));
        m_until->setText(tr("since hardener in"));
        showAct({});
        return;
    }
}

void ClockScreen::showAct(const QString& drawing)
{
    m_act->setVisible(!drawing.isEmpty());
    if (drawing.isEmpty())
        return;
    m_act->setDrawing(drawing);
    m_act->setAccessibleName(sentence()->text());
}

void ClockScreen::showWaiting(const ClockFace& face)
{
    const bool boardSet = face.boardSetsIn.value() <= 0.0;
    m_board->setText(boardSet ? QString() : tr("board sets in %1").arg(words().duration(face.boardSetsIn)));
    const bool due = face.phase == Phase::Sand || face.phase == Phase::Harder;
    const bool surely = due && face.sinceHardener >= lateTimes(m_run).sand;
    answers()->setWayOn(tr("Nail and paper say: it sands"), surely ? TapButton::Kind::Go : TapButton::Kind::Way);
    answers()->setWayOnEnabled(due);
    m_early->setEnabled(!due);
    if (!due) {
        setSentence(tr("Hands off: let it cure"));
        const Duration left = earlyTimes(m_run).sand - face.sinceHardener;
        m_figure->setText(words().duration(left));
        m_until->setText(tr("until it may be tested"));
        return;
    }
    setSentence(tr("Nail leaves no mark, paper powders: then sand"));
    const Duration atLatest = lateTimes(m_run).sand - face.sinceHardener;
    if (atLatest > seconds(0)) {
        m_figure->setText(words().duration(atLatest));
        m_until->setText(tr("until it sands, at the latest"));
        return;
    }
    m_figure->setText(words().duration(face.phase == Phase::Sand ? face.toNextPhase : face.sinceHardener));
    m_until->setText(face.phase == Phase::Sand ? tr("of easy sanding left") : tr("since hardener in: it gets harder"));
}

void ClockScreen::setWriting(bool writing)
{
    Screen::setWriting(writing);
    m_keys->setEnabled(!writing);
    m_places->setEnabled(!writing);
}

} // namespace strandbench
