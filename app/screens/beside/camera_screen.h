// SPDX-License-Identifier: GPL-3.0-or-later
// A photo of a repair from a camera: its live picture, one that is held, and whether that is kept.
#pragma once

#include "bench/photo_file.h"
#include "camera/camera_feed.h"
#include "screens/frame/screen.h"

namespace strandbench {

class PhotoPicture;

/// What a camera's fault is to a person: what is so, naming the device, and what to do.
struct CameraTroubleText {
    QString headline;
    QString whatToDo;
};

class CameraScreen final : public Screen {
    Q_OBJECT
public:
    /// cameras outlive the screen. It takes the camera shown last, if it is there, else the first.
    CameraScreen(const Surroundings& around, const Repair& repair, PhotoMoment moment, CameraFeed& cameras,
                 QWidget* parent = nullptr);
    ~CameraScreen() override;
    CameraScreen(const CameraScreen&) = delete;
    CameraScreen& operator=(const CameraScreen&) = delete;
    CameraScreen(CameraScreen&&) = delete;
    CameraScreen& operator=(CameraScreen&&) = delete;

    void setWriting(bool writing) override;

Q_SIGNALS:
    void chosen(const strandbench::PhotoFile& photo);

private:
    enum class Shows {
        Search, ///< for cameras, or for a camera's first picture
        Live,
        Still, ///< the picture that was taken
        Trouble,
    };
    void buildKeys(QBoxLayout* into);
    void search();
    void useOf(const std::vector<CameraDevice>& cameras);
    void startCamera();
    void useAnother();
    void show(Shows shows);
    void showView(quint64 showing, const CameraView& view);
    void showFault(const CameraFault& fault);
    void goOn(); ///< the way on, by what is shown
    void keepStill();
    [[nodiscard]] static CameraTroubleText troubleOf(const CameraFault& fault, const QString& name);
    [[nodiscard]] static CameraTroubleText troubleOf(const PhotoFault& fault);

    CameraFeed& m_cameras;
    PhotoMoment m_moment;
    Shows m_shows = Shows::Search;
    std::vector<CameraDevice> m_found;
    std::size_t m_used = 0; ///< of those found
    bool m_searching = false;
    quint64 m_showing = 0; ///< the feed's number; 0: none
    CameraView m_view;     ///< what was seen last; of Still: what is kept
    PhotoPicture* m_picture = nullptr;
    TapButton* m_again = nullptr;
    TapButton* m_another = nullptr;
    QWidget* m_keys = nullptr;
    Worker m_taking;
};

} // namespace strandbench
