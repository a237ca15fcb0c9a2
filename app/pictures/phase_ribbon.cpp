// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/phase_ribbon.h"

#include "pictures/phase_look.h"
#include "pictures/pictogram.h"
#include "pictures/picture_access.h"
#include "pictures/picture_text.h"

#include <QLinearGradient>
#include <QPainter>

#include <algorithm>
#include <array>
#include <cmath>

namespace strandbench {
namespace {

constexpr double rowMm = 5.0;
constexpr double markerMm = 2.8;
constexpr double hair = 1e-6;  // of the band
constexpr double turnMm = 0.4; // each of its two lines

struct RibbonWord {
    PictureText text;
    std::size_t span = 0;
    bool above = false; ///< with a leader down to its span
};

struct RibbonLayout {
    QRectF band;
    std::vector<QRectF> spans;
    std::vector<QRectF> soft; ///< where a span may end: between it and the next
    std::vector<RibbonWord> words;
    std::vector<std::size_t> signs; ///< spans whose word has no room: their sign stands for it
    std::vector<std::pair<double, PictureText>> ticks;
    double marker = 0;
    TextReport report;
};

/// From the early to the late end of each span, no further than the middles of the two beside: every phase keeps a
/// place of its own.
void placeSoftEdges(RibbonLayout& layout, const std::vector<PhaseSpan>& spans, const std::function<double(Duration)>& x)
{
    for (std::size_t i = 0; i + 1 < spans.size(); ++i) {
        QRectF edge = layout.spans[i];
        edge.setLeft(std::max(x(spans[i].toEarly), layout.spans[i].center().x()));
        edge.setRight(std::min(x(spans[i].toLate), layout.spans[i + 1].center().x()));
        layout.soft.push_back(edge);
    }
}

/// The part of a span where its own colour is plain.
QRectF plainPart(const RibbonLayout& layout, std::size_t i)
{
    QRectF plain = layout.spans[i];
    if (i > 0)
        plain.setLeft(layout.soft[i - 1].right());
    if (i < layout.soft.size())
        plain.setRight(layout.soft[i].left());
    return plain;
}

void placeWords(RibbonLayout& layout, const QStringList& names, const QRectF& row, const Theme& theme)
{
    double taken = row.left();
    const double em = Theme::size(TextRole::Body).leastMm;
    for (std::size_t i = 0; i < layout.spans.size(); ++i) {
        const QString name = static_cast<qsizetype>(i) < names.size() ? names.at(static_cast<qsizetype>(i)) : QString();
        if (name.isEmpty())
            continue;
        const QRectF inner = plainPart(layout, i).adjusted(theme.px(0.8), 0, -theme.px(0.8), 0);
        const PictureText inside = fitLine(theme, name, inner, TextRole::Body, true);
        if (inside.fits) {
            layout.words.push_back({inside, i, false});
            continue;
        }
        const double width = lineSize(theme, name, em, true).width();
        const double left = std::max(taken, std::min(layout.spans[i].center().x() - width / 2, row.right() - width));
        if (left + width > row.right() + 0.5 || left > layout.spans[i].right()) {
            layout.signs.push_back(i);
            continue;
        }
        const QRectF place(left, row.top(), width, row.height());
        layout.words.push_back({fitLine(theme, name, place, TextRole::Body, true), i, true});
        taken = left + width + theme.px(2);
    }
}

void placeTicks(RibbonLayout& layout, double totalMinutes, const std::function<QString(int)>& minute, const QRectF& row,
                const Theme& theme)
{
    if (!minute || totalMinutes <= 0)
        return;
    const double em = Theme::size(TextRole::Small).leastMm;
    const double pixels = layout.band.width() / totalMinutes;
    const double widest = lineSize(theme, minute(static_cast<int>(totalMinutes)), em).width() + theme.px(4);
    constexpr std::array<int, 12> steps{1, 2, 4, 5, 10, 15, 20, 30, 60, 120, 240, 480};
    const auto step = std::find_if(steps.begin(), steps.end(), [&](int each) { return each * pixels >= widest; });
    if (step == steps.end())
        return;
    for (int at = 0; at <= static_cast<int>(totalMinutes); at += *step) {
        const double x = layout.band.left() + at * pixels;
        const double width = lineSize(theme, minute(at), em).width();
        const double left = std::clamp(x - width / 2, layout.band.left(), layout.band.right() - width);
        if (!layout.ticks.empty() && left < layout.ticks.back().second.place.right() + theme.px(2))
            continue;
        layout.ticks.emplace_back(
            x, fitLine(theme, minute(at), QRectF(left, row.top(), width, row.height()), TextRole::Small));
    }
}

RibbonLayout layOut(const QRectF& room, const std::vector<PhaseSpan>& spans, const QStringList& names,
                    const std::function<QString(int)>& minute, Duration now, const Theme& theme)
{
    RibbonLayout layout;
    if (spans.empty())
        return layout;
    const QRectF inner = room.adjusted(theme.px(2), theme.px(0.5), -theme.px(2), -theme.px(0.3));
    const double start = inSeconds(spans.front().from);
    const double total = std::max(1.0, inSeconds(spans.back().to) - start);
    const double row = theme.px(rowMm);
    const auto x = [&](double seconds) { return inner.left() + inner.width() * (seconds - start) / total; };
    const double bottom = inner.bottom() - row - theme.px(1);
    for (const bool rowAbove : {false, true}) { // the row above the band only where a word needs it
        layout.spans.clear();
        layout.soft.clear();
        layout.words.clear();
        layout.signs.clear();
        const double top = inner.top() + (rowAbove ? row : 0) + theme.px(markerMm);
        layout.band =
            QRectF(QPointF(inner.left(), std::max(top, bottom - theme.px(14))), QPointF(inner.right(), bottom));
        for (const PhaseSpan& span : spans)
            layout.spans.emplace_back(QPointF(x(inSeconds(span.from)), layout.band.top()),
                                      QPointF(x(inSeconds(span.to)), layout.band.bottom()));
        placeSoftEdges(layout, spans, [&](Duration at) { return x(inSeconds(at)); });
        placeWords(layout, names,
                   QRectF(inner.left(), layout.band.top() - row - theme.px(markerMm), inner.width(), row), theme);
        if (layout.signs.empty() &&
            std::none_of(layout.words.begin(), layout.words.end(), [](const RibbonWord& word) { return word.above; }))
            break;
    }
    placeTicks(layout, total / 60, minute, QRectF(inner.left(), bottom + theme.px(1), inner.width(), row), theme);
    layout.marker = std::clamp(x(inSeconds(now)), inner.left(), inner.right());
    for (const RibbonWord& each : layout.words)
        layout.report.add(each.text);
    for (const auto& [at, text] : layout.ticks)
        layout.report.add(text);
    return layout;
}

void paintBand(QPainter& painter, const RibbonLayout& layout, const std::vector<PhaseSpan>& spans, const Theme& theme)
{
    QLinearGradient run(layout.band.topLeft(), layout.band.topRight());
    const double width = layout.band.width();
    const auto share = [&](double x) { return std::clamp((x - layout.band.left()) / width, 0.0, 1.0); };
    for (std::size_t i = 0; i < spans.size(); ++i) {
        const QRectF plain = plainPart(layout, i);
        const QColor ground = lookOf(spans[i].phase, theme).ground;
        // An end that is sure is sharp: the next colour begins a hair later.
        run.setColorAt(std::min(share(plain.left()) + hair, 1.0), ground);
        run.setColorAt(share(plain.right()), ground);
    }
    painter.fillRect(layout.band, run);
    for (std::size_t i = 0; i < spans.size(); ++i) {
        const PhaseLook look = lookOf(spans[i].phase, theme);
        if (!look.hatched)
            continue;
        const QRectF plain = plainPart(layout, i);
        painter.save();
        painter.setClipRect(plain);
        QColor hatch = look.ink;
        hatch.setAlphaF(0.55F);
        painter.setPen(QPen(hatch, std::max(1.0, theme.px(0.3) * 1.0)));
        for (double x = plain.left() - plain.height(); x < plain.right(); x += theme.px(2.4))
            painter.drawLine(QPointF(x, plain.bottom()), QPointF(x + plain.height(), plain.top()));
        painter.restore();
    }
    painter.setPen(QPen(theme.color(Role::Edge), std::max(1.0, theme.px(0.25) * 1.0)));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(layout.band);
}

/// Where one phase is to become the next, a dark line beside a light one: two grounds that are as dark as each other
/// differ in hue alone, which not everybody sees.
void paintTurns(QPainter& painter, const RibbonLayout& layout, const Theme& theme)
{
    const double half = std::max(1.0, theme.px(turnMm) * 1.0);
    for (std::size_t i = 1; i < layout.spans.size(); ++i) {
        const QRectF& span = layout.spans[i];
        painter.fillRect(QRectF(span.left() - half, span.top(), half, span.height()), theme.color(Role::Card));
        painter.fillRect(QRectF(span.left(), span.top(), half, span.height()), theme.color(Role::Ink));
    }
}

void paintWords(QPainter& painter, const RibbonLayout& layout, const std::vector<PhaseSpan>& spans, const Theme& theme)
{
    for (const RibbonWord& word : layout.words) {
        const PhaseLook look = lookOf(spans[word.span].phase, theme);
        if (word.above) {
            const QRectF span = layout.spans[word.span];
            const double x = std::clamp(word.text.place.center().x(), span.left(), span.right());
            painter.setPen(QPen(theme.color(Role::Ink), std::max(1.0, theme.px(0.3) * 1.0)));
            painter.drawLine(QPointF(x, word.text.place.bottom()), QPointF(x, span.top() + theme.px(2)));
            drawText(painter, word.text, theme.color(Role::Ink));
            continue;
        }
        if (look.hatched) {
            const double pad = theme.px(0.8);
            painter.fillRect(inkOf(word.text).adjusted(-pad, 0, pad, 0), look.ground);
        }
        drawText(painter, word.text, look.ink);
    }
    for (const std::size_t i : layout.signs) {
        const double side = std::min({layout.spans[i].width(), layout.band.height() * 0.8, theme.px(8) * 1.0});
        if (side < theme.px(3))
            continue;
        QRectF place(0, 0, side, side);
        place.moveCenter(layout.spans[i].center());
        paintPictogram(painter, place, signOf(spans[i].phase), theme, lookOf(spans[i].phase, theme).ink);
    }
}

void paintMarker(QPainter& painter, const RibbonLayout& layout, const Theme& theme)
{
    const double x = layout.marker;
    const double half = theme.px(2.2);
    const double top = layout.band.top() - theme.px(markerMm);
    // A light line beside the dark one, so that it shows upon every phase.
    painter.setPen(QPen(theme.color(Role::Card), theme.px(1.6), Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(QPointF(x, layout.band.top()), QPointF(x, layout.band.bottom()));
    painter.setPen(QPen(theme.color(Role::Ink), theme.px(0.8), Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(QPointF(x, top), QPointF(x, layout.band.bottom() + theme.px(1)));
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.color(Role::Ink));
    painter.drawPolygon(QPolygonF{{x - half, top}, {x + half, top}, {x, layout.band.top()}});
}

} // namespace

PhaseRibbon::PhaseRibbon(const Theme& theme, const QString& name, QWidget* parent) : QWidget(parent), m_theme(theme)
{
    setObjectName(name);
    installPictureAccess();
}

void PhaseRibbon::setPhases(const std::vector<PhaseSpan>& spans, const QStringList& names,
                            std::function<QString(int)> minute)
{
    m_spans = spans;
    m_names = names;
    m_minute = std::move(minute);
    update();
}

void PhaseRibbon::setNow(Duration sinceHardener)
{
    // Reduced motion: the mark goes from minute to minute.
    m_now = m_theme.reducedMotion() ? minutes(std::floor(inMinutes(sinceHardener))) : sinceHardener;
    update();
}

bool PhaseRibbon::textFits() const { return layOut(rect(), m_spans, m_names, m_minute, m_now, m_theme).report.fits; }

double PhaseRibbon::smallestTextMm() const
{
    return layOut(rect(), m_spans, m_names, m_minute, m_now, m_theme).report.smallestMm;
}

std::vector<QRectF> PhaseRibbon::softEdges() const
{
    return layOut(rect(), m_spans, m_names, m_minute, m_now, m_theme).soft;
}

QSize PhaseRibbon::minimumSizeHint() const { return {m_theme.px(80), m_theme.px(21)}; }

void PhaseRibbon::paintEvent(QPaintEvent*)
{
    const RibbonLayout layout = layOut(rect(), m_spans, m_names, m_minute, m_now, m_theme);
    if (layout.spans.empty())
        return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paintBand(painter, layout, m_spans, m_theme);
    paintTurns(painter, layout, m_theme);
    painter.setPen(QPen(m_theme.color(Role::Edge), std::max(1.0, m_theme.px(0.3) * 1.0)));
    for (const auto& [x, text] : layout.ticks)
        painter.drawLine(QPointF(x, layout.band.bottom()), QPointF(x, layout.band.bottom() + m_theme.px(1.2)));
    paintMarker(painter, layout, m_theme);
    paintWords(painter, layout, m_spans, m_theme);
    for (const auto& [x, text] : layout.ticks)
        drawText(painter, text, m_theme.color(Role::MutedInk));
}

} // namespace strandbench
