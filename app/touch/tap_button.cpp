// SPDX-License-Identifier: GPL-3.0-or-later
#include "touch/tap_button.h"

#include "theme/sizes.h"
#include "touch/accessible.h"
#include "pictures/enter_key.h"
#include "touch/tap_layout.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace strandbench {

using namespace Qt::StringLiterals;

namespace {

constexpr TextSize filledTitle{7.2, 4.0}; // mm: the one way on is read first
constexpr double thickEdge = 1.2;         // mm: chosen, marked or pressed
constexpr double quietEdge = 0.4;         // mm
constexpr double focusInset = 1.6;        // mm from the outside, clear of a thick outline
constexpr double focusWidth = 0.6;        // mm

// '&' is text here, never a shortcut.
QString withoutShortcut(QString text) { return text.replace(u"&"_s, u"&&"_s); }

void paintChoiceTick(QPainter& painter, const QRectF& rect, const Theme& theme)
{
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.color(Role::Action));
    painter.drawEllipse(rect);
    const auto at = [&rect](double x, double y) {
        return QPointF(rect.left() + x * rect.width(), rect.top() + y * rect.height());
    };
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme.color(Role::OnAction), rect.width() * 0.12, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter.drawPolyline(QPolygonF{at(0.26, 0.52), at(0.44, 0.70), at(0.75, 0.32)});
}

} // namespace

TapButton::TapButton(const Theme& theme, const QString& name, Kind kind, QWidget* parent)
    : QAbstractButton(parent), m_theme(theme), m_kind(kind), m_titleSize(Theme::size(TextRole::Title))
{
    installAccessibility();
    setObjectName(name);
    setCheckable(kind == Kind::Choice);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    // Taps leave the keyboard's ring where it was; only the keyboard moves it.
    setFocusPolicy(Qt::TabFocus);
    if (filled())
        m_titleSize = filledTitle;
}

void TapButton::setTitle(const QString& title)
{
    if (title == m_title)
        return;
    m_title = title;
    setText(withoutShortcut(title));
    setAccessibleName(title);
    updateGeometry();
    update();
}

void TapButton::setSecondLine(const QString& text)
{
    if (text == m_second)
        return;
    m_second = text;
    setAccessibleDescription(text);
    update();
}

void TapButton::setSign(Pictogram sign)
{
    m_sign = sign;
    update();
}

void TapButton::setPicture(Picture picture)
{
    m_picture = std::move(picture);
    update();
}

void TapButton::keepPlaceWhenHidden()
{
    QSizePolicy policy = sizePolicy();
    policy.setRetainSizeWhenHidden(true);
    setSizePolicy(policy);
}

void TapButton::setLeastSize(double widthMm, double heightMm)
{
    m_leastMm = QSizeF(widthMm, heightMm);
    updateGeometry();
}

void TapButton::setKind(Kind kind)
{
    if ((kind == Kind::Choice) != (m_kind == Kind::Choice))
        throw std::invalid_argument("TapButton::setKind: a choice stays one, and nothing else becomes one");
    m_kind = kind;
    setTitleSize(filled() ? filledTitle : Theme::size(TextRole::Title));
}

void TapButton::setTitleSize(TextSize size)
{
    m_titleSize = size;
    updateGeometry();
    update();
}

void TapButton::setMarked(bool marked)
{
    if (marked == m_marked)
        return;
    m_marked = marked;
    update();
}

bool TapButton::filled() const { return m_kind == Kind::Way || m_kind == Kind::Go; }

TapLayout TapButton::arranged() const
{
    TapContent content;
    content.title = {m_title, m_titleSize, true, 99};
    content.second = {m_second, Theme::size(TextRole::Small), false, 99};
    content.sign = m_sign != Pictogram::None;
    content.picture = static_cast<bool>(m_picture);
    content.tick = m_kind == Kind::Choice;
    return arrangeTap(m_theme, QRectF(rect()), content);
}

std::vector<ShownText> TapButton::shownTexts() const
{
    const TapLayout layout = arranged();
    std::vector<ShownText> shown;
    const auto add = [&](const QString& text, const FittedText& fitted, const QRectF& where) {
        if (text.isEmpty())
            return;
        QRectF tight = where;
        if (layout.alignment & Qt::AlignHCenter)
            tight.setLeft(where.center().x() - fitted.width / 2);
        tight.setWidth(fitted.width);
        shown.push_back({text, tight, fitted.emMm, layout.stack.fits});
    };
    add(m_title, layout.stack.texts[0], layout.title);
    add(m_second, layout.stack.texts[1], layout.second);
    return shown;
}

bool TapButton::textFits() const
{
    const std::vector<ShownText> shown = shownTexts();
    return std::all_of(shown.begin(), shown.end(), [](const ShownText& text) { return text.fits; });
}

double TapButton::smallestTextMm() const
{
    double smallest = m_titleSize.preferredMm;
    for (const ShownText& text : shownTexts())
        smallest = std::min(smallest, text.emMm);
    return smallest;
}

