// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/record/today_screen.h"

#include "screens/frame/side_key.h"
#include "theme/sizes.h"
#include "words/deviation_words.h"
#include "words/event_words.h"

#include <QPointer>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// Of a repair that was handed over: whether the supervisor has signed it off; empty of one that was not.
QString signOffState(const JobRecord& record)
{
    if (!record.handedOver)
        return {};
    return record.signedOff ? TodayScreen::tr("signed off") : TodayScreen::tr("to sign off");
}

} // namespace

TodayScreen::TodayScreen(const Surroundings& around, QWidget* parent) : Screen(around, u"screen_today"_s, parent)
{
    const QString day = localDay(around.bench.clock().now());
    buildFrame(day, tr("Tap a job to see its record"));
    m_rows = new PagedRows(around, sizes::target, this);
    m_none = makeNone();
    m_none->hide();
    content()->addWidget(m_rows, 1);
    content()->addWidget(m_none, 1);
    auto* keys = new QBoxLayout(around.upright ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    keys->setSpacing(px(sizes::gap));
    keys->addWidget(makeSideKey(theme(),
                                {u"find"_s, tr("Look for"), tr("a job, a lot, a word of any day"), Pictogram::None,
                                 [this] { Q_EMIT findTapped(); }},
                                this));
    keys->addWidget(makeSideKey(theme(),
                                {u"review"_s, tr("Look through"), tr("sign off, return, figures"), Pictogram::None,
                                 [this] { Q_EMIT reviewTapped(); }},
                                this));
    content()->addLayout(keys);
    answers()->setWayOn(tr("Hardener lots"));
    connect(answers(), &AnswerBar::wayOnTapped, this, &TodayScreen::lotsTapped);
    answers()->stop()->hide();
    around.bench.recorder().readDay(day, [screen = QPointer<TodayScreen>(this)](const Logged<DayBook>& book) {
        if (screen)
            screen->showDay(book);
    });
}

QWidget* TodayScreen::makeNone()
{
    auto* none = new QWidget(this);
    auto* column = new QVBoxLayout(none);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(px(sizes::gap));
    auto* told = new FitLabel(theme(), u"today_none"_s, TextRole::Body, none);
    told->setText(tr("Nothing was worked on today. Every repair that is, stands here with its record."));
    column->addWidget(told, 1);
    column->addWidget(makeSideKey(theme(),
                                  {u"today_take_in"_s, tr("Take in a panel"), tr("job number and panel"),
                                   Pictogram::TakeIn, [this] { Q_EMIT takeInTapped(); }},
                                  none));
    return none;
}

void TodayScreen::showDay(const Logged<DayBook>& book)
{
    if (!book)
        return showTrouble(book.error());
    std::vector<PagedRows::MakeRow> rows;
    for (std::size_t i = 0; i < book->repairs.size(); ++i)
        rows.push_back(rowOf(book->repairs[i], i));
    if (!book->ofBench.empty())
        rows.push_back(benchRow(static_cast<int>(book->ofBench.size())));
    setSentence(rows.empty() ? tr("No repair today") : tr("Tap a job to see its record"));
    m_none->setVisible(rows.empty());
    m_rows->setVisible(!rows.empty());
    m_rows->setRows(std::move(rows));
}

PagedRows::MakeRow TodayScreen::benchRow(int events)
{
    return [this, events](QWidget* parent) -> QWidget* {
        auto* row = new TapButton(theme(), u"today_bench"_s, TapButton::Kind::Plain, parent);
        row->setTitle(tr("This bench"));
        row->setSecondLine(tr("%n entry(ies): clocks, refused acts, PIN", nullptr, events));
        row->setSign(Pictogram::Caution);
        connect(row, &TapButton::clicked, this, &TodayScreen::benchTapped);
        return row;
    };
}

PagedRows::MakeRow TodayScreen::rowOf(const std::vector<Event>& events, std::size_t index)
{
    const Catalogue& catalogue = around().bench.planning().catalogue;
    const DeviationLimits limits = limitsFrom(around().bench.assumptions());
    const auto record = recordOf(events, catalogue);
    QString title;
    QString second;
    Pictogram sign = Pictogram::Caution;
    if (record) {
        const Station station = nextStep(record->repair).station;
        title = record->repair.job + u" · "_s + record->repair.panel;
        QStringList parts{Words::title(words().station(station)),
                          record->people.isEmpty() ? personText({}) : record->people.join(u", "_s),
                          signOffState(*record), deviationCount(int(deviationsOf(*record, catalogue, limits).size()))};
        parts.removeAll(QString());
        second = parts.join(u" · "_s);
        sign = signOf(station);
    } else {
        title = tr("A record that cannot be read");
        second = words().fault(record.error().front());
    }
    return [this, title, second, sign, index, id = events.front().repair](QWidget* parent) -> QWidget* {
        auto* row = new TapButton(theme(), u"today_row_%1"_s.arg(index), TapButton::Kind::Plain, parent);
        row->setTitle(title);
        row->setSecondLine(second);
        row->setSign(sign);
        connect(row, &TapButton::clicked, this, [this, id] { Q_EMIT repairTapped(id); });
        return row;
    };
}

} // namespace strandbench
