// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/set_up/set_up_sheets.h"

#include "theme/sizes.h"
#include "words/sheet_words.h"

#include <QGridLayout>
#include <QPainter>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// How many fit: two rows above the ways on a wide glass, five on an upright one.
std::size_t perPage(const Surroundings& around) { return around.upright ? 5 : 4; }
constexpr TextSize nameSize{5, 3.4};

/// Those in use, then those laid aside.
std::vector<ProductSheet> everySheet(const Bench& bench)
{
    std::vector<ProductSheet> all = bench.planning().catalogue.sheets();
    for (const QString& id : bench.sheets().products())
        if (!bench.sheets().inUse(id))
            all.push_back(bench.sheets().versions(id).front().sheet);
    return all;
}

} // namespace

void paintDemoMark(QPainter& painter, const QRectF& rect, const Theme& theme)
{
    const double side = std::min(rect.width(), rect.height()) * 0.8;
    QRectF box(0, 0, side, side);
    box.moveCenter(rect.center());
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(theme.color(Role::Ink), theme.px(0.6), Qt::DashLine));
    painter.drawRect(box);
    painter.setClipRect(box);
    painter.setPen(QPen(theme.color(Role::Ink), theme.px(0.4)));
    for (double at = -side; at < side; at += side / 4)
        painter.drawLine(QPointF(box.left() + at, box.bottom()), QPointF(box.left() + at + side, box.top()));
    painter.restore();
}

SetUpSheetsScreen::SetUpSheetsScreen(const Surroundings& around, const SetUpPlace& place, QWidget* parent)
    : SetUpScreen(around, u"screen_set_up_sheets"_s, place, parent)
{
    const std::vector<ProductSheet> all = everySheet(around.bench);
    const bool none = around.bench.sheets().products().empty();
    QWidget* holder =
        buildPage({}, none ? tr("Only demo sheets yet: type in your own") : tr("What the fillers of this shop are"),
                  static_cast<int>((all.size() + perPage(around) - 1) / perPage(around)));
    auto* column = new QVBoxLayout(holder);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(px(sizes::gap));
    auto* grid = new QGridLayout;
    grid->setSpacing(px(sizes::gap));
    const std::size_t columns = around.upright ? 1 : 2;
    for (std::size_t i = 0; i < perPage(around); ++i) {
        const std::size_t at = static_cast<std::size_t>(page()) * perPage(around) + i;
        grid->setRowStretch(static_cast<int>(i / columns), 1);
        grid->setColumnStretch(static_cast<int>(i % columns), 1);
        if (at < all.size())
            grid->addWidget(tile(all[at]), static_cast<int>(i / columns), static_cast<int>(i % columns));
    }
    column->addLayout(grid, around.upright ? 6 : 2);
    auto* row = new QHBoxLayout;
    row->setSpacing(px(sizes::gap));
    row->addWidget(way(u"new_sheet"_s, tr("Type in a sheet"), ProductWish::What::New), 1);
    row->addWidget(way(u"sheet_from_file"_s, tr("Read one from a file"), ProductWish::What::FromFile), 1);
    column->addLayout(row);
}

TapButton* SetUpSheetsScreen::tile(const ProductSheet& sheet)
{
    const SheetBook& book = around().bench.sheets();
    const auto versions = static_cast<int>(book.versions(sheet.id).size());
    // A demo sheet has the name of its class.
    QStringList second{sheet.demo ? tr("demo sheet") : Words::title(words().filler(sheet.fillerClass))};
    if (versions > 0)
        second << tr("%n version(s)", nullptr, versions);
    if (versions > 0 && !book.inUse(sheet.id))
        second << tr("laid aside");
    TapButton* made = key(u"sheet_"_s + sheet.id,
                          versions > 0 && !book.inUse(sheet.id) ? TapButton::Kind::Quiet : TapButton::Kind::Plain,
                          sheet.name, second.join(u" · "_s));
    made->setTitleSize(nameSize);
    made->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    if (sheet.demo)
        made->setPicture([this](QPainter& painter, const QRectF& rect) { paintDemoMark(painter, rect, theme()); });
    connect(made, &TapButton::clicked, this, [this, id = sheet.id] {
        Q_EMIT productWanted({ProductWish::What::Page, id});
    });
    return made;
}

TapButton* SetUpSheetsScreen::way(const QString& name, const QString& title, ProductWish::What what)
{
    TapButton* made = key(name, TapButton::Kind::Plain, title);
    made->setTitleSize(nameSize);
    made->setFixedHeight(px(sizes::denseTarget));
    made->setEnabled(!around().bench.looksOnly());
    connect(made, &TapButton::clicked, this, [this, what] { Q_EMIT productWanted({what, {}}); });
    return made;
}

} // namespace strandbench
