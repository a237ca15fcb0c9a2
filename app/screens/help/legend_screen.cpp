// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/help/legend_screen.h"

#include "pictures/pictogram.h"
#include "pictures/small_key.h"
#include "screens/frame/pair_pages.h"
#include "theme/sizes.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr QSizeF swatchMm(16, 9);

auto hatched(Material material)
{
    return [material](QPainter& painter, const QRectF& rect, const Theme& theme) {
        QPainterPath area;
        area.addRect(rect.adjusted(1, 1, -1, -1));
        paintPiece(painter, area, material, theme);
        if (material == Material::Galvanised)
            paintZincSkin(painter, area, theme);
    };
}

auto signedBy(Pictogram sign)
{
    return [sign](QPainter& painter, const QRectF& rect, const Theme& theme) {
        paintPictogram(painter, rect, sign, theme, theme.color(Role::Ink));
    };
}

auto keyOf(Role face)
{
    return [face](QPainter& painter, const QRectF& rect, const Theme& theme) {
        paintSmallKey(painter, rect, face, theme);
    };
}

void notLaidYet(QPainter& painter, const QRectF& rect, const Theme& theme)
{
    QPen dashed = outlinePen(theme, 0.25);
    dashed.setDashPattern({5, 4});
    painter.setPen(dashed);
    painter.setBrush(theme.color(Role::Hole));
    painter.drawRect(rect.adjusted(1, 1, -1, -1));
}

} // namespace

std::vector<LegendEntry> legend(const Words& words)
{
    const auto of = [&](Substrate substrate, const QString& told) {
        return LegendEntry{u"legend_"_s + codeOf(substrate), Words::title(words.substrate(substrate)), told,
                           hatched(materialOf(substrate))};
    };
    return {
        of(Substrate::Laminate, LegendScreen::tr("crossed hatch")),
        of(Substrate::Smc, LegendScreen::tr("short flecks")),
        of(Substrate::Steel, LegendScreen::tr("close slanted hatch")),
        of(Substrate::Galvanised, LegendScreen::tr("as steel, with a pale skin")),
        of(Substrate::Aluminium, LegendScreen::tr("pale, rows of dashes")),
        of(Substrate::Carbon, LegendScreen::tr("dark, in squares")),
        of(Substrate::Thermoplastic, LegendScreen::tr("pale, rows of dots")),
        {u"legend_filler"_s, LegendScreen::tr("Fibre filler"), LegendScreen::tr("short strokes"),
         hatched(Material::Filler)},
        {u"legend_filler_later"_s, LegendScreen::tr("The next lift"), LegendScreen::tr("fewer strokes, paler"),
         hatched(Material::FillerLater)},
        {u"legend_not_laid"_s, LegendScreen::tr("Not laid yet"), LegendScreen::tr("dashed outline"), notLaidYet},
        {u"legend_finish"_s, LegendScreen::tr("Finishing filler"), LegendScreen::tr("pale, without hatch"),
         hatched(Material::Finish)},
        {u"legend_hardener"_s, LegendScreen::tr("Hardener"), LegendScreen::tr("the bead on the board"),
         hatched(Material::Hardener)},
        {u"legend_adhesive"_s, LegendScreen::tr("Adhesive"), LegendScreen::tr("upright strokes"),
         hatched(Material::Adhesive)},
        {u"legend_weld"_s, LegendScreen::tr("Weld"), LegendScreen::tr("grey, without hatch"), hatched(Material::Weld)},
        {u"legend_paint"_s, LegendScreen::tr("Paint"), LegendScreen::tr("blue, without hatch"),
         hatched(Material::Paint)},
        {u"legend_tape"_s, LegendScreen::tr("Tape of a dam"), LegendScreen::tr("yellow, without hatch"),
         hatched(Material::Tape)},
        {u"legend_stop"_s, LegendScreen::tr("Octagon: stop"), LegendScreen::tr("Do not go on here."),
         signedBy(Pictogram::StopHand)},
        {u"legend_caution"_s, LegendScreen::tr("Triangle: caution"),
         LegendScreen::tr("It can hurt, or spoil the work."), signedBy(Pictogram::Caution)},
        {u"legend_do"_s, LegendScreen::tr("Blue key: do"), LegendScreen::tr("The way on; it records what was done."),
         keyOf(Role::Action)},
        {u"legend_go"_s, LegendScreen::tr("Green key: go"),
         LegendScreen::tr("The way on where all that is asked is there."), keyOf(Role::Go)},
        {u"legend_tick"_s, LegendScreen::tr("Disc with a tick: done"),
         LegendScreen::tr("It was told and is in the log."), signedBy(Pictogram::Tick)},
    };
}

Swatch::Swatch(const Theme& theme, const LegendEntry& entry, QSizeF sizeMm, QWidget* parent)
    : QWidget(parent), m_theme(theme), m_entry(entry)
{
    setObjectName(entry.name + u"_swatch"_s);
    setAccessibleName(entry.word);
    setFixedSize(theme.px(sizeMm.width()), theme.px(sizeMm.height()));
}

void Swatch::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    m_entry.draw(painter, QRectF(rect()), m_theme);
}

LegendScreen::LegendScreen(const Surroundings& around, QWidget* parent) : Screen(around, u"screen_legend"_s, parent)
{
    buildFrame(tr("A tap on a section leads here"), tr("Hatches and signs"));
    answers()->stop()->hide();
    answers()->setWayOn(tr("Back to the job"));
    connect(answers(), &AnswerBar::wayOnTapped, this, &LegendScreen::jobWanted);
    std::vector<PairOnPage> pairs;
    for (const std::vector<LegendEntry> entries = legend(words()); const LegendEntry& each : entries)
        pairs.push_back({each.name, each.word, each.told, [this, each](QWidget* card) -> QWidget* {
                             return new Swatch(theme(), each, swatchMm, card);
                         }});
    content()->addWidget(pairPages(around, u"legend_card"_s, around.upright ? 5 : 3, pairs, this), 1);
}

} // namespace strandbench
