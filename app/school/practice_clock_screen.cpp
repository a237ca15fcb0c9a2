// SPDX-License-Identifier: GPL-3.0-or-later
#include "school/practice_clock_screen.h"

#include "theme/sizes.h"

#include <QGridLayout>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double stiffens = 0.75;  // of the gel time: it drags behind the spreader (common practice, no source)
constexpr double stoneAfter = 3.0; // times the sanding time (an assumption)

} // namespace

PracticeClockScreen::PracticeClockScreen(const Surroundings& around, const PracticeRun& run, PacedTime& time,
                                         QWidget* parent)
    : Screen(around, run.asks() == PracticeAsks::Spread ? u"screen_practice_spread"_s : u"screen_practice_sand"_s,
             parent),
      m_run(run),
      m_time(time),
      m_spreading(run.asks() == PracticeAsks::Spread),
      m_worker(around.bench.computing())
{
    buildFrame(tr("Practice panel"),
               m_spreading ? tr("Press it in, build it up, clear the edges") : tr("Hands off until it sands"));
    answers()->stop()->hide();
    answers()->setWayOn(m_spreading ? tr("Edges are clear") : tr("Sand it now"));
    connect(answers(), &AnswerBar::wayOnTapped, this, [this] {
        if (m_spreading)
            Q_EMIT edgesCleared(m_time.gone());
        else
            Q_EMIT sanded(m_time.gone());
    });
    Card* box = card(u"practice_clock"_s);
    auto* column = new QVBoxLayout(box);
    m_figure = label(u"practice_figure"_s, TextRole::Figure, {}, Role::Ink, true);
    m_figure->setLines(1);
    m_felt = label(u"practice_felt"_s, TextRole::Title);
    column->addWidget(m_figure, 1);
    column->addWidget(label(u"practice_since"_s, TextRole::Body, tr("since the hardener went in")));
    column->addWidget(m_felt, 1);
    content()->addWidget(box, 3);
    buildKeys();
    m_worker.ask([this, attempt = run.attempt(), own = run.own(), shop = around.bench.planning()] {
        const Course course = courseOf(attempt, own, shop);
        return [this, course] {
            m_course = course;
            tick();
        };
    });
    tick();
}

void PracticeClockScreen::buildKeys()
{
    auto* keys = new QGridLayout;
    keys->setSpacing(px(sizes::gap));
    m_pace = makeSideKey(theme(),
                         {u"pace"_s,
                          {},
                          tr("faster, or as in the shop"),
                          Pictogram::None,
                          [this] {
                              m_time.nextPace();
                              tick();
                          }},
                         this);
    keys->addWidget(m_pace, 0, 0, 1, m_spreading ? 1 : 2);
    if (!m_spreading) {
        keys->addWidget(makeSideKey(theme(),
                                    {u"nail_test"_s, tr("Nail and paper"), tr("try whether it sands"), Pictogram::None,
                                     [this] { feel(); }},
                                    this),
                        1, 0);
        keys->addWidget(makeSideKey(theme(),
                                    {u"another_batch"_s, tr("Another batch"), tr("for the same lift"), Pictogram::None,
                                     [this] { Q_EMIT anotherWanted(); }},
                                    this),
                        1, 1);
    }
    content()->addLayout(keys, m_spreading ? 2 : 3);
}

PracticeClockScreen::Course PracticeClockScreen::courseOf(const Attempt& attempt, const ModelAnswer& own,
                                                          const PlanningSet& shop)
{
    Course course;
    const auto placed = placeLifts(attempt, own, shop);
    if (placed.empty() || placed.back().index + 1 != attempt.lifts.size())
        return course; // it lies where the plan has nothing
    const ProductSheet& sheet = sheetOf(placed.back(), own, shop);
    const Mix mix = mixOf(attempt.lifts.back().batches.back(), sheet);
    if (const auto board = boardGelOf(mix, mix.hardenerShare, own, sheet, shop))
        course.board = *board;
    if (const auto layer = cureOf(placed.back(), mix.hardenerShare, shop)) {
        course.gel = layer->gel;
        course.sand = layer->sand;
    }
    return course;
}

void PracticeClockScreen::tick()
{
    const Duration gone = m_time.gone();
    m_figure->setText(words().duration(gone));
    //: how many times as fast as the shop's clock
    m_pace->setTitle(tr("Clock: %1 times").arg(m_time.pace()));
    if (m_spreading)
        m_felt->setText(feltWhileSpreading(gone));
}

QString PracticeClockScreen::feltWhileSpreading(Duration gone) const
{
    if (!m_course)
        return {};
    if (!m_course->board || gone < *m_course->board * stiffens)
        return tr("It spreads easily.");
    if (gone < *m_course->board)
        return tr("It drags behind the spreader.");
    return tr("What is left on the board has set: it tears.");
}

void PracticeClockScreen::feel() { m_felt->setText(nailSays(m_time.gone())); }

QString PracticeClockScreen::nailSays(Duration gone) const
{
    if (!m_course)
        return tr("Try again in a moment.");
    if (!m_course->gel || gone < *m_course->gel)
        return tr("It is wet: it smears.");
    if (!m_course->sand || gone < *m_course->sand)
        return tr("The nail leaves a mark, the paper clogs.");
    if (gone < *m_course->sand * stoneAfter)
        return tr("The nail leaves no mark, the paper powders it.");
    return tr("Hard as stone: the paper hardly bites.");
}

} // namespace strandbench
