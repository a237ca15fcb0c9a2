// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/fonts.h"

#include <QCoreApplication>
#include <QtGlobal>

#include <fontconfig/fontconfig.h>

namespace strandbench {

namespace {

constexpr const char* withoutMonospaced = R"(<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "urn:fontconfig:fonts.dtd">
<fontconfig><selectfont><rejectfont><pattern>
<patelt name="family"><string>B612 Mono</string></patelt>
</pattern></rejectfont></selectfont></fontconfig>)";

bool useConfigurationWithout(const char* rejecting)
{
    FcConfig* config = FcConfigCreate();
    if (!config)
        return false;
    const auto* text = reinterpret_cast<const FcChar8*>(rejecting);
    // The system's configuration first: a null name stands for it.
    const bool ready = FcConfigParseAndLoad(config, nullptr, FcTrue) == FcTrue &&
                       FcConfigParseAndLoadFromMemory(config, text, FcTrue) == FcTrue &&
                       FcConfigBuildFonts(config) == FcTrue && FcConfigSetCurrent(config) == FcTrue;
    FcConfigDestroy(config); // the current configuration keeps its own reference
    return ready;
}

} // namespace

void leaveOutMonospacedB612()
{
    static const bool done = useConfigurationWithout(withoutMonospaced);
    if (!done)
        qWarning("The font configuration could not be read: text may be drawn monospaced.");
}

Q_COREAPP_STARTUP_FUNCTION(leaveOutMonospacedB612)

} // namespace strandbench
