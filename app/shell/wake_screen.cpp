// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/wake_screen.h"

#include <QGuiApplication>
#include <QLibrary>

#include <cstdint>
#include <cstdlib>

using namespace Qt::StringLiterals;

namespace strandbench {

#if QT_CONFIG(xcb)
namespace {

// From <xcb/xcb.h> and <xcb/dpms.h>: their values and layouts are part of the libraries' binary interfaces, sonames 1
// and 0. Nothing links to them: libxcb is there wherever Qt speaks X11, the other may be missing.
constexpr int xcbSoname = 1;
constexpr int dpmsSoname = 0;
constexpr std::uint8_t saverReset = 0;
constexpr std::uint16_t levelOn = 0;

struct Cookie {
    unsigned sequence;
};
struct ExtensionReply {
    std::uint8_t type;
    std::uint8_t pad;
    std::uint16_t sequence;
    std::uint32_t length;
    std::uint8_t present;
};
struct DpmsInfo {
    std::uint8_t type;
    std::uint8_t pad;
    std::uint16_t sequence;
    std::uint32_t length;
    std::uint16_t level;
    std::uint8_t enabled;
};

template <class Symbol> bool resolve(QLibrary& library, const char* name, Symbol*& into)
{
    into = reinterpret_cast<Symbol*>(library.resolve(name));
    return into != nullptr;
}

struct Xcb {
    Cookie (*forceScreenSaver)(xcb_connection_t*, std::uint8_t mode) = nullptr;
    int (*flush)(xcb_connection_t*) = nullptr;
    const ExtensionReply* (*extension)(xcb_connection_t*, void* which) = nullptr;

    [[nodiscard]] bool load()
    {
        QLibrary library(u"xcb"_s, xcbSoname); // never unloaded: QLibrary's destructor leaves it
        return library.load() && resolve(library, "xcb_force_screen_saver", forceScreenSaver) &&
               resolve(library, "xcb_flush", flush) && resolve(library, "xcb_get_extension_data", extension);
    }
};

struct Dpms {
    void* which = nullptr;
    Cookie (*info)(xcb_connection_t*) = nullptr;
    DpmsInfo* (*infoReply)(xcb_connection_t*, Cookie, void** error) = nullptr;
    Cookie (*forceLevel)(xcb_connection_t*, std::uint16_t level) = nullptr;

    [[nodiscard]] bool load()
    {
        QLibrary library(u"xcb-dpms"_s, dpmsSoname);
        return library.load() && resolve(library, "xcb_dpms_id", which) && resolve(library, "xcb_dpms_info", info) &&
               resolve(library, "xcb_dpms_info_reply", infoReply) &&
               resolve(library, "xcb_dpms_force_level", forceLevel);
    }
};

void switchOn(const Xcb& xcb, xcb_connection_t* display)
{
    Dpms dpms;
    if (!dpms.load())
        return;
    // Asked for what the server lacks, the connection would be shut, and the whole program with it.
    const ExtensionReply* known = xcb.extension(display, dpms.which);
    if (!known || !known->present)
        return;
    void* error = nullptr;
    DpmsInfo* info = dpms.infoReply(display, dpms.info(display), &error);
    // Where power saving is off a level is refused, and there is nothing to wake.
    if (info && info->enabled && info->level != levelOn)
        (void)dpms.forceLevel(display, levelOn);
    std::free(info); // the library's replies are the caller's, from malloc
    std::free(error);
}

} // namespace

void wakeScreen()
{
    // Off screen there may be a connection, too, but no glass of ours.
    if (!qGuiApp || QGuiApplication::platformName() != "xcb"_L1)
        return;
    const auto* x11 = qGuiApp->nativeInterface<QNativeInterface::QX11Application>();
    xcb_connection_t* display = x11 ? x11->connection() : nullptr;
    Xcb xcb;
    if (!display || !xcb.load())
        return;
    (void)xcb.forceScreenSaver(display, saverReset);
    switchOn(xcb, display);
    xcb.flush(display);
}
#else
void wakeScreen() {}
#endif

} // namespace strandbench
