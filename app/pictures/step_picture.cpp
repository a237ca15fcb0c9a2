// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/step_picture.h"

#include "pictures/picture_access.h"
#include "pictures/pictogram.h"
#include "pictures/step_scene.h"

using namespace Qt::StringLiterals;

namespace strandbench {

bool hasStepPicture(const QString& stepCode) { return sceneOf(stepCode) != nullptr; }

int framesOfStep(const QString& stepCode, const SectionDrawing& drawing)
{
    const StepScene* scene = sceneOf(stepCode);
    return scene && scene->frames ? scene->frames(drawing) : 1;
}

void paintStepPicture(QPainter& painter, const QRectF& rect, const QString& stepCode, const SectionDrawing& drawing,
                      const Theme& theme, int frame)
{
    if (rect.isEmpty())
        return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const StepStage stage(painter, rect, drawing, theme);
    if (const StepScene* scene = sceneOf(stepCode)) {
        playScene(stage, *scene, frame);
    } else {
        (void)stage.staged({10, 60, 180, 34}, stage.prepared());
        paintPictogram(painter, stage.map(QRectF(80, 8, 40, 40)), Pictogram::Prepare, theme, theme.color(Role::Action));
    }
    painter.restore();
}

QStringList stepsWithPicture()
{
    QStringList codes;
    for (const StepScene& each : stepScenes())
        codes << QLatin1StringView(each.code);
    return codes;
}

StepPicture::StepPicture(const Theme& theme, const QString& name, QWidget* parent)
    : QWidget(parent), m_theme(theme), m_loop(theme, this)
{
    setObjectName(name);
    installPictureAccess();
}

void StepPicture::setStep(const QString& code, const SectionDrawing& drawing)
{
    m_code = code;
    m_drawing = drawing;
    m_loop.setFrames(framesOfStep(code, drawing));
    update();
}

QSize StepPicture::minimumSizeHint() const { return {m_theme.px(60), m_theme.px(30)}; }

void StepPicture::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    paintStepPicture(painter, QRectF(rect()), m_code, m_drawing, m_theme, m_loop.frame());
}

} // namespace strandbench
