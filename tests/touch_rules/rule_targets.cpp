// SPDX-License-Identifier: GPL-3.0-or-later
#include "touch_rules/rule_parts.h"

#include "theme/sizes.h"

#include <algorithm>
#include <cmath>

namespace strandbench::rules {

using namespace Qt::StringLiterals;

namespace {

constexpr double roundingPx = 0.51; // a length laid out in whole pixels

double gapPx(const QRect& a, const QRect& b)
{
    const int across = std::max({0, b.left() - a.right() - 1, a.left() - b.right() - 1});
    const int down = std::max({0, b.top() - a.bottom() - 1, a.top() - b.bottom() - 1});
    return std::hypot(across, down);
}

bool isAnswer(const QAbstractButton* target) { return target->objectName().startsWith("answer_"_L1); }

void checkSize(const Screen& screen, const QAbstractButton* target, std::vector<Breach>& out)
{
    const double ppmm = screen.theme.metrics().pixelsPerMillimetre();
    const double least = screen.set == RuleSet::Dense ? sizes::denseTarget : sizes::target;
    const int shortSide = std::min(target->width(), target->height());
    if (shortSide + roundingPx < least * ppmm)
        out.push_back(
            {u"target_size"_s, nameOf(target), screen.mm(shortSide), screen.mm(least * ppmm) + u" or more"_s});
    // The answers keep their height in dense sets, too: they are always in the same three places.
    if (isAnswer(target) && target->height() + roundingPx < sizes::answer * ppmm)
        out.push_back({u"answer_height"_s, nameOf(target), screen.mm(target->height()),
                       screen.mm(sizes::answer * ppmm) + u" or more"_s});
    if (screen.seenOf(target) != screen.rectOf(target))
        out.push_back({u"target_inside"_s, nameOf(target), u"cut off"_s, u"whole inside its window and its parents"_s});
}

} // namespace

void checkTargets(const Screen& screen, std::vector<Breach>& out)
{
    const double least = sizes::gap * screen.theme.metrics().pixelsPerMillimetre();
    for (std::size_t i = 0; i < screen.targets.size(); ++i) {
        checkSize(screen, screen.targets[i], out);
        for (std::size_t j = i + 1; j < screen.targets.size(); ++j) {
            const double gap = gapPx(screen.rectOf(screen.targets[i]), screen.rectOf(screen.targets[j]));
            if (gap + roundingPx < least)
                out.push_back({u"target_gap"_s, nameOf(screen.targets[i]) + u" | "_s + nameOf(screen.targets[j]),
                               screen.mm(gap), screen.mm(least) + u" or more"_s});
        }
    }
}

} // namespace strandbench::rules
