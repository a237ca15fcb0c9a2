// SPDX-License-Identifier: GPL-3.0-or-later
#include "pixels.h"

#include <QPainter>

namespace strandbench::pixels {
namespace {

int span(int count, const std::function<bool(int)>& hit)
{
    int first = -1;
    int last = -1;
    for (int i = 0; i < count; ++i) {
        if (!hit(i))
            continue;
        first = first < 0 ? i : first;
        last = i;
    }
    return first < 0 ? 0 : last - first + 1;
}

} // namespace

QImage grab(QWidget& widget, const Theme& theme, Role ground)
{
    QImage image(widget.size(), QImage::Format_RGB32);
    image.fill(theme.color(ground));
    widget.render(&image, QPoint(), QRegion(), QWidget::DrawChildren);
    return image;
}

QImage paint(QSize size, const Theme& theme, const std::function<void(QPainter&)>& draw)
{
    QImage image(size, QImage::Format_RGB32);
    image.fill(theme.color(Role::Card));
    QPainter painter(&image);
    draw(painter);
    return image;
}

bool near(QRgb pixel, const QColor& color, int off)
{
    return std::abs(qRed(pixel) - color.red()) <= off && std::abs(qGreen(pixel) - color.green()) <= off &&
           std::abs(qBlue(pixel) - color.blue()) <= off;
}

int spanInRow(const QImage& image, int y, const QColor& color)
{
    return span(image.width(), [&](int x) { return near(image.pixel(x, y), color); });
}

int spanInColumn(const QImage& image, int x, const QColor& color)
{
    return span(image.height(), [&](int y) { return near(image.pixel(x, y), color); });
}

int spanOfOthersInRow(const QImage& image, int y, const QColor& ground)
{
    return span(image.width(), [&](int x) { return !near(image.pixel(x, y), ground, 60); });
}

int spanOfOthersInColumn(const QImage& image, int x, const QColor& ground)
{
    return span(image.height(), [&](int y) { return !near(image.pixel(x, y), ground, 60); });
}

std::vector<double> linesDown(const QImage& image, int x, const QColor& color)
{
    std::vector<double> middles;
    int start = -1;
    for (int y = 0; y <= image.height(); ++y) {
        const bool hit = y < image.height() && near(image.pixel(x, y), color, 45);
        if (hit && start < 0)
            start = y;
        if (!hit && start >= 0) {
            middles.push_back((start + y) / 2.0);
            start = -1;
        }
    }
    return middles;
}

double difference(const QImage& one, const QImage& other)
{
    int differing = 0;
    for (int y = 0; y < one.height(); ++y)
        for (int x = 0; x < one.width(); ++x)
            differing += near(one.pixel(x, y), QColor(other.pixel(x, y)), 40) ? 0 : 1;
    return static_cast<double>(differing) / (one.width() * one.height());
}

} // namespace strandbench::pixels
