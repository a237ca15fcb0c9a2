// SPDX-License-Identifier: GPL-3.0-or-later
// Photos of a repair: the four moments, the choice among the pictures of a folder, and of another folder; the way to
// the camera where there is one.
#pragma once

#include "bench/photo_file.h"
#include "camera/camera_feed.h"
#include "screens/frame/screen.h"

#include <QFileSystemWatcher>
#include <QGridLayout>

namespace strandbench {

/// The four moments, each with its newest photo; a tap goes on to choose one. done: to the present step.
[[nodiscard]] Screen* makePhotosScreen(const Surroundings& around, const Repair& repair,
                                       const std::function<void(PhotoMoment)>& choose,
                                       const std::function<void()>& done, QWidget* parent);

/// The pictures of a folder, newest first, as it fills; a tap reads one to be kept. A key leads to the camera once the
/// feed has found one; without a feed (null) none is looked for.
class PhotoPickScreen final : public Screen {
    Q_OBJECT
public:
    PhotoPickScreen(const Surroundings& around, const Repair& repair, PhotoMoment moment, const QString& folder,
                    CameraFeed* cameras, QWidget* parent = nullptr);

    void setWriting(bool writing) override;

Q_SIGNALS:
    void chosen(const strandbench::PhotoFile& photo);
    void folderWanted();
    void cameraWanted();

private:
    struct Tile {
        TapButton* button;
        QImage small;
        bool read = false; ///< small is what there is to see, or there is nothing
    };
    void buildTiles(QBoxLayout* into);
    void buildKeys(QBoxLayout* into);
    [[nodiscard]] TapButton* key(const QString& name, const QString& title);
    void offerCamera(bool offered);
    void reload();
    void show(const std::vector<FolderPicture>& all, std::size_t first, const std::vector<QImage>& small);
    void turn(int pages);
    void take(std::size_t tile);
    void paintTile(QPainter& painter, const QRectF& rect, const Tile& tile, std::size_t index) const;
    [[nodiscard]] QString whenOf(const FolderPicture& picture) const;
    [[nodiscard]] QString refusal(const PhotoFault& fault) const;

    QString m_folder;
    QWidget* m_room = nullptr;
    FitLabel* m_none = nullptr;
    TapButton* m_newer = nullptr;
    TapButton* m_older = nullptr;
    TapButton* m_otherFolder = nullptr;
    TapButton* m_camera = nullptr;
    QGridLayout* m_keys = nullptr;
    std::vector<Tile> m_tiles;
    std::vector<FolderPicture> m_pictures;
    std::size_t m_first = 0; ///< the picture on the first tile
    QFileSystemWatcher m_watcher;
    QTimer m_settle; ///< a picture that is being written changes many times
    Worker m_looking;
    Worker m_taking;
};

/// A folder is chosen: those below this one, the one above, and cameras, cards and sticks that are in.
[[nodiscard]] Screen* makeFolderScreen(const Surroundings& around, const QString& sentence, const QString& folder,
                                       const std::function<void(const QString&)>& look,
                                       const std::function<void(const QString&)>& use, QWidget* parent);

/// The folder that the set-up names, if it is there, else the person's pictures, else their home.
[[nodiscard]] QString photoFolderOf(const Settings& settings);

} // namespace strandbench
