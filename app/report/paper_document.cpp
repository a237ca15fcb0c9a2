// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/paper_document.h"

#include "theme/fonts.h"

#include <QAbstractTextDocumentLayout>
#include <QTextObjectInterface>
#include <QTextOption>
#include <QTextTable>

#include <algorithm>
#include <cmath>
#include <utility>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int drawnType = QTextFormat::UserObject + 1;
constexpr int drawnIndex = QTextFormat::UserProperty + 1;
constexpr double cellPadding = 2.5; // at 96 to the inch
const QColor rule(0x8a, 0x8a, 0x8a);

QTextCharFormat formatOf(double points, bool bold)
{
    QTextCharFormat format;
    format.setFont(PaperFonts::of(points, bold));
    format.setForeground(Qt::black);
    return format;
}

QTextTableFormat tableFormat(const std::vector<double>& shares, bool ruled)
{
    double all = 0;
    for (const double each : shares)
        all += each;
    QList<QTextLength> widths;
    for (const double each : shares)
        widths << QTextLength(QTextLength::PercentageLength, 100 * each / all);
    QTextTableFormat format;
    format.setColumnWidthConstraints(widths);
    format.setWidth(QTextLength(QTextLength::PercentageLength, 100));
    format.setCellPadding(cellPadding);
    format.setCellSpacing(0);
    format.setBorderCollapse(true);
    format.setBorder(ruled ? 0.5 : 0);
    format.setBorderStyle(ruled ? QTextFrameFormat::BorderStyle_Solid : QTextFrameFormat::BorderStyle_None);
    format.setBorderBrush(rule);
    return format;
}

/// Room above the text of a cell; the layout scales it to the device.
void leaveRoom(QTextTableCell& cell, double millimetres)
{
    QTextTableCellFormat format = cell.format().toTableCellFormat();
    format.setTopPadding(millimetres / 25.4 * 96);
    cell.setFormat(format);
}

} // namespace

/// Draws what stands in the text as an object, in vectors.
class DrawnObjects final : public QObject, public QTextObjectInterface {
    Q_OBJECT
    Q_INTERFACES(QTextObjectInterface)
public:
    struct Drawn {
        QSizeF size;
        PaperDocument::Draw draw;
    };
    std::vector<Drawn> all;

    QSizeF intrinsicSize(QTextDocument*, int, const QTextFormat& format) override { return of(format).size; }
    void drawObject(QPainter* painter, const QRectF& rect, QTextDocument*, int, const QTextFormat& format) override
    {
        painter->save();
        of(format).draw(*painter, rect);
        painter->restore();
    }

private:
    [[nodiscard]] const Drawn& of(const QTextFormat& format) const
    {
        return all.at(static_cast<std::size_t>(format.intProperty(drawnIndex)));
    }
};

QFont PaperFonts::of(double points, bool bold)
{
    leaveOutMonospacedB612();
    QFont font;
    font.setFamilies({u"B612"_s});
    font.setStyleHint(QFont::SansSerif);
    font.setPointSizeF(points);
    font.setBold(bold);
    return font;
}

PaperDocument::PaperDocument(QPaintDevice& device, const QSizeF& body)
    : m_drawn(std::make_unique<DrawnObjects>()), m_body(body), m_pixelsPerMillimetre(device.logicalDpiX() / 25.4)
{
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere); // a word longer than its column is not cut
    m_document.setDefaultTextOption(option);
    m_document.setUndoRedoEnabled(false);
    m_document.setDocumentMargin(0);
    m_document.setDefaultFont(PaperFonts::of(PaperFonts::text));
    m_document.documentLayout()->setPaintDevice(&device);
    m_document.documentLayout()->registerHandler(drawnType, m_drawn.get());
    m_document.setPageSize(body);
    m_writing = QTextCursor(&m_document);
    m_writing.beginEditBlock();
}

PaperDocument::~PaperDocument() = default;

void PaperDocument::startPage() { m_pageDue = !m_empty; }

QTextCursor PaperDocument::block(double points, bool bold, double spaceBeforeMm)
{
    QTextCursor cursor(&m_document);
    cursor.movePosition(QTextCursor::End);
    QTextBlockFormat format;
    format.setTopMargin(spaceBeforeMm / 25.4 * 96); // the layout scales it to the device
    if (m_pageDue)
        format.setPageBreakPolicy(QTextFormat::PageBreak_AlwaysBefore);
    m_pageDue = false;
    if (m_empty)
        cursor.setBlockFormat(format);
    else
        cursor.insertBlock(format);
    m_empty = false;
    cursor.setBlockCharFormat(formatOf(points, bold));
    cursor.setCharFormat(formatOf(points, bold));
    return cursor;
}

void PaperDocument::title(const QString& text) { block(PaperFonts::title, true, 0).insertText(text); }

void PaperDocument::heading(const QString& text, double keepMm)
{
    QTextCursor cursor = block(PaperFonts::heading, true, 3);
    cursor.insertText(text);
    m_headings.emplace_back(cursor.block(), px(keepMm));
}
void PaperDocument::line(const QString& text, bool bold) { block(PaperFonts::text, bold, 0.8).insertText(text); }
void PaperDocument::small(const QString& text) { block(PaperFonts::small, false, 0.8).insertText(text); }