QSize TapButton::minimumSizeHint() const { return {m_theme.px(m_leastMm.width()), m_theme.px(m_leastMm.height())}; }

QSize TapButton::sizeHint() const
{
    constexpr double widestHintMm = 50; // beyond this the title wraps
    const QSize least = minimumSizeHint();
    const FittedText title = wrapText(m_theme, {m_title, m_titleSize, true, 1}, m_titleSize.preferredMm, 1e6);
    const int wanted = static_cast<int>(std::ceil(title.width)) + m_theme.px(2 * sizes::margin);
    return {std::max(least.width(), std::min(wanted, m_theme.px(widestHintMm))), least.height()};
}

void TapButton::keyPressEvent(QKeyEvent* event)
{
    if (!leftToTheWindow(*event))
        QAbstractButton::keyPressEvent(event);
}

void TapButton::keyReleaseEvent(QKeyEvent* event)
{
    if (!leftToTheWindow(*event))
        QAbstractButton::keyReleaseEvent(event);
}

void TapButton::changeEvent(QEvent* event)
{
    QAbstractButton::changeEvent(event);
    update();
}

void TapButton::mouseDoubleClickEvent(QMouseEvent* event) { mousePressEvent(event); }

QColor TapButton::face() const
{
    if (!isEnabled())
        return m_theme.color(Role::Ground);
    if (m_kind == Kind::Way)
        return m_theme.color(Role::Action);
    if (m_kind == Kind::Go)
        return m_theme.color(Role::Go);
    return m_theme.color(Role::Card);
}

QColor TapButton::titleInk() const
{
    if (!isEnabled())
        return m_theme.color(Role::MutedInk);
    switch (m_kind) {
    case Kind::Way:
        return m_theme.color(Role::OnAction);
    case Kind::Go:
        return m_theme.color(Role::OnGo);
    case Kind::Stop:
        return m_theme.color(Role::Stop);
    case Kind::Plain:
    case Kind::Choice:
    case Kind::Quiet:
        break;
    }
    return m_theme.color(Role::Ink);
}

void TapButton::paintFace(QPainter& painter) const
{
    double edgeMm = m_kind == Kind::Quiet ? quietEdge : sizes::edge;
    Role edge = m_kind == Kind::Stop ? Role::Stop : (m_kind == Kind::Quiet ? Role::MutedInk : Role::Edge);
    if (m_kind == Kind::Way)
        edge = Role::Action;
    else if (m_kind == Kind::Go)
        edge = Role::Go;
    if (isChecked() || m_marked) {
        edge = Role::Action;
        edgeMm = thickEdge;
    }
    QPen pen(m_theme.color(edge), std::max(1, m_theme.px(edgeMm)));
    if (!isEnabled()) {
        // Broken outline, ground showing through: told apart by shape, and still read.
        pen = QPen(m_theme.color(Role::MutedInk), std::max(1, m_theme.px(quietEdge)), Qt::CustomDashLine);
        pen.setDashPattern({6, 3});
    } else if (isDown()) {
        pen = QPen(m_theme.color(filled() ? Role::Ink : edge), m_theme.px(thickEdge));
    }
    const double half = pen.widthF() / 2;
    const QRectF outline = QRectF(rect()).adjusted(half, half, -half, -half);
    const double radius = m_theme.px(sizes::radius) - half;
    painter.setPen(pen);
    painter.setBrush(face());
    painter.drawRoundedRect(outline, radius, radius);
    if (isDown()) {
        painter.setBrush(m_theme.color(Role::Pressed));
        painter.drawRoundedRect(outline, radius, radius);
    }
}

void TapButton::paintContent(QPainter& painter) const
{
    const TapLayout layout = arranged();
    const QColor ink = titleInk();
    if (m_picture) {
        painter.save();
        m_picture(painter, layout.mark);
        painter.restore();
    } else if (m_sign != Pictogram::None) {
        painter.save();
        paintPictogram(painter, layout.mark, m_sign, m_theme, ink);
        painter.restore();
    }
    const QColor muted = filled() && isEnabled() ? ink : m_theme.color(Role::MutedInk);
    drawFitted(painter, layout.title, layout.stack.texts[0], layout.alignment | Qt::AlignTop, ink);
    drawFitted(painter, layout.second, layout.stack.texts[1], layout.alignment | Qt::AlignTop, muted);
    if (m_kind == Kind::Choice && isChecked())
        paintChoiceTick(painter, layout.tick, m_theme);
}

void TapButton::paintFocus(QPainter& painter) const
{
    const double inset = m_theme.px(focusInset);
    const double radius = std::max(1.0, m_theme.px(sizes::radius) - inset);
    painter.setPen(QPen(m_theme.color(filled() ? Role::OnAction : Role::Action), std::max(2, m_theme.px(focusWidth))));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF(rect()).adjusted(inset, inset, -inset, -inset), radius, radius);
}

void TapButton::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paintFace(painter);
    paintContent(painter);
    paintProgress(painter, QRectF(rect()));
    if (hasFocus())
        paintFocus(painter);
}

} // namespace strandbench
