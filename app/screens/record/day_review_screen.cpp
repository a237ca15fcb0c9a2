// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/record/day_review_screen.h"

#include "bench/review_ask.h"
#include "clock/local_days.h"
#include "review/eyes.h"
#include "theme/sizes.h"
#include "words/event_words.h"
#include "words/figure_words.h"
#include "words/review_words.h"
#include "words/stock_words.h"

#include <QDate>
#include <QGridLayout>
#include <QPointer>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double keysWidth = 62; // mm
constexpr double rowHeight = 18; // a title and two lines
constexpr TextSize rowTitle{4.6, 3.4};
constexpr TextSize keyTitle{4.6, 3.4};
constexpr std::size_t namedDeviations = 2; ///< in a row; the rest are counted

/// "Hardener low, Sanded early, +2": the heaviest first, each kind once.
QString strayed(const RepairDigest& repair)
{
    std::vector<DeviationKind> kinds;
    for (const DeviationKind each : repair.deviations)
        if (!std::ranges::count(kinds, each))
            kinds.push_back(each);
    sortByWeight(kinds);
    QStringList names;
    for (std::size_t i = 0; i < std::min(kinds.size(), namedDeviations); ++i)
        names << deviationName(kinds[i]);
    if (kinds.size() > namedDeviations)
        names << u"+%1"_s.arg(kinds.size() - namedDeviations);
    return names.join(u", "_s);
}

} // namespace

DayReviewScreen::DayReviewScreen(const Surroundings& around, const ReviewWish& wish, QWidget* parent)
    : Screen(around, u"screen_review"_s, parent), m_wish(wish)
{
    const QString day = stockDay(QDate::fromString(wish.day, Qt::ISODate), words());
    buildFrame(wish.narrowed.isEmpty() ? day : day + u" · "_s + wish.narrowed, tr("Reading …"));
    auto* column = new QVBoxLayout;
    column->setSpacing(px(1));
    m_rows = new PagedRows(around, rowHeight, this);
    m_none = label(u"review_none"_s, TextRole::Body, tr("Nothing was worked on that day."));
    m_none->hide();
    m_figures = label(u"review_figures"_s, TextRole::Small);
    m_figures->setMinimumHeight(px(5));
    column->addWidget(m_rows, 1);
    column->addWidget(m_none, 1);
    column->addWidget(m_figures);
    content()->addLayout(column, 1);
    buildKeys();
    answers()->stop()->hide();
    answers()->setWayOn(tr("Next to look through"));
    answers()->setWayOnEnabled(false);
    connect(answers(), &AnswerBar::wayOnTapped, this, [this] {
        if (m_next)
            Q_EMIT repairTapped(*m_next);
    });
    read();
}

DayReviewScreen::~DayReviewScreen() { *m_cancelled = true; }

void DayReviewScreen::buildKeys()
{
    auto* keys = new QWidget(this);
    auto* grid = new QGridLayout(keys);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(px(sizes::gap));
    const bool upright = around().upright;
    const auto key = [&](const QString& name, const QString& title, int row, int column, int across,
                         const auto& tapped) {
        auto* made = new TapButton(theme(), name, TapButton::Kind::Plain, keys);
        made->setTitle(title);
        made->setTitleSize(keyTitle);
        made->setLeastSize(sizes::denseTarget, sizes::denseTarget);
        connect(made, &TapButton::clicked, this, tapped);
        grid->addWidget(made, row, column, 1, across);
        return made;
    };
    const QString today = localDay(around().bench.clock().now());
    key(u"day_before"_s, tr("Day before"), 0, 0, 1, [this] { Q_EMIT dayWanted(daysFrom(m_wish.day, -1)); });
    key(u"day_after"_s, tr("Day after"), 0, 1, 1, [this] {
        Q_EMIT dayWanted(daysFrom(m_wish.day, 1));
    })->setEnabled(m_wish.day < today);
    key(u"narrow"_s, tr("Narrow down"), upright ? 0 : 1, upright ? 2 : 0, 1, &DayReviewScreen::narrowWanted);
    key(u"figures"_s, tr("Figures"), 1, upright ? 0 : 1, 1, &DayReviewScreen::figuresWanted);
    key(u"day_files"_s, tr("Day’s sheets"), upright ? 1 : 2, upright ? 1 : 0, 2, &DayReviewScreen::filesWanted);
    if (!upright)
        keys->setFixedWidth(px(keysWidth));
    content()->addWidget(keys);
}

