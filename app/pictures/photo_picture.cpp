// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/photo_picture.h"

#include "pictures/picture_access.h"

#include <QPainter>

namespace strandbench {
namespace {

constexpr double leastSide = 20; // mm

} // namespace

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
    const QSizeF shape = m_photo.isNull() ? QSizeF(4, 3) : QSizeF(m_photo.size());
    QRectF where(QPointF(), shape.scaled(size(), Qt::KeepAspectRatio));
    where.moveCenter(QRectF(rect()).center());
    if (m_photo.isNull()) {
        const double line = m_theme.px(0.4);
        painter.setPen(QPen(m_theme.color(Role::MutedInk), line, Qt::DashLine));
        painter.drawRect(where.adjusted(line, line, -line, -line));
        return;
    }
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.drawImage(where, m_photo);
}

} // namespace strandbench
