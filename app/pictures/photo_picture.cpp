// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/photo_picture.h"

#include "pictures/picture_access.h"

#include <QPainter>

namespace strandbench {
namespace {

constexpr double leastSide = 20; // mm

} // namespace

QRectF placeOf(const QSizeF& shape, const QRectF& room)
{
    QRectF place(QPointF(), shape.scaled(room.size(), Qt::KeepAspectRatio));
    place.moveCenter(room.center());
    return place;
}

void paintPhoto(QPainter& painter, const QRectF& room, const QImage& photo)
{
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.drawImage(placeOf(QSizeF(photo.size()), room), photo);
}

PhotoPicture::PhotoPicture(const Theme& theme, const QString& name, QWidget* parent) : QWidget(parent), m_theme(theme)
{
    installPictureAccess();
    setObjectName(name);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void PhotoPicture::setPhoto(const QImage& photo)
{
    m_photo = photo;
    update();
}

QSize PhotoPicture::minimumSizeHint() const { return {m_theme.px(leastSide), m_theme.px(leastSide)}; }

void PhotoPicture::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    const QRectF room(rect());
    if (!m_photo.isNull())
        return paintPhoto(painter, room, m_photo);
    const double line = m_theme.px(0.4);
    painter.setPen(QPen(m_theme.color(Role::MutedInk), line, Qt::DashLine));
    painter.drawRect(placeOf({4, 3}, room).adjusted(line, line, -line, -line));
}

} // namespace strandbench
