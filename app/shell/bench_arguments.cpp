// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/bench_arguments.h"

#include <QCommandLineParser>
#include <QRegularExpression>

#include <optional>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const QString logOption = u"log"_s;
const QString glassOption = u"glass"_s;

std::optional<QSize> sizeIn(const QString& text)
{
    static const QRegularExpression form(u"^(\\d{3,5})x(\\d{3,5})$"_s);
    const auto match = form.match(text);
    if (!match.hasMatch())
        return std::nullopt;
    return QSize(match.captured(1).toInt(), match.captured(2).toInt());
}

} // namespace

BenchArguments readBenchArguments(const QStringList& given)
{
    QCommandLineParser parser;
    parser.addOption({logOption, {}, u"FILE"_s});
    parser.addOption({glassOption, {}, u"WxH"_s});
    BenchArguments read;
    // Words that are no options of the bench were taken for a command before it came to this.
    if (!parser.parse(given))
        read.faults.push_back({given.constLast(), {}, FaultKind::Missing, {}});
    for (const QString& word : parser.positionalArguments())
        read.faults.push_back({word, {}, FaultKind::UnknownKey, {u"--log"_s, u"--glass"_s}});
    if (parser.isSet(logOption) && parser.value(logOption).isEmpty())
        read.faults.push_back({u"--log"_s, {}, FaultKind::Empty, {}});
    read.log = parser.value(logOption);
    if (const QString glass = parser.value(glassOption); parser.isSet(glassOption)) {
        if (const std::optional<QSize> size = sizeIn(glass))
            read.glass = *size;
        else
            read.faults.push_back({u"--glass"_s, glass, FaultKind::NotReadable, {u"1280x800"_s}});
    }
    return read;
}

} // namespace strandbench
