// SPDX-License-Identifier: GPL-3.0-or-later
// Where the act of a step is shown: a stage of 200 by 100 units, fitted into the picture, with this repair's panel from
// above or in section, and upon it the drawing of the act. Lines of the panel keep their width in millimetres.
#pragma once

#include "pictures/hatch.h"
#include "pictures/section_picture.h"

#include <QTransform>

namespace strandbench {

/// Where a section stands on the stage.
struct StagedSection {
    double surface = 0; ///< y of the face that is up
    QTransform toStage; ///< from the section's millimetres
};

class StepStage {
public:
    StepStage(QPainter& painter, const QRectF& rect, const SectionDrawing& drawing, const Theme& theme);

    [[nodiscard]] const SectionDrawing& drawing() const { return m_drawing; }
    [[nodiscard]] Material material() const;
    [[nodiscard]] QPointF map(QPointF at) const { return m_toPixels.map(at); }
    [[nodiscard]] QRectF map(const QRectF& box) const { return m_toPixels.mapRect(box); }

    // Lines and shapes, in the stage's units.
    void piece(const QPainterPath& shape, Material material, double widthMm = 0.35) const;
    void piece(const QRectF& box, Material material, double radius = 0) const;
    void fill(const QPainterPath& shape, Role role, double opacity = 1) const;
    void outline(const QPainterPath& shape, Role role, double widthMm, bool dashed = false) const;
    void line(QPointF from, QPointF to, Role role, double widthMm, bool dashed = false) const;
    void bothWays(QPointF from, QPointF to, Role role = Role::Action) const; ///< a measure: arrows at both ends
    void dots(const std::vector<QPointF>& at, double radius, Role role) const;
    /// Dots strewn over a box by a fixed rule.
    [[nodiscard]] static std::vector<QPointF> strewn(const QRectF& over, int count);
    void drops(const std::vector<QPointF>& tips, double height) const;
    /// The drawing of an act ("steps/bevel"), which is drawn for this stage, moved by so much.
    void act(const QString& step, QPointF by = {}) const;

    // The panel.
    /// From above, whole stage; painted: still in its paint.
    void panelFromAbove(bool painted = false) const;
    /// The damage from above by its kind; returns its outline (an open line for a crack).
    [[nodiscard]] QPainterPath damageFromAbove() const;
    void drawDamage() const;
    /// This repair's section in a box; progress as told.
    StagedSection staged(const QRectF& box, const SectionProgress& progress) const;
    /// Everything laid and finished, or only prepared.
    [[nodiscard]] SectionProgress prepared() const;
    [[nodiscard]] SectionProgress finished() const;
    [[nodiscard]] SectionProgress asFound() const { return {}; }

private:
    void arrow(QPointF from, QPointF to, Role role, double widthMm) const;

    QPainter& m_painter;
    const SectionDrawing& m_drawing;
    const Theme& m_theme;
    QTransform m_toPixels;
};

} // namespace strandbench
