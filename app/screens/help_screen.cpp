// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/help_screen.h"

#include "screens/legend_screen.h"
#include "screens/page_column.h"
#include "screens/side_key.h"
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

Pictogram signOf(HelpTopic topic)
{
    switch (topic) {
    case HelpTopic::TakeIn:
    case HelpTopic::StockBookIn:
        return Pictogram::TakeIn;
    case HelpTopic::AskMaterial:
    case HelpTopic::AskDamage:
    case HelpTopic::AskSize:
    case HelpTopic::AskSurface:
        return Pictogram::Assess;
    case HelpTopic::AskReading:
        return Pictogram::Thermometer;
    case HelpTopic::Air:
        return Pictogram::DewDrop;
    case HelpTopic::Plan:
        return Pictogram::Decide;
    case HelpTopic::Stop:
    case HelpTopic::Ask:
        return Pictogram::StopHand;
    case HelpTopic::Gear:
        return Pictogram::Gear;
    case HelpTopic::Clean:
        return Pictogram::Cloth;
    case HelpTopic::OpenUp:
        return Pictogram::CutToSound;
    case HelpTopic::Bevel:
        return Pictogram::Bevel;
    case HelpTopic::BackUp:
        return Pictogram::Backing;
    case HelpTopic::Abrade:
        return Pictogram::CoarsePaper;
    case HelpTopic::Mix:
    case HelpTopic::Weigh:
        return Pictogram::Mix;
    case HelpTopic::Spread:
        return Pictogram::Spreader;
    case HelpTopic::Cure:
        return Pictogram::HandsOff;
    case HelpTopic::Sand:
        return Pictogram::SandingBlock;
    case HelpTopic::Turn:
        return Pictogram::Turn;
    case HelpTopic::Contour:
        return Pictogram::GuideCoat;
    case HelpTopic::Inspect:
    case HelpTopic::Review:
        return Pictogram::RakingLight;
    case HelpTopic::HandOver:
        return Pictogram::HandOver;
    case HelpTopic::Closed:
        return Pictogram::Tick;
    case HelpTopic::Parked:
        return Pictogram::Parked;
    case HelpTopic::Returned:
    case HelpTopic::Hazards:
        return Pictogram::Caution;
    case HelpTopic::Find:
        return Pictogram::Magnifier;
    case HelpTopic::SetUp:
    case HelpTopic::Products:
        return Pictogram::SetUp;
    case HelpTopic::Practice:
        return Pictogram::Question;
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
        return Pictogram::None;
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
    const Pictogram own = signOf(topic);
    add(u"help_purpose"_s, text.purpose, column.sign(own == Pictogram::None ? Pictogram::Question : own, text.title));
    add(u"help_how"_s, text.how, new Swatch(theme(), how(), keyMm, column.card));
    add(u"help_wrong"_s, text.wrong, column.sign(Pictogram::Caution, tr("Caution")));
    add(u"help_limit"_s, text.limit, column.sign(Pictogram::Straightedge, tr("Limit")));
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
