// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/frame/page_column.h"

#include "pictures/drawing_widget.h"
#include "screens/frame/sign_widget.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double signMm = 8;

} // namespace

FitLabel* textIn(const Theme& theme, const QString& name, TextRole role, const QString& text, QWidget* parent)
{
    auto* made = new FitLabel(theme, name, role, parent);
    made->setText(text);
    return made;
}

QBoxLayout* columnsIn(QWidget* page, const Surroundings& around)
{
    auto* row = new QBoxLayout(around.upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight, page);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(around.theme.px(2));
    return row;
}

PageColumn::PageColumn(const Theme& of, const QString& name, QWidget* parent)
    : theme(of), card(new Card(of, parent)), lines(new FitColumn)
{
    card->setObjectName(name);
    card->setLayout(lines);
    lines->setContentsMargins(theme.px(3), theme.px(1), theme.px(3), theme.px(1));
}

FitLabel* PageColumn::text(const QString& name, TextRole role, const QString& said, bool bold) const
{
    FitLabel* made = textIn(theme, name, role, said, card);
    made->setBold(bold);
    return made;
}

FitLabel* PageColumn::add(const QString& name, TextRole role, const QString& said, bool bold) const
{
    FitLabel* made = text(name, role, said, bold);
    lines->addRow({made}, nullptr, 0, theme.px(rowGapMm));
    return made;
}

void PageColumn::addPair(const QString& name, const QString& lead, const QString& rest, QWidget* sign) const
{
    FitLabel* small = text(name + u"_why"_s, TextRole::Small, rest);
    small->setRole(Role::MutedInk);
    lines->addRow({text(name, TextRole::Body, lead, true), small}, sign, theme.px(2), theme.px(rowGapMm));
}

QWidget* PageColumn::drawing(const QString& name, const QString& spoken) const
{
    auto* made = new DrawingWidget(theme, name, spoken, card);
    made->setFixedSize(theme.px(signMm), theme.px(signMm));
    return made;
}

QWidget* PageColumn::cautionSign(const QString& code, const QString& spoken) const
{
    return drawing(u"cautions/"_s + code, spoken);
}

QWidget* PageColumn::sign(Pictogram of, const QString& spoken) const
{
    auto* made = new SignWidget(theme, of, spoken, card);
    made->setFixedSize(theme.px(signMm), theme.px(signMm));
    return made;
}

} // namespace strandbench
