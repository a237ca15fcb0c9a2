// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/home_screen.h"

#include "bench/settings.h"
#include "screens/frame/phrases.h"
#include "screens/job/station_words.h"
#include "screens/stock/stock_told.h"
#include "theme/sizes.h"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double railTop = 5; // mm below the ribbon
constexpr double railThick = 1.6;
constexpr double hookLength = 4;

/// The running batch of a repair whose next act comes first.
std::optional<RunningMix> runningOf(const Repair& repair, const Bench& bench)
{
    std::optional<RunningMix> first;
    for (const RunningMix& each : bench.runningMixes())
        if (each.repair == repair.id && !first)
            first = each;
    return first;
}

} // namespace

HomeScreen::HomeScreen(const Surroundings& around, QWidget* parent) : Screen(around, u"screen_home"_s, parent)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(px(sizes::margin), px(railTop + railThick + hookLength / 2), px(sizes::margin),
                               px(sizes::margin));
    column->setSpacing(px(sizes::gap));
    column->addWidget(makeTrouble());
    m_rail = new QBoxLayout(around.upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_rail->setSpacing(px(sizes::gap));
    column->addLayout(m_rail, 1);
    buildRail();
    buildKeys(column);
    tick();
}

std::size_t HomeScreen::cardsRoom() const { return around().upright ? 2 : 3; }

void HomeScreen::buildRail()
{
    for (std::size_t i = 0; i < cardsRoom(); ++i) {
        auto* card = new JobCard(theme(), u"job_card_%1"_s.arg(i), this);
        connect(card, &JobCard::clicked, this, [this, i] { Q_EMIT repairTapped(m_ids.at(m_first + i)); });
        m_rail->addWidget(card, 1);
        m_cards.push_back(card);
    }
    m_none = label(u"home_none"_s, TextRole::Body,
                   tr("No repair is open. Take in a panel: the program asks what there is, plans, and keeps time and "
                      "record."));
    m_rail->addWidget(m_none, 2);
    m_takeIn = new TapButton(theme(), u"take_in"_s, TapButton::Kind::Way, this);
    m_takeIn->setTitle(tr("Take in a panel"));
    m_takeIn->setSecondLine(tr("job number and panel"));
    m_takeIn->setSign(Pictogram::TakeIn);
    m_takeIn->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    connect(m_takeIn, &TapButton::clicked, this, &HomeScreen::takeInTapped);
    m_practice = new TapButton(theme(), u"practice"_s, TapButton::Kind::Plain, this);
    m_practice->setTitle(tr("Practise"));
    m_practice->setSecondLine(tr("on a practice panel"));
    m_practice->setMinimumHeight(px(sizes::target));
    m_practice->hide();
    connect(m_practice, &TapButton::clicked, this, &HomeScreen::practiceTapped);
    auto* ways = new QBoxLayout(around().upright ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    ways->setSpacing(px(sizes::gap));
    ways->addWidget(m_takeIn, 3);
    ways->addWidget(m_practice, 1);
    m_rail->addLayout(ways, 1);
}

void HomeScreen::offerPractice() { m_practice->show(); }

void HomeScreen::buildKeys(QBoxLayout* column)
{
    auto* keys = new QHBoxLayout;
    keys->setSpacing(px(sizes::gap));
    column->addLayout(keys);
    const auto key = [&](const QString& name, const QString& title, const QString& second) {
        auto* made = new TapButton(theme(), name, TapButton::Kind::Plain, this);
        made->setTitle(title);
        made->setSecondLine(second);
        made->setFixedHeight(px(sizes::answer));
        keys->addWidget(made, 1);
        return made;
    };
    const QString person = around().settings.person;
    connect(key(u"person"_s, tr("At the bench"), person.isEmpty() ? tr("nobody yet: tap") : person),
            &TapButton::clicked, this, &HomeScreen::personTapped);
    m_more = key(u"more_jobs"_s, tr("More jobs"), {});
    connect(m_more, &TapButton::clicked, this, [this] {
        m_first = m_first + cardsRoom() < m_ids.size() ? m_first + cardsRoom() : 0;
        showCards();
    });
    if (around().upright) { // five side by side are too narrow for their words
        keys = new QHBoxLayout;
        keys->setSpacing(px(sizes::gap));
        column->addLayout(keys);
    }
    connect(key(u"today"_s, tr("Today’s work"), {}), &TapButton::clicked, this, &HomeScreen::todayTapped);
    connect(key(u"stock"_s, tr("Stock"), stocktold::summary(around())), &TapButton::clicked, this,
            &HomeScreen::stockTapped);
    m_setUp = key(u"set_up"_s, tr("Bench set-up"), {});
    connect(m_setUp, &TapButton::clicked, this, &HomeScreen::setUpTapped);
}

void HomeScreen::setBackupOverdue(bool overdue)
{
    m_setUp->setSecondLine(overdue ? tr("! backup overdue") : QString());
}

JobCard::Shown HomeScreen::shownOf(const Repair& repair) const
{
    JobCard::Shown shown;
    shown.job = repair.job;
    shown.panel = repair.panel;
    QStringList who;
    if (repair.assessment.substrate)
        who << words().title(words().substrate(*repair.assessment.substrate));
    who << repair.takenInBy;
    shown.who = who.join(u" · "_s);
    shown.drawing = repair.plan ? SectionDrawing::of(repair.assessment, *repair.plan, around().bench.assumptions())
                                : SectionDrawing::of(repair.assessment);
    const NextWords next = nextWords(repair, runningOf(repair, around().bench), words());
    shown.next = next.what;
    shown.nextDetail = next.detail;
    shown.sign = next.sign;
    shown.drawing.progress = progressOf(repair);
    return shown;
}

void HomeScreen::showCards()
{
    for (std::size_t i = 0; i < m_cards.size(); ++i) {
        const bool there = m_first + i < m_ids.size();
        m_cards[i]->setVisible(there);
        if (there)
            m_cards[i]->setShown(shownOf(*around().bench.repair(m_ids[m_first + i])));
    }
    const std::size_t hidden = m_ids.size() - std::min(m_ids.size(), cardsRoom());
    m_more->setVisible(hidden > 0);
    m_none->setVisible(m_ids.empty());
    m_more->setSecondLine(tr("%n in all", nullptr, static_cast<int>(m_ids.size())));
    update();
}

void HomeScreen::tick()
{
    m_ids.clear();
    // Running ones first, in the order of the ribbon; the rest by their newest act.
    for (const RunningMix& each : around().bench.runningMixes())
        if (std::find(m_ids.begin(), m_ids.end(), each.repair) == m_ids.end())
            m_ids.push_back(each.repair);
    for (const Repair* each : around().bench.openRepairs())
        if (std::find(m_ids.begin(), m_ids.end(), each->id) == m_ids.end())
            m_ids.push_back(each->id);
    if (m_first >= m_ids.size())
        m_first = 0;
    showCards();
}

void HomeScreen::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme().color(Role::Rail));
    painter.drawRect(QRectF(0, px(railTop), width(), px(railThick)));
    if (around().upright)
        return; // the first card alone would hang: the rail is enough
    for (const JobCard* each : m_cards)
        if (each->isVisible())
            painter.drawRect(QRectF(each->geometry().center().x() - px(0.8), px(railTop - 2), px(1.6),
                                    each->geometry().top() - px(railTop - 2)));
}

} // namespace strandbench
