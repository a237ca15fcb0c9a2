// SPDX-License-Identifier: GPL-3.0-or-later
// Reads a PDF with the programs of poppler-utils.
#pragma once

#include <QByteArray>
#include <QRectF>
#include <QSizeF>
#include <QString>
#include <QStringList>

#include <vector>

namespace strandbench::test {

class PdfReader {
public:
    /// Throws std::runtime_error when a program is not there or does not take the file.
    explicit PdfReader(const QByteArray& pdf);

    [[nodiscard]] const QStringList& pages() const { return m_pages; } ///< their texts, laid out
    [[nodiscard]] QString text() const { return m_pages.join(u'\n'); } ///< no-break spaces are plain ones
    [[nodiscard]] QSizeF pageSizePoints() const { return m_size; }
    /// The box of each word on its page, in points.
    [[nodiscard]] const std::vector<QRectF>& words() const { return m_words; }
    /// Where a word stands, in points from the top of all pages laid one below the other.
    [[nodiscard]] std::vector<QRectF> placesOf(const QString& word) const;
    /// How often a figure stands in the text by itself: not as a part of a longer one.
    [[nodiscard]] qsizetype count(const QString& figure) const;

private:
    QStringList m_pages;
    QSizeF m_size;
    std::vector<QRectF> m_words;
    QStringList m_texts; ///< of the words
    std::vector<int> m_pageOf;
};

} // namespace strandbench::test
