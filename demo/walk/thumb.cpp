// SPDX-License-Identifier: GPL-3.0-or-later
#include "walk/thumb.h"

#include <QCoreApplication>
#include <QDeadlineTimer>
#include <QPointingDevice>
#include <QTest>

namespace strandbench {
namespace {

constexpr int holdMs = 1200;
constexpr int longestWriteMs = 30000;
constexpr int longestReadMs = 20000;

/// One touch screen a process.
QPointingDevice* glass()
{
    static QPointingDevice* const device = QTest::createTouchDevice();
    return device;
}

} // namespace

QAbstractButton* Thumb::find(const QString& name) const
{
    for (QAbstractButton* each : m_window.findChildren<QAbstractButton*>(name))
        if (each->isVisible())
            return each;
    return nullptr;
}

bool Thumb::reaches(const QWidget& control) const
{
    const QWidget* under = m_window.childAt(control.mapTo(&m_window, control.rect().center()));
    return under == &control || (under && control.isAncestorOf(under));
}

bool Thumb::tabTo(const QWidget& control)
{
    constexpr int mostControls = 200; // on one screen
    for (int i = 0; i < mostControls && !control.hasFocus(); ++i)
        QTest::keyClick(&m_window, Qt::Key_Tab);
    return control.hasFocus();
}

bool Thumb::tap(const QString& name) { return press(name, 0); }

bool Thumb::hold(const QString& name) { return press(name, holdMs); }

bool Thumb::press(const QString& name, int forMs)
{
    QAbstractButton* control = find(name);
    if (!control || !control->isEnabled() || !reaches(*control))
        return false;
    const auto rest = [forMs] {
        if (forMs > 0)
            QTest::qWait(forMs);
    };
    if (m_means == Means::Keys) {
        if (!tabTo(*control))
            return false;
        QTest::keyPress(control, Qt::Key_Space);
        rest();
        QTest::keyRelease(control, Qt::Key_Space);
    } else {
        const QPoint at = control->mapTo(&m_window, control->rect().center());
        QTest::touchEvent(&m_window, glass()).press(0, at, &m_window);
        rest();
        QTest::touchEvent(&m_window, glass()).release(0, at, &m_window);
    }
    settle();
    return true;
}

bool Thumb::waitFor(const QString& name)
{
    const QDeadlineTimer deadline(longestReadMs);
    const QAbstractButton* found = nullptr;
    do {
        settle();
        found = find(name);
    } while (!(found && found->isEnabled()) && !deadline.hasExpired());
    return found && found->isEnabled();
}

void Thumb::settle()
{
    const QDeadlineTimer deadline(longestWriteMs);
    do {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 5);
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    } while (m_window.writing() && !deadline.hasExpired());
    m_window.tick();
    QCoreApplication::processEvents();
    m_window.grab(); // every widget has painted itself once more
}

} // namespace strandbench
