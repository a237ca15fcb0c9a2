// SPDX-License-Identifier: GPL-3.0-or-later
// Text for pictures: whatever paints something that is neither a key nor a text says in words what it shows.
#include "touch_rules/rule_parts.h"

#include "touch/shown_text.h"

#include <QAccessible>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>

#include <algorithm>

namespace strandbench::rules {

using namespace Qt::StringLiterals;

namespace {

bool isOther(const QWidget* widget)
{
    return qobject_cast<const QAbstractButton*>(widget) || dynamic_cast<const ShowsText*>(widget) ||
           qobject_cast<const QLineEdit*>(widget);
}

bool hasChildren(const QWidget* widget)
{
    return !widget->findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly).isEmpty();
}

/// More than one colour by itself: a picture, and not a card or a ground.
bool paintsPicture(QWidget* widget)
{
    if (const auto* label = qobject_cast<const QLabel*>(widget))
        return !label->pixmap(Qt::ReturnByValue).isNull();
    QImage image(widget->size(), QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    widget->render(&painter, {}, {}, QWidget::RenderFlags());
    painter.end();
    const QRgb first = image.pixel(0, 0);
    for (int y = 0; y < image.height(); ++y) {
        const auto* row = reinterpret_cast<const QRgb*>(image.constScanLine(y));
        if (std::any_of(row, row + image.width(), [first](QRgb each) { return each != first; }))
            return true;
    }
    return false;
}

bool pictureRole(QAccessible::Role role)
{
    return role == QAccessible::Graphic || role == QAccessible::Chart || role == QAccessible::Canvas ||
           role == QAccessible::Indicator || role == QAccessible::ProgressBar;
}

void checkPicture(QWidget* widget, std::vector<Breach>& out)
{
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(widget);
    if (!spoken || spoken->text(QAccessible::Name).trimmed().isEmpty())
        out.push_back({u"picture_text"_s, nameOf(widget), u"a picture without words"_s, u"what it shows, in words"_s});
    if (spoken && !pictureRole(spoken->role()))
        out.push_back({u"picture_role"_s, nameOf(widget), u"does not say that it is a picture"_s,
                       u"the role of a picture or a chart"_s});
}

} // namespace

void checkPictures(const Screen& screen, std::vector<Breach>& out)
{
    for (QWidget* widget : screen.widgets) {
        if (widget->inherits("QGraphicsView")) { // paints in a child of its own
            checkPicture(widget, out);
            continue;
        }
        const QWidget* parent = widget->parentWidget();
        const bool inside = parent && parent->inherits("QAbstractScrollArea");
        if (isOther(widget) || inside || hasChildren(widget) || widget->size().isEmpty())
            continue;
        if (paintsPicture(widget))
            checkPicture(widget, out);
    }
}

} // namespace strandbench::rules
