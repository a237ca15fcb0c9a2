// SPDX-License-Identifier: GPL-3.0-or-later
// The cameras of the bench, driven in one thread of their own, so that the glass never waits for a device: looks for
// them, and shows what one of them sees. One at a time, and in order: a camera is closed before it is opened again.
#pragma once

#include "camera/camera.h"

#include <QElapsedTimer>
#include <QObject>

#include <atomic>
#include <condition_variable>
#include <mutex>
#include <thread>

namespace strandbench {

/// What a camera sees now.
struct CameraView {
    QImage small; ///< to be shown
    CameraFrame frame;
};

class CameraFeed final : public QObject {
    Q_OBJECT
    Q_DISABLE_COPY_MOVE(CameraFeed)
public:
    /// patienceMs: how long a camera may send no picture before that is a fault.
    explicit CameraFeed(DeviceCalls calls = systemCalls(), int patienceMs = 5000, QObject* parent = nullptr);
    /// Waits until the device is given back.
    ~CameraFeed() override;

    /// found() answers, later and on this object's own thread.
    void look();
    /// Shows a camera in pictures no larger than the box (pixels), in place of the one that was shown: seen() again and
    /// again, until stop() or failed(). The number is that of the showing, from 1 on.
    quint64 start(const QString& path, const QSize& box);
    /// Ends this showing, if it is still the one; does not wait for it.
    void stop(quint64 showing);
    /// The camera shown last; empty before any was.
    [[nodiscard]] const QString& lastShown() const { return m_lastShown; }

Q_SIGNALS:
    void found(const std::vector<strandbench::CameraDevice>& cameras);
    void seen(quint64 showing, const strandbench::CameraView& view);
    void failed(quint64 showing, const strandbench::CameraFault& fault);

private:
    struct Showing {
        quint64 number = 0;
        QString path; ///< empty: none is shown
        QSize box;
    };
    void wake(const std::function<void()>& change);
    void run();
    void tell(const std::function<void()>& what);
    [[nodiscard]] std::unique_ptr<Camera> begin(const Showing& showing);
    [[nodiscard]] bool goOn(Camera& camera, const Showing& showing);
    void show(quint64 showing, const CameraView& view);
    void tellFault(const Showing& showing, const CameraFault& fault);

    const DeviceCalls m_calls;
    const int m_patienceMs;
    QString m_lastShown;       ///< own thread alone, as is m_number
    quint64 m_number = 0;      ///< of the newest showing
    QElapsedTimer m_since;     ///< the last picture; the camera's thread alone
    std::atomic<int> m_untold; ///< pictures that the glass has not taken yet
    std::mutex m_mutex;
    std::condition_variable m_wake;
    Showing m_wanted; ///< under m_mutex, as are these two
    bool m_look = false;
    bool m_ending = false;
    std::thread m_thread;
};

} // namespace strandbench
