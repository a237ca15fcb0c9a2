// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/job_card.h"

#include "theme/sizes.h"
#include "pictures/enter_key.h"
#include "pictures/picture_text.h"
#include "touch/fit_text.h"

#include <QPainter>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double inset = 3;     // mm
constexpr double signSide = 10; // mm
constexpr double twoLines = 9;  // mm, of small text
constexpr double hole = 3.2;    // mm, where the card hangs

} // namespace

JobCard::JobCard(const Theme& theme, const QString& name, QWidget* parent) : QAbstractButton(parent), m_theme(theme)
{
    setObjectName(name);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Expanding);
}

void JobCard::setShown(const Shown& shown)
{
    m_shown = shown;
    setAccessibleName(u"%1, %2, %3"_s.arg(shown.job, shown.panel, shown.next));
    setAccessibleDescription(shown.who + u", "_s + shown.nextDetail);
    update();
}

QSize JobCard::minimumSizeHint() const { return {m_theme.px(40), m_theme.px(44)}; }

QSize JobCard::sizeHint() const { return {m_theme.px(50), m_theme.px(68)}; }

QRectF JobCard::footBox() const
{
    const double pad = m_theme.px(inset);
    const double left = pad + m_theme.px(signSide) + m_theme.px(2);
    const double room = width() - pad - left;
    // A detail too long for one line gets a second one, and the picture gives way.
    const double half = m_theme.px(signSide) / 2.0;
    const bool one = fitText(m_theme, m_shown.nextDetail, TextRole::Small, {room, half}, false, 1).fits;
    const double high = one ? 2 * half : half + m_theme.px(twoLines);
    return {left, height() - pad - high, room, high};
}

QRectF JobCard::signBox() const
{
    const double side = m_theme.px(signSide);
    const double pad = m_theme.px(inset);
    return {pad, footBox().center().y() - side / 2, side, side};
}

QRectF JobCard::pictureBox() const
{
    const double pad = m_theme.px(inset);
    const double top = lines()[2].where.bottom() + m_theme.px(1);
    const double bottom = footBox().top() - m_theme.px(1);
    return {pad, top, width() - 2 * pad, std::max(0.0, bottom - top)};
}

std::vector<JobCard::Line> JobCard::lines() const
{
    const double pad = m_theme.px(inset);
    const double across = width() - 2 * pad;
    const bool low = height() < m_theme.px(56); // a short glass: the head of the card is set tighter
    double at = m_theme.px(low ? 2.2 : 4.5);
    std::vector<Line> all;
    const auto add = [&](const QString& text, double heightMm, TextRole role, bool bold, bool muted) {
        all.push_back({text, QRectF(pad, at, across, m_theme.px(heightMm)), role, bold, muted});
        at += m_theme.px(heightMm);
    };
    const auto part = [&](const QString& text, PartKept kept, double heightMm, TextRole role, bool bold) {
        const QSizeF room(across, m_theme.px(heightMm));
        const auto fits = [&](const QString& shown) { return fitText(m_theme, shown, role, room, bold, 1).fits; };
        add(shortened(text, kept, fits), heightMm, role, bold, false);
    };
    part(m_shown.job, PartKept::End, low ? 7.5 : 10, low ? TextRole::Title : TextRole::BigFigure, true);
    part(m_shown.panel, PartKept::Beginning, 5.2, TextRole::Body, false);
    add(m_shown.who, 5, TextRole::Small, false, true);
    const QRectF foot = footBox();
    const double half = m_theme.px(signSide) / 2.0;
    all.push_back({m_shown.next, QRectF(foot.left(), foot.top(), foot.width(), half), TextRole::Body, true, false});
    all.push_back({m_shown.nextDetail, foot.adjusted(0, half, 0, 0), TextRole::Small, false, true, 2});
    return all;
}

std::vector<ShownText> JobCard::shownTexts() const
{
    std::vector<ShownText> texts;
    for (const Line& line : lines()) {
        const FittedText fitted = fitText(m_theme, line.text, line.role, line.where.size(), line.bold, line.most);
        texts.push_back({line.text, line.where, fitted.emMm, fitted.fits});
    }
    return texts;
}

void JobCard::keyPressEvent(QKeyEvent* event)
{
    if (!leftToTheWindow(*event))
        QAbstractButton::keyPressEvent(event);
}

void JobCard::keyReleaseEvent(QKeyEvent* event)
{
    if (!leftToTheWindow(*event))
        QAbstractButton::keyReleaseEvent(event);
}

void JobCard::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double pen = m_theme.metrics().pixelsPerMillimetre() * (hasFocus() ? 1.0 : sizes::edge);
    painter.setPen(QPen(m_theme.color(hasFocus() ? Role::Action : Role::Edge), pen));
    painter.setBrush(m_theme.color(isDown() ? Role::Pressed : Role::Card));
    const double radius = m_theme.px(sizes::radius);
    painter.drawRoundedRect(QRectF(rect()).adjusted(pen / 2, pen / 2, -pen / 2, -pen / 2), radius, radius);

    // The hole that it hangs from, at the right so that the number keeps its place.
    const double side = m_theme.px(hole);
    painter.setBrush(m_theme.color(Role::Ground));
    painter.setPen(QPen(m_theme.color(Role::SoftEdge), pen / 2));
    painter.drawEllipse(QRectF(width() / 2.0 - side / 2, m_theme.px(1), side, side));

    for (const Line& line : lines()) {
        const FittedText fitted = fitText(m_theme, line.text, line.role, line.where.size(), line.bold, line.most);
        drawFitted(painter, line.where, fitted, Qt::AlignLeft | Qt::AlignVCenter,
                   m_theme.color(line.muted ? Role::MutedInk : Role::Ink));
    }
    paintPictogram(painter, signBox(), m_shown.sign, m_theme, m_theme.color(Role::Action));
    const QRectF picture = pictureBox();
    if (picture.height() <= m_theme.px(4))
        return;
    const SectionDrawing& drawing = m_shown.drawing;
    if (drawing.measured || drawing.panelOnly)
        paintSection(painter, picture, drawing, m_theme);
    else // of a damage that nobody has measured its kind alone is true
        paintDamage(painter, picture, drawing.damage.kind, drawing.damage.weld, m_theme);
}

} // namespace strandbench
