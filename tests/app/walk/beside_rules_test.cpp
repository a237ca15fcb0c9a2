// SPDX-License-Identifier: GPL-3.0-or-later
// The screens beside the steps keep the rules of look and touch on every glass and in every language.
#include "every_look.h"

#include <QDir>
#include <QImage>
#include <QTemporaryDir>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class BesideRules : public LookTest {};

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
    const QTemporaryDir folder;
    Settings settings = demoSettings();
    settings.photoFolder = folder.filePath(u"pictures"_s);
    ASSERT_NO_FATAL_FAILURE(putPictures(settings.photoFolder));
    m_bench = std::make_unique<ScriptedBench>(specOn(folder.filePath(u"bench.sqlite"_s), settings));
    ScriptedBench& bench = *m_bench;
    ASSERT_FALSE(bench.trouble().has_value());
    DemoJob job = skirtPanel();
    Walk walk(bench, job);
    while (bench.window().screen()->objectName() != u"screen_panel"_s)
        ASSERT_TRUE(walk.step()) << walk.why().toStdString();
    tapAndCheck(u"name_0"_s);
    tapAndCheck(u"photo_as_found"_s);
    tapAndCheck(u"older"_s);
    tapAndCheck(u"other_folder"_s);
    ASSERT_TRUE(bench.thumb().tap(u"answer_back"_s));
    tapAndCheck(u"picture_0"_s); // the step again, with its tick
    tapAndCheck(u"answer_stop"_s);
    tapAndCheck(u"photos"_s);
    tapAndCheck(u"answer_stop"_s);
    tapAndCheck(u"notes"_s);
    tapAndCheck(u"more_answers"_s);
    tapAndCheck(u"more_answers"_s);
    ASSERT_TRUE(bench.thumb().tap(u"more_answers"_s));
    tapAndCheck(u"own_words"_s);
    tapAndCheck(u"letter_page"_s);
    tapAndCheck(u"letter_page"_s);
    if (!bench.thumb().find(u"letter_8"_s)) // a page of the language's own letters is a short one
        tapAndCheck(u"letter_page"_s);
    for (int i = 0; i < 40; ++i)
        ASSERT_TRUE(bench.thumb().tap(i % 6 == 5 ? u"letter_space"_s : u"letter_8"_s));
    tapAndCheck(u"answer_way_on"_s);
    tapAndCheck(u"note_panel_warmed"_s);
    tapAndCheck(u"note_old_repair_below"_s);
    tapAndCheck(u"older_notes"_s);
    tapAndCheck(u"answer_stop"_s);
    ASSERT_TRUE(bench.thumb().hold(u"park_it"_s));
    check();
    tapAndCheck(u"why_too_cold_or_damp"_s);
    tapAndCheck(u"more_answers"_s);
    tapAndCheck(u"more_answers"_s);
    ASSERT_TRUE(bench.thumb().tap(u"more_answers"_s));
    tapAndCheck(u"to_warm_room"_s);
    bench.window().showHome();
    bench.thumb().settle();
    check();
}

INSTANTIATE_TEST_SUITE_P(OnEveryGlass, BesideRules, ::testing::ValuesIn(everyLook()), nameOfLook);

} // namespace
} // namespace strandbench::test
