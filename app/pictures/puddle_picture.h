// SPDX-License-Identifier: GPL-3.0-or-later
// The puddle and the straight bead at true size; too big for the glass, an edge arc at true size with a
// ruler beside a reduced drawing that says so.
#pragma once

#include "mix/mix.h"
#include "quantity/units.h"
#include "theme/theme.h"

#include <QWidget>

namespace strandbench {

struct PuddleLabels {
    QString trueSize;                      ///< "True size"
    QString notTrueSize;                   ///< "not true size"
    QString bead;                          ///< "33 mm"
    QString puddle;                        ///< "58 mm"
    UnitSystem ruler = UnitSystem::Metric; ///< millimetres, or inches and eighths
};

class PuddlePicture final : public QWidget {
    Q_OBJECT
public:
    PuddlePicture(const Theme& theme, const QString& name, QWidget* parent = nullptr);
    void setMix(const Mix& mix, const PuddleLabels& labels);
    [[nodiscard]] bool drawnTrueSize() const;   ///< the whole puddle fits
    [[nodiscard]] double drawnPuddleMm() const; ///< across, as painted now
    [[nodiscard]] double drawnBeadMm() const;
    [[nodiscard]] bool textFits() const;
    [[nodiscard]] double smallestTextMm() const;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const Theme& m_theme;
    Mix m_mix;
    PuddleLabels m_labels;
};

} // namespace strandbench
