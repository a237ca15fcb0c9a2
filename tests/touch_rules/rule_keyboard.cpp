// SPDX-License-Identifier: GPL-3.0-or-later
#include "touch_rules/rule_parts.h"

#include <QButtonGroup>
#include <QCoreApplication>
#include <QKeyEvent>

#include <algorithm>

namespace strandbench::rules {

using namespace Qt::StringLiterals;

namespace {

void forgetFocus(QWidget* root)
{
    if (QWidget* focused = root->focusWidget())
        focused->clearFocus();
}

// As Tab goes: pressed from nothing in focus until it comes round.
std::vector<const QWidget*> tabOrder(const Screen& screen)
{
    QWidget* const before = screen.root->focusWidget();
    forgetFocus(screen.root);
    std::vector<const QWidget*> order;
    for (;;) {
        QWidget* const from = screen.root->focusWidget() ? screen.root->focusWidget() : screen.root;
        QKeyEvent tab(QEvent::KeyPress, Qt::Key_Tab, Qt::NoModifier);
        QCoreApplication::sendEvent(from, &tab);
        const QWidget* const reached = screen.root->focusWidget();
        if (!reached || std::find(order.begin(), order.end(), reached) != order.end())
            break;
        order.push_back(reached);
    }
    forgetFocus(screen.root);
    if (before)
        before->setFocus();
    return order;
}

// One of several that exclude each other: Tab stops at one of them, the arrow keys go to the rest.
bool reachedByArrows(const QAbstractButton* target, const std::vector<const QWidget*>& order)
{
    if (!target->group() || !target->group()->exclusive())
        return false;
    const QList<QAbstractButton*> together = target->group()->buttons();
    return std::any_of(together.begin(), together.end(), [&order](const QAbstractButton* other) {
        return std::find(order.begin(), order.end(), other) != order.end();
    });
}

// Rows count as one when they overlap by half of the lower one's height.
bool clearlyBefore(const QRect& a, const QRect& b)
{
    const int overlap = std::min(a.bottom(), b.bottom()) - std::max(a.top(), b.top()) + 1;
    if (2 * overlap >= std::min(a.height(), b.height()))
        return a.right() < b.left();
    return a.center().y() < b.center().y() && overlap <= 0;
}

} // namespace

void checkKeyboard(const Screen& screen, std::vector<Breach>& out)
{
    const std::vector<const QWidget*> order = tabOrder(screen);
    for (const QAbstractButton* target : screen.targets) {
        const bool reached = std::find(order.begin(), order.end(), target) != order.end();
        if (target->isEnabled() && !reached && !reachedByArrows(target, order))
            out.push_back(
                {u"keyboard_reach"_s, nameOf(target), u"not reached by Tab"_s, u"every control that is enabled"_s});
    }
    for (std::size_t i = 1; i < order.size(); ++i) {
        if (clearlyBefore(screen.rectOf(order[i]), screen.rectOf(order[i - 1])))
            out.push_back({u"keyboard_order"_s, nameOf(order[i]), u"reached after "_s + nameOf(order[i - 1]),
                           u"top to bottom, left to right"_s});
    }
}

} // namespace strandbench::rules
