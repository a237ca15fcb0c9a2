// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/section_picture.h"

#include "pictures/picture_access.h"
#include "pictures/section_layout.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// A usual size of each kind, for a picture before anything has been measured. Drawn without a figure.
Damage usual(DamageKind kind)
{
    Damage damage;
    damage.kind = kind;
    damage.length = millimetres(40);
    damage.width = millimetres(30);
    damage.panelThickness = millimetres(4);
    damage.depth = millimetres(kind == DamageKind::Hole || kind == DamageKind::RustHole ? 4 : 2.5);
    damage.bevelRatio = 3;
    if (kind == DamageKind::Crack)
        damage.width = Length();
    return damage;
}

void measure(SectionDrawing& drawing, const Assessment& assessment)
{
    // A rusted hole is never filled, so geometry has no cavity for it; its outline is a hole's.
    Damage outline = drawing.damage;
    if (outline.kind == DamageKind::RustHole)
        outline.kind = DamageKind::Hole;
    const Cavity cavity(outline, assessment.rearAccess.value_or(false));
    drawing.faces = cavity.faces();
    drawing.faceHeight = cavity.height();
    drawing.openingLength = cavity.openingLength();
    drawing.openingWidth = cavity.openingWidth();
    drawing.floorLength = cavity.floorWidth();
}

} // namespace

Length SectionDrawing::drawnOpening() const
{
    switch (damage.kind) {
    case DamageKind::Hole:
    case DamageKind::RustHole:
    case DamageKind::Dent:
        return openingLength;
    case DamageKind::Gouge:
    case DamageKind::Crack:
    case DamageKind::WeldSeam:
    case DamageKind::BondSeam:
        return openingWidth;
    }
    Q_UNREACHABLE();
}

SectionDrawing SectionDrawing::of(const Assessment& assessment)
{
    SectionDrawing drawing;
    drawing.substrateKnown = assessment.substrate.has_value();
    drawing.substrate = assessment.substrate.value_or(Substrate::Unknown);
    drawing.panelOnly = !assessment.damage.has_value();
    drawing.damage = assessment.damage.value_or(usual(DamageKind::Hole));
    drawing.measured = !drawing.panelOnly && drawing.damage.measured();
    if (!drawing.measured) {
        const std::optional<WeldKind> weld = drawing.damage.weld;
        drawing.damage = usual(drawing.damage.kind);
        drawing.damage.weld = weld;
    }
    measure(drawing, assessment);
    return drawing;
}

SectionDrawing SectionDrawing::of(const Assessment& assessment, const RepairPlan& plan, const Assumptions& assumptions)
{
    SectionDrawing drawing = of(assessment);
    drawing.lifts = plan.lifts;
    drawing.finish = plan.finish.thickness;
    // A shallow damage is left less low than usual: as much as its finish is thick.
    drawing.leftLow = plan.lifts.empty() ? Length() : std::min(assumptions.leftLow, plan.finish.thickness);
    drawing.skimBeyond = assumptions.skimBeyond;
    const bool backed = std::any_of(plan.prep.begin(), plan.prep.end(),
                                    [](const Step& step) { return step.code.startsWith(u"backing_"_s); });
    if (backed && drawing.faces == 1) { // a face that is filled from behind shows no backing
        drawing.backing = assumptions.backing;
        drawing.backingLap = assumptions.backingLap;
    }
    return drawing;
}

SectionPicture::SectionPicture(const Theme& theme, const QString& name, QWidget* parent)
    : QWidget(parent), m_theme(theme)
{
    setObjectName(name);
    installPictureAccess();
}

void SectionPicture::setDrawing(const SectionDrawing& drawing, const SectionLabels& labels)
{
    m_drawing = drawing;
    m_labels = labels;
    updateGeometry();
    update();
}

void SectionPicture::setSmall(bool small)
{
    m_small = small;
    updateGeometry();
    update();
}

double SectionPicture::depthExaggeration() const
{
    return m_small ? layOutSection(rect(), m_drawing, m_theme).exaggeration
                   : layOutSection(rect(), m_drawing, m_labels, m_theme).exaggeration;
}

bool SectionPicture::textFits() const
{
    return m_small || layOutSection(rect(), m_drawing, m_labels, m_theme).report().fits;
}

double SectionPicture::smallestTextMm() const
{
    return m_small ? 0 : layOutSection(rect(), m_drawing, m_labels, m_theme).report().smallestMm;
}

QSize SectionPicture::minimumSizeHint() const
{
    return m_small ? QSize(m_theme.px(20), m_theme.px(8)) : QSize(m_theme.px(70), m_theme.px(36));
}

void SectionPicture::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    if (m_small)
        paintSection(painter, rect(), m_drawing, m_theme);
    else
        paintLayout(painter, layOutSection(rect(), m_drawing, m_labels, m_theme), m_drawing, m_theme);
}

} // namespace strandbench
