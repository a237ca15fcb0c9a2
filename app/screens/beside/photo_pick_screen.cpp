// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/beside/photo_screens.h"

#include "pictures/photo_picture.h"
#include "theme/sizes.h"
#include "touch/fit_text.h"
#include "words/notes.h"

#include <QFileInfo>
#include <QPainter>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr std::size_t perPage = 6;
constexpr int settleMs = 300;
constexpr double captionHeight = 5.5; // mm
constexpr double keyWidth = 54;       // mm, of the column of keys: two beside each other

} // namespace

PhotoPickScreen::PhotoPickScreen(const Surroundings& around, const Repair& repair, PhotoMoment moment,
                                 const QString& folder, CameraFeed* cameras, QWidget* parent)
    : Screen(around, u"screen_photo_pick"_s, parent),
      m_folder(folder),
      m_looking(around.bench.computing()),
      m_taking(around.bench.computing())
{
    buildFrame(contextOf(repair, words()), tr("Choose the photo: %1").arg(photoMomentInList(moment)));
    buildTiles(content());
    buildKeys(content());
    answers()->setWayOn({});
    m_settle.setSingleShot(true);
    connect(&m_settle, &QTimer::timeout, this, &PhotoPickScreen::reload);
    connect(&m_watcher, &QFileSystemWatcher::directoryChanged, this, [this] { m_settle.start(settleMs); });
    connect(&m_watcher, &QFileSystemWatcher::fileChanged, this, [this] { m_settle.start(settleMs); });
    m_watcher.addPath(m_folder);
    reload();
    if (!cameras)
        return;
    connect(cameras, &CameraFeed::found, this,
            [this](const std::vector<CameraDevice>& found) { offerCamera(!found.empty()); });
    cameras->look();
}

void PhotoPickScreen::buildTiles(QBoxLayout* into)
{
    m_room = new QWidget(this);
    auto* grid = new QGridLayout(m_room);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(px(sizes::gap));
    m_none = label(u"no_pictures"_s, TextRole::Title);
    m_none->setAlignment(Qt::AlignCenter);
    grid->addWidget(m_none, 0, 0, -1, -1);
    const int columns = around().upright ? 2 : 3;
    m_tiles.resize(perPage);
    for (std::size_t i = 0; i < perPage; ++i) {
        auto* button = new TapButton(theme(), u"picture_%1"_s.arg(i), TapButton::Kind::Plain, m_room);
        button->keepPlaceWhenHidden();
        button->hide();
        button->setPicture(
            [this, i](QPainter& painter, const QRectF& rect) { paintTile(painter, rect, m_tiles[i], m_first + i); });
        connect(button, &TapButton::clicked, this, [this, i] { take(i); });
        const int at = static_cast<int>(i);
        grid->addWidget(button, at / columns, at % columns);
        grid->setRowStretch(at / columns, 1);
        grid->setColumnStretch(at % columns, 1);
        m_tiles[i].button = button;
    }
    into->addWidget(m_room, 1);
}

TapButton* PhotoPickScreen::key(const QString& name, const QString& title)
{
    auto* made = new TapButton(theme(), name, TapButton::Kind::Plain, this);
    made->setTitle(title);
    made->setLeastSize(sizes::target, sizes::target);
    made->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    made->setMinimumWidth(px(sizes::target));
    return made;
}

void PhotoPickScreen::buildKeys(QBoxLayout* into)
{
    auto* room = new QWidget(this);
    m_keys = new QGridLayout(room);
    m_keys->setContentsMargins(0, 0, 0, 0);
    m_keys->setSpacing(px(sizes::gap));
    //: short: a key of 20 mm, to the live picture of a camera
    m_camera = key(u"camera"_s, tr("Camera"));
    m_camera->hide();
    //: short: keys of 20 mm, to the pictures taken later and earlier
    m_newer = key(u"newer"_s, u"▲ "_s + tr("Newer"));
    m_older = key(u"older"_s, u"▼ "_s + tr("Older"));
    m_otherFolder = key(u"other_folder"_s, tr("Another folder"));
    if (around().upright) {
        m_keys->addWidget(m_newer, 0, 0);
        m_keys->addWidget(m_older, 0, 1);
        m_keys->addWidget(m_otherFolder, 0, 2);
        m_keys->addWidget(m_camera, 0, 3);
    } else {
        room->setFixedWidth(px(keyWidth));
        m_keys->setColumnStretch(0, 1);
        m_keys->setColumnStretch(1, 1);
        m_keys->addWidget(m_otherFolder, 0, 0, 1, 2);
        m_keys->addWidget(m_newer, 1, 0);
        m_keys->addWidget(m_older, 1, 1);
        m_keys->setRowStretch(0, 1);
        m_keys->setRowStretch(1, 1);
    }
    connect(m_newer, &TapButton::clicked, this, [this] { turn(-1); });
    connect(m_older, &TapButton::clicked, this, [this] { turn(1); });
    connect(m_otherFolder, &TapButton::clicked, this, &PhotoPickScreen::folderWanted);
    connect(m_camera, &TapButton::clicked, this, &PhotoPickScreen::cameraWanted);
    into->addWidget(room);
}

void PhotoPickScreen::offerCamera(bool offered)
{
    m_camera->setVisible(offered);
    if (around().upright)
        return;
    // It shares the other folder's place: a third row would leave less than a thumb needs.
    m_keys->removeWidget(m_camera);
    m_keys->removeWidget(m_otherFolder);
    m_keys->addWidget(m_otherFolder, 0, 0, 1, offered ? 1 : 2);
    if (offered)
        m_keys->addWidget(m_camera, 0, 1);
}

