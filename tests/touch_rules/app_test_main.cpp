// SPDX-License-Identifier: GPL-3.0-or-later
// main() of the tests that need widgets: off screen unless told otherwise, one style, no scaling by the
// surroundings, and an error instead of empty pictures when there is no font.
#include <QApplication>
#include <QFontInfo>
#include <QStyleFactory>

#include <gtest/gtest.h>

#include <cstdio>

int main(int argc, char** argv)
{
    testing::InitGoogleTest(&argc, argv);
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    qunsetenv("QT_FONT_DPI");
    qputenv("QT_SCALE_FACTOR", "1");
    QApplication app(argc, argv);
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    if (QFontInfo(QApplication::font()).family().isEmpty()) {
        std::fputs("no font is installed: texts would not be drawn\n", stderr);
        return 1;
    }
    return RUN_ALL_TESTS();
}
