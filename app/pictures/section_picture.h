// SPDX-License-Identifier: GPL-3.0-or-later
// The section of a repair drawn to scale, hatched by material; it states its own depth exaggeration.
#pragma once

#include "plan/assumptions.h"
#include "plan/repair_plan.h"
#include "theme/theme.h"

#include <QPainter>
#include <QStringList>
#include <QWidget>

#include <functional>
#include <optional>

namespace strandbench {

/// How far the repair in the picture is.
struct SectionProgress {
    bool prepared = false; ///< bevel cut
    int liftsLaid = 0;
    bool turned = false;   ///< drawn with the back face up
    bool finished = false; ///< finishing filler on
    bool operator==(const SectionProgress&) const = default;
};

/// Everything that the picture shows, in millimetres; made from a plan or from an assessment alone.
struct SectionDrawing {
    Substrate substrate = Substrate::Smc;
    Damage damage;
    int faces = 1;
    Length faceHeight;
    Length openingLength;
    Length openingWidth;
    Length floorLength;
    std::vector<Lift> lifts;
    Length finish;
    Length leftLow;
    Length skimBeyond;
    Length backing;    ///< thickness of a backing bonded behind a hole, 0 without one
    Length backingLap; ///< beyond the hole's edge, all round
    SectionProgress progress;
    bool panelOnly = false; ///< the damage is not known yet
    bool substrateKnown = true;
    bool measured = true; ///< false: drawn at a usual size, so nothing in it may be dimensioned
    /// The opening that the section shows, after the bevel: along a hole or a dent, across a crack, a gouge
    /// or a seam. The dimension's label should state this one.
    [[nodiscard]] Length drawnOpening() const;
    [[nodiscard]] static SectionDrawing of(const Assessment& assessment, const RepairPlan& plan,
                                           const Assumptions& assumptions);
    [[nodiscard]] static SectionDrawing of(const Assessment& assessment);
};

/// The labels of the picture, already in the person's words: per lift, finish, opening, the note on scale.
struct SectionLabels {
    QStringList lifts;
    QString finish;
    QString opening;
    std::function<QString(double)> exaggeration; ///< "3.5 mm panel; depth drawn 5 times as large as width"
};

class SectionPicture final : public QWidget {
    Q_OBJECT
public:
    SectionPicture(const Theme& theme, const QString& name, QWidget* parent = nullptr);
    void setDrawing(const SectionDrawing& drawing, const SectionLabels& labels);
    void setSmall(bool small); ///< on a job card: no labels
    [[nodiscard]] const SectionDrawing& drawing() const { return m_drawing; }
    [[nodiscard]] const SectionLabels& labels() const { return m_labels; }
    [[nodiscard]] double depthExaggeration() const; ///< whole or half, computed from the room there is
    [[nodiscard]] bool textFits() const;
    [[nodiscard]] double smallestTextMm() const;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const Theme& m_theme;
    SectionDrawing m_drawing;
    SectionLabels m_labels;
    bool m_small = false;
};

/// Draws a section without a widget (job cards, answers), without labels. Returns the depth exaggeration used.
double paintSection(QPainter& painter, const QRectF& rect, const SectionDrawing& drawing, const Theme& theme);

/// The drawing of a substrate as in an answer, and of a damage; of a weld seam by its kind of weld where it is known.
void paintSubstrate(QPainter& painter, const QRectF& rect, Substrate substrate, const Theme& theme);
void paintDamage(QPainter& painter, const QRectF& rect, DamageKind damage, std::optional<WeldKind> weld,
                 const Theme& theme);

} // namespace strandbench
