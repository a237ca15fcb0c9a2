// SPDX-License-Identifier: GPL-3.0-or-later
#include "touch/keyboard_order.h"

#include <QWidget>

#include <algorithm>
#include <vector>

namespace strandbench {
namespace {

struct Stop {
    QWidget* widget;
    QRect where;
};

/// The visible controls in the order in which Tab reaches them now.
std::vector<Stop> stopsOf(QWidget& root)
{
    std::vector<Stop> stops;
    for (QWidget* next = root.nextInFocusChain(); next != &root; next = next->nextInFocusChain())
        if (root.isAncestorOf(next) && next->isVisibleTo(&root) && (next->focusPolicy() & Qt::TabFocus))
            stops.push_back({next, QRect(next->mapTo(&root, QPoint(0, 0)), next->size())});
    return stops;
}

/// True for what stands left of a control, beside it by half of the lower one's height or more.
bool leftBeside(const QRect& left, const QRect& right)
{
    const int overlap = std::min(left.bottom(), right.bottom()) - std::max(left.top(), right.top()) + 1;
    return left.left() < right.left() && left.right() < right.left() &&
           2 * overlap >= std::min(left.height(), right.height());
}

/// Rows are told by the topmost control that is left and has nothing before it at its left: what begins in its upper
/// half stands beside it. A tall one waits for the last row that it stands beside.
std::vector<Stop> inReadingOrder(std::vector<Stop> stops)
{
    using At = std::vector<Stop>::iterator;
    std::vector<Stop> ordered;
    const auto waits = [](const Stop& each, At from, At to) {
        return std::any_of(from, to, [&each](const Stop& other) { return leftBeside(other.where, each.where); });
    };
    while (!stops.empty()) {
        QRect first; // the leftmost waits for nothing, so there is one
        for (const Stop& each : stops)
            if (!waits(each, stops.begin(), stops.end()) && (first.isNull() || each.where.top() < first.top()))
                first = each.where;
        // A control without height, not laid out yet, is a row of its own: the topmost always leaves.
        const int within = std::max(first.top(), first.center().y());
        const auto below = std::stable_partition(stops.begin(), stops.end(),
                                                 [within](const Stop& each) { return each.where.top() <= within; });
        const auto ready = std::stable_partition(stops.begin(), below,
                                                 [&](const Stop& each) { return !waits(each, below, stops.end()); });
        std::vector<Stop> row(stops.begin(), ready);
        std::stable_sort(row.begin(), row.end(), [](const Stop& a, const Stop& b) {
            return a.where.left() != b.where.left() ? a.where.left() < b.where.left() : a.where.top() < b.where.top();
        });
        ordered.insert(ordered.end(), row.begin(), row.end());
        stops.erase(stops.begin(), ready);
    }
    return ordered;
}

} // namespace

void orderKeyboard(QWidget& root)
{
    const std::vector<Stop> now = stopsOf(root);
    const std::vector<Stop> wanted = inReadingOrder(now);
    const bool ordered = std::equal(now.begin(), now.end(), wanted.begin(),
                                    [](const Stop& a, const Stop& b) { return a.widget == b.widget; });
    if (ordered)
        return;
    // Qt passes over a root without focus: it would find the last control in its place right before the first.
    const Qt::FocusPolicy policy = root.focusPolicy();
    root.setFocusPolicy(Qt::TabFocus);
    QWidget::setTabOrder(&root, wanted.front().widget);
    for (std::size_t i = 1; i < wanted.size(); ++i)
        QWidget::setTabOrder(wanted[i - 1].widget, wanted[i].widget);
    root.setFocusPolicy(policy);
}

} // namespace strandbench