void PhotoPickScreen::reload()
{
    // A thumbnail as large as a tile can be.
    const QSize box(px(70), px(40));
    m_looking.ask([this, folder = m_folder, wanted = m_first, box] {
        const std::vector<FolderPicture> all = picturesIn(folder);
        const std::size_t first = wanted < all.size() ? wanted : 0;
        std::vector<QImage> small;
        for (std::size_t i = first; i < std::min(all.size(), first + perPage); ++i)
            small.push_back(smallPictureOf(all[i].path, box));
        return [this, all, first, small] { show(all, first, small); };
    });
}

void PhotoPickScreen::show(const std::vector<FolderPicture>& all, std::size_t first, const std::vector<QImage>& small)
{
    if (!m_watcher.files().isEmpty())
        m_watcher.removePaths(m_watcher.files());
    m_pictures = all;
    m_first = first;
    for (std::size_t i = 0; i < perPage; ++i) {
        Tile& tile = m_tiles[i];
        const bool there = first + i < all.size();
        tile.button->setVisible(there);
        tile.read = i < small.size();
        tile.small = tile.read ? small[i] : QImage();
        tile.button->update();
        if (!there)
            continue;
        const FolderPicture& picture = all[first + i];
        tile.button->setAccessibleName(
            //: %1 is when, %2 the file's name
            tr("Picture of %1, %2").arg(whenOf(picture), QFileInfo(picture.path).fileName()));
        m_watcher.addPath(picture.path);
    }
    m_newer->setEnabled(m_first > 0);
    m_older->setEnabled(m_first + perPage < m_pictures.size());
    const bool readable = QFileInfo(m_folder).isReadable();
    m_none->setText(!all.empty() ? QString()
                    : readable   ? tr("No pictures in this folder yet. New ones show by themselves.")
                                 : tr("This folder cannot be read. Choose another one."));
    m_none->setVisible(all.empty());
}

void PhotoPickScreen::turn(int pages)
{
    const auto page = static_cast<int>(m_first / perPage) + pages;
    m_first = static_cast<std::size_t>(std::max(0, page)) * perPage;
    showTrouble({}, {});
    show(m_pictures, m_first, {}); // the tap is answered at once; the pictures follow
    reload();
}

void PhotoPickScreen::take(std::size_t tile)
{
    if (m_taking.busy() || m_first + tile >= m_pictures.size())
        return;
    showTrouble({}, {});
    m_room->setEnabled(false);
    m_taking.ask([this, path = m_pictures[m_first + tile].path] {
        const auto read = std::make_shared<tl::expected<PhotoFile, PhotoFault>>(readPhoto(path));
        return [this, read] {
            m_room->setEnabled(true);
            if (*read)
                Q_EMIT chosen(**read);
            else
                showTrouble(refusal(read->error()), {});
        };
    });
}

QString PhotoPickScreen::refusal(const PhotoFault& fault) const
{
    switch (fault.why) {
    case PhotoFault::Why::CannotRead:
        return tr("%1 cannot be read. %2").arg(fault.name, fault.detail);
    case PhotoFault::Why::TooLarge:
        return tr("%1 is larger than %2 MB.").arg(fault.name).arg(mostPhotoBytes / (1024 * 1024));
    case PhotoFault::Why::OtherFormat:
        return tr("%1 is a %2 file. Only JPEG and PNG are kept.").arg(fault.name, fault.detail.toUpper());
    case PhotoFault::Why::NoPicture:
        break;
    }
    return tr("%1 is no whole picture. Take it again, or wait until it is written.").arg(fault.name);
}

QString PhotoPickScreen::whenOf(const FolderPicture& picture) const
{
    const Instant now = around().bench.clock().now();
    const QDateTime local = picture.changed.toUTC().addSecs(now.utcOffsetSeconds);
    const QString time = local.time().toString(u"HH:mm"_s);
    if (local.date() == QDateTime::fromMSecsSinceEpoch(now.utcMs, Qt::UTC).addSecs(now.utcOffsetSeconds).date())
        return time;
    return words().locale().toString(local.date(), QLocale::ShortFormat) + u' ' + time;
}

void PhotoPickScreen::paintTile(QPainter& painter, const QRectF& rect, const Tile& tile, std::size_t index) const
{
    if (index >= m_pictures.size())
        return;
    const QRectF caption(rect.left(), rect.bottom() - px(captionHeight), rect.width(), px(captionHeight));
    const QRectF room(rect.left(), rect.top(), rect.width(), rect.height() - px(captionHeight));
    const FittedText when = fitText(theme(), whenOf(m_pictures[index]), TextRole::Body, caption.size(), false, 1);
    drawFitted(painter, caption, when, Qt::AlignCenter, theme().color(Role::Ink));
    if (!tile.small.isNull())
        return paintPhoto(painter, room, tile.small);
    const QString state = tile.read ? tr("no picture to be seen") : tr("reading");
    drawFitted(painter, room, fitText(theme(), state, TextRole::Small, room.size()), Qt::AlignCenter,
               theme().color(Role::MutedInk));
}

void PhotoPickScreen::setWriting(bool writing)
{
    Screen::setWriting(writing);
    m_room->setEnabled(!writing);
}

} // namespace strandbench
