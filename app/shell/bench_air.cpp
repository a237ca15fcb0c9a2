// SPDX-License-Identifier: GPL-3.0-or-later
// The air: one tap from the ribbon's reading, and back to what was shown.
#include "screens/air/air_screen.h"
#include "screens/air/dew_screen.h"
#include "screens/air/fire_screen.h"
#include "screens/air/vapour_screen.h"
#include "shell/bench_window.h"

namespace strandbench {

void BenchWindow::showAir()
{
    if (m_writing || m_parts.restoring || m_keeping.doing)
        return; // what is under way moves the screen on itself
    place(Place::Air);
}

Screen* BenchWindow::makeAir()
{
    switch (m_place) {
    case Place::Dew:
        return new DewScreen(*m_around, this);
    case Place::Vapour:
        return new VapourScreen(*m_around, this);
    case Place::Fire:
        return new FireScreen(*m_around, this);
    default:
        break;
    }
    return makeAirScreen(
        *m_around, {[this] { place(Place::Dew); }, [this] { place(Place::Vapour); }, [this] { place(Place::Fire); }},
        this);
}

} // namespace strandbench