void PaperDocument::fill(QTextCursor cell, const QString& text, bool bold)
{
    cell.setBlockCharFormat(formatOf(PaperFonts::small, bold));
    cell.insertText(text, formatOf(PaperFonts::small, bold));
}

void PaperDocument::table(const std::vector<PaperColumn>& columns, const std::vector<QStringList>& rows, double roomMm)
{
    if (rows.empty())
        return;
    std::vector<double> shares;
    for (const PaperColumn& each : columns)
        shares.push_back(each.share);
    QTextTableFormat format = tableFormat(shares, true);
    format.setHeaderRowCount(1);
    QTextCursor cursor = block(PaperFonts::small, false, 1);
    QTextTable* made = cursor.insertTable(static_cast<int>(rows.size()) + 1, static_cast<int>(columns.size()), format);
    for (int column = 0; column < made->columns(); ++column)
        fill(made->cellAt(0, column).firstCursorPosition(), columns[static_cast<std::size_t>(column)].heading, true);
    for (int row = 1; row < made->rows(); ++row)
        for (int column = 0; column < made->columns(); ++column) {
            QTextTableCell cell = made->cellAt(row, column);
            fill(cell.firstCursorPosition(), rows[static_cast<std::size_t>(row) - 1].value(column), false);
            if (roomMm > 0)
                leaveRoom(cell, roomMm);
        }
}

void PaperDocument::pairs(const std::vector<std::pair<QString, QString>>& rows)
{
    if (rows.empty())
        return;
    QTextCursor cursor = block(PaperFonts::small, false, 1);
    QTextTable* made = cursor.insertTable(static_cast<int>(rows.size()), 2, tableFormat({1, 3}, false));
    for (int row = 0; row < made->rows(); ++row) {
        fill(made->cellAt(row, 0).firstCursorPosition(), rows[static_cast<std::size_t>(row)].first, true);
        fill(made->cellAt(row, 1).firstCursorPosition(), rows[static_cast<std::size_t>(row)].second, false);
    }
}

void PaperDocument::insert(QTextCursor cursor, double widthMm, double heightMm, Draw draw)
{
    QTextCharFormat format;
    format.setObjectType(drawnType);
    format.setProperty(drawnIndex, static_cast<int>(m_drawn->all.size()));
    m_drawn->all.push_back({QSizeF(px(widthMm), px(heightMm)), std::move(draw)});
    cursor.insertText(QString(QChar::ObjectReplacementCharacter), format);
}

void PaperDocument::drawing(double widthMm, double heightMm, Draw draw)
{
    insert(block(PaperFonts::small, false, 1), widthMm, heightMm, std::move(draw));
}

void PaperDocument::drawings(double widthMm, double heightMm, const std::vector<Captioned>& all)
{
    if (all.empty())
        return;
    const int columns = std::max(1, static_cast<int>(m_body.width() / px(widthMm + 2)));
    const int rows =
        static_cast<int>((all.size() + static_cast<std::size_t>(columns) - 1) / static_cast<std::size_t>(columns));
    QTextCursor cursor = block(PaperFonts::small, false, 1);
    QTextTable* made = cursor.insertTable(
        rows, columns, tableFormat(std::vector<double>(static_cast<std::size_t>(columns), 1), false));
    for (std::size_t i = 0; i < all.size(); ++i) {
        QTextCursor cell =
            made->cellAt(static_cast<int>(i) / columns, static_cast<int>(i) % columns).firstCursorPosition();
        insert(cell, widthMm, heightMm, all[i].draw);
        cell = made->cellAt(static_cast<int>(i) / columns, static_cast<int>(i) % columns).lastCursorPosition();
        cell.insertBlock();
        fill(cell, all[i].caption, false);
    }
}

int PaperDocument::pages()
{
    if (!std::exchange(m_writing, QTextCursor()).isNull())
        QTextCursor(&m_document).endEditBlock();
    // A heading that would be left alone at the foot of a page begins the next one. Each move shifts what follows.
    for (const auto& [block, keep] : std::exchange(m_headings, {})) {
        const QRectF place = m_document.documentLayout()->blockBoundingRect(block);
        const double left = m_body.height() - std::fmod(place.top(), m_body.height());
        if (left >= keep)
            continue;
        QTextCursor cursor(block);
        QTextBlockFormat format = block.blockFormat();
        format.setPageBreakPolicy(QTextFormat::PageBreak_AlwaysBefore);
        cursor.setBlockFormat(format);
    }
    return m_document.pageCount();
}

void PaperDocument::paintPage(QPainter& painter, int page)
{
    painter.save();
    painter.translate(0, -page * m_body.height());
    QAbstractTextDocumentLayout::PaintContext context;
    context.clip = QRectF(0, page * m_body.height(), m_body.width(), m_body.height());
    context.palette.setColor(QPalette::Text, Qt::black);
    painter.setClipRect(context.clip);
    m_document.documentLayout()->draw(&painter, context);
    painter.restore();
}

} // namespace strandbench

#include "paper_document.moc"
