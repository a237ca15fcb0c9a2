// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/record/closing_screen.h"

#include "review/eyes.h"
#include "screens/frame/sign_widget.h"
#include "screens/record/with_record.h"
#include "theme/sizes.h"
#include "words/deviation_words.h"
#include "words/event_words.h"
#include "words/review_words.h"
#include "words/role_words.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double keysWidth = 44; // mm
constexpr double rowHeight = 12;
constexpr double signWidth = 9;

QString dayAndTime(const Instant& at, const Words& words) { return localDay(at) + u' ' + words.clockTime(at); }

/// One sentence in a row, with a sign where it is a deviation.
QWidget* rowOf(const Surroundings& around, const QString& name, const QString& text, bool deviates, QWidget* parent)
{
    const Theme& theme = around.theme;
    auto* row = new Card(theme, parent);
    row->setObjectName(name);
    auto* across = new QHBoxLayout(row);
    across->setContentsMargins(theme.px(2), theme.px(0.8), theme.px(2), theme.px(0.8));
    across->setSpacing(theme.px(2));
    if (deviates) {
        auto* sign = new SignWidget(theme, Pictogram::Caution, ClosingScreen::tr("Deviation"), row);
        sign->setFixedWidth(theme.px(signWidth));
        across->addWidget(sign);
    }
    auto* said = new FitLabel(theme, name + u"_text"_s, TextRole::Body, row);
    said->setText(text);
    across->addWidget(said, 1);
    return row;
}

} // namespace

ClosingScreen::ClosingScreen(const Surroundings& around, const QUuid& repair, QWidget* parent)
    : Screen(around, u"screen_closing"_s, parent)
{
    buildFrame({}, tr("Reading …"));
    m_rows = new PagedRows(around, rowHeight, this);
    content()->addWidget(m_rows, 1);
    answers()->setWayOn({});
    answers()->stop()->hide();
    withRecord(around, this, repair, [this](const JobRecord& record, const RepairFile&) { showRecord(record); });
}

void ClosingScreen::showRecord(const JobRecord& record)
{
    const Catalogue& catalogue = around().bench.planning().catalogue;
    setContext(contextOf(record.repair, words()));
    const auto lacking = lackingOf(record);
    setSentence(lacking.empty() ? tr("The record holds what is asked for")
                                : tr("The record lacks %n thing(s)", nullptr, static_cast<int>(lacking.size())));
    std::vector<PagedRows::MakeRow> rows;
    for (const Lacking& each : lacking)
        rows.push_back([this, text = lackingText(each, words()), index = rows.size()](QWidget* parent) {
            return rowOf(around(), u"lacking_%1"_s.arg(index), text, false, parent);
        });
    for (const Deviation& each : deviationsOf(record, catalogue, limitsFrom(around().bench.assumptions())))
        if (weightOf(each.kind) == Weight::First)
            rows.push_back([this, text = deviationText(each, words()), index = rows.size()](QWidget* parent) {
                return rowOf(around(), u"first_%1"_s.arg(index), text, true, parent);
            });
    m_rows->setRows(std::move(rows));
    buildKeys(record);
}

QString ClosingScreen::stands(const JobRecord& record) const
{
    if (record.signedOff)
        return tr("Signed off: %1, %2")
            .arg(personText(record.signedOff->person), dayAndTime(record.signedOff->at, words()));
    if (record.returned)
        //: %1 is a reason, %2 a person, %3 a day and a time
        return tr("Returned: %1. %2, %3")
            .arg(returnText(record.repair.returned->what), personText(record.returned->person),
                 dayAndTime(record.returned->at, words()));
    return {};
}

void ClosingScreen::buildKeys(const JobRecord& record)
{
    auto* keys = new QWidget(this);
    auto* box = new QBoxLayout(around().upright ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom, keys);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(px(sizes::gap));
    const auto key = [&](const QString& name, const QString& title, const QString& second, const auto& tapped) {
        auto* made = new TapButton(theme(), name, TapButton::Kind::Plain, keys);
        made->setTitle(title);
        made->setSecondLine(second);
        made->setLeastSize(sizes::denseTarget, sizes::denseTarget);
        connect(made, &TapButton::clicked, this, tapped);
        box->addWidget(made, 1);
        return made;
    };
    const bool may = !around().bench.looksOnly();
    if (const QString text = stands(record); !text.isEmpty())
        box->addWidget(label(u"signed_off"_s, TextRole::Body, text, record.signedOff ? Role::Go : Role::Ink, true), 1);
    else {
        key(u"sign_off"_s, tr("Sign off"), tr("supervisor"), &ClosingScreen::signOffWanted)->setEnabled(may);
        key(u"return_it"_s, tr("Return"), tr("supervisor"), &ClosingScreen::returnWanted)->setEnabled(may);
    }
    const QUuid other = record.repair.rework.isNull() ? record.repair.reworkOf : record.repair.rework;
    if (!other.isNull())
        key(u"other_repair"_s, record.repair.rework.isNull() ? tr("What it does again") : tr("Its rework"), {},
            [this, other] { Q_EMIT otherWanted(other); });
    key(u"correct_event"_s, tr("Put right"), tr("supervisor"), &ClosingScreen::correctWanted)->setEnabled(may);
    if (!around().upright)
        keys->setFixedWidth(px(keysWidth));
    content()->addWidget(keys);
    keys->show();
}

} // namespace strandbench
