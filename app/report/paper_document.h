// SPDX-License-Identifier: GPL-3.0-or-later
// What goes on paper, top to bottom: headings, lines, tables, drawings. It flows over as many pages as it needs.
#pragma once

#include <QPaintDevice>
#include <QPainter>
#include <QStringList>
#include <QTextBlock>
#include <QTextCursor>
#include <QTextDocument>

#include <functional>
#include <memory>
#include <vector>

namespace strandbench {

/// The fonts of the sheet, in points.
struct PaperFonts {
    static constexpr double title = 15;
    static constexpr double heading = 10.5;
    static constexpr double text = 8.5;
    static constexpr double small = 7.5;
    [[nodiscard]] static QFont of(double points, bool bold = false);
};

/// A column of a table: its heading and its share of the width.
struct PaperColumn {
    QString heading;
    double share = 1;
};

class DrawnObjects;

class PaperDocument {
public:
    /// device: what it will be printed on, which gives the resolution; body: the room of a page in its pixels.
    PaperDocument(QPaintDevice& device, const QSizeF& body);
    ~PaperDocument();
    PaperDocument(const PaperDocument&) = delete;
    PaperDocument& operator=(const PaperDocument&) = delete;

    void startPage(); ///< what follows begins on a new page
    void title(const QString& text);
    /// keepMm: less room than this from the heading on, and it begins the next page.
    void heading(const QString& text, double keepMm = 18);
    void line(const QString& text, bool bold = false);
    void small(const QString& text);
    /// Nothing is printed for a table without rows. Headings come again on each page. roomMm: left empty above the text
    /// of each row, to be written into.
    void table(const std::vector<PaperColumn>& columns, const std::vector<QStringList>& rows, double roomMm = 0);
    /// Names and values without a heading.
    void pairs(const std::vector<std::pair<QString, QString>>& rows);
    using Draw = std::function<void(QPainter&, const QRectF&)>;
    void drawing(double widthMm, double heightMm, Draw draw);
    /// Drawings side by side with a caption below each, as many in a row as fit.
    struct Captioned {
        Draw draw;
        QString caption;
    };
    void drawings(double widthMm, double heightMm, const std::vector<Captioned>& all);

    /// How many pages there are. Call it once all is written, before the first is painted.
    [[nodiscard]] int pages();
    /// Paints the body of a page, from 0, with its top left corner at the painter's origin.
    void paintPage(QPainter& painter, int page);
    [[nodiscard]] double width() const { return m_body.width() / m_pixelsPerMillimetre; } ///< of the body, mm
    [[nodiscard]] double px(double millimetres) const { return millimetres * m_pixelsPerMillimetre; }

private:
    QTextCursor block(double points, bool bold, double spaceBeforeMm);
    void fill(QTextCursor cell, const QString& text, bool bold);
    void insert(QTextCursor cursor, double widthMm, double heightMm, Draw draw);

    QTextDocument m_document;
    std::unique_ptr<DrawnObjects> m_drawn;
    QSizeF m_body;
    double m_pixelsPerMillimetre;
    QTextCursor m_writing; ///< one edit until all is written: it is laid out once, not after each cell
    std::vector<std::pair<QTextBlock, double>> m_headings;
    bool m_pageDue = false;
    bool m_empty = true;
};

} // namespace strandbench
