// SPDX-License-Identifier: GPL-3.0-or-later
// A real X server without a screen, its saver switched on, then woken. The saver is asked for through its extension:
// not by what wakes it.
#include "shell/wake_screen.h"

#include <QGuiApplication>
#include <QLibrary>
#include <QProcess>

#include <gtest/gtest.h>

#include <csignal>
#include <cstdint>
#include <cstdlib>
#include <cstring>

#include <sys/prctl.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

struct Cookie {
    unsigned sequence;
};
/// From <xcb/screensaver.h>, which is part of the library's binary interface, soname 0.
struct SaverInfo {
    std::uint8_t type;
    std::uint8_t state; ///< 0: off, 1: on
};

template <class Function> Function* functionOf(const QString& library, int soname, const char* name)
{
    return reinterpret_cast<Function*>(QLibrary(library, soname).resolve(name));
}

class Saver : public testing::Test {
protected:
    void SetUp() override
    {
        ASSERT_EQ(QGuiApplication::platformName(), u"xcb"_s) << "Xvfb must be there, see tests/packages.txt";
        display = qGuiApp->nativeInterface<QNativeInterface::QX11Application>()->connection();
        force = functionOf<Cookie(xcb_connection_t*, std::uint8_t)>(u"xcb"_s, 1, "xcb_force_screen_saver");
        query =
            functionOf<Cookie(xcb_connection_t*, std::uint32_t)>(u"xcb-screensaver"_s, 0, "xcb_screensaver_query_info");
        answer = functionOf<SaverInfo*(xcb_connection_t*, Cookie, void**)>(u"xcb-screensaver"_s, 0,
                                                                           "xcb_screensaver_query_info_reply");
        fails = functionOf<int(xcb_connection_t*)>(u"xcb"_s, 1, "xcb_connection_has_error");
        root = rootOf(functionOf<const std::uint8_t*(xcb_connection_t*)>(u"xcb"_s, 1, "xcb_get_setup")(display));
        ASSERT_TRUE(force && query && answer && fails) << "libxcb-screensaver0 must be there, see tests/packages.txt";
    }
    /// The root window of the first screen, after vendor and pixmap formats (X11 protocol, "Connection Setup").
    static std::uint32_t rootOf(const std::uint8_t* setup)
    {
        std::uint16_t vendor = 0;
        std::memcpy(&vendor, setup + 24, sizeof vendor);
        const std::size_t at = 40U + (vendor + 3U) / 4U * 4U + 8U * setup[29];
        std::uint32_t window = 0;
        std::memcpy(&window, setup + at, sizeof window);
        return window;
    }
    [[nodiscard]] int state() const
    {
        SaverInfo* info = answer(display, query(display, root), nullptr);
        const int found = info ? info->state : -1;
        std::free(info);
        return found;
    }
    xcb_connection_t* display = nullptr;
    std::uint32_t root = 0;
    Cookie (*force)(xcb_connection_t*, std::uint8_t) = nullptr;
    Cookie (*query)(xcb_connection_t*, std::uint32_t) = nullptr;
    SaverInfo* (*answer)(xcb_connection_t*, Cookie, void**) = nullptr;
    int (*fails)(xcb_connection_t*) = nullptr;
};

TEST_F(Saver, endsWhenTheScreenIsWoken)
{
    (void)force(display, 1);
    ASSERT_EQ(state(), 1) << "the screen sleeps";
    wakeScreen();
    EXPECT_EQ(state(), 0);
}

TEST_F(Saver, aScreenThatIsAwakeStaysSoAndTheServerKeepsTalking)
{
    (void)force(display, 0);
    for (int i = 0; i < 3; ++i)
        wakeScreen();
    EXPECT_EQ(state(), 0);
    // Asking for an extension that a server lacks would have shut the connection.
    EXPECT_EQ(fails(display), 0);
}

} // namespace
} // namespace strandbench

/// A server of its own, so that the test runs wherever Xvfb is; CTest's "offscreen" is not for this one.
int main(int argc, char** argv)
{
    testing::InitGoogleTest(&argc, argv);
    if (testing::GTEST_FLAG(list_tests))
        return RUN_ALL_TESTS();
    QProcess server;
    server.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    // Qt ends the program when the server shuts the connection: then nobody is left to end the server.
    server.setChildProcessModifier([] { prctl(PR_SET_PDEATHSIG, SIGTERM); });
    server.start(u"Xvfb"_s, {u"-displayfd"_s, u"1"_s, u"-screen"_s, u"0"_s, u"320x240x24"_s, u"-nolisten"_s, u"tcp"_s});
    QByteArray number;
    while (!number.endsWith('\n') && server.waitForReadyRead(30'000))
        number += server.readAllStandardOutput();
    const bool up = number.endsWith('\n');
    qputenv("DISPLAY", ":" + number.trimmed());
    qputenv("QT_QPA_PLATFORM", up ? "xcb" : "offscreen");
    int result = 0;
    {
        QGuiApplication app(argc, argv);
        result = RUN_ALL_TESTS();
    }
    server.terminate();
    server.waitForFinished(10'000);
    return result;
}
