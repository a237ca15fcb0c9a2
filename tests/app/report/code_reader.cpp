// SPDX-License-Identifier: GPL-3.0-or-later
#include "code_reader.h"

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

constexpr int nothingFound = 4; // zbarimg's exit status

struct Answer {
    int status;
    QByteArray out;
};

Answer run(const QString& program, const QStringList& arguments)
{
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForFinished(60000) || process.exitStatus() != QProcess::NormalExit)
        throw std::runtime_error(program.toStdString() + ": " + process.errorString().toStdString());
    return {process.exitCode(), process.readAllStandardOutput()};
}

QStringList codesInFile(const QString& picture)
{
    // One code a run of this test's pictures, so that its lines need no telling apart from another's.
    const Answer read = run(u"zbarimg"_s, {u"--raw"_s, u"-q"_s, u"-Sdisable"_s, u"-Sqrcode.enable"_s, picture});
    if (read.status == nothingFound)
        return {};
    if (read.status != 0 || !read.out.endsWith('\n'))
        throw std::runtime_error("zbarimg: " + std::to_string(read.status));
    return {QString::fromUtf8(read.out.chopped(1))};
}

} // namespace

QStringList codesIn(const QImage& picture)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(u"code.png"_s);
    if (!picture.save(path))
        throw std::runtime_error("the temporary folder cannot be written");
    return codesInFile(path);
}

QStringList codesIn(const QByteArray& pdf, int dotsPerInch)
{
    const QTemporaryDir folder;
    QFile file(folder.filePath(u"sheet.pdf"_s));
    if (!file.open(QIODevice::WriteOnly) || file.write(pdf) != pdf.size())
        throw std::runtime_error("the temporary folder cannot be written");
    file.close();
    const Answer drawn = run(u"pdftoppm"_s, {u"-r"_s, QString::number(dotsPerInch), u"-gray"_s, u"-png"_s,
                                             file.fileName(), folder.filePath(u"page"_s)});
    if (drawn.status != 0)
        throw std::runtime_error("pdftoppm: " + std::to_string(drawn.status));
    QStringList all;
    const QStringList pages = QDir(folder.path()).entryList({u"page*.png"_s}, QDir::Files, QDir::Name);
    for (const QString& page : pages)
        all += codesInFile(folder.filePath(page));
    return all;
}

} // namespace strandbench::test
