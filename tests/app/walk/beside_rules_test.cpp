// SPDX-License-Identifier: GPL-3.0-or-later
// The screens beside the steps keep the rules of look and touch on every glass, in English and in a language a third
// longer.
#include "walk/demo_jobs.h"

#include "touch_rules/glass.h"
#include "touch_rules/rule_check.h"

#include <QCoreApplication>
#include <QDir>
#include <QImage>
#include <QTemporaryDir>
#include <QTranslator>

#include <gtest/gtest.h>

#include <sstream>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

/// English, every word of four letters and more grown by a third: as long as German, and as broad.
class LongerLanguage final : public QTranslator {
public:
    [[nodiscard]] bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* source, const char*, int) const override
    {
        const QString mine = u" AskScreen Notes NotesScreen PhotosScreen SideKey LetterKeys StopWays TakeInScreen "
                             u"strandbench::PhotoPickScreen strandbench::BenchWindow "_s;
        if (!mine.contains(u' ' + QString::fromLatin1(context) + u' '))
            return {};
        QStringList words = QString::fromUtf8(source).split(u' ');
        for (QString& word : words)
            if (word.size() >= 4 && !word.contains(u'%'))
                word.insert(
                    2, QStringView(u"eneneneneneneneneneneneneneneneneneneneneneneneneneneneneneneneneneneneneneene")
                           .left(word.size() / 3));
        return words.join(u' ');
    }
};

struct Look {
    rules::Glass glass;
    bool longer;
};

class BesideRules : public ::testing::TestWithParam<Look> {
protected:
    void check(ScriptedBench& bench)
    {
        const QString name = bench.window().screen()->objectName();
        if (const QString folder = qEnvironmentVariable("BESIDE_PICTURES"); !folder.isEmpty())
            bench.window().grab().save(u"%1/%2_%3_%4_%5.png"_s.arg(folder, GetParam().glass.name)
                                           .arg(GetParam().longer)
                                           .arg(m_number++, 2, 10, QLatin1Char('0'))
                                           .arg(name));
        for (const rules::Breach& breach : rules::checkScreen(&bench.window(), bench.window().theme())) {
            std::ostringstream said;
            said << breach;
            ADD_FAILURE() << name.toStdString() << ": " << said.str();
        }
    }
    void tapAndCheck(ScriptedBench& bench, const QString& control)
    {
        ASSERT_TRUE(bench.thumb().tap(control))
            << control.toStdString() << " on " << bench.window().screen()->objectName().toStdString();
        check(bench);
    }
    int m_number = 0;
};

void putPictures(const QString& folder)
{
    ASSERT_TRUE(QDir(folder).mkpath(u"a folder with a long name/x"_s));
    for (int i = 0; i < 8; ++i) {
        QImage image(400, 300, QImage::Format_RGB32);
        image.fill(QColor::fromHsv(i * 40, 160, 180));
        ASSERT_TRUE(image.save(folder + u"/shot_%1.png"_s.arg(i), "PNG"));
    }
}

TEST_P(BesideRules, Hold)
{
    LongerLanguage longer;
    const QTemporaryDir folder;
    Settings settings = demoSettings();
    settings.photoFolder = folder.filePath(u"pictures"_s);
    ASSERT_NO_FATAL_FAILURE(putPictures(settings.photoFolder));
    const rules::Glass& glass = GetParam().glass;
    ScriptedBench bench({folder.filePath(u"bench.sqlite"_s),
                         workingMorning(),
                         settings,
                         glass.pixels,
                         glass.pixelsPerMillimetre(),
                         {}});
    ASSERT_FALSE(bench.trouble().has_value());
    if (GetParam().longer)
        QCoreApplication::installTranslator(&longer);
    DemoJob job = skirtPanel();
    Walk walk(bench, job);
    while (bench.window().screen()->objectName() != u"screen_panel"_s)
        ASSERT_TRUE(walk.step()) << walk.why().toStdString();
    tapAndCheck(bench, u"name_0"_s);
    tapAndCheck(bench, u"photo_as_found"_s);
    tapAndCheck(bench, u"older"_s);
    tapAndCheck(bench, u"other_folder"_s);
    ASSERT_TRUE(bench.thumb().tap(u"answer_back"_s));
    tapAndCheck(bench, u"picture_0"_s); // the step again, with its tick
    tapAndCheck(bench, u"answer_stop"_s);
    tapAndCheck(bench, u"photos"_s);
    tapAndCheck(bench, u"answer_stop"_s);
    tapAndCheck(bench, u"notes"_s);
    tapAndCheck(bench, u"more_answers"_s);
    tapAndCheck(bench, u"more_answers"_s);
    ASSERT_TRUE(bench.thumb().tap(u"more_answers"_s));
    tapAndCheck(bench, u"own_words"_s);
    tapAndCheck(bench, u"letter_page"_s);
    tapAndCheck(bench, u"letter_page"_s);
    for (int i = 0; i < 40; ++i)
        ASSERT_TRUE(bench.thumb().tap(i % 6 == 5 ? u"letter_space"_s : u"letter_8"_s));
    tapAndCheck(bench, u"answer_way_on"_s);
    tapAndCheck(bench, u"note_panel_warmed"_s);
    tapAndCheck(bench, u"note_old_repair_below"_s);
    tapAndCheck(bench, u"older_notes"_s);
    tapAndCheck(bench, u"answer_stop"_s);
    ASSERT_TRUE(bench.thumb().hold(u"park_it"_s));
    check(bench);
    tapAndCheck(bench, u"why_too_cold_or_damp"_s);
    tapAndCheck(bench, u"more_answers"_s);
    tapAndCheck(bench, u"more_answers"_s);
    ASSERT_TRUE(bench.thumb().tap(u"more_answers"_s));
    tapAndCheck(bench, u"to_warm_room"_s);
    bench.window().showHome();
    bench.thumb().settle();
    check(bench);
}

std::vector<Look> everyLook()
{
    std::vector<Look> looks;
    for (const rules::Glass& glass : rules::glasses())
        for (const bool longer : {false, true})
            looks.push_back({glass, longer});
    return looks;
}

INSTANTIATE_TEST_SUITE_P(OnEveryGlass, BesideRules, ::testing::ValuesIn(everyLook()), [](const auto& each) {
    return u"%1x%2_%3"_s.arg(each.param.glass.pixels.width())
        .arg(each.param.glass.pixels.height())
        .arg(each.param.longer ? u"longer"_s : u"english"_s)
        .toStdString();
});

} // namespace
} // namespace strandbench::test
