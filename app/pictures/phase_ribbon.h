// SPDX-License-Identifier: GPL-3.0-or-later
// The phases of a batch to time scale, with a marker at now. Where an end is not sure, its edge is as soft.
#pragma once

#include "clock/batch_clock.h"
#include "theme/theme.h"

#include <QStringList>
#include <QWidget>

#include <functional>

namespace strandbench {

class PhaseRibbon final : public QWidget {
    Q_OBJECT
public:
    PhaseRibbon(const Theme& theme, const QString& name, QWidget* parent = nullptr);
    /// names: the phases in the person's words, one a span; minute: renders a tick ("4 min").
    void setPhases(const std::vector<PhaseSpan>& spans, const QStringList& names, std::function<QString(int)> minute);
    void setNow(Duration sinceHardener);
    /// Where each phase may end, as painted: from its early end to its late end, in pixels of the widget.
    [[nodiscard]] std::vector<QRectF> softEdges() const;
    [[nodiscard]] bool textFits() const;
    [[nodiscard]] double smallestTextMm() const;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const Theme& m_theme;
    std::vector<PhaseSpan> m_spans;
    QStringList m_names;
    std::function<QString(int)> m_minute;
    Duration m_now;
};

} // namespace strandbench
