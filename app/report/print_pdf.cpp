// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/print_pdf.h"

#include <QBuffer>
#include <QPdfWriter>

#include <algorithm>
#include <stdexcept>

namespace strandbench {
namespace {

constexpr double side = 15; // mm: margins of the page
constexpr double top = 10;
constexpr double bottom = 10;
constexpr double headHeight = 10;
constexpr double footHeight = 14;
constexpr double leastPoints = 4;

/// Draws a text whole: it wraps, and becomes smaller before it would be cut.
void drawWhole(QPainter& painter, const QRectF& room, const QString& text, double points, int flags)
{
    const auto fits = [&](double size) {
        painter.setFont(PaperFonts::of(size));
        const QRectF needed =
            painter.boundingRect(QRectF(room.topLeft(), QSizeF(room.width(), 1e6)), flags | Qt::TextWrapAnywhere, text);
        return needed.height() <= room.height();
    };
    double size = points;
    while (size > leastPoints && !fits(size))
        size -= 0.5;
    painter.setFont(PaperFonts::of(size));
    const bool words = painter.boundingRect(room, flags | Qt::TextWordWrap, text).width() <= room.width();
    painter.drawText(room, flags | (words ? Qt::TextWordWrap : Qt::TextWrapAnywhere), text);
}

class PageMaker {
public:
    PageMaker(QPagedPaintDevice& device, const PageFrame& frame) : m_device(device), m_frame(frame) {}

    [[nodiscard]] QRectF body() const
    {
        return {px(side), px(top + headHeight), m_device.width() - px(2 * side),
                m_device.height() - px(top + headHeight + footHeight + bottom)};
    }

    void paint(QPainter& painter, int page, int of) const
    {
        const QRectF inside = body();
        painter.setPen(Qt::black);
        const double numberWidth = px(30);
        drawWhole(painter, QRectF(inside.left(), px(top), inside.width() - numberWidth, px(headHeight - 2)),
                  m_frame.head, PaperFonts::small, Qt::AlignLeft | Qt::AlignTop);
        drawWhole(painter, QRectF(inside.right() - numberWidth, px(top), numberWidth, px(headHeight - 2)),
                  m_frame.number(page, of), PaperFonts::small, Qt::AlignRight | Qt::AlignTop);
        painter.setPen(QPen(Qt::gray, px(0.2)));
        painter.drawLine(QPointF(inside.left(), inside.top() - px(1)), QPointF(inside.right(), inside.top() - px(1)));
        painter.drawLine(QPointF(inside.left(), inside.bottom() + px(2)),
                         QPointF(inside.right(), inside.bottom() + px(2)));
        painter.setPen(Qt::black);
        const QRectF foot(inside.left(), inside.bottom() + px(3), inside.width(), px(footHeight - 3));
        drawWhole(painter, QRectF(foot.topLeft(), QSizeF(foot.width(), foot.height() * 0.6)), m_frame.foot, 7,
                  Qt::AlignLeft | Qt::AlignTop);
        drawWhole(painter, QRectF(foot.left(), foot.top() + foot.height() * 0.6, foot.width(), foot.height() * 0.4),
                  m_frame.mark, 7, Qt::AlignLeft | Qt::AlignTop);
    }

private:
    [[nodiscard]] double px(double millimetres) const { return millimetres / 25.4 * m_device.logicalDpiX(); }

    QPagedPaintDevice& m_device;
    const PageFrame& m_frame;
};

} // namespace

QPageSize pageSizeOf(Paper paper) { return QPageSize(paper == Paper::A4 ? QPageSize::A4 : QPageSize::Letter); }

PrintEnd printPages(QPagedPaintDevice& device, const PageFrame& frame, const WritePaper& write,
                    const std::stop_token& stop)
{
    const PageMaker maker(device, frame);
    PaperDocument document(device, maker.body().size());
    write(document);
    if (stop.stop_requested())
        return PrintEnd::Stopped;
    const int pages = document.pages();
    QPainter painter;
    if (!painter.begin(&device))
        return PrintEnd::Failed;
    for (int page = 0; page < pages; ++page) {
        if (stop.stop_requested())
            return PrintEnd::Stopped;
        if (page > 0 && !device.newPage())
            return PrintEnd::Failed;
        maker.paint(painter, page + 1, pages);
        painter.save();
        painter.translate(maker.body().topLeft());
        document.paintPage(painter, page);
        painter.restore();
    }
    return painter.end() ? PrintEnd::Whole : PrintEnd::Failed;
}

QByteArray printPdf(Paper paper, const PageFrame& frame, const WritePaper& write, const std::stop_token& stop)
{
    QBuffer bytes;
    bytes.open(QIODevice::WriteOnly);
    PrintEnd printed = PrintEnd::Failed;
    {
        QPdfWriter writer(&bytes);
        writer.setResolution(sheetDotsPerInch);
        writer.setPageSize(pageSizeOf(paper));
        writer.setPageMargins(QMarginsF());
        writer.setTitle(frame.title);
        printed = printPages(writer, frame, write, stop);
    }
    if (printed == PrintEnd::Failed)
        throw std::logic_error("a PDF in memory took no page");
    return printed == PrintEnd::Whole ? bytes.data() : QByteArray();
}

} // namespace strandbench
