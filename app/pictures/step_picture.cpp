// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/step_picture.h"

#include "pictures/picture_access.h"
#include "pictures/step_stage.h"

namespace strandbench {

void paintStepPicture(QPainter& painter, const QRectF& rect, const QString& stepCode, const SectionDrawing& drawing,
                      const Theme& theme)
{
    if (rect.isEmpty())
        return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const StepStage stage(painter, rect, drawing, theme);
    Scene scene = nullptr;
    for (const auto find : {cleaningScene, shapingScene, finishingScene, testingScene})
        if (!scene)
            scene = find(stepCode);
    if (scene) {
        scene(stage);
    } else {
        stage.section({10, 60, 180, 34}, stage.prepared());
        stage.disc(signOfStep(stepCode), {76, 4, 48, 48});
    }
    painter.restore();
}

QStringList stepsWithPicture()
{
    return cleaningCodes() + shapingCodes() + finishingCodes() + testingCodes();
}

StepPicture::StepPicture(const Theme& theme, const QString& name, QWidget* parent) : QWidget(parent), m_theme(theme)
{
    setObjectName(name);
    installPictureAccess();
}

void StepPicture::setStep(const QString& code, const SectionDrawing& drawing)
{
    m_code = code;
    m_drawing = drawing;
    update();
}

QSize StepPicture::minimumSizeHint() const
{
    return {m_theme.px(60), m_theme.px(30)};
}

void StepPicture::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    paintStepPicture(painter, QRectF(rect()), m_code, m_drawing, m_theme);
}

} // namespace strandbench
