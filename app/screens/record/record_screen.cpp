// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/record/record_screen.h"

#include "screens/record/record_row.h"
#include "theme/sizes.h"
#include "words/deviation_words.h"
#include "words/event_words.h"

#include <QPointer>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double keysWidth = 40; // mm
constexpr TextSize keyTitle{4.6, 3.4};

/// "2026-03-02 09:14" where a record spans days, else the time alone.
QString whenOf(const Instant& at, bool severalDays, const Words& words)
{
    const QString time = words.clockTime(at);
    return severalDays ? localDay(at).mid(5) + u' ' + time : time;
}

} // namespace

RecordScreen::RecordScreen(const Surroundings& around, const QUuid& repair, QWidget* parent)
    : Screen(around, u"screen_record"_s, parent)
{
    buildFrame({}, tr("See what happened"));
    m_rows = new PagedRows(around, recordRowHeight(around), this);
    content()->addWidget(m_rows, 1);
    answers()->setWayOn(tr("Job sheet as PDF"));
    answers()->setWayOnEnabled(false);
    answers()->stop()->hide();
    connect(answers(), &AnswerBar::wayOnTapped, this, &RecordScreen::sheetWanted);
    around.bench.recorder().readRepair(repair, [screen = QPointer<RecordScreen>(this)](const Logged<RepairFile>& file) {
        if (screen)
            screen->showRecord(file);
    });
}

void RecordScreen::showRecord(const Logged<RepairFile>& file)
{
    if (!file)
        return showTrouble(file.error());
    const auto record = recordOf(file->events, around().bench.planning().catalogue);
    if (!record)
        return showTrouble(tr("This record cannot be read."), words().fault(record.error().front()));
    setContext(contextOf(record->repair, words()));
    std::vector<PagedRows::MakeRow> rows;
    for (const RecordRow& each : rowsOf(*record))
        rows.push_back([this, each](QWidget* parent) { return makeRecordRow(this->around(), each, parent); });
    m_rows->setRows(std::move(rows));
    answers()->setWayOnEnabled(true);
    buildKeys(*record);
}

void RecordScreen::buildKeys(const JobRecord& record)
{
    auto* keys = new QWidget(this);
    auto* box = new QBoxLayout(around().upright ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom, keys);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(px(sizes::gap));
    const auto key = [&](const QString& name, const QString& title, const QString& second,
                         void (RecordScreen::*wanted)()) {
        auto* made = new TapButton(theme(), name, TapButton::Kind::Plain, keys);
        made->setTitle(title);
        made->setSecondLine(second);
        made->setTitleSize(keyTitle);
        made->setLeastSize(sizes::denseTarget, sizes::denseTarget);
        connect(made, &TapButton::clicked, this, wanted);
        box->addWidget(made, 1);
    };
    key(u"timeline"_s, tr("Timeline"), {}, &RecordScreen::timelineWanted);
    key(u"lots"_s, tr("Lots"), {}, &RecordScreen::lotsWanted);
    if (record.signedOff)
        key(u"closing"_s, tr("Signed off"), personText(record.signedOff->person), &RecordScreen::closingWanted);
    else if (record.returned)
        key(u"closing"_s, tr("Returned"), personText(record.returned->person), &RecordScreen::closingWanted);
    else if (record.handedOver)
        key(u"closing"_s, tr("Sign off, return"), tr("supervisor"), &RecordScreen::closingWanted);
    if (!around().upright)
        keys->setFixedWidth(px(keysWidth));
    content()->addWidget(keys);
    keys->show();
}

std::vector<RecordRow> RecordScreen::rowsOf(const JobRecord& record) const
{
    const auto when = [&](const Instant& at) { return whenOf(at, record.days.size() > 1, words()); };
    std::vector<RecordRow> rows;
    for (const Deviation& each :
         deviationsOf(record, around().bench.planning().catalogue, limitsFrom(around().bench.assumptions())))
        rows.push_back({u"deviation_%1"_s.arg(rows.size()), when(each.told.at), personText(each.told.person),
                        deviationText(each, words()), true});
    std::size_t index = 0;
    for (const EventLine& each : eventLines(record, words()))
        rows.push_back({u"event_%1"_s.arg(index++), when(each.at), personText(each.person), each.text, false});
    return rows;
}

} // namespace strandbench
