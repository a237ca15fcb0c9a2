// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/help/help_screen.h"

#include "pictures/small_key.h"
#include "screens/help/legend_screen.h"
#include "screens/frame/page_column.h"
#include "screens/frame/side_key.h"
#include "theme/sizes.h"

#include <QGridLayout>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr QSizeF keyMm(8, 8);

/// A key in small: what one does, as the legend has it.
LegendEntry how()
{
    return {u"help_how"_s, HelpScreen::tr("How"), {}, [](QPainter& painter, const QRectF& rect, const Theme& theme) {
                const double beside = rect.height() * 0.2;
                paintSmallKey(painter, rect.adjusted(0, beside, 0, -beside), Role::Action, theme);
            }};
}

} // namespace

QString drawingOf(HelpTopic topic)
{
    switch (topic) {
    case HelpTopic::TakeIn:
    case HelpTopic::StockBookIn:
        return u"signs/take_in"_s;
    case HelpTopic::AskMaterial:
    case HelpTopic::AskDamage:
    case HelpTopic::AskSize:
    case HelpTopic::AskSurface:
        return u"signs/assess"_s;
    case HelpTopic::AskReading:
        return u"tools/probe"_s;
    case HelpTopic::Air:
        return u"cautions/fresh_air"_s;
    case HelpTopic::Plan:
        return u"signs/decide"_s;
    case HelpTopic::Stop:
    case HelpTopic::Ask:
        return u"signs/stop_hand"_s;
    case HelpTopic::Gear:
        return u"iso/gloves"_s;
    case HelpTopic::Clean:
        return u"tools/cloth_wet"_s;
    case HelpTopic::OpenUp:
        return u"tools/cutter"_s;
    case HelpTopic::Bevel:
        return u"tools/grinder"_s;
    case HelpTopic::BackUp:
        return u"damages/hole"_s;
    case HelpTopic::Abrade:
        return u"tools/block_80"_s;
    case HelpTopic::Mix:
    case HelpTopic::Weigh:
        return u"signs/mix"_s;
    case HelpTopic::Spread:
        return u"signs/spreader"_s;
    case HelpTopic::Cure:
        return u"signs/hands_off"_s;
    case HelpTopic::Sand:
        return u"signs/sanding_block"_s;
    case HelpTopic::Turn:
        return u"signs/turn"_s;
    case HelpTopic::Contour:
        return u"tools/spray_can"_s;
    case HelpTopic::Inspect:
    case HelpTopic::Review:
        return u"tools/torch"_s;
    case HelpTopic::HandOver:
        return u"signs/hand_over"_s;
    case HelpTopic::Closed:
        return u"signs/tick"_s;
    case HelpTopic::Parked:
        return u"signs/parked"_s;
    case HelpTopic::Returned:
    case HelpTopic::Hazards:
        return u"signs/caution"_s;
    case HelpTopic::Find:
        return u"tools/magnifier"_s;
    case HelpTopic::SetUp:
    case HelpTopic::Products:
        return u"tools/tool_box"_s;
    case HelpTopic::Practice:
    case HelpTopic::Home:
    case HelpTopic::Person:
    case HelpTopic::Lots:
    case HelpTopic::Photos:
    case HelpTopic::Notes:
    case HelpTopic::Today:
    case HelpTopic::Record:
    case HelpTopic::Paper:
    case HelpTopic::Supervisor:
    case HelpTopic::Figures:
    case HelpTopic::Stock:
    case HelpTopic::StockChange:
    case HelpTopic::Keeping:
        return u"signs/question"_s;
    }
    Q_UNREACHABLE();
}

HelpScreen::HelpScreen(const Surroundings& around, const Spec& spec, QWidget* parent)
    : Screen(around, u"screen_help"_s, parent)
{
    buildFrame(spec.context.isEmpty() ? tr("Help") : spec.context, helpText(spec.topic).title);
    content()->addWidget(lines(spec.topic), 1);
    content()->addLayout(keys(spec.offersCard));
    answers()->setWayOn(tr("Back to the job"));
    connect(answers(), &AnswerBar::wayOnTapped, this, &Screen::backTapped);
    answers()->stop()->setVisible(spec.ofARepair);
}

QWidget* HelpScreen::lines(HelpTopic topic)
{
    const HelpText text = helpText(topic);
    const PageColumn column(theme(), u"help_lines"_s, this);
    const TextRole size = around().upright ? TextRole::Title : TextRole::Body; // room and to spare
    const auto add = [&](const QString& name, const QString& said, QWidget* sign) {
        column.lines->addRow({column.text(name, size, said)}, sign, px(2), px(PageColumn::rowGapMm));
    };
    add(u"help_purpose"_s, text.purpose, column.drawing(drawingOf(topic), text.title));
    add(u"help_how"_s, text.how, new Swatch(theme(), how(), keyMm, column.card));
    add(u"help_wrong"_s, text.wrong, column.sign(Pictogram::Caution, tr("Caution")));
    add(u"help_limit"_s, text.limit, column.drawing(u"cautions/sheet_first"_s, tr("Limit")));
    return column.card;
}

QLayout* HelpScreen::keys(bool offersCard)
{
    auto* grid = new QGridLayout;
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(px(sizes::gap));
    const int columns = around().upright ? 3 : 2;
    int place = 0;
    const auto key = [&](const QString& name, const QString& title, const QString& second, HelpPage page) {
        TapButton* made = makeSideKey(
            theme(), {name, title, second, Pictogram::None, [this, page] { Q_EMIT pageWanted(page); }}, this);
        grid->addWidget(made, place / columns, place % columns);
        ++place;
    };
    key(u"help_words"_s, tr("Words"), tr("of the trade"), HelpPage::Words);
    key(u"help_legend"_s, tr("Legend"), tr("hatches and signs"), HelpPage::Legend);
    if (offersCard)
        key(u"help_card"_s, tr("Quick card"), tr("one page, to print"), HelpPage::QuickCard);
    return grid;
}

} // namespace strandbench
