// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/record_screen.h"

#include "screens/sign_widget.h"
#include "words/deviation_words.h"
#include "words/event_words.h"

#include <QPointer>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double rowWide = 14;    // mm: two lines
constexpr double rowUpright = 18; // three
constexpr double whenWide = 34;
constexpr double whenUpright = 28;
constexpr double signWidth = 9;

} // namespace

RecordScreen::RecordScreen(const Surroundings& around, const QUuid& repair, QWidget* parent)
    : Screen(around, u"screen_record"_s, parent)
{
    buildFrame({}, tr("See what happened"));
    m_rows = new PagedRows(around, around.upright ? rowUpright : rowWide, this);
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
    for (const Row& each : rowsOf(*record))
        rows.push_back([this, each](QWidget* parent) { return makeRow(each, parent); });
    m_rows->setRows(std::move(rows));
    answers()->setWayOnEnabled(true);
}

std::vector<RecordScreen::Row> RecordScreen::rowsOf(const JobRecord& record) const
{
    const auto when = [&](const Instant& at) {
        const QString time = words().clockTime(at);
        return record.days.size() > 1 ? localDay(at).mid(5) + u' ' + time : time;
    };
    std::vector<Row> rows;
    for (const Deviation& each :
         deviationsOf(record, around().bench.planning().catalogue, limitsFrom(around().bench.assumptions())))
        rows.push_back({u"deviation_%1"_s.arg(rows.size()), when(each.told.at), personText(each.told.person),
                        deviationText(each, words()), true});
    std::size_t index = 0;
    for (const EventLine& each : eventLines(record, words()))
        rows.push_back({u"event_%1"_s.arg(index++), when(each.at), personText(each.person), each.text, false});
    return rows;
}

QWidget* RecordScreen::makeRow(const Row& row, QWidget* parent)
{
    auto* made = new Card(theme(), parent);
    made->setObjectName(row.name);
    auto* across = new QHBoxLayout(made);
    across->setContentsMargins(px(2), px(0.8), px(2), px(0.8));
    across->setSpacing(px(2));
    if (row.deviates) {
        auto* sign = new SignWidget(theme(), Pictogram::Caution, tr("Deviation"), made);
        sign->setFixedWidth(px(signWidth));
        across->addWidget(sign);
    }
    auto* left = new QVBoxLayout;
    left->setSpacing(0);
    for (const auto& [name, text] : {std::pair{u"_when"_s, row.when}, std::pair{u"_who"_s, row.who}}) {
        auto* line = new FitLabel(theme(), row.name + name, TextRole::Small, made);
        line->setRole(Role::MutedInk);
        line->setText(text);
        line->setLines(1);
        left->addWidget(line, 1);
    }
    auto* box = new QWidget(made);
    left->setContentsMargins(0, 0, 0, 0);
    box->setLayout(left);
    box->setFixedWidth(px((around().upright ? whenUpright : whenWide) - (row.deviates ? signWidth + 2 : 0)));
    across->addWidget(box);
    auto* text = new FitLabel(theme(), row.name + u"_text"_s, TextRole::Body, made);
    text->setText(row.text);
    text->setBold(row.deviates);
    across->addWidget(text, 1);
    return made;
}

} // namespace strandbench
