// SPDX-License-Identifier: GPL-3.0-or-later
// All sizes from millimetres, all colours by role, all text sizes by what the text is for. A Theme is an
// immutable value; the window owns one and hands it down. A change of setting makes a new one and the
// screens are built again.
#pragma once

#include <QColor>
#include <QFont>

namespace strandbench {

enum class DayNight { Day, Night };
enum class Hand { Right, Left };

enum class Role {
    Ground,   ///< behind everything
    Card,     ///< panels and buttons
    Ink,      ///< text
    MutedInk, ///< second line, still 7 : 1
    Edge,     ///< outlines of controls, 3 : 1
    SoftEdge, ///< outlines of cards that are not controls
    Action,   ///< the one way on; ISO 3864 blue
    OnAction,
    Go, ///< ISO 3864 green: go ahead
    OnGo,
    Caution, ///< ISO 3864 yellow
    OnCaution,
    Stop, ///< ISO 3864 red
    OnStop,
    RibbonGround, ///< the dark bar at the top
    OnRibbon,
    OnRibbonMuted,
    RibbonBlock, ///< the not yet run part of a block
    Rail,
    Pressed, ///< overlay of a pressed control
    LaminateFill,
    LaminateHatch,
    SmcFill,
    SmcFleck,
    MetalFill,
    MetalHatch,
    ZincFill,
    FillerFill,
    FillerFleck,
    FillerSecond,
    FinishFill,
    HardenerFill,
    Hole,
};

/// What a text is for; each has a preferred and a least em height in millimetres.
enum class TextRole {
    Sentence,  ///< what to do now: 8.4 down to 7
    Figure,    ///< the running figure: 22 down to 18
    BigFigure, ///< a figure that matters: 10 down to 5
    Title,     ///< on buttons: 6 down to 4
    Body,      ///< 4.6 down to 3.4
    Small,     ///< context and second lines: 4.2 down to 3.4
};

struct TextSize {
    double preferredMm;
    double leastMm;
};

/// The pixels of a screen, calibrated against an ISO/IEC 7810 ID-1 card (85.60 x 53.98 mm).
class Metrics {
public:
    explicit Metrics(double pixelsPerMillimetre) : m_ppmm(pixelsPerMillimetre) {}
    [[nodiscard]] double pixelsPerMillimetre() const { return m_ppmm; }
    [[nodiscard]] int px(double millimetres) const { return qRound(millimetres * m_ppmm); }
    [[nodiscard]] double mm(double pixels) const { return pixels / m_ppmm; }

private:
    double m_ppmm;
};

class Theme {
public:
    Theme(Metrics metrics, DayNight dayNight, Hand hand, bool reducedMotion = false);

    [[nodiscard]] const Metrics& metrics() const { return m_metrics; }
    [[nodiscard]] int px(double millimetres) const { return m_metrics.px(millimetres); }
    [[nodiscard]] DayNight dayNight() const { return m_dayNight; }
    [[nodiscard]] Hand hand() const { return m_hand; }
    [[nodiscard]] bool reducedMotion() const { return m_reducedMotion; }
    [[nodiscard]] QColor color(Role role) const;
    [[nodiscard]] static TextSize size(TextRole role);
    /// B612 (falling back to the platform's sans) with tabular figures, at an em height in millimetres.
    [[nodiscard]] QFont font(double emMillimetres, bool bold = false) const;

private:
    Metrics m_metrics;
    DayNight m_dayNight;
    Hand m_hand;
    bool m_reducedMotion;
};

} // namespace strandbench