void DayReviewScreen::read()
{
    ReviewAsk ask = reviewAskOf(around().bench);
    m_cancelled = ask.cancelled;
    const QPointer<DayReviewScreen> screen = this;
    ask.progress = [screen](int done, int of) {
        //: how many repairs of how many were read
        if (screen)
            screen->setSentence(tr("Reading %1 of %2 …").arg(done).arg(of));
    };
    around().bench.recorder().review(m_wish.day, m_wish.day, ask, [screen](const Logged<Digests>& repairs) {
        if (!screen)
            return;
        if (!repairs)
            return screen->showTrouble(repairs.error());
        screen->show(*repairs);
    });
}

void DayReviewScreen::show(const std::vector<RepairDigest>& repairs)
{
    Q_EMIT wasRead(repairs);
    const auto shown = eyesFirst(repairs, m_wish.narrowing);
    const DayFigures day = dayFigures(shown);
    setSentence(day.toLookThrough > 0 ? tr("%n to sign off or return", nullptr, day.toLookThrough)
                                      : tr("Nothing to sign off"));
    std::vector<PagedRows::MakeRow> rows;
    for (const RepairDigest& each : shown) {
        if (!m_next && each.standing == Standing::ToLookThrough)
            m_next = each.repair;
        rows.push_back(rowOf(each, rows.size()));
    }
    answers()->setWayOnEnabled(m_next.has_value());
    m_none->setVisible(rows.empty());
    m_rows->setVisible(!rows.empty());
    m_figures->setText(rows.empty() ? QString() : figuresText(day));
    m_rows->setRows(std::move(rows));
}

QString DayReviewScreen::figuresText(const DayFigures& day) const
{
    QStringList parts{tr("%n repair(s)", nullptr, day.repairs), tr("%n need eyes first", nullptr, day.needEyes)};
    if (day.mixed.value() > 0)
        //: two masses of filler
        parts << tr("mixed %1, planned %2").arg(stockMass(day.mixed, words()), stockMass(day.planned, words()));
    if (day.hands.value() > 0)
        //: two times of work
        parts << tr("work %1, planned %2").arg(words().longDuration(day.hands), words().longDuration(day.handsPlanned));
    return parts.join(u" · "_s);
}

PagedRows::MakeRow DayReviewScreen::rowOf(const RepairDigest& repair, std::size_t index)
{
    const QString title = repair.readable ? repair.job + u" · "_s + repair.panel : tr("A record that cannot be read");
    QStringList second;
    if (repair.readable) {
        second << (repair.standing == Standing::AtWork ? words().station(repair.station)
                                                       : standingText(repair.standing))
               << (repair.people.isEmpty() ? personText({}) : repair.people.mid(0, 2).join(u", "_s));
        if (!repair.reworkOf.isNull())
            second << tr("rework");
        second << strayed(repair);
        second.removeAll(QString());
    }
    const Pictogram sign = needsEyes(repair)                        ? Pictogram::Caution
                           : repair.standing == Standing::SignedOff ? Pictogram::Tick
                                                                    : signOf(repair.station);
    return [this, title, second, sign, index, id = repair.repair](QWidget* parent) -> QWidget* {
        auto* row = new TapButton(theme(), u"review_row_%1"_s.arg(index), TapButton::Kind::Plain, parent);
        row->setTitle(title);
        row->setSecondLine(second.join(u" · "_s));
        row->setTitleSize(rowTitle);
        row->setLeastSize(sizes::denseTarget, sizes::denseTarget);
        row->setSign(sign);
        connect(row, &TapButton::clicked, this, [this, id] { Q_EMIT repairTapped(id); });
        return row;
    };
}

} // namespace strandbench
