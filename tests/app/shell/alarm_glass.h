// SPDX-License-Identifier: GPL-3.0-or-later
// An alarm bar at the top of a glass, as the window has it, and four alarms to show on it.
#pragma once

#include "shell/alarm_bar.h"

#include "touch/touching.h"
#include "touch_rules/glass.h"

namespace strandbench {

using namespace Qt::StringLiterals;

inline const AlarmShown edges{AlarmKind::EdgesSoon, u"Clear the edges: 0:20"_s, u"4421 · Front left wing · batch 1"_s};
inline const AlarmShown gels{AlarmKind::Gels, u"Hands off: it gels"_s, u"4421 · Front left wing · batch 1"_s};
inline const AlarmShown sandFrom{AlarmKind::SandFrom, u"Sand: it is ready"_s, u"4398 · Sill · batch 2"_s};
inline const AlarmShown sandUntil{AlarmKind::SandUntil, u"Sand now: it hardens"_s,
                                  u"+2 more · 4398 · Sill · batch 2"_s};

struct Glass {
    explicit Glass(const rules::Glass& size = rules::glasses()[1], DayNight dayNight = DayNight::Day,
                   Hand hand = Hand::Right, bool calm = false)
        : theme(Metrics(size.pixelsPerMillimetre()), dayNight, hand, calm), pixels(size.pixels)
    {
        QPalette ground;
        ground.setColor(QPalette::Window, theme.color(Role::Ground));
        window.setPalette(ground);
        bar = new AlarmBar(theme, &window);
        bar->setGeometry(0, 0, pixels.width(), bar->height());
    }
    [[nodiscard]] bool show() { return touching::show(window, pixels); }
    [[nodiscard]] AlarmButton* button(int index) const
    {
        return window.findChild<AlarmButton*>(u"alarm_%1"_s.arg(index));
    }
    void set(const std::vector<AlarmShown>& alarms) { bar->setAlarms(alarms, now); }
    void later(int ms)
    {
        now.utcMs += ms;
        now.boottimeMs += ms;
        bar->tick(now);
    }
    void tap(int index) const { touching::tap(button(index), button(index)->rect().center()); }
    Theme theme;
    QSize pixels;
    QWidget window;
    AlarmBar* bar = nullptr;
    Instant now{1'000'000, 500'000, u"boot"_s, 0};
};

} // namespace strandbench
