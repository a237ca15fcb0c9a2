// SPDX-License-Identifier: GPL-3.0-or-later
// The four moments with what the log keeps of them, and the choice of a folder.
#include "pictures/photo_picture.h"
#include "repair/photos.h"
#include "screens/frame/choice_screen.h"
#include "screens/beside/photo_screens.h"
#include "screens/frame/side_key.h"
#include "bench/settings.h"
#include "touch/fit_text.h"
#include "words/notes.h"

#include <QCoreApplication>
#include <QDir>
#include <QPainter>
#include <QPointer>
#include <QStandardPaths>
#include <QStorageInfo>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(PhotosScreen)
};

/// The kept photos of a screen, small: fetched from the log, made small beside the glass.
struct KeptPhotos {
    explicit KeptPhotos(Worker::Runs runs) : worker(runs) {}
    std::map<PhotoMoment, QByteArray> bytes;
    std::map<PhotoMoment, QImage> small;
    std::map<PhotoMoment, QString> trouble;
    std::size_t awaited = 0;
    Worker worker;
};

void makeSmall(KeptPhotos& photos, const QPointer<QWidget>& screen, const QSize& box)
{
    photos.worker.ask([&photos, screen, bytes = photos.bytes, box] {
        std::map<PhotoMoment, QImage> small;
        for (const auto& [moment, each] : bytes)
            small[moment] = smallPicture(each, box);
        return [&photos, screen, small] {
            photos.small = small;
            for (const auto& [moment, each] : small)
                if (each.isNull())
                    photos.trouble[moment] = Says::tr("cannot be shown");
            if (screen)
                screen->update();
        };
    });
}

void fetch(const std::shared_ptr<KeptPhotos>& photos, const Repair& repair, const Surroundings& around, QWidget* screen)
{
    const QSize box(around.theme.px(60), around.theme.px(45));
    const QPointer<QWidget> there = screen;
    for (const auto& [moment, code] : Codes<PhotoMoment>::table) {
        const Kept<PhotoTaken>* newest = newestPhoto(repair, moment);
        if (!newest)
            continue;
        ++photos->awaited;
        around.bench.blob(newest->what.hash, [photos, there, box, moment = moment](const Logged<QByteArray>& read) {
            if (!there)
                return;
            if (read)
                photos->bytes[moment] = *read;
            else
                photos->trouble[moment] = Says::tr("cannot be read");
            if (--photos->awaited == 0)
                makeSmall(*photos, there, box);
        });
    }
}

void paintKept(QPainter& painter, const QRectF& rect, const KeptPhotos& photos, PhotoMoment moment, bool taken,
               const Theme& theme)
{
    const auto small = photos.small.find(moment);
    if (small != photos.small.end() && !small->second.isNull())
        return paintPhoto(painter, rect, small->second);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme.color(Role::MutedInk), theme.px(0.4), Qt::DashLine));
    const QRectF frame = placeOf({4, 3}, rect);
    painter.drawRect(frame);
    const auto trouble = photos.trouble.find(moment);
    const QString state = trouble != photos.trouble.end() ? trouble->second : taken ? Says::tr("reading") : QString();
    drawFitted(painter, frame, fitText(theme, state, TextRole::Small, frame.size()), Qt::AlignCenter,
               theme.color(Role::MutedInk));
}

/// A folder's name as it fits a tile; the whole path stands above.
QString tileName(const QString& path)
{
    constexpr int longest = 16;
    const QString name = QDir(path).dirName();
    return name.size() <= longest ? name : name.left(longest - 1) + u'…';
}

/// Cameras and cards that are mounted where desktops mount what is plugged in.
QStringList pluggedIn()
{
    QStringList found;
    for (const QStorageInfo& each : QStorageInfo::mountedVolumes()) {
        const QString root = each.rootPath();
        if (each.isReady() && (root.startsWith(u"/media/"_s) || root.startsWith(u"/run/media/"_s)))
            found << root;
    }
    return found;
}

} // namespace

Screen* makePhotosScreen(const Surroundings& around, const Repair& repair,
                         const std::function<void(PhotoMoment)>& choose, const std::function<void()>& done,
                         QWidget* parent)
{
    const auto photos = std::make_shared<KeptPhotos>(around.bench.computing());
    ChoiceScreen::Spec spec;
    spec.name = u"screen_photos"_s;
    spec.context = contextOf(repair, around.words);
    spec.sentence = Says::tr("Tap what the photo shows");
    spec.wayOn = Says::tr("To the present step");
    for (const auto& [moment, code] : Codes<PhotoMoment>::table) {
        const Kept<PhotoTaken>* newest = newestPhoto(repair, moment);
        ChoiceScreen::Tile tile;
        tile.name = u"moment_"_s + QLatin1StringView(code);
        tile.title = photoMomentName(moment);
        tile.second = newest ? around.words.clockTime(newest->at) + u" · "_s + newest->person : Says::tr("none yet");
        tile.chosen = newest != nullptr;
        tile.picture = [photos, moment = moment, taken = newest != nullptr, &theme = around.theme](QPainter& painter,
                                                                                                   const QRectF& rect) {
            paintKept(painter, rect, *photos, moment, taken, theme);
        };
        tile.tapped = [choose, moment = moment] { choose(moment); };
        spec.tiles.push_back(tile);
    }
    auto* screen = new ChoiceScreen(around, std::move(spec), parent);
    QObject::connect(screen, &ChoiceScreen::wayOnTapped, screen, done);
    fetch(photos, repair, around, screen);
    return screen;
}

Screen* makeFolderScreen(const Surroundings& around, const QString& sentence, const QString& folder,
                         const std::function<void(const QString&)>& look,
                         const std::function<void(const QString&)>& use, QWidget* parent)
{
    ChoiceScreen::Spec spec;
    spec.name = u"screen_photo_folder"_s;
    spec.context = QDir::toNativeSeparators(folder);
    spec.sentence = sentence;
    spec.wayOn = Says::tr("Use this folder");
    spec.moreTitle = Says::tr("More");
    int number = 0;
    const auto add = [&](const QString& name, const QString& second, const QString& path) {
        spec.tiles.push_back({name, tileName(path), second, {}, false, false, [look, path] { look(path); }});
    };
    QDir above(folder);
    if (above.cdUp())
        spec.tiles.push_back({u"folder_above"_s,
                              Says::tr("One up"),
                              tileName(above.path()),
                              {},
                              false,
                              false,
                              [look, path = above.path()] { look(path); }});
    for (const QString& root : pluggedIn())
        if (root != folder)
            add(u"plugged_in_%1"_s.arg(number++), Says::tr("camera or card"), root);
    number = 0;
    const QDir here(folder);
    for (const QString& each : here.entryList(QDir::Dirs | QDir::NoDotAndDotDot, QDir::Name | QDir::LocaleAware))
        add(u"folder_%1"_s.arg(number++), {}, here.filePath(each));
    auto* screen = new ChoiceScreen(around, std::move(spec), parent);
    QObject::connect(screen, &ChoiceScreen::wayOnTapped, screen, [use, folder] { use(folder); });
    return screen;
}

QString photoFolderOf(const Settings& settings)
{
    for (const QString& each :
         {settings.photoFolder, QStandardPaths::writableLocation(QStandardPaths::PicturesLocation)})
        if (!each.isEmpty() && QDir(each).exists())
            return QDir(each).absolutePath();
    return QDir::homePath();
}

} // namespace strandbench
