// SPDX-License-Identifier: GPL-3.0-or-later
#include "rows.h"

#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>

using namespace Qt::StringLiterals;

namespace strandbench::bench {
namespace {

bool holds(double value) { return std::isfinite(value) && value > 0; }

/// One write at the end of the file, so that a program that dies leaves whole lines.
bool append(const QString& path, const QByteArray& line)
{
    QFile file(path);
    return file.open(QIODevice::WriteOnly | QIODevice::Append | QIODevice::Unbuffered) &&
           file.write(line) == line.size();
}

} // namespace

Rows Rows::takenFrom(QStringList& arguments)
{
    Rows rows;
    const qsizetype place = arguments.indexOf(u"--rows"_s);
    if (place < 0)
        return rows;
    rows.m_file = arguments.value(place + 1);
    arguments.remove(place, std::min<qsizetype>(2, arguments.size() - place));
    if (!append(rows.m_file, {})) {
        std::fprintf(stderr, "--rows: '%s' cannot be written to; it needs a file\n", qPrintable(rows.m_file));
        std::exit(2);
    }
    return rows;
}

void Rows::add(const Row& row) const
{
    if (row.bench.isEmpty() || row.what.isEmpty() || row.unit.isEmpty() || row.referee.isEmpty() || !holds(row.ours) ||
        !holds(row.theirs) || row.size.has_value() == row.of.isEmpty())
        qFatal("no row: %s, %s: %g and %g %s", qPrintable(row.bench), qPrintable(row.what), row.ours, row.theirs,
               qPrintable(row.unit));
    if (m_file.isEmpty())
        return;
    QJsonObject object{{u"bench"_s, row.bench},
                       {u"what"_s, row.what},
                       {u"ours"_s, row.ours},
                       {u"unit"_s, row.unit},
                       {u"referee"_s, row.referee},
                       {u"theirs"_s, row.theirs},
                       {u"ratio"_s, row.ours / row.theirs}};
    if (row.aim)
        object[u"aim"_s] = *row.aim;
    if (row.size) {
        object[u"size"_s] = *row.size;
        object[u"of"_s] = row.of;
    }
    if (!append(m_file, QJsonDocument(object).toJson(QJsonDocument::Compact) + '\n'))
        qFatal("%s cannot be written to", qPrintable(m_file));
}

double at(std::vector<double> values, double share)
{
    std::ranges::sort(values);
    return values.at(std::size_t(double(values.size() - 1) * share + 0.5));
}

} // namespace strandbench::bench
