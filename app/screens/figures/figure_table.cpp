// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/figures/figure_table.h"

#include "screens/frame/page_column.h"
#include "screens/frame/sign_widget.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double rowWide = 17; // mm: a bold line and two small ones
constexpr double rowUpright = 20;

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(FigureTable)
};

} // namespace

double figureRowHeight(const Surroundings& around) { return around.upright ? rowUpright : rowWide; }

PagedRows::MakeRow figureRow(const Surroundings& around, const FigureRow& row, std::size_t number)
{
    return [&theme = around.theme, row, name = u"figure_row_%1"_s.arg(number)](QWidget* parent) -> QWidget* {
        auto* made = new Card(theme, parent);
        made->setObjectName(name + u"_card"_s);
        auto* lines = new FitColumn;
        made->setLayout(lines);
        lines->setContentsMargins(theme.px(2), theme.px(0.5), theme.px(2), theme.px(0.5));
        FitLabel* lead = textIn(theme, name, TextRole::Body, row.lead, made);
        lead->setBold(true);
        FitLabel* rest = textIn(theme, name + u"_rest"_s, TextRole::Small, row.rest, made);
        QWidget* sign = nullptr;
        if (row.marked) {
            sign = new SignWidget(theme, Pictogram::Caution, Says::tr("Marked in the chart"), made);
            sign->setObjectName(name + u"_marked"_s);
            sign->setFixedSize(theme.px(9), theme.px(9));
        }
        lines->addRow({lead, rest}, sign, theme.px(2));
        return made;
    };
}

} // namespace strandbench
