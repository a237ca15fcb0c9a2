// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen_book.h"

#include "pseudo_left.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QJsonDocument>

#include <gtest/gtest.h>

#include <ostream>
#include <sstream>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

/// "StockRules.Hold", whatever it is instantiated with.
QString testName()
{
    const ::testing::TestInfo* test = ::testing::UnitTest::GetInstance()->current_test_info();
    const QString suite = QString::fromUtf8(test->test_suite_name()).section(u'/', -1);
    return suite + u'.' + QString::fromUtf8(test->name()).section(u'/', 0, 0);
}

bool write(const QString& path, const QByteArray& bytes)
{
    QFile file(path);
    return QDir().mkpath(QFileInfo(path).path()) && file.open(QIODevice::WriteOnly) &&
           file.write(bytes) == bytes.size();
}

} // namespace

std::string nameOf(const Look& look)
{
    return (u"%1x%2_%3_%4"_s.arg(look.glass.pixels.width())
                .arg(look.glass.pixels.height())
                .arg(look.language, look.dayNight == DayNight::Day ? u"day"_s : u"night"_s))
        .toStdString();
}

void PrintTo(const Look& look, std::ostream* out) { *out << nameOf(look); }

Spoken::Spoken(const QString& language)
{
    if (language != QStringView(rules::pseudoCode))
        return;
    m_pseudo = std::make_unique<rules::PseudoLanguage>();
    QCoreApplication::installTranslator(m_pseudo.get());
}

Spoken::~Spoken()
{
    if (m_pseudo)
        QCoreApplication::removeTranslator(m_pseudo.get());
}

void ScreenBook::take(QWidget& window, const Theme& theme, const QString& screen, rules::RuleSet set)
{
    QCoreApplication::sendPostedEvents(nullptr,
                                       QEvent::LayoutRequest); // what came late is laid out before it is judged
    for (const rules::Breach& breach : rules::checkScreen(&window, theme, set)) {
        if (m_look.language == QStringView(rules::pseudoCode) && isLeftInPseudo(breach))
            continue;
        std::ostringstream said;
        said << breach;
        ADD_FAILURE() << screen.toStdString() << ": " << said.str();
    }
    m_layouts.note(screen, keysOf(window, theme));
    keep(window, theme, screen);
}

void ScreenBook::keep(QWidget& window, const Theme& theme, const QString& screen)
{
    const QString folder = qEnvironmentVariable("LOOK_PICTURES");
    if (folder.isEmpty())
        return;
    const QString look = QString::fromStdString(nameOf(m_look));
    const QString place = u"%1/%2/%3"_s.arg(folder, look.section(u'_', 1), testName());
    const QString file = u"%1/%2_%3_%4"_s.arg(place, look.section(u'_', 0, 0))
                             .arg(++m_number, 3, 10, QLatin1Char('0'))
                             .arg(QString(screen).replace(u' ', u'_'));
    EXPECT_TRUE(write(file + u".json"_s, QJsonDocument(factsOf(window, theme)).toJson())) << file.toStdString();
    EXPECT_TRUE(window.grab().save(file + u".png"_s)) << file.toStdString();
}

bool ScreenBook::compares() const
{
    const QSize& glass = m_look.glass.pixels;
    return m_look.language == u"en"_s && (m_look.dayNight == DayNight::Day) == (glass.width() > glass.height()) &&
           (glass == QSize(1024, 600) || glass == QSize(800, 1280));
}

void ScreenBook::close()
{
    if (!compares() || m_layouts.isEmpty())
        return;
    const QString folder = qEnvironmentVariable("LAYOUT_ACCEPTED", QStringLiteral(STRANDBENCH_ACCEPTED));
    const QString path = u"%1/%2.%3.json"_s.arg(folder, testName(), m_look.glass.name);
    if (qEnvironmentVariableIsSet("LAYOUT_ACCEPT")) {
        EXPECT_TRUE(write(path, m_layouts.toJson())) << path.toStdString();
        return;
    }
    QFile file(path);
    const bool there = file.open(QIODevice::ReadOnly);
    const std::optional<Layouts> accepted = there ? Layouts::fromJson(file.readAll()) : std::nullopt;
    if (!accepted) {
        ADD_FAILURE() << path.toStdString() << ": no accepted layout; tests/contact_sheets --accept makes it";
        return;
    }
    if (::testing::Test::HasFatalFailure())
        return; // the walk did not get to its end
    for (const QString& change : Layouts::changes(*accepted, m_layouts))
        ADD_FAILURE() << m_look.glass.name.toStdString() << ", " << change.toStdString()
                      << " (tests/contact_sheets --accept, when it is meant)";
}

} // namespace strandbench::test
