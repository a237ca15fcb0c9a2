// SPDX-License-Identifier: GPL-3.0-or-later
#include "camera/camera_feed.h"

namespace strandbench {
namespace {

using Why = CameraFault::Why;

constexpr int waitMs = 100; // for a picture; so long it takes at most until something else is done

} // namespace

CameraFeed::CameraFeed(DeviceCalls calls, int patienceMs, QObject* parent)
    : QObject(parent), m_calls(std::move(calls)), m_patienceMs(patienceMs), m_untold(0)
{}

CameraFeed::~CameraFeed()
{
    {
        const std::lock_guard lock(m_mutex);
        m_ending = true;
    }
    m_wake.notify_one();
    if (m_thread.joinable())
        m_thread.join();
}

void CameraFeed::wake(const std::function<void()>& change)
{
    {
        const std::lock_guard lock(m_mutex);
        change();
    }
    if (!m_thread.joinable())
        m_thread = std::thread([this] { run(); });
    m_wake.notify_one();
}

void CameraFeed::look()
{
    wake([this] { m_look = true; });
}

quint64 CameraFeed::start(const QString& path, const QSize& box)
{
    m_lastShown = path;
    const quint64 number = ++m_number;
    wake([&] { m_wanted = {number, path, box}; });
    return number;
}

void CameraFeed::stop(quint64 showing)
{
    if (showing == 0 || showing != m_number)
        return;
    const quint64 number = ++m_number; // what is still on its way to the glass belongs to none
    wake([&] { m_wanted = {number, {}, {}}; });
}

void CameraFeed::run()
{
    std::unique_ptr<Camera> camera;
    Showing shown;
    std::unique_lock lock(m_mutex);
    while (!m_ending) {
        if (m_look) {
            m_look = false;
            lock.unlock();
            tell([this, cameras = camerasOf(m_calls)] { Q_EMIT found(cameras); });
        } else if (shown.number != m_wanted.number) {
            shown = m_wanted;
            lock.unlock();
            camera.reset();
            if (!shown.path.isEmpty())
                camera = begin(shown);
        } else if (camera) {
            lock.unlock();
            if (!goOn(*camera, shown))
                camera.reset();
        } else {
            m_wake.wait(lock);
            continue;
        }
        lock.lock();
    }
}

void CameraFeed::tell(const std::function<void()>& what)
{
    QMetaObject::invokeMethod(this, what, Qt::QueuedConnection);
}

std::unique_ptr<Camera> CameraFeed::begin(const Showing& showing)
{
    auto opened = Camera::open(m_calls, showing.path);
    m_since.start();
    if (opened)
        return std::move(*opened);
    tellFault(showing, opened.error());
    return nullptr;
}

void CameraFeed::tellFault(const Showing& showing, const CameraFault& fault)
{
    tell([this, number = showing.number, fault] {
        if (number == m_number)
            Q_EMIT failed(number, fault);
    });
}

bool CameraFeed::goOn(Camera& camera, const Showing& showing)
{
    const auto frame = camera.next(waitMs);
    if (frame && m_untold > 0) { // a glass that is busy is not given more than it can take
        m_since.start();
        return true;
    }
    const QImage small = frame ? frame->picture(showing.box) : QImage();
    if (!small.isNull()) {
        m_since.start();
        show(showing.number, {small, *frame});
        return true;
    }
    const CameraFault fault = frame ? CameraFault{Why::NoPicture, camera.name(), {}, 0, {}} : frame.error();
    if (fault.why == Why::NoPicture && m_since.elapsed() < m_patienceMs)
        return true;
    tellFault(showing, fault);
    return false;
}

void CameraFeed::show(quint64 showing, const CameraView& view)
{
    ++m_untold;
    tell([this, showing, view] {
        --m_untold;
        if (showing == m_number)
            Q_EMIT seen(showing, view);
    });
}

} // namespace strandbench
