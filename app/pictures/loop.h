// SPDX-License-Identifier: GPL-3.0-or-later
// The beat of a picture that shows a motion: frame after frame, round and round, and only while somebody can see it.
#pragma once

#include <QObject>
#include <QTimer>

class QWidget;

namespace strandbench {

class Theme;

/// Stands still when it has one frame, when it is told to, while its picture is hidden, and always under reduced
/// motion: then the first frame is shown, which tells the act by itself.
class Loop final : public QObject {
    Q_OBJECT
public:
    static constexpr int beatMs = 500;

    Loop(const Theme& theme, QWidget* picture);

    void setFrames(int frames); ///< 1 or more; starts over
    void setStill(bool still);
    [[nodiscard]] int frame() const { return m_frame; } ///< 1 to the number of frames
    [[nodiscard]] bool isRunning() const { return m_beat.isActive(); }
    void next(); ///< the frame after this one is shown

protected:
    bool eventFilter(QObject* object, QEvent* event) override;

private:
    void arrange(bool shown);

    QWidget* m_picture;
    QTimer m_beat;
    int m_frames = 1;
    int m_frame = 1;
    bool m_still;
    bool m_reducedMotion;
};

} // namespace strandbench
