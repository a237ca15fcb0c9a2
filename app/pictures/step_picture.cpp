// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/step_picture.h"

#include "pictures/picture_access.h"
#include "pictures/step_stage.h"

#include <map>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// Steps whose act is the same on another material or at another moment show the same scene.
const QString& sceneCode(const QString& step)
{
    static const std::map<QString, QString> same{{u"flash_off_metal"_s, u"flash_off"_s},
                                                 {u"read_panel_metal"_s, u"read_panel"_s},
                                                 {u"abrade_80_metal"_s, u"abrade_80"_s}};
    const auto found = same.find(step);
    return found == same.end() ? step : found->second;
}

} // namespace

bool hasStepPicture(const QString& stepCode) { return stepsWithPicture().contains(sceneCode(stepCode)); }

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
            scene = find(sceneCode(stepCode));
    if (scene) {
        scene(stage);
    } else {
        stage.section({10, 60, 180, 34}, stage.prepared());
        stage.disc(signOfStep(stepCode), {76, 4, 48, 48});
    }
    painter.restore();
}

QStringList stepsWithPicture() { return cleaningCodes() + shapingCodes() + finishingCodes() + testingCodes(); }

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

QSize StepPicture::minimumSizeHint() const { return {m_theme.px(60), m_theme.px(30)}; }

void StepPicture::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    paintStepPicture(painter, QRectF(rect()), m_code, m_drawing, m_theme);
}

} // namespace strandbench
