// SPDX-License-Identifier: GPL-3.0-or-later
#include "pdf_reader.h"

#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

QString output(const QString& program, const QStringList& arguments)
{
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForFinished(60000) || process.exitStatus() != QProcess::NormalExit || process.exitCode() != 0)
        throw std::runtime_error(program.toStdString() + " (poppler-utils): " + process.errorString().toStdString() +
                                 process.readAllStandardError().toStdString());
    return QString::fromUtf8(process.readAllStandardOutput());
}

QString plain(QString text) { return text.replace(QChar(QChar::Nbsp), u' '); }

} // namespace

PdfReader::PdfReader(const QByteArray& pdf)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(u"sheet.pdf"_s);
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(pdf) != pdf.size())
        throw std::runtime_error("the temporary folder cannot be written");
    file.close();
    m_pages = plain(output(u"pdftotext"_s, {u"-layout"_s, path, u"-"_s})).split(u'\f', Qt::SkipEmptyParts);
    const QString info = output(u"pdfinfo"_s, {path});
    static const QRegularExpression size(u"Page size:\\s+([0-9.]+) x ([0-9.]+) pts"_s);
    const auto found = size.match(info);
    m_size = {found.captured(1).toDouble(), found.captured(2).toDouble()};
    const QString boxes = output(u"pdftotext"_s, {u"-bbox"_s, path, u"-"_s});
    static const QRegularExpression word(
        u"<page |<word xMin=\"([-0-9.]+)\" yMin=\"([-0-9.]+)\" xMax=\"([-0-9.]+)\" yMax=\"([-0-9.]+)\">([^<]*)<"_s);
    int page = -1;
    for (auto each = word.globalMatch(boxes); each.hasNext();) {
        const auto box = each.next();
        if (box.captured(1).isEmpty()) {
            ++page;
            continue;
        }
        m_words.emplace_back(QPointF(box.captured(1).toDouble(), box.captured(2).toDouble()),
                             QPointF(box.captured(3).toDouble(), box.captured(4).toDouble()));
        m_texts << box.captured(5);
        m_pageOf.push_back(page);
    }
}

std::vector<QRectF> PdfReader::placesOf(const QString& word) const
{
    std::vector<QRectF> places;
    for (qsizetype i = 0; i < m_texts.size(); ++i)
        if (m_texts[i] == word) {
            const auto at = static_cast<std::size_t>(i);
            places.push_back(m_words[at].translated(0, m_pageOf[at] * m_size.height()));
        }
    return places;
}

qsizetype PdfReader::count(const QString& figure) const
{
    // A narrow space before a unit may come back as none.
    const QString loose = QRegularExpression::escape(plain(figure)).replace(u"\\ "_s, u" ?"_s);
    const QRegularExpression alone(u"(?<![0-9A-Za-z.,/:])"_s + loose + u"(?![0-9A-Za-z/:]|[.,][0-9])"_s);
    return text().count(alone);
}

} // namespace strandbench::test
