// SPDX-License-Identifier: GPL-3.0-or-later
#include "touching.h"

#include <QPixmap>
#include <QTest>

namespace strandbench::touching {

using namespace Qt::StringLiterals;

QPointingDevice* panel()
{
    static QPointingDevice* const device = QTest::createTouchDevice();
    return device;
}

void press(QWidget* widget, QPoint at)
{
    QTest::touchEvent(widget->window(), panel()).press(0, widget->mapTo(widget->window(), at));
}

void release(QWidget* widget, QPoint at)
{
    QTest::touchEvent(widget->window(), panel()).release(0, widget->mapTo(widget->window(), at));
}

void tap(QWidget* widget, QPoint at)
{
    press(widget, at);
    release(widget, at);
}

bool show(QWidget& window, QSize pixels)
{
    window.setFixedSize(pixels);
    window.show();
    return QTest::qWaitForWindowExposed(&window);
}

Theme bench(DayNight dayNight, Hand hand, bool reducedMotion)
{
    return Theme(Metrics(1280.0 / 217), dayNight, hand, reducedMotion);
}

void keepLook(QWidget& widget, const QString& name)
{
    const QString folder = qEnvironmentVariable("STRANDBENCH_LOOK");
    if (!folder.isEmpty())
        widget.grab().save(folder + u'/' + name + u".png"_s);
}

} // namespace strandbench::touching
