// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/caution_list.h"

#include "pictures/drawing_widget.h"
#include "touch/fit_column.h"

#include <QCoreApplication>
#include <QGridLayout>
#include <QHBoxLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double signMm = 9;
constexpr double signGapMm = 2;
constexpr double rowGapMm = 1;
constexpr double stripGapMm = 3;

QWidget* cautionSign(const CautionText& caution, const Theme& theme, QWidget* parent)
{
    auto* sign = new DrawingWidget(theme, u"cautions/"_s + caution.code,
                                   QCoreApplication::translate("StepScreen", "Caution"), parent);
    sign->setFixedSize(theme.px(signMm), theme.px(signMm));
    return sign;
}

FitLabel* leadOf(const CautionText& caution, std::size_t at, const Theme& theme, QWidget* parent)
{
    auto* lead = new FitLabel(theme, u"caution_%1"_s.arg(at), TextRole::Body, parent);
    lead->setBold(true);
    lead->setText(caution.lead);
    return lead;
}

} // namespace

QWidget* cautionList(const std::vector<CautionText>& cautions, const Theme& theme, QWidget* parent)
{
    auto* widget = new QWidget(parent);
    auto* column = new FitColumn;
    widget->setLayout(column);
    column->setContentsMargins(0, 0, 0, 0);
    for (std::size_t i = 0; i < cautions.size(); ++i) {
        auto* sign = cautionSign(cautions[i], theme, widget);
        auto* why = new FitLabel(theme, u"caution_%1_why"_s.arg(i), TextRole::Small, widget);
        why->setRole(Role::MutedInk);
        why->setText(cautions[i].rest);
        column->addRow({leadOf(cautions[i], i, theme, widget), why}, sign, theme.px(signGapMm), theme.px(rowGapMm));
    }
    return widget;
}

QWidget* cautionStrip(const std::vector<CautionText>& cautions, const Theme& theme, QWidget* parent, int columns)
{
    auto* widget = new QWidget(parent);
    auto* grid = new QGridLayout(widget);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(theme.px(stripGapMm));
    grid->setVerticalSpacing(theme.px(rowGapMm));
    for (std::size_t i = 0; i < cautions.size(); ++i) {
        auto* row = new QHBoxLayout;
        row->setSpacing(theme.px(signGapMm));
        row->addWidget(cautionSign(cautions[i], theme, widget), 0, Qt::AlignVCenter);
        row->addWidget(leadOf(cautions[i], i, theme, widget), 1);
        const int at = static_cast<int>(i);
        grid->addLayout(row, at / columns, at % columns);
        // A longer caution gets more of the strip.
        const int wanted = 10 + static_cast<int>(cautions[i].lead.size());
        grid->setColumnStretch(at % columns, std::max(grid->columnStretch(at % columns), wanted));
    }
    return widget;
}

} // namespace strandbench
