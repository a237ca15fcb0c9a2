// SPDX-License-Identifier: GPL-3.0-or-later
// What a person sees when the log cannot be opened: what is wrong, what to do, and a way out. Nothing is
// written.
#pragma once

#include "bench/settings.h"
#include "repairlog/repair_log.h"

#include <QWidget>

#include <memory>

namespace strandbench {

class TroubleWindow final : public QWidget {
    Q_OBJECT
public:
    TroubleWindow(const LogFailure& failure, const QString& path, const Settings& settings,
                  double screenPixelsPerMillimetre);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::unique_ptr<Theme> m_theme;
};

} // namespace strandbench
