// SPDX-License-Identifier: GPL-3.0-or-later
// A photo goes from a folder into the log as it is, and is seen again after a restart.
#include "bench_fixture.h"
#include "shown.h"

#include "touch/tap_button.h"

#include <QCryptographicHash>
#include <QDeadlineTimer>
#include <QDir>
#include <QFile>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

constexpr int longestWaitMs = 20000;

class PhotosOnTheBench : public BenchTest {
protected:
    void SetUp() override
    {
        ASSERT_TRUE(QDir(folder()).mkpath(u"pictures/older"_s));
        m_settings.photoFolder = folder() + u"/pictures"_s;
    }
    QString path(const QString& name) const { return folder() + u"/pictures/"_s + name; }
    QByteArray jpeg(const QColor& color) const
    {
        QImage image(640, 480, QImage::Format_RGB32);
        image.fill(color);
        const QString temporary = folder() + u"/one.jpg"_s;
        EXPECT_TRUE(image.save(temporary, "JPEG"));
        return bytesOf(temporary);
    }
    static QByteArray bytesOf(const QString& file)
    {
        QFile read(file);
        return read.open(QIODevice::ReadOnly) ? read.readAll() : QByteArray();
    }
    /// Writes a file as if it had been written so many minutes ago.
    void put(const QString& name, const QByteArray& bytes, int minutesAgo)
    {
        QFile file(path(name));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        ASSERT_EQ(file.write(bytes), bytes.size());
        file.flush();
        const QDateTime at(QDate(2026, 9, 14), QTime(8, 0), Qt::UTC);
        ASSERT_TRUE(file.setFileTime(at.addSecs(-60 * minutesAgo), QFileDevice::FileModificationTime));
    }
    bool waitFor(const std::function<bool()>& there)
    {
        const QDeadlineTimer deadline(longestWaitMs);
        while (!there() && !deadline.hasExpired())
            bench().thumb().settle();
        return there();
    }
    void toFirstQuestion()
    {
        open(m_settings);
        Walk walk(bench(), skirtPanel());
        while (screen() != u"screen_assess_substrate"_s)
            ASSERT_TRUE(walk.step()) << walk.why().toStdString();
    }
    /// True when the control shows a good part of this colour.
    bool shows(const QString& control, const QColor& color)
    {
        QAbstractButton* button = bench().thumb().find(control);
        if (!button)
            return false;
        const QImage image = button->grab().toImage();
        int alike = 0;
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x) {
                const QColor pixel = image.pixelColor(x, y);
                alike += std::abs(pixel.red() - color.red()) + std::abs(pixel.green() - color.green()) +
                             std::abs(pixel.blue() - color.blue()) <
                         30;
            }
        return alike > image.width() * image.height() / 20;
    }
    QString trouble() { return window().screen()->troubleShown(); }
    Settings m_settings = demoSettings();
};

const QColor magenta(220, 20, 180);
const QColor teal(10, 140, 150);

TEST_F(PhotosOnTheBench, OneOfAFolderIsKeptWithItsHashAndShowsAfterARestart)
{
    put(u"old.jpg"_s, jpeg(teal), 90);
    put(u"new.jpg"_s, jpeg(magenta), 5);
    toFirstQuestion();
    tap(u"photo_as_found"_s);
    ASSERT_EQ(screen(), u"screen_photo_pick"_s);
    EXPECT_TRUE(waitFor([&] { return shows(u"picture_0"_s, magenta) && shows(u"picture_1"_s, teal); }))
        << "newest first";
    tap(u"picture_0"_s);
    EXPECT_TRUE(waitFor([&] { return screen() == u"screen_assess_substrate"_s; }));
    const QUuid id = bench().repair(u"4421"_s)->id;
    close();

    const auto log = RepairLog::open(this->log(), LogMode::ReadOnly);
    ASSERT_TRUE(log.has_value());
    const auto events = (*log)->events(id);
    ASSERT_TRUE(events.has_value());
    const auto* photo = std::get_if<PhotoTaken>(&events->back().payload);
    ASSERT_NE(photo, nullptr);
    const QByteArray bytes = bytesOf(path(u"new.jpg"_s));
    EXPECT_EQ(photo->moment, PhotoMoment::AsFound);
    EXPECT_EQ(photo->mediaType, u"image/jpeg"_s);
    EXPECT_EQ(photo->hash, QCryptographicHash::hash(bytes, QCryptographicHash::Sha256));
    const auto blob = (*log)->blob(photo->hash);
    ASSERT_TRUE(blob.has_value());
    EXPECT_EQ(*blob, bytes) << "as it is";

    ASSERT_TRUE(QFile::remove(path(u"new.jpg"_s))); // the log has it now
    open(m_settings);
    tap(u"job_card_0"_s);
    EXPECT_TRUE(bench().thumb().find(u"photo_as_found"_s)->accessibleDescription().contains(u"taken"_s));
    tap(u"answer_stop"_s);
    tap(u"photos"_s);
    ASSERT_EQ(screen(), u"screen_photos"_s);
    EXPECT_TRUE(waitFor([&] { return shows(u"moment_as_found"_s, magenta); }));
    EXPECT_EQ(bench().thumb().find(u"moment_bare"_s)->accessibleDescription(), u"none yet"_s);
    tap(u"answer_way_on"_s);
    EXPECT_EQ(screen(), u"screen_assess_substrate"_s);
}

