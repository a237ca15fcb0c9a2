// SPDX-License-Identifier: GPL-3.0-or-later
// Bench set-up: language, units, colours, hand, and the glass.
#pragma once

#include "bench/settings.h"
#include "screens/screen.h"

namespace strandbench {

class SetUpScreen final : public Screen {
    Q_OBJECT
public:
    SetUpScreen(const Surroundings& around, QWidget* parent = nullptr);

Q_SIGNALS:
    void settingsChanged(const strandbench::Settings& settings);
    void calibrateWanted();

private:
    void addRow(QBoxLayout* column, const QString& caption, const std::vector<TapButton*>& keys);
    TapButton* key(const QString& name, const QString& title, bool chosen, const Settings& wanted);
};

/// The card's outline at the size that the glass is believed to have, with keys to make it wider or narrower
/// until a card of ISO/IEC 7810 ID-1 (85.60 x 53.98 mm) held on the glass covers it.
class CalibrateScreen final : public Screen {
    Q_OBJECT
public:
    CalibrateScreen(const Surroundings& around, QWidget* parent = nullptr);
    [[nodiscard]] double pixelsPerMillimetre() const { return m_ppmm; }

Q_SIGNALS:
    void calibrated(double pixelsPerMillimetre);

private:
    void change(double pixels);
    TapButton* key(const QString& name, const QString& title, double pixels);

    double m_ppmm;
    QWidget* m_outline = nullptr;
};

} // namespace strandbench
