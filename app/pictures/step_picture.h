// SPDX-License-Identifier: GPL-3.0-or-later
// The large picture of a prep, finish or hand-over step: this repair's panel, in its material, with the act
// shown on it, in motion where that explains. Drawn as on a workshop drawing, without words; only a grit's figure
// stands in it. The panel is drawn from this repair's figures, the act is a drawing of resources/drawings/steps.
#pragma once

#include "pictures/loop.h"
#include "pictures/section_picture.h"

namespace strandbench {

/// Draws the picture of a step; `frame` is one of its motion, 1 to framesOfStep(). A code without a picture of its own
/// shows the section and the sign of preparing.
void paintStepPicture(QPainter& painter, const QRectF& rect, const QString& stepCode, const SectionDrawing& drawing,
                      const Theme& theme, int frame = 1);
/// How many frames its motion has; 1 when it stands still.
[[nodiscard]] int framesOfStep(const QString& stepCode, const SectionDrawing& drawing);
/// The codes that have a picture of their own.
[[nodiscard]] QStringList stepsWithPicture();
/// True when a step of the book has a scene, its own or that of a step with the same act.
[[nodiscard]] bool hasStepPicture(const QString& stepCode);

/// The same as a widget; its accessible name is the step's sentence, set by the screen.
class StepPicture final : public QWidget {
    Q_OBJECT
public:
    StepPicture(const Theme& theme, const QString& name, QWidget* parent = nullptr);
    void setStep(const QString& code, const SectionDrawing& drawing);
    [[nodiscard]] const QString& step() const { return m_code; }
    [[nodiscard]] Loop& loop() { return m_loop; }
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const Theme& m_theme;
    QString m_code;
    SectionDrawing m_drawing;
    Loop m_loop;
};

} // namespace strandbench