TEST_F(PhotosOnTheBench, WhatIsNoWholePictureIsRefusedByNameAndReason)
{
    const QByteArray good = jpeg(teal);
    put(u"broken.jpg"_s, QByteArray("no picture at all"), 1);
    put(u"cut.jpg"_s, good.left(good.size() - 40), 2);
    put(u"large.jpg"_s, good + QByteArray(20 * 1024 * 1024, '\0'), 3);
    QImage bitmap(8, 8, QImage::Format_RGB32);
    bitmap.fill(teal);
    ASSERT_TRUE(bitmap.save(folder() + u"/one.bmp"_s, "BMP"));
    put(u"other.jpg"_s, bytesOf(folder() + u"/one.bmp"_s), 4);
    toFirstQuestion();
    const std::size_t before = eventsInLog(bench().repair(u"4421"_s)->id);
    tap(u"photo_as_found"_s);
    const std::pair<QString, QString> refused[] = {{u"broken.jpg"_s, u"whole"_s},
                                                   {u"cut.jpg"_s, u"whole"_s},
                                                   {u"large.jpg"_s, u"20 MB"_s},
                                                   {u"other.jpg"_s, u"BMP"_s}};
    int tile = 0;
    for (const auto& [name, reason] : refused) {
        tap(u"picture_%1"_s.arg(tile++));
        EXPECT_EQ(screen(), u"screen_photo_pick"_s);
        EXPECT_TRUE(trouble().contains(name) && trouble().contains(reason)) << trouble().toStdString();
    }
    ASSERT_TRUE(QFile::remove(path(u"broken.jpg"_s))); // still shown, gone meanwhile
    tap(u"picture_0"_s);
    EXPECT_TRUE(trouble().contains(u"cannot be read"_s)) << trouble().toStdString();
    EXPECT_EQ(eventsInLog(bench().repair(u"4421"_s)->id), before);
}

TEST_F(PhotosOnTheBench, NewOnesShowByThemselvesAndPagesTurn)
{
    toFirstQuestion();
    tap(u"photo_as_found"_s);
    EXPECT_FALSE(shown(window(), u"no_pictures"_s).isEmpty());
    for (int i = 0; i < 7; ++i)
        put(u"shot_%1.jpg"_s.arg(i), jpeg(i == 0 ? magenta : teal), 60 - i);
    ASSERT_TRUE(waitFor([&] { return shows(u"picture_5"_s, teal) && bench().thumb().find(u"older"_s)->isEnabled(); }));
    EXPECT_TRUE(shown(window(), u"no_pictures"_s).isEmpty());
    tap(u"older"_s);
    EXPECT_TRUE(waitFor([&] { return shows(u"picture_0"_s, magenta); })) << "the oldest is on the second page";
    EXPECT_EQ(bench().thumb().find(u"picture_1"_s), nullptr);
    EXPECT_FALSE(bench().thumb().find(u"older"_s)->isEnabled());
    tap(u"newer"_s);
    EXPECT_TRUE(waitFor([&] { return shows(u"picture_0"_s, teal); }));
}

TEST_F(PhotosOnTheBench, AnotherFolderIsChosenByTilesAndKept)
{
    toFirstQuestion();
    tap(u"photo_as_found"_s);
    tap(u"other_folder"_s);
    ASSERT_EQ(screen(), u"screen_photo_folder"_s);
    Walk walk(bench(), skirtPanel());
    for (int i = 0; i < 9 && !bench().thumb().find(u"folder_0"_s); ++i)
        tap(u"more_answers"_s);
    tap(u"folder_0"_s);
    tap(u"answer_way_on"_s);
    EXPECT_EQ(screen(), u"screen_photo_pick"_s);
    EXPECT_EQ(window().settings().photoFolder, path(u"older"_s));
    EXPECT_EQ(SettingsFile(folder() + u"/bench.ini"_s).load().settings.photoFolder, path(u"older"_s));
    tap(u"other_folder"_s);
    tap(u"folder_above"_s);
    tap(u"answer_way_on"_s);
    EXPECT_EQ(window().settings().photoFolder, m_settings.photoFolder);
}

TEST_F(PhotosOnTheBench, TheStepsThatHaveAMomentOfferItAndTheHandOverSaysWhatIsMissing)
{
    put(u"one.jpg"_s, jpeg(teal), 5);
    open(m_settings);
    Walk walk(bench(), skirtPanel());
    QStringList offered;
    while (bench().repair(u"4421"_s) == nullptr || nextStep(*bench().repair(u"4421"_s)).station != Station::HandOver) {
        for (const auto& [moment, code] : Codes<PhotoMoment>::table) {
            const QString key = u"photo_"_s + QLatin1StringView(code);
            if (bench().thumb().find(key) && !offered.contains(key)) {
                offered << key;
                if (moment == PhotoMoment::Bare) {
                    const QString before = screen();
                    tap(key);
                    tap(u"picture_0"_s);
                    EXPECT_TRUE(waitFor([&] { return screen() == before; })) << "it comes back to the step";
                }
            }
        }
        ASSERT_TRUE(walk.step()) << walk.why().toStdString();
    }
    EXPECT_EQ(offered, QStringList({u"photo_as_found"_s, u"photo_bare"_s, u"photo_filled"_s, u"photo_guide_coat"_s}));
    while (screen() != u"screen_hand_over"_s)
        ASSERT_TRUE(walk.step()) << walk.why().toStdString();
    EXPECT_TRUE(shown(window(), u"message_text"_s).endsWith(u"No photo yet: as found, filled, guide coat."_s))
        << shown(window(), u"message_text"_s).toStdString();
    tap(u"photos"_s);
    EXPECT_EQ(screen(), u"screen_photos"_s);
}

} // namespace
} // namespace strandbench::test
