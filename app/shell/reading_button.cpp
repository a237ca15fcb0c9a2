// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/reading_button.h"

#include "pictures/enter_key.h"
#include "theme/sizes.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double leastSideMm = 0.8;
constexpr double mostSideMm = 2;
constexpr double wordsMm = 40; // what the longest line takes
constexpr double endMm = 0.9;
constexpr double focusMm = 0.8; // thickness of the edge in focus

} // namespace

ReadingButton::ReadingButton(const Theme& theme, QWidget* parent)
    : QAbstractButton(parent), m_theme(theme), m_label(new FitLabel(theme, u"ribbon_reading"_s, TextRole::Small, this))
{
    setObjectName(u"ribbon_air"_s);
    setFocusPolicy(Qt::TabFocus); // taps leave the keyboard's ring where it was
    m_label->setAttribute(Qt::WA_TransparentForMouseEvents);
    auto* inside = new QVBoxLayout(this);
    inside->addWidget(m_label);
    dress(false);
}

void ReadingButton::resizeEvent(QResizeEvent* event)
{
    QAbstractButton::resizeEvent(event);
    const double sideMm = std::clamp((m_theme.metrics().mm(width()) - wordsMm) / 2, leastSideMm, mostSideMm);
    layout()->setContentsMargins(m_theme.px(sideMm), m_theme.px(endMm), m_theme.px(sideMm), m_theme.px(endMm));
}

void ReadingButton::dress(bool notice)
{
    m_label->setRole(notice ? Role::OnCaution : Role::OnRibbon);
    m_label->setAlignment((notice ? Qt::AlignHCenter : Qt::AlignRight) | Qt::AlignVCenter);
    setEnabled(!notice);
    update();
}

void ReadingButton::showText(const QString& text, bool notice)
{
    if (notice == isEnabled())
        dress(notice);
    if (text == m_label->text()) // it is told every second
        return;
    m_label->setText(text);
    setAccessibleName(notice ? text : tr("Air: %1").arg(QString(text).replace(u'\n', u", "_s)));
}

void ReadingButton::setReading(const QString& lines) { showText(lines, false); }

void ReadingButton::setNotice(const QString& text) { showText(text, true); }

void ReadingButton::mouseDoubleClickEvent(QMouseEvent* event) { mousePressEvent(event); }

void ReadingButton::keyPressEvent(QKeyEvent* event)
{
    if (!leftToTheWindow(*event))
        QAbstractButton::keyPressEvent(event);
}

void ReadingButton::keyReleaseEvent(QKeyEvent* event)
{
    if (!leftToTheWindow(*event))
        QAbstractButton::keyReleaseEvent(event);
}

void ReadingButton::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double pen = std::max(1, m_theme.px(isDown() || hasFocus() ? focusMm : sizes::edge));
    const QRectF outline = QRectF(rect()).adjusted(pen / 2, pen / 2, -pen / 2, -pen / 2);
    painter.setPen(QPen(m_theme.color(isEnabled() ? Role::OnRibbon : Role::Caution), pen));
    painter.setBrush(isEnabled() ? Qt::NoBrush : QBrush(m_theme.color(Role::Caution)));
    painter.drawRoundedRect(outline, m_theme.px(sizes::radius), m_theme.px(sizes::radius));
}

} // namespace strandbench
