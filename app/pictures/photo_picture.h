// SPDX-License-Identifier: GPL-3.0-or-later
// A photo as large as its room; its accessible name is what it shows, set by the screen.
#pragma once

#include "theme/theme.h"

#include <QImage>
#include <QWidget>

namespace strandbench {

/// The largest place of a shape within a room, in its middle.
[[nodiscard]] QRectF placeOf(const QSizeF& shape, const QRectF& room);
/// A photo as large as the room takes it whole, in its middle.
void paintPhoto(QPainter& painter, const QRectF& room, const QImage& photo);

class PhotoPicture final : public QWidget {
    Q_OBJECT
public:
    PhotoPicture(const Theme& theme, const QString& name, QWidget* parent = nullptr);
    void setPhoto(const QImage& photo); ///< null: an empty frame
    [[nodiscard]] const QImage& photo() const { return m_photo; }
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const Theme& m_theme;
    QImage m_photo;
};

} // namespace strandbench
