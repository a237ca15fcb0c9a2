// SPDX-License-Identifier: GPL-3.0-or-later
// What a person sees when the log cannot be opened: what is wrong, what to do, and a way out. Nothing is
// written.
#pragma once

#include "bench/settings.h"
#include "repairlog/repair_log.h"

#include <QWidget>

#include <memory>

namespace strandbench {

class TapButton;

class TroubleWindow final : public QWidget {
    Q_OBJECT
public:
    TroubleWindow(const LogFailure& failure, const QString& path, const Settings& settings,
                  double screenPixelsPerMillimetre);

    /// What the person chose; looking only and trying again are offered where another copy has the bench.
    enum class Way { Close, Look, Again };
    [[nodiscard]] Way chosen() const { return m_chosen; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    TapButton* key(const QString& name, const QString& title, Way way);

    Way m_chosen = Way::Close;
    std::unique_ptr<Theme> m_theme;
};

} // namespace strandbench
