// SPDX-License-Identifier: GPL-3.0-or-later
#include "touch_rules/rule_parts.h"

#include "touch/shown_text.h"
#include "touch_rules/contrast.h"

#include <QHash>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QPixmap>

#include <algorithm>
#include <array>

namespace strandbench::rules {

using namespace Qt::StringLiterals;

namespace {

constexpr double leastText = 7.0;
constexpr double leastEdge = 3.0;
constexpr double outsideMm = 1.0; // how far beside a control its surroundings are looked at
constexpr double edgeDepthMm = 2.0;
constexpr int inkPixels = 4; // of one colour: a stroke's core, not a chance mixture at its rim

// The commonest colour is the background; the ink is the colour farthest from it that strokes really have.
double textContrast(const QImage& image, const QRect& where)
{
    QHash<QRgb, int> count;
    for (int y = where.top(); y <= where.bottom(); ++y)
        for (int x = where.left(); x <= where.right(); ++x)
            ++count[image.pixel(x, y)];
    QRgb ground = 0;
    int most = 0;
    for (auto it = count.cbegin(); it != count.cend(); ++it) {
        if (it.value() > most) {
            most = it.value();
            ground = it.key();
        }
    }
    double best = 1;
    for (auto it = count.cbegin(); it != count.cend(); ++it)
        if (it.value() >= inkPixels)
            best = std::max(best, contrastRatio(QColor(it.key()), QColor(ground)));
    return best;
}

// From a point inside the control's side outwards: the best contrast of the rim against what lies beside it.
double rimContrast(const QImage& image, QPoint start, QPoint step, const Screen& screen)
{
    const QPoint beside = start - step * std::max(1, screen.theme.px(outsideMm));
    if (!image.rect().contains(beside))
        return -1; // at the glass's edge there is nothing beside it
    const QColor outside(image.pixel(beside));
    double best = 1;
    const int depth = std::max(1, screen.theme.px(edgeDepthMm));
    for (int i = 0; i < depth; ++i) {
        const QPoint at = start + step * i;
        if (image.rect().contains(at))
            best = std::max(best, contrastRatio(QColor(image.pixel(at)), outside));
    }
    return best;
}

// Each side is looked at in many places, since a broken outline has gaps; its best place counts.
double edgeContrast(const QImage& image, const QRect& rect, const Screen& screen)
{
    constexpr std::array<double, 9> places{0.3, 0.35, 0.4, 0.45, 0.5, 0.55, 0.6, 0.65, 0.7};
    double left = -1;
    double right = -1;
    double top = -1;
    double bottom = -1;
    for (const double place : places) {
        const int x = rect.left() + static_cast<int>(rect.width() * place);
        const int y = rect.top() + static_cast<int>(rect.height() * place);
        left = std::max(left, rimContrast(image, {rect.left(), y}, {1, 0}, screen));
        right = std::max(right, rimContrast(image, {rect.right(), y}, {-1, 0}, screen));
        top = std::max(top, rimContrast(image, {x, rect.top()}, {0, 1}, screen));
        bottom = std::max(bottom, rimContrast(image, {x, rect.bottom()}, {0, -1}, screen));
    }
    double least = 21;
    for (const double side : {left, right, top, bottom})
        if (side > 0)
            least = std::min(least, side);
    return least;
}

/// A label or field of the library itself does not tell where its text stands: all of it is looked at.
void checkPlainText(const Screen& screen, const QImage& image, const QWidget* widget, std::vector<Breach>& out)
{
    const auto* label = qobject_cast<const QLabel*>(widget);
    const auto* line = qobject_cast<const QLineEdit*>(widget);
    const QString text = label ? label->text() : (line ? line->text() : QString());
    const QRect where = screen.seenOf(widget);
    if (text.trimmed().isEmpty() || where.isEmpty())
        return;
    const double found = textContrast(image, where);
    if (found < leastText)
        out.push_back({u"text_contrast"_s, nameOf(widget), ratio(found), ratio(leastText) + u" or more"_s});
}

void checkTextsOf(const Screen& screen, const QImage& image, const QWidget* widget, std::vector<Breach>& out)
{
    const auto* shows = dynamic_cast<const ShowsText*>(widget);
    if (!shows)
        return checkPlainText(screen, image, widget, out);
    const QPoint corner = screen.rectOf(widget).topLeft();
    for (const ShownText& text : shows->shownTexts()) {
        const QRect where = text.where.toAlignedRect().translated(corner) & screen.seenOf(widget);
        if (where.isEmpty() || text.text.trimmed().isEmpty())
            continue;
        const double found = textContrast(image, where);
        if (found < leastText)
            out.push_back({u"text_contrast"_s, nameOf(widget), ratio(found), ratio(leastText) + u" or more"_s});
    }
}

} // namespace

void checkContrast(const Screen& screen, std::vector<Breach>& out)
{
    // The whole window, because a transparent widget alone would be drawn without what lies behind it.
    const QImage image = screen.root->grab().toImage().convertToFormat(QImage::Format_RGB32);
    for (const QWidget* widget : screen.widgets)
        checkTextsOf(screen, image, widget, out);
    for (const QAbstractButton* target : screen.targets) {
        const double found = edgeContrast(image, screen.rectOf(target), screen);
        if (found < leastEdge)
            out.push_back({u"edge_contrast"_s, nameOf(target), ratio(found), ratio(leastEdge) + u" or more"_s});
    }
}

} // namespace strandbench::rules
