// SPDX-License-Identifier: GPL-3.0-or-later
#include "plain_pages.h"

#include "report/print_pdf.h"

#include <QAbstractTextDocumentLayout>
#include <QBuffer>
#include <QPdfWriter>
#include <QProcess>
#include <QTextCursor>
#include <QTextDocument>

using namespace Qt::StringLiterals;

namespace strandbench::paperbench {

QStringList wordsOfPages(const QByteArray& pdf)
{
    QProcess reader;
    reader.start(u"pdftotext"_s, {u"-"_s, u"-"_s});
    reader.write(pdf);
    reader.closeWriteChannel();
    if (!reader.waitForFinished() || reader.exitStatus() != QProcess::NormalExit || reader.exitCode() != 0)
        qFatal("pdftotext of poppler-utils: %s", qPrintable(reader.errorString()));
    QStringList pages = QString::fromUtf8(reader.readAllStandardOutput()).split(u'\f');
    pages.removeLast(); // what follows the last page's end
    for (QString& each : pages)
        each = each.simplified();
    return pages;
}

QByteArray plainPdf(const QStringList& pages)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setResolution(sheetDotsPerInch);
    writer.setPageSize(pageSizeOf(Paper::A4));
    writer.setPageMargins({});
    QTextDocument document;
    document.documentLayout()->setPaintDevice(&writer);
    document.setDefaultFont(PaperFonts::of(PaperFonts::text));
    document.setDocumentMargin(sheetDotsPerInch / 2.0);
    document.setPageSize(writer.pageLayout().paintRectPixels(sheetDotsPerInch).size());
    QTextCursor cursor(&document);
    QTextBlockFormat onNewPage;
    onNewPage.setPageBreakPolicy(QTextFormat::PageBreak_AlwaysBefore);
    cursor.beginEditBlock();
    for (qsizetype i = 0; i < pages.size(); ++i) {
        if (i > 0)
            cursor.insertBlock(onNewPage);
        cursor.insertText(pages[i]);
    }
    cursor.endEditBlock();
    if (document.pageCount() != pages.size())
        qFatal("%d pages of plain text for %lld", document.pageCount(), static_cast<long long>(pages.size()));
    document.print(&writer);
    return bytes;
}

} // namespace strandbench::paperbench
