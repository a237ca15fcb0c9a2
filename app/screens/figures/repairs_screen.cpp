// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/figures/repairs_screen.h"

#include "bench/review_ask.h"
#include "clock/local_days.h"
#include "screens/frame/side_key.h"
#include "theme/sizes.h"
#include "words/stock_words.h"

#include <QDate>
#include <QPointer>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double keysWidth = 40; // mm, beside the body

FigurePeriod next(FigurePeriod period)
{
    switch (period) {
    case FigurePeriod::Month:
        return FigurePeriod::Quarter;
    case FigurePeriod::Quarter:
        return FigurePeriod::Year;
    case FigurePeriod::Year:
        break;
    }
    return FigurePeriod::Month;
}

QString firstDay(const QString& today, FigurePeriod period) { return daysFrom(today, 1 - daysOf(period)); }

} // namespace

RepairsScreen::RepairsScreen(const Surroundings& around, const QString& name, FigurePeriod period, QWidget* parent)
    : Screen(around, name, parent), m_period(period), m_worker(around.bench.computing())
{}

RepairsScreen::~RepairsScreen() { stop(); }

void RepairsScreen::buildAround(const QString& sentence)
{
    buildFrame({}, sentence);
    answers()->stop()->hide();
    answers()->setWayOn({});
    m_body = new QWidget(this);
    m_bodyColumn = new QVBoxLayout(m_body);
    m_bodyColumn->setContentsMargins(0, 0, 0, 0);
    m_bodyColumn->setSpacing(px(1));
    m_wait = makeWait();
    content()->addWidget(m_body, 1);
    content()->addWidget(m_wait, 1);
    auto* keys = new QWidget(this);
    m_keys = new QBoxLayout(around().upright ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom, keys);
    m_keys->setContentsMargins(0, 0, 0, 0);
    m_keys->setSpacing(px(sizes::gap));
    if (!around().upright)
        keys->setFixedWidth(px(keysWidth));
    m_periodKey =
        makeSideKey(theme(), {u"figure_period"_s, {}, {}, Pictogram::None, [this] { choose(next(m_period)); }}, keys);
    m_keys->addWidget(m_periodKey);
    content()->addWidget(keys);
    namePeriod();
}

QWidget* RepairsScreen::makeWait()
{
    auto* wait = new QWidget(this);
    auto* column = new QVBoxLayout(wait);
    column->setContentsMargins(0, 0, 0, 0);
    m_progress = new FitLabel(theme(), u"figure_progress"_s, TextRole::Title, wait);
    auto* stopKey = new TapButton(theme(), u"figure_stop"_s, TapButton::Kind::Stop, wait);
    stopKey->setTitle(tr("Stop reading"));
    stopKey->setLeastSize(40, sizes::target);
    connect(stopKey, &TapButton::clicked, this, [this] {
        stop();
        Q_EMIT readingStopped();
    });
    column->addWidget(m_progress, 1);
    column->addWidget(stopKey, 0, Qt::AlignLeft);
    return wait;
}

void RepairsScreen::namePeriod()
{
    m_periodKey->setTitle(tr("%n day(s)", nullptr, daysOf(m_period)));
    m_periodKey->setSecondLine(tr("up to today; tap: %n day(s)", nullptr, daysOf(next(m_period))));
    setContext(daysText());
}

QString RepairsScreen::daysText() const
{
    const QString today = localDay(around().bench.clock().now());
    const auto day = [this](const QString& iso) { return stockDay(QDate::fromString(iso, Qt::ISODate), words()); };
    //: %1 and %2 are days
    return tr("Repairs worked on from %1 to %2").arg(day(firstDay(today, m_period)), day(today));
}

void RepairsScreen::choose(FigurePeriod period)
{
    m_period = period;
    namePeriod();
    Q_EMIT periodChosen(period);
    read();
}

void RepairsScreen::stop()
{
    if (m_cancelled)
        *m_cancelled = true;
}

void RepairsScreen::wait(bool waiting)
{
    m_wait->setVisible(waiting);
    m_body->setVisible(!waiting);
}

void RepairsScreen::tellProgress(int done, int of)
{
    m_progress->setText(tr("Reading the records: %1 of %n repair(s)", nullptr, of).arg(done));
}

void RepairsScreen::read()
{
    stop(); // the period before
    showTrouble({}, {});
    m_progress->setText(tr("Reading the records …"));
    answers()->setWayOn({});
    wait(true);
    const QPointer<RepairsScreen> screen(this);
    ReviewAsk ask = reviewAskOf(around().bench);
    m_cancelled = ask.cancelled;
    ask.progress = [screen](int done, int of) {
        if (screen)
            screen->tellProgress(done, of);
    };
    const QString today = localDay(around().bench.clock().now());
    around().bench.recorder().review(firstDay(today, m_period), today, ask, [screen](const Logged<Digests>& found) {
        if (screen)
            screen->take(found);
    });
}

void RepairsScreen::take(const Logged<Digests>& found)
{
    if (!found) {
        wait(false);
        return showTrouble(found.error());
    }
    m_worker.ask([this, cancelled = m_cancelled, work = workOn(std::make_shared<const Digests>(*found))] {
        const Worker::Show show = work();
        return [this, cancelled, show] {
            if (*cancelled)
                return; // another period was asked for meanwhile
            wait(false);
            show();
        };
    });
}

} // namespace strandbench
