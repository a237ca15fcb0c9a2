// SPDX-License-Identifier: GPL-3.0-or-later
// Linked into a program: when its first window has painted itself, prints the moment, the memory at its peak and the
// processor's microseconds until then on one line, and ends the program.
#include <QApplication>
#include <QEvent>
#include <QTimer>
#include <QWidget>

#include <sys/resource.h>

#include <chrono>
#include <cstdio>

namespace {

class FirstPaint final : public QObject {
public:
    using QObject::QObject;

    bool eventFilter(QObject* watched, QEvent* event) override
    {
        auto* widget = qobject_cast<QWidget*>(watched);
        if (event->type() == QEvent::Paint && !m_painted && widget && widget->isWindow()) {
            m_painted = true;
            // The event is handled, and the picture handed over, before the loop turns.
            QTimer::singleShot(0, this, &FirstPaint::tell);
        }
        return false;
    }

private:
    static long microseconds(const timeval& time) { return time.tv_sec * 1'000'000 + time.tv_usec; }
    static void tell()
    {
        const auto now = std::chrono::steady_clock::now().time_since_epoch();
        rusage used{};
        getrusage(RUSAGE_SELF, &used);
        std::printf("%lld %ld %ld\n", static_cast<long long>(std::chrono::nanoseconds(now).count()), used.ru_maxrss,
                    microseconds(used.ru_utime) + microseconds(used.ru_stime));
        std::fflush(stdout);
        QCoreApplication::quit();
    }

    bool m_painted = false;
};

void watch() { QCoreApplication::instance()->installEventFilter(new FirstPaint(QCoreApplication::instance())); }

} // namespace

Q_COREAPP_STARTUP_FUNCTION(watch)
