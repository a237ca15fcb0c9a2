// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/phase_look.h"

#include "pictures/picture_text.h"

namespace strandbench {

PhaseLook lookOf(Phase phase, const Theme& theme)
{
    switch (phase) {
    case Phase::Knead:
        return {theme.color(Role::HardenerFill), inkUpon(theme, theme.color(Role::HardenerFill)), false};
    case Phase::Spread:
        return {theme.color(Role::Action), theme.color(Role::OnAction), false};
    case Phase::ClearEdges:
        return {theme.color(Role::Caution), theme.color(Role::OnCaution), false};
    case Phase::HandsOff:
        return {theme.color(Role::ZincFill), inkUpon(theme, theme.color(Role::ZincFill)), true};
    case Phase::Sand:
        return {theme.color(Role::Go), theme.color(Role::OnGo), false};
    case Phase::Harder:
        return {theme.color(Role::FinishFill), inkUpon(theme, theme.color(Role::FinishFill)), false};
    }
    Q_UNREACHABLE();
}

} // namespace strandbench
